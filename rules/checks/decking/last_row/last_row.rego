# METADATA
# title: Last row of deck boards
# description: The width of the last row as a share of a whole board.
# custom:
#   id: decking/last-row
#   aliases: []
#   consequence: workmanship
#   why: A sliver at the edge splits at its screws, and it is the first thing that people see.
#   applies_when: decking is described
#   figures:
#     min_share: {type: ratio, unit: of a board, relation: at least, about: least share of a board that the last row keeps}
#   values: {rip: length, board: length}
#   messages:
#     outside: "last row comes out {rip} wide, at least {limit} of a {board} board is usual"
#     within: "last row comes out {rip} wide"
#   exempt:
#     angled: "the boards do not run square across the joists"
#   mend:
#     - "a slightly wider or narrower gap"
#     - "the first and the last board both trimmed"
#     - "a frame a little deeper or shallower"
#   tries: [common-board-gap, board-gap]
package checks.decking.last_row

import data.figures.decking.last_row as figures

applies if count(input.decking) > 0

_square[i] := boards if {
	some i, boards in input.decking
	boards.board_angle.value == 0
}

readings contains {
	"at": boards.last_rip.at,
	"have": {"rise": boards.last_rip.value, "run": boards.board_width.value},
	"figure": "min_share", "limit": figures.min_share,
	"outside": (boards.last_rip.value * figures.min_share.run) < (boards.board_width.value * figures.min_share.rise),
	"rip": boards.last_rip.value, "board": boards.board_width.value,
} if {
	some boards in _square
}

unknown contains {"at": boards.at, "needs": "platforms[].decking.board_angle"} if {
	some boards in input.decking
	not boards.board_angle
}

unknown contains {"at": boards.at, "needs": "platforms[].decking.board_width"} if {
	some boards in _square
	not boards.board_width
}

unknown contains {"at": boards.at, "needs": need} if {
	some boards in _square
	some need in boards.row_fields
	need != "platforms[].decking.board_width"
}

exempt contains {"at": boards.board_angle.at, "because": "angled"} if {
	some boards in input.decking
	boards.board_angle.value != 0
}
