# METADATA
# title: Posts of another material
# description: The material of the posts where it is shown, against the one that the tables of post heights were made for.
# custom:
#   id: scope/post-material
#   aliases: []
#   consequence: structure
#   why: Steel, aluminum and masonry posts fail in other ways than wood, mostly at base and top.
#   applies_when: a material is shown for a post
#   figures:
#     accepted: {type: list, relation: one of, about: materials that the tables are for}
#   messages:
#     outside: "the posts are of {have}: outside the prescriptive tables, a licensed engineer is needed"
#     within: "the posts are of {have}"
#   exempt:
#     unsaid: "no other material than wood is said of the post"
#   mend: ["a design by a licensed engineer for posts, bases and caps", "posts of wood"]
package checks.scope.post_material

import data.figures.scope.post_material as figures

applies if count(_shown) > 0

_shown[i] := post.material if some i, post in input.posts

_refused contains i if {
	some i, material in _shown
	not material.value in figures.accepted
}

readings contains {
	"at": material.at, "have": material.value,
	"figure": "accepted", "limit": figures.accepted, "outside": i in _refused,
} if {
	some i, material in _shown
}

exempt contains {"at": post.at, "because": "unsaid"} if {
	some i, post in input.posts
	not _shown[i]
}
