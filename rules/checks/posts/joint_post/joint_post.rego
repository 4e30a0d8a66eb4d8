# METADATA
# title: Post under a ply joint
# description: The size of a post over which plies of the beam are joined, against the sizes that the set accepts there.
# custom:
#   id: posts/joint-post
#   aliases: []
#   consequence: structure
#   why: Two ends share the post under a joint, and each needs a seat of its own.
#   applies_when: a ply joint lies over a post
#   figures:
#     accepted: {type: list, relation: one of, about: nominal sizes accepted under a joint}
#   messages:
#     outside: "the post under a ply joint is {have}, accepted are {limit}"
#     within: "the post under a ply joint is {have}"
#   exempt:
#     whole: "no ply is joined over the post"
#   mend: ["a thicker post under the joint"]
#   tries: [post-size]
package checks.posts.joint_post

import data.figures.posts.joint_post as figures
import data.lib.posts

applies if {
	some post in input.posts
	post.joint_above
}

_joined[i] := post if {
	some i, post in input.posts
	post.joint_above
}

_refused contains i if {
	some i, post in _joined
	not post.size.value in figures.accepted
}

readings contains {
	"at": post.size.at, "have": post.size.value,
	"figure": "accepted", "limit": figures.accepted,
	"outside": i in _refused,
} if {
	some i, post in _joined
}

exempt contains {"at": post.at, "because": "whole"} if {
	some i, post in input.posts
	not _joined[i]
}

unknown contains {"at": posts.place(post), "needs": "platforms[].posts.size"} if {
	some post in _joined
	not post.size
}
