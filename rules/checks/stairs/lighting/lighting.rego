# METADATA
# title: Light on the stair
# description: Whether the stair has an artificial light at its top, where the set asks for one.
# custom:
#   id: stairs/lighting
#   aliases: []
#   consequence: life safety
#   why: The first step down is the one that is missed in the dark.
#   applies_when: a stair is described
#   figures:
#     needed: {type: flag, relation: exactly, about: whether a light is asked for}
#   messages:
#     outside: "the stair has no light at its top"
#     within: "the stair has a light at its top"
#   exempt:
#     not_asked: "this set asks for no light on the stair"
#   mend:
#     - "a light at the top landing, switched from inside the house or by itself"
#   tries: [yes-no]
package checks.stairs.lighting

import data.figures.stairs.lighting as figures

applies if count(input.stairs) > 0

readings contains {
	"at": stair.lighting.at, "have": stair.lighting.value,
	"figure": "needed", "limit": figures.needed,
	"outside": stair.lighting.value == false,
} if {
	figures.needed
	some stair in input.stairs
}

exempt contains {"at": stair.at, "because": "not_asked"} if {
	not figures.needed
	some stair in input.stairs
}

unknown contains {"at": stair.at, "needs": "stairs[].lighting"} if {
	figures.needed
	some stair in input.stairs
	not stair.lighting
}
