# METADATA
# title: Post size
# description: The nominal size of each post, against the sizes that the set accepts.
# custom:
#   id: posts/size
#   aliases: []
#   consequence: structure
#   why: A thin post leaves no room to seat the beam and to fasten its hardware.
#   applies_when: posts stand under a beam
#   figures:
#     accepted: {type: list, relation: one of, about: nominal sizes accepted}
#   values: {material: words}
#   messages:
#     outside: "post is {have}, accepted are {limit}"
#     within: "post is {have}"
#   exempt:
#     material: "the post is of {material}, the sizes are for wood"
#   mend: ["thicker posts"]
package checks.posts.size

import data.figures.posts.size as figures
import data.lib.posts

applies if count(input.posts) > 0

_other contains i if {
	some i, post in input.posts
	post.material.value != "wood"
}

_accepted[i] := post.size.value in figures.accepted if {
	some i, post in input.posts
	not i in _other
}

readings contains {
	"at": input.posts[i].size.at, "have": input.posts[i].size.value,
	"figure": "accepted", "limit": figures.accepted,
	"outside": accepted == false,
} if {
	some i, accepted in _accepted
}

exempt contains {"at": input.posts[i].at, "because": "material", "material": input.posts[i].material.value} if {
	some i in _other
}

unknown contains {"at": posts.place(post), "needs": "platforms[].posts.size"} if {
	some i, post in input.posts
	not post.size
	not i in _other
}
