# METADATA
# title: Rounding of nosings
# description: The radius or bevel of the front edge of treads, against the least and the greatest that the set gives.
# custom:
#   id: stairs/nosing-radius
#   aliases: []
#   consequence: life safety
#   why: A sharp edge catches the foot and cuts who falls on it, and a very round one takes away from the tread.
#   applies_when: a stair is described
#   figures:
#     min: {type: length, relation: at least, about: least radius or bevel of the front edge}
#     max: {type: length, relation: at most, about: greatest radius or bevel of the front edge}
#   messages:
#     outside: "the front edge of the treads is rounded by {have}, the limit is {limit}"
#   exempt: {}
#   mend:
#     - "ease the edge again"
#   tries: [sixteenths]
package checks.stairs.nosing_radius

import data.figures.stairs.nosing_radius as figures

applies if count(input.stairs) > 0

readings contains {
	"at": stair.nosing_radius.at, "have": stair.nosing_radius.value,
	"figure": "min", "limit": figures.min,
	"outside": stair.nosing_radius.value < figures.min,
} if {
	some stair in input.stairs
}

readings contains {
	"at": stair.nosing_radius.at, "have": stair.nosing_radius.value,
	"figure": "max", "limit": figures.max,
	"outside": stair.nosing_radius.value > figures.max,
} if {
	some stair in input.stairs
}

unknown contains {"at": stair.at, "needs": "stairs[].nosing_radius"} if {
	some stair in input.stairs
	not stair.nosing_radius
}
