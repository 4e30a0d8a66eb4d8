package checks.handrail.projection_test

import data.checks.handrail.projection as check

# 4-1/2 in
_figures := {"handrail": {"projection": {"max": 114300000}, "required": {"from": 4, "sides": 1}}}

_said := {"readings": check.readings, "unknown": check.unknown, "exempt": check.exempt}

_rail(at, value) := {"at": [at], "projection": {"value": value, "at": [concat("/", [at, "projection"])]}, "present": true, "risers": {"value": 4, "at": [concat("/", [at, "risers"])]}}

_readings(at, value, outside) := {
	{"at": [concat("/", [at, "projection"])], "have": value, "figure": "max", "limit": 114300000, "outside": outside},
}

test_limit[name] if {
	some name, case in {
		"4-31/64 in": [113903125, false],
		"114.29 mm": [114290000, false],
		"4-1/2 in": [114300000, false],
		"114.3 mm": [114300000, false],
		"114.31 mm": [114310000, true],
		"4-33/64 in": [114696875, true],
	}
	_said == {"readings": _readings("/stairs/0/handrail", case[0], case[1]), "unknown": set(), "exempt": set()} with input.handrails as [_rail("/stairs/0/handrail", case[0])]
		with data.figures as _figures
}

test_not_shown if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0/handrail"], "needs": "stairs[].handrail.projection"}}, "exempt": set()} with input.handrails as [{"at": ["/stairs/0/handrail"], "present": true}]
		with data.figures as _figures
}

test_none_described if {
	not check.applies with input.handrails as []
	_said == {"readings": set(), "unknown": set(), "exempt": set()} with input.handrails as []
		with data.figures as _figures
}

test_one_of_two_is_outside if {
	check.applies with input.handrails as [_rail("/stairs/0/handrail", 114300000)]
	_said == {"readings": (_readings("/stairs/0/handrail", 114300000, false) | _readings("/stairs/1/handrail", 114300001, true)), "unknown": set(), "exempt": set()} with input.handrails as [_rail("/stairs/0/handrail", 114300000), _rail("/stairs/1/handrail", 114300001)]
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
