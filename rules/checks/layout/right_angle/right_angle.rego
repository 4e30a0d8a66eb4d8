# METADATA
# title: Right angle by triangle
# description: The diagonal of a measured corner triangle, against the diagonal of a square corner with the same legs; in two bands, a working target and an outer limit.
# custom:
#   id: layout/right-angle
#   aliases: []
#   consequence: workmanship
#   why: A corner out of square goes on into every joist, board and stair that is laid out from it.
#   applies_when: a corner triangle was measured
#   figures:
#     target: {type: length, relation: at most, about: "working target for the diagonal, over the target's length"}
#     target_over: {type: length, about: length of diagonal that the target is given for}
#     outer: {type: length, relation: at most, about: "outer limit for the diagonal, over the outer limit's length"}
#     outer_over: {type: length, about: length of diagonal that the outer limit is given for}
#   values: {square: length, diagonal: length, outer: length}
#   messages:
#     outside: "diagonal is {diagonal}, off {square} by {have}, outside the outer limit of {limit}"
#     within: "diagonal is {diagonal}, off {square} by {have}"
#     between: "diagonal is {diagonal}, off {square} by {have}, outside the working target of {limit}, inside the outer limit of {outer}"
#     impossible: "the two legs and the diagonal make no triangle: one of them was misread"
#   mend: ["the far corner moved along the rim until the diagonal measures what it should"]
#   tries: []
package checks.layout.right_angle

import data.figures.layout.right_angle as figures

applies if count(input.triangles) > 0

_sound[i] := triangle if {
	some i, triangle in input.triangles
	triangle.square
	triangle.deviation
}

_missed contains i if {
	some i, triangle in _sound
	triangle.deviation.value * figures.target_over > triangle.square.value * figures.target
}

_out contains i if {
	some i, triangle in _sound
	triangle.deviation.value * figures.outer_over > triangle.square.value * figures.outer
}

_say[i] := "within" if {
	some i, _ in _sound
	not i in _missed
}

_say[i] := "between" if some i in _missed

_outer[i] := floor((triangle.square.value * figures.outer) / figures.outer_over) if some i, triangle in _sound

readings contains {
	"at": triangle.diagonal.at, "have": triangle.deviation.value,
	"figure": "target", "limit": floor((triangle.square.value * figures.target) / figures.target_over),
	"outside": i in _missed, "say": _say[i],
	"square": triangle.square.value, "diagonal": triangle.diagonal.value, "outer": _outer[i],
} if {
	some i, triangle in _sound
	not i in _out
}

readings contains {
	"at": triangle.diagonal.at, "have": triangle.deviation.value,
	"figure": "outer", "limit": _outer[i],
	"outside": i in _out,
	"square": triangle.square.value, "diagonal": triangle.diagonal.value,
} if {
	some i, triangle in _sound
}

_impossible[i] := triangle if {
	some i, triangle in input.triangles
	triangle.diagonal
	not triangle.possible
}

readings contains {"at": triangle.diagonal.at, "figure": "outer", "outside": true, "say": "impossible"} if {
	some triangle in _impossible
}

unknown contains {"at": triangle.at, "needs": "measured[].diagonal"} if {
	some triangle in input.triangles
	not triangle.diagonal
}

unknown contains {"at": triangle.at, "needs": "measured[].legs"} if {
	some i, triangle in input.triangles
	not triangle.square
	not _impossible[i]
}
