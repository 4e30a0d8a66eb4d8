package checks.egress.window_clear_height_test

import data.checks.egress.window_clear_height

_figures := {"egress": {"window_clear_height": {"min": 914400000}}}

_limit := 914400000 # 36 in, 914.4 mm

_steps := [
	396875, # 1/64 in
	10000, # 0.01 mm
]

_said(subjects) := result if {
	result := {"readings": window_clear_height.readings, "unknown": window_clear_height.unknown, "exempt": window_clear_height.exempt} with input as {"windows": subjects}
		with data.figures as _figures
}

_subject(n, value) := object.union(_bare(n), {"path_height": {"value": value, "at": [_place(n)]}})

_bare(n) := {"at": [sprintf("/house/openings/%d", [n])], "egress": {"value": true, "at": ["/house/openings/0/egress"]}}

_place(n) := sprintf("/house/openings/%d/path_height", [n])

_reading(n, value, outside) := {
	"at": [_place(n)], "have": value,
	"figure": "min", "limit": _limit,
	"outside": outside,
}

test_beyond_the_limit_is_outside if {
	every step in _steps {
		_said([_subject(0, _limit - step)]) == {"readings": {_reading(0, _limit - step, true)}, "unknown": set(), "exempt": set()}
	}
}

test_at_the_limit_is_within if {
	_said([_subject(0, _limit)]) == {"readings": {_reading(0, _limit, false)}, "unknown": set(), "exempt": set()}
}

test_inside_the_limit_is_within if {
	every step in _steps {
		_said([_subject(0, _limit + step)]) == {"readings": {_reading(0, _limit + step, false)}, "unknown": set(), "exempt": set()}
	}
}

test_missing_value_is_not_shown if {
	_said([_bare(0)]) == {"readings": set(), "unknown": {{"at": [sprintf("/house/openings/%d", [0])], "needs": "house.openings[].clear_path_height"}}, "exempt": set()}
}

test_one_bad_of_two if {
	_said([_subject(0, _limit + 10000), _subject(1, _limit - 10000)]) == {
		"readings": {_reading(0, _limit + 10000, false), _reading(1, _limit - 10000, true)},
		"unknown": set(), "exempt": set(),
	}
}

test_no_subject_no_check if {
	not window_clear_height.applies with input as {"windows": []}
	window_clear_height.applies with input as {"windows": [_bare(0)]}
	_said([]) == {"readings": set(), "unknown": set(), "exempt": set()}
}

test_other_window_is_left_alone if {
	plain := {"at": ["/house/openings/0"], "egress": {"value": false, "at": ["/house/openings/0/egress"]}}
	_said([plain, object.union(plain, {"path_height": {"value": 1, "at": ["/x"]}})]) == {
		"readings": set(), "unknown": set(),
		"exempt": {{"at": ["/house/openings/0/egress"], "because": "plain"}},
	}
}

test_window_of_unknown_kind_is_not_shown if {
	_said([{"at": ["/house/openings/0"], "path_height": {"value": 1, "at": ["/x"]}}]) == {
		"readings": set(), "exempt": set(),
		"unknown": {{"at": ["/house/openings/0"], "needs": "house.openings[].egress"}},
	}
}
