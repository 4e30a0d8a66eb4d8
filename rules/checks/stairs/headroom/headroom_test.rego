package checks.stairs.headroom_test

import data.checks.stairs.headroom as check

# 80 in
_figures := {"stairs": {"headroom": {"min": 2032000000}}}

_said := {"readings": check.readings, "unknown": check.unknown, "exempt": check.exempt}

_stair(at, value) := {"at": [at], "headroom": {"value": value, "at": [concat("/", [at, "headroom"])]}, "open_to_sky": false}

_readings(at, value, outside) := {
	{"at": [concat("/", [at, "headroom"])], "have": value, "figure": "min", "limit": 2032000000, "outside": outside},
}

test_limit[name] if {
	some name, case in {
		"79-63/64 in": [2031603125, true],
		"2031.99 mm": [2031990000, true],
		"80 in": [2032000000, false],
		"2032 mm": [2032000000, false],
		"2032.01 mm": [2032010000, false],
		"80-1/64 in": [2032396875, false],
	}
	_said == {"readings": _readings("/stairs/0", case[0], case[1]), "unknown": set(), "exempt": set()} with input.stairs as [_stair("/stairs/0", case[0])]
		with data.figures as _figures
}

test_not_shown if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0"], "needs": "stairs[].headroom"}}, "exempt": set()} with input.stairs as [{"at": ["/stairs/0"], "open_to_sky": false}]
		with data.figures as _figures
}

test_none_described if {
	not check.applies with input.stairs as []
	_said == {"readings": set(), "unknown": set(), "exempt": set()} with input.stairs as []
		with data.figures as _figures
}

test_one_of_two_is_outside if {
	check.applies with input.stairs as [_stair("/stairs/0", 2032000000)]
	_said == {"readings": (_readings("/stairs/0", 2032000000, false) | _readings("/stairs/1", 2031999999, true)), "unknown": set(), "exempt": set()} with input.stairs as [_stair("/stairs/0", 2032000000), _stair("/stairs/1", 2031999999)]
		with data.figures as _figures
}

test_open_to_sky if {
	_said == {"readings": set(), "unknown": set(), "exempt": {{"at": ["/stairs/0"], "because": "sky"}}} with input.stairs as [{"at": ["/stairs/0"], "open_to_sky": true}]
		with data.figures as _figures
}
