# METADATA
# title: Winders
# description: The depth of treads that narrow to one side, at the walkline and where they are narrowest, against the set's limits.
# custom:
#   id: stairs/winders
#   aliases: []
#   consequence: life safety
#   why: Where a tread narrows, the foot finds less of it on the inside of the turn, and people cut corners.
#   applies_when: a stair has winders
#   figures:
#     walkline: {type: length, relation: at least, about: least depth at the walkline}
#     narrowest: {type: length, relation: at least, about: least depth at any point within the clear width}
#   messages:
#     outside: "winders are {have} deep where they are narrowest, the limit is {limit}"
#     within: "winders are {have} deep where they are narrowest, the limit is {limit}"
#     walkline: "winders are {have} deep at the walkline, the limit is {limit}"
#   mend:
#     - "fewer winders in the turn, or a landing in their place"
#   tries: [quarters]
package checks.stairs.winders

import data.figures.stairs.winders as figures

applies if count(_winding) > 0

_winding contains stair if {
	some stair in input.stairs
	stair.winders
}

readings contains {
	"at": stair.winder_at_walkline.at, "have": stair.winder_at_walkline.value,
	"figure": "walkline", "limit": figures.walkline,
	"outside": stair.winder_at_walkline.value < figures.walkline, "say": "walkline",
} if {
	some stair in _winding
}

readings contains {
	"at": stair.winder_narrowest.at, "have": stair.winder_narrowest.value,
	"figure": "narrowest", "limit": figures.narrowest,
	"outside": stair.winder_narrowest.value < figures.narrowest,
} if {
	some stair in _winding
}

unknown contains {"at": stair.at, "needs": "stairs[].winders.tread_depth_at_walkline"} if {
	some stair in _winding
	not stair.winder_at_walkline
}

unknown contains {"at": stair.at, "needs": "stairs[].winders.narrowest_tread_depth"} if {
	some stair in _winding
	not stair.winder_narrowest
}
