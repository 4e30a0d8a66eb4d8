package checks.handrail.clearance_test

import data.checks.handrail.clearance as check

# 1-1/2 in
_figures := {"handrail": {"clearance": {"min": 38100000}, "required": {"from": 4, "sides": 1}}}

_said := {"readings": check.readings, "unknown": check.unknown, "exempt": check.exempt}

_rail(at, value) := {"at": [at], "clearance": {"value": value, "at": [concat("/", [at, "clearance"])]}, "present": true, "risers": {"value": 4, "at": [concat("/", [at, "risers"])]}}

_readings(at, value, outside) := {
	{"at": [concat("/", [at, "clearance"])], "have": value, "figure": "min", "limit": 38100000, "outside": outside},
}

test_limit[name] if {
	some name, case in {
		"1-31/64 in": [37703125, true],
		"38.09 mm": [38090000, true],
		"1-1/2 in": [38100000, false],
		"38.1 mm": [38100000, false],
		"38.11 mm": [38110000, false],
		"1-33/64 in": [38496875, false],
	}
	_said == {"readings": _readings("/stairs/0/handrail", case[0], case[1]), "unknown": set(), "exempt": set()} with input.handrails as [_rail("/stairs/0/handrail", case[0])]
		with data.figures as _figures
}

test_not_shown if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0/handrail"], "needs": "stairs[].handrail.clearance"}}, "exempt": set()} with input.handrails as [{"at": ["/stairs/0/handrail"], "present": true}]
		with data.figures as _figures
}

test_none_described if {
	not check.applies with input.handrails as []
	_said == {"readings": set(), "unknown": set(), "exempt": set()} with input.handrails as []
		with data.figures as _figures
}

test_one_of_two_is_outside if {
	check.applies with input.handrails as [_rail("/stairs/0/handrail", 38100000)]
	_said == {"readings": (_readings("/stairs/0/handrail", 38100000, false) | _readings("/stairs/1/handrail", 38099999, true)), "unknown": set(), "exempt": set()} with input.handrails as [_rail("/stairs/0/handrail", 38100000), _rail("/stairs/1/handrail", 38099999)]
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
