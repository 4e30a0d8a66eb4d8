# METADATA
# title: Height of the surface as stated and as the ground gives it
# description: The height of a walking surface above grade as written down against the ground shown below it at edges, points and posts, within the set's tolerance.
# custom:
#   id: layout/surface-height
#   aliases: []
#   consequence: workmanship
#   why: Posts, stairs and the need for a guard follow from the height above the ground. Of two heights that exclude each other one is wrong, and something gets built by it.
#   applies_when: a platform states its height above grade and shows the ground somewhere
#   figures:
#     tolerance: {type: length, relation: at most, about: greatest distance of the stated height from what the ground shown allows}
#   values: {stated: length, derived: length}
#   messages:
#     outside: "the surface is stated {stated} above grade, the nearest that the ground shown allows is {derived}: {have} apart, the limit is {limit}"
#     within: "the surface is stated {stated} above grade, the ground shown allows {derived}"
#   mend:
#     - "measure the drops at the edges and the height again, from the finished decking"
#     - "show where the ground lies that deep or that high, as grade_at"
#   tries: []
package checks.layout.surface_height

import data.figures.layout.surface_height as figures

applies if count(input.stated_heights) > 0

readings contains {
	"at": surface.at, "have": surface.difference.value,
	"figure": "tolerance", "limit": figures.tolerance,
	"outside": surface.difference.value > figures.tolerance,
	"stated": surface.stated.value, "derived": surface.derived.value,
} if {
	some surface in input.stated_heights
	_decided(surface)
}

unknown contains {"at": surface.at, "needs": missing} if {
	some surface in input.stated_heights
	not _decided(surface)
	some missing in surface.missing
}

_decided(surface) if count(surface.missing) == 0

_decided(surface) if surface.difference.value <= figures.tolerance
