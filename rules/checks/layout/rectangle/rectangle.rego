# METADATA
# title: Measured rectangle
# description: Opposite sides of a measured rectangle first, then its diagonals in two bands, and the sixth measure against the one that the other five give.
# custom:
#   id: layout/rectangle
#   aliases: []
#   consequence: workmanship
#   why: Equal diagonals alone prove nothing, since a frame wider at one end has them too.
#   applies_when: a rectangle was measured
#   figures:
#     short: {type: length, relation: at most, about: greatest difference of opposite sides on a short frame}
#     short_under: {type: length, about: length below which a frame is short}
#     long: {type: length, relation: at most, about: greatest difference of opposite sides on a longer frame}
#     miss: {type: length, relation: at most, about: greatest miss of the sixth measure}
#     target: {type: length, relation: at most, about: "working target for the difference of the diagonals, over the target's length"}
#     target_over: {type: length, about: length of diagonal that the target is given for}
#     outer: {type: length, relation: at most, about: "outer limit for the difference of the diagonals, over the outer limit's length"}
#     outer_over: {type: length, about: length of diagonal that the outer limit is given for}
#   values: {outer: length}
#   messages:
#     outside: "diagonals differ by {have}, outside the outer limit of {limit}"
#     within: "diagonals differ by {have}"
#     between: "diagonals differ by {have}, outside the working target of {limit}, inside the outer limit of {outer}"
#     sides: "opposite sides differ by {have}, the limit is {limit}: make them equal before the diagonals"
#     sides_within: "opposite sides differ by {have}"
#     miss: "the six measures miss closing by {have}, the limit is {limit}: one of them was misread"
#     miss_within: "the six measures close within {have}"
#     impossible: "the sides and the diagonals make no figure: one of them was misread"
#   mend:
#     - "opposite sides made equal first"
#     - "then one side slid along itself until the diagonals agree"
#   tries: []
package checks.layout.rectangle

import data.figures.layout.rectangle as figures

applies if count(input.rectangles) > 0

_band[i] := ["short", figures.short] if {
	some i, frame in input.rectangles
	frame.longest_side.value < figures.short_under
}

_band[i] := ["long", figures.long] if {
	some i, frame in input.rectangles
	frame.longest_side.value >= figures.short_under
}

_missed contains i if {
	some i, frame in input.rectangles
	frame.diagonal_difference.value * figures.target_over > frame.diagonal.value * figures.target
}

_out contains i if {
	some i, frame in input.rectangles
	frame.diagonal_difference.value * figures.outer_over > frame.diagonal.value * figures.outer
}

_say[i] := "within" if {
	some i, _ in input.rectangles
	not i in _missed
}

_say[i] := "between" if some i in _missed

_outer[i] := floor((frame.diagonal.value * figures.outer) / figures.outer_over) if some i, frame in input.rectangles

readings contains {
	"at": frame.side_difference.at, "have": frame.side_difference.value,
	"figure": figure, "limit": limit,
	"outside": frame.side_difference.value > limit,
	"say": {true: "sides", false: "sides_within"}[frame.side_difference.value > limit],
} if {
	some i, frame in input.rectangles
	[figure, limit] := _band[i]
}

readings contains {
	"at": frame.diagonal_difference.at, "have": frame.diagonal_difference.value,
	"figure": "target", "limit": floor((frame.diagonal.value * figures.target) / figures.target_over),
	"outside": i in _missed, "say": _say[i], "outer": _outer[i],
} if {
	some i, frame in input.rectangles
	not i in _out
}

readings contains {
	"at": frame.diagonal_difference.at, "have": frame.diagonal_difference.value,
	"figure": "outer", "limit": _outer[i],
	"outside": i in _out,
} if {
	some i, frame in input.rectangles
}

readings contains {
	"at": frame.miss.at, "have": frame.miss.value,
	"figure": "miss", "limit": figures.miss,
	"outside": frame.miss.value > figures.miss,
	"say": {true: "miss", false: "miss_within"}[frame.miss.value > figures.miss],
} if {
	some frame in input.rectangles
}

readings contains {"at": frame.at, "figure": "miss", "outside": true, "say": "impossible"} if {
	some frame in input.rectangles
	frame.side_difference
	frame.diagonal_difference
	not frame.miss
}

unknown contains {"at": frame.at, "needs": "measured[].sides"} if {
	some frame in input.rectangles
	not frame.side_difference
}

unknown contains {"at": frame.at, "needs": "measured[].diagonals"} if {
	some frame in input.rectangles
	not frame.diagonal_difference
}
