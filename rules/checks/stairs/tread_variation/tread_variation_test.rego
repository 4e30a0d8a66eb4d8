package checks.stairs.tread_variation_test

import data.checks.stairs.tread_variation as check

# 3/8 in
_figures := {"stairs": {"tread_variation": {"max": 9525000}}}

_said := {"readings": check.readings, "unknown": check.unknown}

_flight(at, value) := {"at": [at], "tread_spread": {"value": value, "at": [concat("/", [at, "measured_treads"])]}}

_readings(at, value, outside) := {
	{"at": [concat("/", [at, "measured_treads"])], "have": value, "figure": "max", "limit": 9525000, "outside": outside},
}

test_limit[name] if {
	some name, case in {
		"23/64 in": [9128125, false],
		"9.515 mm": [9515000, false],
		"3/8 in": [9525000, false],
		"9.525 mm": [9525000, false],
		"9.535 mm": [9535000, true],
		"25/64 in": [9921875, true],
	}
	_said == {"readings": _readings("/stairs/0", case[0], case[1]), "unknown": set()} with input.flights as [_flight("/stairs/0", case[0])]
		with data.figures as _figures
}

test_not_shown if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0"], "needs": "stairs[].tread_depth"}}} with input.flights as [{"at": ["/stairs/0"]}]
		with data.figures as _figures
}

test_none_described if {
	not check.applies with input.flights as []
	_said == {"readings": set(), "unknown": set()} with input.flights as []
		with data.figures as _figures
}

test_one_of_two_is_outside if {
	check.applies with input.flights as [_flight("/stairs/0", 9525000)]
	_said == {"readings": (_readings("/stairs/0", 9525000, false) | _readings("/stairs/1", 9525001, true)), "unknown": set()} with input.flights as [_flight("/stairs/0", 9525000), _flight("/stairs/1", 9525001)]
		with data.figures as _figures
}

test_adjacent[name] if {
	some name, case in {"under": [4, false], "at": [5, false], "over": [6, true]}
	_said == {
		"readings": {
			{"at": ["/stairs/0/measured_treads/0"], "have": 10, "figure": "max", "limit": 10, "outside": false},
			{"at": ["/stairs/0/measured_treads/1"], "have": case[0], "figure": "adjacent", "limit": 5, "outside": case[1], "say": "adjacent"},
		},
		"unknown": set(),
	} with input.flights as [{
		"at": ["/stairs/0"],
		"tread_spread": {"value": 10, "at": ["/stairs/0/measured_treads/0"]},
		"tread_step": {"value": case[0], "at": ["/stairs/0/measured_treads/1"]},
	}]
		with data.figures as {"stairs": {"tread_variation": {"max": 10, "adjacent": 5}}}
}
