# METADATA
# title: Connection of beam and post
# description: How the beam is fastened to each post, and the bolts where it sits in a notch.
# custom:
#   id: posts/cap
#   aliases: []
#   consequence: structure
#   why: A beam that is only nailed to its posts rolls or walks off them when the deck sways.
#   applies_when: posts stand under a beam
#   figures:
#     accepted: {type: list, relation: one of, about: connections accepted}
#     bolted: {type: list, about: those of them that need bolts}
#     min_bolts: {type: count, unit: [bolt, bolts], relation: at least, about: least number of bolts}
#     min_diameter: {type: length, relation: at least, about: least diameter of the bolts}
#   messages:
#     outside: "beam and post are joined by {have}, accepted are {limit}"
#     within: "beam and post are joined by {have}"
#     bolts: "{have} bolts join beam and post, at least {limit} are asked for"
#     diameter: "bolts between beam and post are {have}, the limit is {limit}"
#   mend: ["a post cap of the size of beam and post", "a notch that seats the beam, with two through-bolts and washers"]
#   tries: [accepted-word, one-more, eighths]
package checks.posts.cap

import data.figures.posts.cap as figures
import data.lib.posts

applies if count(input.posts) > 0

_shown[i] := post if {
	some i, post in input.posts
	post.cap_kind.value != "unknown"
}

_bolted[i] := post if {
	some i, post in _shown
	post.cap_kind.value in figures.bolted
}

_refused contains i if {
	some i, post in _shown
	not post.cap_kind.value in figures.accepted
}

readings contains {
	"at": post.cap_kind.at, "have": post.cap_kind.value,
	"figure": "accepted", "limit": figures.accepted,
	"outside": i in _refused,
} if {
	some i, post in _shown
}

readings contains {
	"at": post.cap_bolts.at, "have": post.cap_bolts.value,
	"figure": "min_bolts", "limit": figures.min_bolts,
	"outside": post.cap_bolts.value < figures.min_bolts, "say": "bolts",
} if {
	some post in _bolted
}

readings contains {
	"at": post.cap_bolt_diameter.at, "have": post.cap_bolt_diameter.value,
	"figure": "min_diameter", "limit": figures.min_diameter,
	"outside": post.cap_bolt_diameter.value < figures.min_diameter, "say": "diameter",
} if {
	some post in _bolted
}

unknown contains {"at": posts.place(post), "needs": "platforms[].posts.cap.kind"} if {
	some i, post in input.posts
	not _shown[i]
}

unknown contains {"at": posts.place(post), "needs": need} if {
	some post in _bolted
	some name, need in {"cap_bolts": "platforms[].posts.cap.bolts", "cap_bolt_diameter": "platforms[].posts.cap.bolt_diameter"}
	not post[name]
}
