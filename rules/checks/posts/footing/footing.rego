# METADATA
# title: Footing under every post
# description: Whether a footing is described for each post.
# custom:
#   id: posts/footing
#   aliases: []
#   consequence: structure
#   why: A post that stands on soil sinks, and rots at its foot.
#   applies_when: posts stand under a beam
#   figures:
#     required: {type: flag, relation: exactly, about: true where every post stands on a footing}
#   messages:
#     outside: "the post stands on no footing"
#     within: "the post stands on a footing"
#   exempt:
#     free: "posts may stand without a footing"
#   mend: ["a footing of the size that the load and the soil ask for"]
#   tries: []
package checks.posts.footing

import data.figures.posts.footing as figures
import data.lib.posts

applies if count(input.posts) > 0

_bare contains i if {
	some i, post in input.posts
	post.base_kind.value == "embedded in soil"
	not post.has_footing
	figures.required
}

readings contains {"at": post.at, "have": true, "figure": "required", "limit": true, "outside": false} if {
	some post in input.posts
	post.has_footing
}

readings contains {"at": input.posts[i].base_kind.at, "have": false, "figure": "required", "limit": true, "outside": true} if {
	some i in _bare
}

exempt contains {"at": post.at, "because": "free"} if {
	some post in input.posts
	not post.has_footing
	not figures.required
}

unknown contains {"at": posts.place(post), "needs": "platforms[].footings"} if {
	some i, post in input.posts
	not post.has_footing
	figures.required
	not i in _bare
}
