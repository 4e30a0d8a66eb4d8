package checks.stairs.riser_height_test

import data.checks.stairs.riser_height as check

# 7-3/4 in
_figures := {"stairs": {"riser_height": {"max": 196850000}}}

_said := {"readings": check.readings, "unknown": check.unknown}

_flight(at, value) := {"at": [at], "riser_max": {"value": value, "at": [concat("/", [at, "risers"])]}, "riser_max_n": 0}

_readings(at, value, outside) := {
	{"at": [concat("/", [at, "risers"])], "have": value, "figure": "max", "limit": 196850000, "outside": outside, "say": "outside", "n": 0},
}

test_limit[name] if {
	some name, case in {
		"7-47/64 in": [196453125, false],
		"196.84 mm": [196840000, false],
		"7-3/4 in": [196850000, false],
		"196.85 mm": [196850000, false],
		"196.86 mm": [196860000, true],
		"7-49/64 in": [197246875, true],
	}
	_said == {"readings": _readings("/stairs/0", case[0], case[1]), "unknown": set()} with input.flights as [_flight("/stairs/0", case[0])]
		with data.figures as _figures
}

test_not_shown if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0"], "needs": "stairs[].risers"}}} with input.flights as [{"at": ["/stairs/0"]}]
		with data.figures as _figures
}

test_none_described if {
	not check.applies with input.flights as []
	_said == {"readings": set(), "unknown": set()} with input.flights as []
		with data.figures as _figures
}

test_one_of_two_is_outside if {
	check.applies with input.flights as [_flight("/stairs/0", 196850000)]
	_said == {"readings": (_readings("/stairs/0", 196850000, false) | _readings("/stairs/1", 196850001, true)), "unknown": set()} with input.flights as [_flight("/stairs/0", 196850000), _flight("/stairs/1", 196850001)]
		with data.figures as _figures
}

test_one_measured_riser if {
	_said == {
		"readings": {{
			"at": ["/stairs/0/measured_risers/0"], "have": 209550000, "figure": "max", "limit": 196850000,
			"outside": true, "say": "one", "n": 12,
		}},
		"unknown": set(),
	} with input.flights as [{
		"at": ["/stairs/0"], "riser_max_n": 12,
		"riser_max": {"value": 209550000, "at": ["/stairs/0/measured_risers/0"]},
	}]
		with data.figures as _figures
}

test_rise_not_shown if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0/flights/0"], "needs": "stairs[].total_rise"}}} with input.flights as [{
		"at": ["/stairs/0/flights/0"], "risers": {"value": 7, "at": ["/stairs/0/flights/0/risers"]},
	}]
		with data.figures as _figures
}
