package checks.stairs.flight_rise_test

import data.checks.stairs.flight_rise as check

# 151 in
_figures := {"stairs": {"flight_rise": {"max": 3835400000}}}

_said := {"readings": check.readings, "unknown": check.unknown}

_flight(at, value) := {"at": [at], "rise": {"value": value, "at": [concat("/", [at, "total_rise"])]}}

_readings(at, value, outside) := {
	{"at": [concat("/", [at, "total_rise"])], "have": value, "figure": "max", "limit": 3835400000, "outside": outside},
}

test_limit[name] if {
	some name, case in {
		"150-63/64 in": [3835003125, false],
		"3835.39 mm": [3835390000, false],
		"151 in": [3835400000, false],
		"3835.4 mm": [3835400000, false],
		"3835.41 mm": [3835410000, true],
		"151-1/64 in": [3835796875, true],
	}
	_said == {"readings": _readings("/stairs/0", case[0], case[1]), "unknown": set()} with input.flights as [_flight("/stairs/0", case[0])]
		with data.figures as _figures
}

test_not_shown if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0"], "needs": "stairs[].total_rise"}}} with input.flights as [{"at": ["/stairs/0"], "rise_field": "stairs[].total_rise"}]
		with data.figures as _figures
}

test_none_described if {
	not check.applies with input.flights as []
	_said == {"readings": set(), "unknown": set()} with input.flights as []
		with data.figures as _figures
}

test_one_of_two_is_outside if {
	check.applies with input.flights as [_flight("/stairs/0", 3835400000)]
	_said == {"readings": (_readings("/stairs/0", 3835400000, false) | _readings("/stairs/1", 3835400001, true)), "unknown": set()} with input.flights as [_flight("/stairs/0", 3835400000), _flight("/stairs/1", 3835400001)]
		with data.figures as _figures
}
