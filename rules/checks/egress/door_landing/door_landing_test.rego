package checks.egress.door_landing_test

import data.checks.egress.door_landing

_figures := {"egress": {"door_landing": {"min": 914400000}}}

_limit := 914400000 # 36 in, 914.4 mm

_steps := [
	396875, # 1/64 in
	10000, # 0.01 mm
]

_said(subjects) := result if {
	result := {"readings": door_landing.readings, "unknown": door_landing.unknown} with input as {"doors": subjects}
		with data.figures as _figures
}

_subject(n, value) := object.union(_bare(n), {"landing_depth": {"value": value, "at": [_place(n)]}})

_bare(n) := {"at": [sprintf("/house/openings/%d", [n])]}

_place(n) := sprintf("/house/openings/%d/landing_depth", [n])

_reading(n, value, outside) := {
	"at": [_place(n)], "have": value,
	"figure": "min", "limit": _limit,
	"outside": outside,
}

test_beyond_the_limit_is_outside if {
	every step in _steps {
		_said([_subject(0, _limit - step)]) == {"readings": {_reading(0, _limit - step, true)}, "unknown": set()}
	}
}

test_at_the_limit_is_within if {
	_said([_subject(0, _limit)]) == {"readings": {_reading(0, _limit, false)}, "unknown": set()}
}

test_inside_the_limit_is_within if {
	every step in _steps {
		_said([_subject(0, _limit + step)]) == {"readings": {_reading(0, _limit + step, false)}, "unknown": set()}
	}
}

test_missing_value_is_not_shown if {
	_said([_bare(0)]) == {"readings": set(), "unknown": {{"at": [sprintf("/house/openings/%d", [0])], "needs": "house.openings[].landing_depth"}}}
}

test_one_bad_of_two if {
	_said([_subject(0, _limit + 10000), _subject(1, _limit - 10000)]) == {
		"readings": {_reading(0, _limit + 10000, false), _reading(1, _limit - 10000, true)},
		"unknown": set(),
	}
}

test_no_subject_no_check if {
	not door_landing.applies with input as {"doors": []}
	door_landing.applies with input as {"doors": [_bare(0)]}
	_said([]) == {"readings": set(), "unknown": set()}
}

_high(value, facts) := object.union_n([_subject(0, value), facts])

_above(value) := {"above_grade": {"value": value, "at": ["/platforms/0/surface_above_grade"]}}

_all := {"readings": door_landing.readings, "unknown": door_landing.unknown, "exempt": door_landing.exempt}

test_low_threshold[name] if {
	spared := {{"at": ["/house/openings/0"], "because": "low", "above": 570, "low": 570}}
	asks := {{"at": ["/house/openings/0"], "needs": "platforms[].surface_above_grade"}}
	some name, case in {
		"at": [_high(1, _above(570)), set(), set(), spared],
		"at, depth not shown": [object.union(_bare(0), _above(570)), set(), set(), spared],
		"over": [_high(1, _above(571)), {_reading(0, 1, true)}, set(), set()],
		"not shown, shallow": [_subject(0, 1), set(), asks, set()],
		"not shown, deep": [_subject(0, _limit), {_reading(0, _limit, false)}, set(), set()],
	}
	_all == {"readings": case[1], "unknown": case[2], "exempt": case[3]} with input.doors as [case[0]]
		with data.figures as {"egress": {"door_landing": {"min": _limit, "low": 570}}}
}
