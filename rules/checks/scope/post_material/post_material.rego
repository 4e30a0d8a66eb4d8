# METADATA
# title: Posts of another material
# description: Posts that are not of wood, for which no table of post heights was made.
# custom:
#   id: scope/post-material
#   aliases: []
#   consequence: structure
#   why: Steel, aluminum and masonry posts fail in other ways than wood, mostly at base and top.
#   applies_when: posts of another material than wood are described
#   figures:
#     accepted: {type: list, relation: one of, about: materials that the tables are for}
#   messages:
#     outside: "the posts are of {have}: outside the prescriptive tables, a licensed engineer is needed"
#     within: "the posts are of {have}"
#   exempt:
#     wood: "the post is of wood, or nothing else is said of it"
#   mend: ["a design by a licensed engineer for posts, bases and caps", "posts of wood"]
package checks.scope.post_material

import data.figures.scope.post_material as figures

applies if count(_other) > 0

_other[i] := post.material if {
	some i, post in input.posts
	post.material.value != "wood"
}

_refused contains i if {
	some i, material in _other
	not material.value in figures.accepted
}

readings contains {
	"at": material.at, "have": material.value,
	"figure": "accepted", "limit": figures.accepted, "outside": i in _refused,
} if {
	some i, material in _other
}

exempt contains {"at": post.at, "because": "wood"} if {
	some i, post in input.posts
	not _other[i]
}
