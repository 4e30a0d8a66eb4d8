# METADATA
# title: Tall posts
# description: The height of each post, against the greatest of any table in the set.
# custom:
#   id: scope/tall-post
#   aliases: []
#   consequence: structure
#   why: On tall posts a deck sways, and its bracing has to be calculated.
#   applies_when: posts stand under a beam
#   figures:
#     max: {type: length, relation: at most, about: greatest height of any post}
#   messages:
#     outside: "the post is {have} high, the tables end at {limit}: a licensed engineer is needed"
#     within: "the post is {have} high, the tables end at {limit}"
#   mend: ["a design by a licensed engineer for posts and bracing"]
#   tries: []
package checks.scope.tall_post

import data.figures.scope.tall_post as figures
import data.lib.posts

applies if count(input.posts) > 0

readings contains {
	"at": post.height.at, "have": post.height.value,
	"figure": "max", "limit": figures.max, "outside": post.height.value > figures.max,
} if {
	some post in input.posts
}

unknown contains {"at": posts.place(post), "needs": need} if {
	some post in input.posts
	not post.height
	some need in _needs(post)
}

_needs(post) := post.missing if count(post.missing) > 0

_needs(post) := ["platforms[].grade_at"] if count(post.missing) == 0
