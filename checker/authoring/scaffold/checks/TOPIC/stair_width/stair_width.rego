# METADATA
# title: Stair width by its rise
# description: The clear width of a stair, which is to be greater the higher the stair climbs.
# custom:
#   id: TOPIC/stair-width
#   consequence: workmanship
#   why: On a long stair people meet, and a narrow one makes them turn back.
#   applies_when: a stair is described
#   figures:
#     widths: {type: table, value: length, keys: [rise], relation: at least, about: least clear width by the rise of the stair}
#   values: {rise: length}
#   messages:
#     outside: "the stair rises {rise} and is {have} wide, the limit is {limit}"
#     beyond: "the stair rises {rise}, higher than the table of widths goes"
#   mend:
#     - "a wider stair, or a landing that divides it"
package checks.TOPIC.stair_width

import data.figures.TOPIC.stair_width as figures

applies if count(input.stairs) > 0

# The row of the next higher stair is the next worse one.
_row[i] := min([k | some k, rise in figures.widths.breaks.rise; rise >= stair.total_rise.value]) if {
	some i, stair in input.stairs
}

readings contains {
	"at": stair.width.at, "have": stair.width.value,
	"figure": "widths", "limit": limit, "cell": [_row[i]],
	"outside": stair.width.value < limit, "rise": stair.total_rise.value,
} if {
	some i, stair in input.stairs
	limit := figures.widths.cells[_row[i]]
}

readings contains {
	"at": stair.width.at, "have": stair.width.value,
	"figure": "widths", "outside": true, "say": "beyond", "rise": stair.total_rise.value,
} if {
	some i, stair in input.stairs
	not _row[i]
}

unknown contains {"at": stair.at, "needs": "stairs[].width"} if {
	some stair in input.stairs
	not stair.width
}

unknown contains {"at": stair.at, "needs": "stairs[].total_rise"} if {
	some stair in input.stairs
	stair.width
	not stair.total_rise
}
