# METADATA
# title: Headroom
# description: The clear height above the line of the nosings, against the set's limit. A stair that is open to the sky is left alone.
# custom:
#   id: stairs/headroom
#   aliases: []
#   consequence: life safety
#   why: Someone who hits a beam on a stair falls down the stair.
#   applies_when: a stair is described
#   figures:
#     min: {type: length, relation: at least, about: least clear height above the line of the nosings}
#   messages:
#     outside: "headroom is {have}, the limit is {limit}"
#   exempt:
#     sky: "the stair is open to the sky"
#   mend:
#     - "start the stair further out from what is above it"
#   tries: []
package checks.stairs.headroom

import data.figures.stairs.headroom as figures

applies if count(input.stairs) > 0

readings contains {
	"at": stair.headroom.at, "have": stair.headroom.value,
	"figure": "min", "limit": figures.min,
	"outside": stair.headroom.value < figures.min,
} if {
	some stair in input.stairs
}

exempt contains {"at": stair.at, "because": "sky"} if {
	some stair in input.stairs
	stair.open_to_sky
}

unknown contains {"at": stair.at, "needs": "stairs[].headroom"} if {
	some stair in input.stairs
	not stair.open_to_sky
	not stair.headroom
}
