# METADATA
# title: Slope of treads
# description: The slope that treads are given to shed water, against the set's greatest.
# custom:
#   id: stairs/tread-slope
#   aliases: []
#   consequence: life safety
#   why: A foot slides off a tread that slopes forward, the more so when it is wet.
#   applies_when: a stair is described
#   figures:
#     max: {type: slope, relation: at most, about: greatest slope of a tread in any direction}
#   messages:
#     outside: "treads slope {have}, the limit is {limit}"
#   exempt: {}
#   mend:
#     - "set the treads flatter: a gap between boards sheds water as well"
#   tries: [tread-slope]
package checks.stairs.tread_slope

import data.figures.stairs.tread_slope as figures

applies if count(input.stairs) > 0

# Slopes are compared multiplied out, so that equal ones stay equal.
readings contains {
	"at": stair.tread_slope.at, "have": stair.tread_slope.value,
	"figure": "max", "limit": figures.max,
	"outside": (abs(stair.tread_slope.value.rise) * figures.max.run) > (figures.max.rise * stair.tread_slope.value.run),
} if {
	some stair in input.stairs
}

unknown contains {"at": stair.at, "needs": "stairs[].tread.slope"} if {
	some stair in input.stairs
	not stair.tread_slope
}
