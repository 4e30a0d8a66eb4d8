package checks.stairs.risers_in_flight_test

import data.checks.stairs.risers_in_flight as check

_said := {"readings": check.readings, "unknown": check.unknown}

_figures := {"stairs": {"risers_in_flight": {"min": 2, "max": 18}}}

_flight(at, n) := {"at": [at], "risers": {"value": n, "at": [concat("/", [at, "risers"])]}}

_readings(at, n, few, many) := {
	{"at": [concat("/", [at, "risers"])], "have": n, "figure": "min", "limit": 2, "outside": few},
	{"at": [concat("/", [at, "risers"])], "have": n, "figure": "max", "limit": 18, "outside": many},
}

test_limits[name] if {
	some name, case in {"one": [1, true, false], "two": [2, false, false], "eighteen": [18, false, false], "nineteen": [19, false, true]}
	_said == {"readings": _readings("/stairs/0", case[0], case[1], case[2]), "unknown": set()} with input.flights as [_flight("/stairs/0", case[0])]
		with data.figures as _figures
}

test_one_of_two_is_outside if {
	check.applies with input.flights as [_flight("/stairs/0", 2)]
	_said == {
		"readings": (_readings("/stairs/0/flights/0", 7, false, false) | _readings("/stairs/0/flights/1", 1, true, false)),
		"unknown": set(),
	} with input.flights as [_flight("/stairs/0/flights/0", 7), _flight("/stairs/0/flights/1", 1)]
		with data.figures as _figures
}

test_not_shown if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0/flights/0"], "needs": "stairs[].flights[].risers"}}} with input.flights as [{"at": ["/stairs/0/flights/0"]}]
		with data.figures as _figures
}

test_none_described if {
	not check.applies with input.flights as []
}
