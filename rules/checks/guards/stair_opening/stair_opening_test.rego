package checks.guards.stair_opening_test

import data.checks.guards.stair_opening

_figures := {"guards": {"stair_opening": {"sphere": 111125000}, "stair_required": {"trigger": 762000000}}}

_limit := 111125000 # 4-3/8 in, 111.125 mm

_steps := [
	396875, # 1/64 in
	10000, # 0.01 mm
]

_said(subjects) := result if {
	result := {"readings": stair_opening.readings, "unknown": stair_opening.unknown, "exempt": stair_opening.exempt} with input as {"stair_guards": subjects}
		with data.figures as _figures
}

_subject(n, value) := object.union(_bare(n), {"opening": {"value": value, "at": [_place(n)]}})

_bare(n) := {"at": [sprintf("/stairs/%d/guard", [n])], "stair": "ST1", "present": true}

_place(n) := sprintf("/stairs/%d/guard/opening", [n])

_reading(n, value, outside) := {
	"at": [_place(n)], "have": value,
	"figure": "sphere", "limit": _limit,
	"outside": outside,
}

test_beyond_the_limit_is_outside if {
	every step in _steps {
		_said([_subject(0, _limit + step)]) == {"readings": {_reading(0, _limit + step, true)}, "unknown": set(), "exempt": set()}
	}
}

test_at_the_limit_is_outside if {
	_said([_subject(0, _limit)]) == {"readings": {_reading(0, _limit, true)}, "unknown": set(), "exempt": set()}
}

test_inside_the_limit_is_within if {
	every step in _steps {
		_said([_subject(0, _limit - step)]) == {"readings": {_reading(0, _limit - step, false)}, "unknown": set(), "exempt": set()}
	}
}

test_missing_value_is_not_shown if {
	_said([_bare(0)]) == {"readings": set(), "unknown": {{"at": [sprintf("/stairs/%d/guard", [0])], "needs": "stairs[].guard.opening"}}, "exempt": set()}
}

test_one_bad_of_two if {
	_said([_subject(0, _limit - 10000), _subject(1, _limit + 10000)]) == {
		"readings": {_reading(0, _limit - 10000, false), _reading(1, _limit + 10000, true)},
		"unknown": set(), "exempt": set(),
	}
}

test_no_subject_no_check if {
	not stair_opening.applies with input as {"stair_guards": []}
	stair_opening.applies with input as {"stair_guards": [_bare(0)]}
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
	_said([high]) == {"readings": {_reading(0, _limit, true)}, "unknown": set(), "exempt": set()}
}

test_stair_without_a_guard_is_left_to_another_check if {
	none := {"at": ["/stairs/0"], "stair": "ST1", "present": false, "drop": {"value": 1, "at": ["/stairs/0/total_rise"]}}
	_said([none]) == {"readings": set(), "unknown": set(), "exempt": {{"at": ["/stairs/0"], "because": "none"}}}
}

test_widest_opening_is_within_at_the_limit if {
	every value, outside in {100000000: false, 100010000: true} {
		stair_opening.readings == {{
			"at": [_place(0)], "have": value, "figure": "widest", "limit": 100000000,
			"outside": outside, "say": "widest",
		}} with input.stair_guards as [_subject(0, value)]
			with data.figures as {"guards": {"stair_opening": {"widest": 100000000}, "stair_required": {"from": 1000000000}}}
	}
}

test_stair_guard_from_a_height_on if {
	every drop, because in {999990000: {"low_from"}, 1000000000: set()} {
		{row.because | some row in stair_opening.exempt} == because with input.stair_guards as [object.union(_subject(0, 1), {"drop": {"value": drop, "at": ["/d"]}})]
			with data.figures as {"guards": {"stair_opening": {"sphere": 100000000}, "stair_required": {"from": 1000000000}}}
	}
}
