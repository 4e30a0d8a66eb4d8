package checks.guards.stair_height_test

import data.checks.guards.stair_height

_figures := {"guards": {"stair_height": {"min": 863600000}, "stair_required": {"trigger": 762000000}}}

_limit := 863600000 # 34 in, 863.6 mm

_steps := [
	396875, # 1/64 in
	10000, # 0.01 mm
]

_said(subjects) := result if {
	result := {"readings": stair_height.readings, "unknown": stair_height.unknown, "exempt": stair_height.exempt} with input as {"stair_guards": subjects}
		with data.figures as _figures
}

_subject(n, value) := object.union(_bare(n), {"height": {"value": value, "at": [_place(n)]}})

_bare(n) := {"at": [sprintf("/stairs/%d/guard", [n])], "stair": "ST1", "present": true}

_place(n) := sprintf("/stairs/%d/guard/height", [n])

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
	_said([_bare(0)]) == {"readings": set(), "unknown": {{"at": [sprintf("/stairs/%d/guard", [0])], "needs": "stairs[].guard.height"}}, "exempt": set()}
}

test_one_bad_of_two if {
	_said([_subject(0, _limit + 10000), _subject(1, _limit - 10000)]) == {
		"readings": {_reading(0, _limit + 10000, false), _reading(1, _limit - 10000, true)},
		"unknown": set(), "exempt": set(),
	}
}

test_no_subject_no_check if {
	not stair_height.applies with input as {"stair_guards": []}
	stair_height.applies with input as {"stair_guards": [_bare(0)]}
	_said([]) == {"readings": set(), "unknown": set(), "exempt": set()}
}

test_low_stair_is_left_alone if {
	low := object.union(_subject(0, 1), {"drop": {"value": 762000000, "at": ["/stairs/0/total_rise"]}})
	_said([low]) == {
		"readings": set(), "unknown": set(),
		"exempt": {{"at": ["/stairs/0/guard"], "because": "low", "drop": 762000000, "trigger": 762000000}},
	}
}

test_stair_above_the_trigger_is_read if {
	high := object.union(_subject(0, _limit), {"drop": {"value": 762396875, "at": ["/stairs/0/total_rise"]}})
	_said([high]) == {"readings": {_reading(0, _limit, false)}, "unknown": set(), "exempt": set()}
}

test_stair_without_a_guard_is_left_to_another_check if {
	none := {"at": ["/stairs/0"], "stair": "ST1", "present": false, "drop": {"value": 1, "at": ["/stairs/0/total_rise"]}}
	_said([none]) == {"readings": set(), "unknown": set(), "exempt": {{"at": ["/stairs/0"], "because": "none"}}}
}

_by_drop := {"guards": {
	"stair_height": {"min": 900000000, "low_up_to": 12000000000, "min_high": 1100000000},
	"stair_required": {"trigger": 1000000000},
}}

_over(drop) := {"drop": {"value": drop, "at": ["/stairs/0/total_rise"]}}

_high := {"say": "high", "upto": 12000000000}

test_height_by_drop[name] if {
	some name, case in {
		"at 12 m": [_over(12000000000), 900000000, "min", 900000000, false, {}],
		"at 12 m, low": [_over(12000000000), 899990000, "min", 900000000, true, {}],
		"above 12 m": [_over(12000010000), 1100000000, "min_high", 1100000000, false, _high],
		"above 12 m, low": [_over(12000010000), 1099990000, "min_high", 1100000000, true, _high],
		"1/64 in above 12 m": [_over(12000396875), 1099603125, "min_high", 1100000000, true, _high],
		"too low anywhere": [{}, 899990000, "min", 900000000, true, {}],
		"high enough anywhere": [{}, 1100000000, "min_high", 1100000000, false, _high],
	}
	stair_height.readings == {object.union(
		{"at": [_place(0)], "have": case[1], "figure": case[2], "limit": case[3], "outside": case[4]},
		case[5],
	)} with input.stair_guards as [object.union(_subject(0, case[1]), case[0])]
		with input.stairs as [{"at": ["/stairs/0"]}]
		with data.figures as _by_drop
}

test_drop_would_decide[height] if {
	some height in [900000000, 1099990000]
	stair_height.unknown == {{"at": ["/stairs/0/guard"], "needs": "stairs[].total_rise"}} with input.stair_guards as [_subject(0, height)]
		with input.stairs as [{"at": ["/stairs/0"]}]
		with data.figures as _by_drop
	count(stair_height.readings) == 0 with input.stair_guards as [_subject(0, height)]
		with input.stairs as [{"at": ["/stairs/0"]}]
		with data.figures as _by_drop
}
