# METADATA
# title: Stair width
# description: The clear width of the stair above its handrails, against the set's limit.
# custom:
#   id: stairs/width
#   aliases: []
#   consequence: life safety
#   why: The stair is the way out of the house, and two people must be able to carry a third down it.
#   applies_when: a stair is described
#   figures:
#     min: {type: length, relation: at least, about: least clear width above the handrails}
#   messages:
#     outside: "the stair is {have} wide, the limit is {limit}"
#   exempt: {}
#   mend:
#     - "a wider stair: look at the spacing of the stringers again"
#   tries: [whole-inches]
package checks.stairs.width

import data.figures.stairs.width as figures

applies if count(input.stairs) > 0

readings contains {
	"at": stair.width.at, "have": stair.width.value,
	"figure": "min", "limit": figures.min,
	"outside": stair.width.value < figures.min,
} if {
	some stair in input.stairs
}

unknown contains {"at": stair.at, "needs": "stairs[].width"} if {
	some stair in input.stairs
	not stair.width
}
