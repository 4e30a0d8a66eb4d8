# METADATA
# title: Posts of another material
# description: The material of the posts, against the one that the tables of post heights were made for. Posts with a species are of wood.
# custom:
#   id: scope/post-material
#   aliases: []
#   consequence: structure
#   why: Steel, aluminum and masonry posts fail in other ways than wood, mostly at base and top.
#   applies_when: posts stand under a beam
#   figures:
#     accepted: {type: list, relation: one of, about: materials that the tables are for}
#   values: {species: words}
#   messages:
#     outside: "the posts are of {have}: outside the prescriptive tables, a licensed engineer is needed"
#     within: "the posts are of {have}"
#   exempt:
#     lumber: "the post is of {species}"
#   mend: ["a design by a licensed engineer for posts, bases and caps", "posts of wood"]
#   tries: []
package checks.scope.post_material

import data.figures.scope.post_material as figures
import data.lib.posts

applies if count(input.posts) > 0

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

exempt contains {"at": post.at, "because": "lumber", "species": post.lumber.species.value} if {
	some i, post in input.posts
	not _shown[i]
}

unknown contains {"at": posts.place(post), "needs": "platforms[].posts.material"} if {
	some i, post in input.posts
	not _shown[i]
	not post.lumber.species
}
