# METADATA
# title: Joist marks as measured
# description: The measured place that lies furthest from its mark in the layout, against the tolerance for the length laid out.
# custom:
#   id: layout/joist-marks
#   aliases: []
#   consequence: workmanship
#   why: Marks pulled from different ends or added up from rounded bays drift, and the joists stand askew between ledger and rim.
#   applies_when: joists were measured along a line
#   figures:
#     short: {type: length, relation: at most, about: greatest distance from the mark over a short length}
#     short_under: {type: length, about: length below which a layout is short}
#     long: {type: length, relation: at most, about: greatest distance from the mark over a longer length}
#   values: {n: count, on: part, missing: count, extra: count}
#   messages:
#     outside: "mark {n} on the {on} is off its place by {have}, the limit is {limit}"
#     within: "marks on the {on} are within {have} of their places"
#     few: "the {on} has {missing} marks fewer than the layout"
#     many: "the {on} has {extra} marks more than the layout"
#   mend: ["all marks pulled again from one end, the same end on ledger and rim"]
#   tries: []
package checks.layout.joist_marks

import data.figures.layout.joist_marks as figures

applies if count(input.joist_marks) > 0

_whole[i] := marks if {
	some i, marks in input.joist_marks
	marks.missing == 0
}

_band[i] := ["short", figures.short] if {
	some i, marks in _whole
	marks.length.value < figures.short_under
}

_band[i] := ["long", figures.long] if {
	some i, marks in _whole
	marks.length.value >= figures.short_under
}

readings contains {
	"at": marks.worst.at, "have": marks.worst.value,
	"figure": figure, "limit": limit,
	"outside": marks.worst.value > limit,
	"n": marks.worst_n, "on": marks.on,
} if {
	some i, marks in _whole
	[figure, limit] := _band[i]
}

readings contains {
	"at": marks.at, "figure": "long", "outside": true,
	"say": "few", "missing": marks.missing, "on": marks.on,
} if {
	some marks in input.joist_marks
	marks.missing > 0
}

readings contains {
	"at": marks.at, "figure": "long", "outside": true,
	"say": "many", "extra": abs(marks.missing), "on": marks.on,
} if {
	some marks in input.joist_marks
	marks.missing < 0
}

unknown contains {"at": marks.at, "needs": "platforms[].joists.spacing"} if {
	some marks in _whole
	not marks.worst
}
