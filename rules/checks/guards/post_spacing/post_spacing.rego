# METADATA
# title: Spacing of guard posts
# description: The greatest distance between the posts of a guard, against the greatest that the set gives.
# custom:
#   id: guards/post-spacing
#   aliases: []
#   consequence: life safety
#   why: A long rail between posts bends out under a crowd, and each post takes the push on half of either side.
#   applies_when: a guard is described
#   figures:
#     max: {type: length, relation: at most, about: "greatest distance between posts, center to center"}
#   messages:
#     outside: "guard posts are {have} apart, the limit is {limit}"
#     within: "guard posts are {have} apart, the limit is {limit}"
#   mend: ["guard posts closer together"]
#   tries: [whole-inches]
package checks.guards.post_spacing

import data.figures.guards.post_spacing as figures

applies if count(input.guards) > 0

readings contains {
	"at": guard.post_spacing.at, "have": guard.post_spacing.value,
	"figure": "max", "limit": figures.max, "outside": guard.post_spacing.value > figures.max,
} if {
	some guard in input.guards
}

unknown contains {"at": guard.at, "needs": "guards[].posts.max_spacing"} if {
	some guard in input.guards
	not guard.post_spacing
}
