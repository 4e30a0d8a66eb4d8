# METADATA
# title: Number of winders
# description: The treads of a turn that narrow to one side, against the set's greatest for a quarter and for a half turn.
# custom:
#   id: stairs/winder-count
#   aliases: []
#   consequence: life safety
#   why: The more treads share a turn, the narrower each is where people walk.
#   applies_when: a stair has winders
#   figures:
#     quarter: {type: count, unit: [winder, winders], relation: at most, about: greatest number of winders in a quarter turn}
#     half: {type: count, unit: [winder, winders], relation: at most, about: greatest number of winders in a half turn}
#     quarter_turn: {type: angle, relation: at most, about: turn up to which it counts as a quarter}
#   messages:
#     outside: "winders in a quarter turn: {have}, the limit is {limit}"
#     half: "winders in more than a quarter turn: {have}, the limit is {limit}"
#   mend:
#     - "fewer winders in the turn, or a landing in their place"
#   tries: []
package checks.stairs.winder_count

import data.figures.stairs.winder_count as figures

applies if count(_winding) > 0

_winding contains stair if {
	some stair in input.stairs
	stair.winders
}

readings contains {
	"at": stair.winder_count.at, "have": stair.winder_count.value,
	"figure": "quarter", "limit": figures.quarter,
	"outside": stair.winder_count.value > figures.quarter,
} if {
	some stair in _winding
	_kind(stair) == "quarter"
}

readings contains {
	"at": stair.winder_count.at, "have": stair.winder_count.value,
	"figure": "half", "limit": figures.half,
	"outside": stair.winder_count.value > figures.half,
	"say": "half",
} if {
	some stair in _winding
	_kind(stair) == "half"
}

# The turn matters only to a number of winders between the two limits.
_kind(stair) := "quarter" if {
	stair.winder_turn.value <= figures.quarter_turn
} else := "half" if {
	stair.winder_turn.value > figures.quarter_turn
} else := "quarter" if {
	stair.winder_count.value <= figures.quarter
} else := "half" if {
	stair.winder_count.value > figures.half
}

unknown contains {"at": stair.at, "needs": "stairs[].winders.count"} if {
	some stair in _winding
	not stair.winder_count
}

unknown contains {"at": stair.at, "needs": "stairs[].winders.turn"} if {
	some stair in _winding
	stair.winder_count
	not _kind(stair)
}
