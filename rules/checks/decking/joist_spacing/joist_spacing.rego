# METADATA
# title: Joist spacing under the decking
# description: The spacing of the joists, against what boards of this thickness, laid this way, reach across; boards other than wood against their own listing.
# custom:
#   id: decking/joist-spacing
#   aliases: []
#   consequence: structure
#   why: Boards laid at an angle reach further from joist to joist, and a thin one sags or breaks under a foot.
#   applies_when: decking is described
#   figures:
#     spacing: {type: table, optional: true, value: length, keys: [thickness, lay, reach], relation: at most, about: greatest joist spacing under wood boards}
#     by_wood: {type: table, optional: true, value: length, keys: [wood, thickness], relation: at most, about: "greatest joist spacing by the wood of the boards, given instead"}
#     woods: {type: groups, optional: true, about: species that share the rows of that table}
#     max_angle: {type: angle, optional: true, relation: at most, about: "greatest angle of the boards away from square; where none is given, boards lie square"}
#     multiple_from: {type: count, optional: true, about: joists on which a board must rest for the multiple-span column}
#     cap: {type: length, relation: at most, about: greatest joist spacing under any decking}
#   values: {angle: angle, thickness: length, listed: length, species: words}
#   messages:
#     outside: "joist spacing is {have}, these boards reach across {limit}"
#     within: "joist spacing is {have}, these boards reach across {limit}"
#     listed: "joist spacing is {have}, the boards are listed for {listed}"
#     cap: "joist spacing is {have}, the boards are listed for {listed} and the limit under any decking is {limit}"
#     beyond_wood: "boards of {species} are outside this table"
#     beyond_angle: "boards lie at {angle} from square, further round than the table goes"
#     beyond_thickness: "boards are {thickness} thick, thinner than the table goes"
#     not_permitted: "boards of {thickness} are not permitted this way"
#   unmended: [beyond_wood]
#   mend:
#     - "joists closer together"
#     - "boards square across the joists, or thicker ones"
#   tries: [joist-spacing, board-angle]
package checks.decking.joist_spacing

import data.figures.decking.joist_spacing as figures

applies if count(input.decking) > 0

_lay[i] := "perpendicular" if {
	some i, boards in input.decking
	boards.board_angle.value == 0
}

_lay[i] := "diagonal" if {
	some i, boards in input.decking
	boards.board_angle.value != 0
	abs(boards.board_angle.value) <= figures.max_angle
}

_reach[i] := "any" if {
	some i, _ in input.decking
	not figures.multiple_from
}

_joists[i] := boards.joists_per_board.value if some i, boards in input.decking

_joists[i] := boards.joist_count.value if {
	some i, boards in input.decking
	not boards.joists_per_board
}

_reach[i] := "multiple" if {
	some i, joists in _joists
	joists >= figures.multiple_from
}

_reach[i] := "single" if {
	some i, joists in _joists
	joists < figures.multiple_from
}

# How many joists a board rests on does not matter where both columns say the same.
_reach[i] := "multiple" if {
	some i, boards in _uncounted
	boards.joist_spacing.value > figures.spacing.cells[_row[i]][_lay[i]].multiple
}

_reach[i] := "single" if {
	some i, boards in _uncounted
	boards.joist_spacing.value <= figures.spacing.cells[_row[i]][_lay[i]].single
}

_uncounted[i] := boards if {
	some i, boards in _wood
	not _joists[i]
	figures.multiple_from
}

_wood[i] := boards if {
	some i, boards in input.decking
	boards.material.value == "wood"
}

# The table hangs on how the boards lie, or on their wood.
_figure := "spacing" if figures.spacing

else := "by_wood"

# The next worse row is the one of the next thinner board.
_row[i] := max([k | some k, b in figures[_figure].breaks.thickness; b <= boards.thickness.value]) if {
	some i, boards in _wood
}

_group[i] := min([name |
	some name, list in figures.woods
	lower(boards.lumber.species.value) in list
]) if {
	some i, boards in _wood
}

_cell[i] := [_row[i], _lay[i], _reach[i]] if {
	some i, _ in _wood
	figures.spacing
}

_cell[i] := [_group[i], _row[i]] if {
	some i, _ in _wood
	_lay[i]
}

_limit[i] := figures.spacing.cells[row][lay][reach] if some i, [row, lay, reach] in _cell

_limit[i] := figures.by_wood.cells[group][row] if some i, [group, row] in _cell

_listed[i] := boards.listed_straight if {
	some i, boards in input.decking
	boards.material.value != "wood"
	_lay[i] == "perpendicular"
}

_listed[i] := boards.listed_diagonal if {
	some i, boards in input.decking
	boards.material.value != "wood"
	_lay[i] == "diagonal"
}

readings contains {
	"at": boards.joist_spacing.at, "have": boards.joist_spacing.value,
	"figure": _figure, "limit": _limit[i], "cell": _cell[i],
	"outside": boards.joist_spacing.value > _limit[i],
} if {
	some i, boards in _wood
	is_number(_limit[i])
}

readings contains {
	"at": boards.thickness.at, "figure": _figure, "cell": _cell[i],
	"outside": true, "say": "not_permitted", "thickness": boards.thickness.value,
} if {
	some i, boards in _wood
	is_null(_limit[i])
}

readings contains {
	"at": species.at, "figure": "woods",
	"outside": true, "say": "beyond_wood", "species": species.value,
} if {
	some i, boards in _wood
	figures.woods
	species := boards.lumber.species
	not _group[i]
}

readings contains {
	"at": boards.thickness.at, "figure": _figure,
	"outside": true, "say": "beyond_thickness", "thickness": boards.thickness.value,
} if {
	some i, boards in _wood
	boards.thickness
	not _row[i]
}

readings contains {
	"at": boards.board_angle.at, "have": abs(boards.board_angle.value),
	"figure": "max_angle", "limit": figures.max_angle,
	"outside": true, "say": "beyond_angle", "angle": boards.board_angle.value,
} if {
	some i, boards in input.decking
	boards.board_angle
	not _lay[i]
}

readings contains {
	"at": array.concat(boards.joist_spacing.at, listed.at), "have": boards.joist_spacing.value,
	"figure": "cap", "limit": limit,
	"outside": boards.joist_spacing.value > limit,
	"say": {true: "cap", false: "listed"}[listed.value > figures.cap], "listed": listed.value,
} if {
	some i, listed in _listed
	boards := input.decking[i]
	limit := min([listed.value, figures.cap])
}

readings contains {
	"at": boards.board_angle.at, "figure": _figure,
	"outside": true, "say": "beyond_angle", "angle": boards.board_angle.value,
} if {
	some boards in input.decking
	boards.board_angle.value != 0
	not figures.max_angle
}

_beyond contains i if {
	some i, boards in input.decking
	boards.board_angle
	not _lay[i]
}

_beyond contains i if {
	some i, boards in _wood
	boards.thickness
	not _row[i]
}

_beyond contains i if {
	some i, boards in _wood
	figures.woods
	boards.lumber.species
	not _group[i]
}

_missing[i] contains "platforms[].decking.material" if {
	some i, boards in input.decking
	not boards.material
}

_missing[i] contains "platforms[].decking.board_angle" if {
	some i, boards in input.decking
	not boards.board_angle
}

_missing[i] contains "platforms[].joists.spacing" if {
	some i, boards in input.decking
	not boards.joist_spacing
}

_missing[i] contains "platforms[].decking.thickness" if {
	some i, boards in _wood
	not boards.thickness
}

_missing[i] contains "platforms[].decking.lumber" if {
	some i, boards in _wood
	figures.woods
	not boards.lumber.species
}

_missing[i] contains "platforms[].decking.joists_per_board" if {
	some i, boards in _uncounted
	boards.joist_spacing
	not _reach[i]
}

_missing[i] contains "platforms[].decking.listed_max_spacing" if {
	some i, boards in input.decking
	boards.material.value != "wood"
	_lay[i] == "perpendicular"
	not boards.listed_straight
}

_missing[i] contains "platforms[].decking.listed_max_spacing_diagonal" if {
	some i, boards in input.decking
	boards.material.value != "wood"
	_lay[i] == "diagonal"
	not boards.listed_diagonal
}

unknown contains {"at": input.decking[i].at, "needs": need} if {
	some i, needs in _missing
	not i in _beyond
	some need in needs
}
