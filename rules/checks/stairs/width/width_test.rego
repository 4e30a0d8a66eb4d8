package checks.stairs.width_test

import data.checks.stairs.width as check

# 36 in
_figures := {"stairs": {"width": {"min": 914400000}}}

_said := {"readings": check.readings, "unknown": check.unknown}

_stair(at, value) := {"at": [at], "width": {"value": value, "at": [concat("/", [at, "width"])]}}

_readings(at, value, outside) := {
	{"at": [concat("/", [at, "width"])], "have": value, "figure": "min", "limit": 914400000, "outside": outside},
}

test_limit[name] if {
	some name, case in {
		"35-63/64 in": [914003125, true],
		"914.39 mm": [914390000, true],
		"36 in": [914400000, false],
		"914.4 mm": [914400000, false],
		"914.41 mm": [914410000, false],
		"36-1/64 in": [914796875, false],
	}
	_said == {"readings": _readings("/stairs/0", case[0], case[1]), "unknown": set()} with input.stairs as [_stair("/stairs/0", case[0])]
		with data.figures as _figures
}

test_not_shown if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0"], "needs": "stairs[].width"}}} with input.stairs as [{"at": ["/stairs/0"]}]
		with data.figures as _figures
}

test_none_described if {
	not check.applies with input.stairs as []
	_said == {"readings": set(), "unknown": set()} with input.stairs as []
		with data.figures as _figures
}

test_one_of_two_is_outside if {
	check.applies with input.stairs as [_stair("/stairs/0", 914400000)]
	_said == {"readings": (_readings("/stairs/0", 914400000, false) | _readings("/stairs/1", 914399999, true)), "unknown": set()} with input.stairs as [_stair("/stairs/0", 914400000), _stair("/stairs/1", 914399999)]
		with data.figures as _figures
}
