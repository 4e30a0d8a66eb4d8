package checks.stairs.tread_depth_test

import data.checks.stairs.tread_depth as check

# 10 in
_figures := {"stairs": {"tread_depth": {"min": 254000000}}}

_said := {"readings": check.readings, "unknown": check.unknown}

_flight(at, value) := {"at": [at], "tread_min": {"value": value, "at": [concat("/", [at, "tread_depth"])]}, "tread_min_n": 0}

_readings(at, value, outside) := {
	{"at": [concat("/", [at, "tread_depth"])], "have": value, "figure": "min", "limit": 254000000, "outside": outside, "say": "outside", "n": 0},
}

test_limit[name] if {
	some name, case in {
		"9-63/64 in": [253603125, true],
		"253.99 mm": [253990000, true],
		"10 in": [254000000, false],
		"254 mm": [254000000, false],
		"254.01 mm": [254010000, false],
		"10-1/64 in": [254396875, false],
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
	check.applies with input.flights as [_flight("/stairs/0", 254000000)]
	_said == {"readings": (_readings("/stairs/0", 254000000, false) | _readings("/stairs/1", 253999999, true)), "unknown": set()} with input.flights as [_flight("/stairs/0", 254000000), _flight("/stairs/1", 253999999)]
		with data.figures as _figures
}

test_one_measured_tread if {
	_said == {
		"readings": {{
			"at": ["/stairs/0/measured_treads/2"], "have": 250825000, "figure": "min", "limit": 254000000,
			"outside": true, "say": "one", "n": 4,
		}},
		"unknown": set(),
	} with input.flights as [{
		"at": ["/stairs/0"], "tread_min_n": 4,
		"tread_min": {"value": 250825000, "at": ["/stairs/0/measured_treads/2"]},
	}]
		with data.figures as _figures
}

test_not_shown_of_a_listed_flight if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0/flights/1"], "needs": "stairs[].flights[].tread_depth"}}} with input.flights as [{"at": ["/stairs/0/flights/1"]}]
		with data.figures as _figures
}
