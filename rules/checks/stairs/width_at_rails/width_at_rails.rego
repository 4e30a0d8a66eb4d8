# METADATA
# title: Stair width at the handrails
# description: The clear width at and below the handrails, against the limit for one or for two of them.
# custom:
#   id: stairs/width-at-rails
#   aliases: []
#   consequence: life safety
#   why: Handrails stand out into the stair. What is left between them is the width that people can use.
#   applies_when: a stair is described
#   figures:
#     one_rail: {type: length, relation: at least, about: least clear width at one handrail}
#     two_rails: {type: length, relation: at least, about: least clear width between two handrails}
#   values: {sides: count}
#   messages:
#     outside: "the stair is {have} wide at the handrails, with {sides} of them the limit is {limit}"
#   exempt:
#     no_rail: "no handrail is shown"
#   mend:
#     - "brackets or a profile that stand out less, or a wider stair"
#   tries: [halves]
package checks.stairs.width_at_rails

import data.figures.stairs.width_at_rails as figures

applies if count(input.stairs) > 0

_figure := {1: "one_rail", 2: "two_rails"}

readings contains {
	"at": stair.width_at_rails.at, "have": stair.width_at_rails.value,
	"figure": figure, "limit": figures[figure],
	"outside": stair.width_at_rails.value < figures[figure],
	"sides": stair.rail_sides.value,
} if {
	some stair in input.stairs
	figure := _figure[stair.rail_sides.value]
}

# Handrails stand in the order of their stairs, one entry for each.
_bare contains i if {
	some i, rail in input.handrails
	not rail.present
}

exempt contains {"at": stair.at, "because": "no_rail"} if {
	some i, stair in input.stairs
	i in _bare
}

unknown contains {"at": stair.at, "needs": "stairs[].handrail.sides"} if {
	some i, stair in input.stairs
	not i in _bare
	not stair.rail_sides
}

unknown contains {"at": stair.at, "needs": "stairs[].clear_width_at_handrail"} if {
	some stair in input.stairs
	stair.rail_sides.value > 0
	not stair.width_at_rails
}
