package checks.stairs.riser_sum_test

import data.checks.stairs.riser_sum as check

# 1/4 in
_figures := {"stairs": {"riser_sum": {"tolerance": 6350000}}}

_said := {"readings": check.readings, "unknown": check.unknown, "exempt": check.exempt}

_stair(at, value) := {"at": [at], "sum_difference": {"value": value, "at": [concat("/", [at, "measured_risers"])]}, "total_rise": {"value": 1270000000, "at": [concat("/", [at, "total_rise"])]}, "measured_sum": {"value": 1270000000 + value, "at": [concat("/", [at, "measured_risers"])]}}

_readings(at, value, outside) := {
	{"at": [concat("/", [at, "measured_risers"])], "have": value, "figure": "tolerance", "limit": 6350000, "outside": outside, "rise": 1270000000, "sum": 1270000000 + value},
}

test_limit[name] if {
	some name, case in {
		"15/64 in": [5953125, false],
		"6.34 mm": [6340000, false],
		"1/4 in": [6350000, false],
		"6.35 mm": [6350000, false],
		"6.36 mm": [6360000, true],
		"17/64 in": [6746875, true],
	}
	_said == {"readings": _readings("/stairs/0", case[0], case[1]), "unknown": set(), "exempt": set()} with input.stairs as [_stair("/stairs/0", case[0])]
		with data.figures as _figures
}

test_none_described if {
	not check.applies with input.stairs as []
	_said == {"readings": set(), "unknown": set(), "exempt": set()} with input.stairs as []
		with data.figures as _figures
}

test_one_of_two_is_outside if {
	check.applies with input.stairs as [_stair("/stairs/0", 6350000)]
	_said == {"readings": (_readings("/stairs/0", 6350000, false) | _readings("/stairs/1", 6350001, true)), "unknown": set(), "exempt": set()} with input.stairs as [_stair("/stairs/0", 6350000), _stair("/stairs/1", 6350001)]
		with data.figures as _figures
}

test_not_measured if {
	_said == {"readings": set(), "unknown": set(), "exempt": {{"at": ["/stairs/0"], "because": "not_measured"}}} with input.stairs as [{"at": ["/stairs/0"]}]
		with data.figures as _figures
}

test_rise_not_shown if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0"], "needs": "stairs[].total_rise"}}, "exempt": set()} with input.stairs as [{
		"at": ["/stairs/0"], "measured_sum": {"value": 1270000000, "at": ["/stairs/0/measured_risers"]},
	}]
		with data.figures as _figures
}
