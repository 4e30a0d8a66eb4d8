# METADATA
# title: Post base
# description: How the foot of each post is kept from moving sideways, by hardware or by the depth at which it is set.
# custom:
#   id: posts/base
#   aliases: []
#   consequence: structure
#   why: A post that only stands on its footing is kicked off it, and lifts when wind gets under the deck.
#   applies_when: posts stand under a beam
#   figures:
#     hardware: {type: list, relation: one of, about: kinds of hardware that can hold a foot}
#     embedded: {type: list, about: kinds of base that hold by depth}
#     min_embedment: {type: length, relation: at least, about: least depth in soil or concrete}
#     held: {type: flag, relation: exactly, about: true where the foot must be held}
#   messages:
#     outside: "post base is {have}, which does not hold the foot"
#     held: "the foot of the post is held"
#     loose: "the foot of the post is not held against moving sideways"
#     embedment: "post is set {have} deep, the limit is {limit}"
#   mend: ["a listed post base, anchored in the concrete", "the post set deeper"]
#   tries: [yes-no, post-standoff, whole-inches]
package checks.posts.base

import data.figures.posts.base as figures
import data.lib.posts

applies if count(input.posts) > 0

_set contains i if {
	some i, post in input.posts
	post.base_kind.value in figures.embedded
}

_hardware contains i if {
	some i, post in input.posts
	post.base_kind.value in figures.hardware
}

# A base that is neither shown nor known is judged by what is said of the foot.
_nameless contains i if {
	some i, post in input.posts
	not post.base_kind
}

_nameless contains i if {
	some i, post in input.posts
	post.base_kind.value == "unknown"
}

_held[i] := input.posts[i].base_holds if some i in _hardware

_held[i] := input.posts[i].restrained if {
	some i in _hardware
	not input.posts[i].base_holds
}

_held[i] := input.posts[i].restrained if some i in _nameless

_say := {true: "held", false: "loose"}

readings contains {
	"at": held.at, "have": held.value,
	"figure": "held", "limit": figures.held,
	"outside": _wanting(held.value), "say": _say[held.value],
} if {
	some held in _held
}

_wanting(held) := false if held

_wanting(held) := figures.held if held == false

readings contains {
	"at": post.embedment.at, "have": post.embedment.value,
	"figure": "min_embedment", "limit": figures.min_embedment,
	"outside": post.embedment.value < figures.min_embedment, "say": "embedment",
} if {
	some i in _set
	post := input.posts[i]
}

readings contains {
	"at": post.base_kind.at, "have": post.base_kind.value,
	"figure": "hardware", "limit": figures.hardware, "outside": true,
} if {
	some i, post in input.posts
	post.base_kind
	not i in ((_set | _hardware) | _nameless)
}

unknown contains {"at": posts.place(input.posts[i]), "needs": "platforms[].posts.base.embedment"} if {
	some i in _set
	not input.posts[i].embedment
}

unknown contains {"at": posts.place(input.posts[i]), "needs": "platforms[].posts.base.uplift_and_lateral"} if {
	some i in _hardware
	not _held[i]
}

unknown contains {"at": posts.place(input.posts[i]), "needs": "platforms[].posts.base.kind"} if {
	some i in _nameless
	not _held[i]
}
