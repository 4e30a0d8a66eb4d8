package checks.decking.last_row_test

import data.checks.decking.last_row

_board := 139700000 # 5-1/2 in

_half := 69850000 # 2-3/4 in, 69.85 mm

_said(boards) := result if {
	result := {"readings": last_row.readings, "unknown": last_row.unknown, "exempt": last_row.exempt} with input as {"decking": boards}
		with data.figures as {"decking": {"last_row": {"min_share": {"rise": 1, "run": 2}}}}
}

_at(n, field) := [concat("/", [_place(n), field])]

_place(n) := sprintf("/platforms/%d/decking", [n])

_bare(n) := {"at": [_place(n)], "platform": "A", "picture_frame": false}

_boards(n, rip) := object.union(_bare(n), {
	"board_angle": {"value": 0, "at": _at(n, "board_angle")},
	"board_width": {"value": _board, "at": _at(n, "board_width")},
	"gap": {"value": 3175000, "at": _at(n, "gap")},
	"last_rip": {"value": rip, "at": _at(n, "gap")},
})

_reading(n, rip, outside) := {
	"at": _at(n, "gap"), "have": {"rise": rip, "run": _board},
	"figure": "min_share", "limit": {"rise": 1, "run": 2}, "outside": outside,
	"rip": rip, "board": _board,
}

_asked(needs) := {{"at": [_place(0)], "needs": need} | some need in needs}

test_last_row_against_half_a_board if {
	every case in [[-396875, true], [-10000, true], [-1, true], [0, false], [396875, false], [10000, false]] {
		rip := _half + case[0]
		_said([_boards(0, rip)]) == {"readings": {_reading(0, rip, case[1])}, "unknown": set(), "exempt": set()}
	}
}

test_boards_at_an_angle_are_left_alone if {
	angled := object.union(_bare(0), {"board_angle": {"value": 45000000, "at": _at(0, "board_angle")}})
	_said([angled]) == {
		"readings": set(), "unknown": set(),
		"exempt": {{"at": _at(0, "board_angle"), "because": "angled"}},
	}
}

test_missing_values_are_not_shown if {
	_said([_bare(0)]) == {"readings": set(), "exempt": set(), "unknown": _asked({"platforms[].decking.board_angle"})}
	square := object.remove(_boards(0, 1), ["last_rip"])
	_said([object.union(square, {"row_fields": ["platforms[].decking.gap"]})]).unknown == _asked({"platforms[].decking.gap"})
	bare := object.union(object.remove(square, ["board_width"]), {"row_fields": ["platforms[].decking.board_width", "platforms[].measured_to"]})
	_said([bare]) == {"readings": set(), "exempt": set(), "unknown": _asked({"platforms[].decking.board_width", "platforms[].measured_to"})}
	stated := object.remove(_boards(0, _half), ["board_width"])
	_said([stated]).unknown == _asked({"platforms[].decking.board_width"})
}

test_stated_row_needs_no_gap if {
	_said([object.remove(_boards(0, _half), ["gap"])]) == {"readings": {_reading(0, _half, false)}, "unknown": set(), "exempt": set()}
}

test_one_bad_of_two if {
	_said([_boards(0, _half), _boards(1, 1)]) == {
		"readings": {_reading(0, _half, false), _reading(1, 1, true)},
		"unknown": set(), "exempt": set(),
	}
}

test_no_subject_no_check if {
	not last_row.applies with input as {"decking": []}
	last_row.applies with input as {"decking": [_bare(0)]}
	_said([]) == {"readings": set(), "unknown": set(), "exempt": set()}
}
