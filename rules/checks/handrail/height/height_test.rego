package checks.handrail.height_test

import data.checks.handrail.height as check

# 34 in, 38 in
_figures := {"handrail": {"height": {"min": 863600000, "max": 965200000}, "required": {"from": 4, "sides": 1}}}

_said := {"readings": check.readings, "unknown": check.unknown, "exempt": check.exempt}

_rail(at, value) := {"at": [at], "height": {"value": value, "at": [concat("/", [at, "height"])]}, "present": true, "risers": {"value": 4, "at": [concat("/", [at, "risers"])]}}

_readings(at, value, min_outside, max_outside) := {
	{"at": [concat("/", [at, "height"])], "have": value, "figure": "min", "limit": 863600000, "outside": min_outside},
	{"at": [concat("/", [at, "height"])], "have": value, "figure": "max", "limit": 965200000, "outside": max_outside},
}

test_limit_min[name] if {
	some name, case in {
		"33-63/64 in": [863203125, true, false],
		"863.59 mm": [863590000, true, false],
		"34 in": [863600000, false, false],
		"863.6 mm": [863600000, false, false],
		"863.61 mm": [863610000, false, false],
		"34-1/64 in": [863996875, false, false],
	}
	_said == {"readings": _readings("/stairs/0/handrail", case[0], case[1], case[2]), "unknown": set(), "exempt": set()} with input.handrails as [_rail("/stairs/0/handrail", case[0])]
		with data.figures as _figures
}

test_limit_max[name] if {
	some name, case in {
		"37-63/64 in": [964803125, false, false],
		"965.19 mm": [965190000, false, false],
		"38 in": [965200000, false, false],
		"965.2 mm": [965200000, false, false],
		"965.21 mm": [965210000, false, true],
		"38-1/64 in": [965596875, false, true],
	}
	_said == {"readings": _readings("/stairs/0/handrail", case[0], case[1], case[2]), "unknown": set(), "exempt": set()} with input.handrails as [_rail("/stairs/0/handrail", case[0])]
		with data.figures as _figures
}

test_not_shown if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0/handrail"], "needs": "stairs[].handrail.height"}}, "exempt": set()} with input.handrails as [{"at": ["/stairs/0/handrail"], "present": true}]
		with data.figures as _figures
}

test_none_described if {
	not check.applies with input.handrails as []
	_said == {"readings": set(), "unknown": set(), "exempt": set()} with input.handrails as []
		with data.figures as _figures
}

test_one_of_two_is_outside if {
	check.applies with input.handrails as [_rail("/stairs/0/handrail", 965200000)]
	_said == {"readings": (_readings("/stairs/0/handrail", 965200000, false, false) | _readings("/stairs/1/handrail", 965200001, false, true)), "unknown": set(), "exempt": set()} with input.handrails as [_rail("/stairs/0/handrail", 965200000), _rail("/stairs/1/handrail", 965200001)]
		with data.figures as _figures
}

test_left_alone[name] if {
	some name, case in {
		"few risers": [{"at": ["/stairs/0"], "present": true, "risers": {"value": 3, "at": ["/stairs/0/risers"]}}, {"at": ["/stairs/0"], "because": "few", "risers": 3, "from": 4}],
		"none shown": [{"at": ["/stairs/0"], "present": false, "risers": {"value": 4, "at": ["/stairs/0/risers"]}}, {"at": ["/stairs/0"], "because": "none"}],
	}
	_said == {"readings": set(), "unknown": set(), "exempt": {case[1]}} with input.handrails as [case[0]]
		with data.figures as _figures
}

test_greatest_measured_height_counts_upwards if {
	rail := object.union(_rail("/stairs/0/handrail", 863600000), {"height_max": {"value": 965200001, "at": ["/stairs/0/handrail/measured_heights/2"]}})
	_said == {
		"readings": {
			{"at": ["/stairs/0/handrail/height"], "have": 863600000, "figure": "min", "limit": 863600000, "outside": false},
			{"at": ["/stairs/0/handrail/measured_heights/2"], "have": 965200001, "figure": "max", "limit": 965200000, "outside": true},
		},
		"unknown": set(), "exempt": set(),
	} with input.handrails as [rail]
		with data.figures as _figures
}

test_no_greatest_height if {
	_said == {
		"readings": {{"at": ["/stairs/0/handrail/height"], "have": 965200001, "figure": "min", "limit": 863600000, "outside": false}},
		"unknown": set(), "exempt": set(),
	} with input.handrails as [_rail("/stairs/0/handrail", 965200001)]
		with data.figures as {"handrail": {"height": {"min": 863600000}, "required": {"sides": 1}}}
}
