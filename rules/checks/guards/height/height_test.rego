package checks.guards.height_test

import data.checks.guards.height

_figures := {"guards": {"height": {"min": 914400000}, "required": {"trigger": 762000000}}}

_limit := 914400000 # 36 in, 914.4 mm

_steps := [
	396875, # 1/64 in
	10000, # 0.01 mm
]

_said(subjects) := result if {
	result := {"readings": height.readings, "unknown": height.unknown, "exempt": height.exempt} with input as {"guards": subjects}
		with data.figures as _figures
}

_subject(n, value) := object.union(_bare(n), {"height": {"value": value, "at": [_place(n)]}})

_bare(n) := {"at": [sprintf("/guards/%d", [n])], "edges": ["front"], "drops": []}

_place(n) := sprintf("/guards/%d/height", [n])

_reading(n, value, outside) := {
	"at": [_place(n)], "have": value,
	"figure": "min", "limit": _limit,
	"outside": outside,
}

_drops(value, partial) := {"drops": [{"out": 0, "field": "drop", "partial": partial, "drop": {"value": value, "at": ["/platforms/0/edges/front/drop"]}}]}

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
	_said([_bare(0)]) == {"readings": set(), "unknown": {{"at": [sprintf("/guards/%d", [0])], "needs": "guards[].height"}}, "exempt": set()}
}

test_one_bad_of_two if {
	_said([_subject(0, _limit + 10000), _subject(1, _limit - 10000)]) == {
		"readings": {_reading(0, _limit + 10000, false), _reading(1, _limit - 10000, true)},
		"unknown": set(), "exempt": set(),
	}
}

test_no_subject_no_check if {
	not height.applies with input as {"guards": []}
	height.applies with input as {"guards": [_bare(0)]}
	_said([]) == {"readings": set(), "unknown": set(), "exempt": set()}
}

test_low_guard_is_left_alone if {
	low := object.union(_subject(0, _limit - 10000), _drops(762000000, false))
	_said([low]) == {
		"readings": set(), "unknown": set(),
		"exempt": {{"at": ["/guards/0"], "because": "low", "drop": 762000000, "trigger": 762000000}},
	}
}

test_guard_above_the_trigger_is_read if {
	high := object.union(_subject(0, _limit), _drops(762010000, false))
	_said([high]) == {"readings": {_reading(0, _limit, false)}, "unknown": set(), "exempt": set()}
}

test_low_drop_that_may_be_greater_is_read if {
	partial := object.union(_subject(0, _limit), _drops(660400000, true))
	_said([partial]) == {"readings": {_reading(0, _limit, false)}, "unknown": set(), "exempt": set()}
}

_seated(n, above_floor, above_seat) := object.union(
	_subject(n, above_floor),
	{"height_above_seat": {"value": above_seat, "at": [sprintf("/guards/%d/height_above_seat", [n])]}},
)

test_seat_counts_only_where_the_set_says_so if {
	_said([_seated(0, _limit, 508000000)]) == {"readings": {_reading(0, _limit, false)}, "unknown": set(), "exempt": set()}
}

test_height_from_the_seat if {
	every case in [[_limit - 396875, true], [_limit, false], [_limit + 10000, false]] {
		[above_seat, outside] := case
		height.readings == {{
			"at": ["/guards/0/height_above_seat"], "have": above_seat,
			"figure": "min", "limit": _limit,
			"outside": outside, "say": "seat",
		}} with input as {"guards": [_seated(0, 1346200000, above_seat)]}
			with data.figures as {"guards": {"height": {"min": _limit, "from_seat": true}, "required": {"trigger": 762000000}}}
	}
}

test_guard_without_a_seat_is_measured_from_the_floor if {
	height.readings == {_reading(0, _limit, false)} with input as {"guards": [_subject(0, _limit)]}
		with data.figures as {"guards": {"height": {"min": _limit, "from_seat": true}, "required": {"trigger": 762000000}}}
}

_canada(guards) := result if {
	result := {"readings": height.readings, "unknown": height.unknown, "exempt": height.exempt} with input as {"guards": guards}
		with data.figures as {"guards": {
			"height": {"min": 900000000, "low_up_to": 1800000000, "min_high": 1070000000},
			"required": {"trigger": 600000000},
		}}
}

_short(value, outside) := {"at": [_place(0)], "have": value, "figure": "min", "limit": 900000000, "outside": outside}

_tall(value, outside) := {
	"at": [_place(0)], "have": value, "figure": "min_high", "limit": 1070000000,
	"outside": outside, "say": "high", "upto": 1800000000,
}

test_height_by_the_drop if {
	every case in [
		[1800000000, 899990000, _short(899990000, true)],
		[1800000000, 900000000, _short(900000000, false)],
		[1800010000, 1069990000, _tall(1069990000, true)],
		[1800010000, 1070000000, _tall(1070000000, false)],
	] {
		[drop, value, row] := case
		_canada([object.union(_subject(0, value), _drops(drop, false))]) == {"readings": {row}, "unknown": set(), "exempt": set()}
	}
}

test_height_by_a_drop_that_is_not_shown if {
	_canada([_subject(0, 899990000)]).readings == {_short(899990000, true)}
	_canada([_subject(0, 1070000000)]).readings == {_tall(1070000000, false)}
	_canada([_subject(0, 900000000)]) == {
		"readings": set(), "exempt": set(),
		"unknown": {{"at": ["/guards/0"], "needs": "platforms[].edges.<edge>.drop"}},
	}
	_canada([object.union(_subject(0, 900000000), _drops(1000000000, true))]).unknown != set()
	_canada([object.union(_subject(0, 900000000), _drops(1800010000, true))]).readings == {_tall(900000000, true)}
}

test_height_above_the_seat_beside_the_height if {
	every value, outside in {759990000: true, 760000000: false} {
		height.readings == {
			_reading(0, _limit, false),
			{
				"at": ["/guards/0/height_above_seat"], "have": value, "figure": "min_seat", "limit": 760000000,
				"outside": outside, "say": "seat",
			},
		} with input as {"guards": [_seated(0, _limit, value)]}
			with data.figures as {"guards": {"height": {"min": _limit, "min_seat": 760000000}, "required": {"from": 1000000000}}}
	}
}

test_guard_from_a_drop_on if {
	figures := {"guards": {"height": {"min": _limit}, "required": {"from": 1000000000}}}
	height.exempt == {{"at": ["/guards/0"], "because": "low_from", "drop": 999990000, "trigger": 1000000000}} with data.figures as figures
		with input as {"guards": [object.union(_subject(0, 1), _drops(999990000, false))]}
	height.exempt == set() with data.figures as figures
		with input as {"guards": [object.union(_subject(0, 1), _drops(1000000000, false))]}
}

test_set_that_does_not_say_when_a_guard_is_asked_for if {
	result := {"readings": height.readings, "exempt": height.exempt} with input as {"guards": [object.union(_subject(0, _limit), _drops(1, false))]}
		with data.figures as {"guards": {"height": {"min": _limit}}}
	result == {"readings": {_reading(0, _limit, false)}, "exempt": set()}
}
