# METADATA
# title: Post size
# description: The lesser side of each post, actual and not nominal, against the least that the set accepts.
# custom:
#   id: posts/size
#   aliases: []
#   consequence: structure
#   why: A thin post leaves no room to seat the beam and to fasten its hardware.
#   applies_when: posts stand under a beam
#   figures:
#     min: {type: length, relation: at least, about: least actual side of a post}
#   values: {material: words, size: words}
#   messages:
#     outside: "post of {size} is {have} on its lesser side, the limit is {limit}"
#   exempt:
#     material: "the post is of {material}, the sizes are for wood"
#   mend: ["thicker posts"]
#   tries: [post-size]
package checks.posts.size

import data.figures.posts.size as figures
import data.lib.posts

applies if count(input.posts) > 0

_other contains i if {
	some i, post in input.posts
	post.material.value != "wood"
}

readings contains {
	"at": post.least_side.at, "have": post.least_side.value,
	"figure": "min", "limit": figures.min,
	"outside": post.least_side.value < figures.min,
	"size": post.size.value,
} if {
	some i, post in input.posts
	not i in _other
}

exempt contains {"at": input.posts[i].at, "because": "material", "material": input.posts[i].material.value} if {
	some i in _other
}

unknown contains {"at": posts.place(post), "needs": "platforms[].posts.size"} if {
	some i, post in input.posts
	not post.size
	not i in _other
}
