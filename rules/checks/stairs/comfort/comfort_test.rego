package checks.stairs.comfort_test

import data.checks.stairs.comfort as check

# 24 in, 25-1/2 in
_figures := {"stairs": {"comfort": {"min": 609600000, "max": 647700000}}}

_said := {"readings": check.readings, "unknown": check.unknown}

_flight(at, value) := {
	"at": [at],
	"comfort_least": _sum(at, "risers", value), "comfort_least_riser": 0, "comfort_least_tread": 0,
	"comfort_most": _sum(at, "risers", value), "comfort_most_riser": 0, "comfort_most_tread": 0,
}

_sum(at, field, value) := {"value": value, "at": [concat("/", [at, field])]}

_readings(at, value, min_outside, max_outside) := {
	{"at": [concat("/", [at, "risers"])], "have": value, "figure": "min", "limit": 609600000, "outside": min_outside},
	{"at": [concat("/", [at, "risers"])], "have": value, "figure": "max", "limit": 647700000, "outside": max_outside},
}

test_limit_min[name] if {
	some name, case in {
		"23-63/64 in": [609203125, true, false],
		"609.59 mm": [609590000, true, false],
		"24 in": [609600000, false, false],
		"609.6 mm": [609600000, false, false],
		"609.61 mm": [609610000, false, false],
		"24-1/64 in": [609996875, false, false],
	}
	_said == {"readings": _readings("/stairs/0", case[0], case[1], case[2]), "unknown": set()} with input.flights as [_flight("/stairs/0", case[0])]
		with data.figures as _figures
}

test_limit_max[name] if {
	some name, case in {
		"25-31/64 in": [647303125, false, false],
		"647.69 mm": [647690000, false, false],
		"25-1/2 in": [647700000, false, false],
		"647.7 mm": [647700000, false, false],
		"647.71 mm": [647710000, false, true],
		"25-33/64 in": [648096875, false, true],
	}
	_said == {"readings": _readings("/stairs/0", case[0], case[1], case[2]), "unknown": set()} with input.flights as [_flight("/stairs/0", case[0])]
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
	check.applies with input.flights as [_flight("/stairs/0", 647700000)]
	_said == {"readings": (_readings("/stairs/0", 647700000, false, false) | _readings("/stairs/1", 647700001, false, true)), "unknown": set()} with input.flights as [_flight("/stairs/0", 647700000), _flight("/stairs/1", 647700001)]
		with data.figures as _figures
}

test_rise_not_shown if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0"], "needs": "stairs[].risers"}}} with input.flights as [{
		"at": ["/stairs/0"], "tread_depth": {"value": 254000000, "at": ["/stairs/0/tread_depth"]},
	}]
		with data.figures as _figures
}

test_worst_in_each_direction[name] if {
	some name, case in {
		"inside": [609600000, 647700000, false, false],
		"too little at one": [609590000, 647700000, true, false],
		"too much at another": [609600000, 647710000, false, true],
		"an inch fraction more": [609600000, 648096875, false, true],
	}
	_said == {
		"readings": {
			{
				"at": ["/stairs/0/measured_risers/1"], "have": case[0], "figure": "min", "limit": 609600000,
				"outside": case[2], "say": "riser", "riser": 2,
			},
			{
				"at": ["/stairs/0/measured_risers/4"], "have": case[1], "figure": "max", "limit": 647700000,
				"outside": case[3], "say": "step", "riser": 5, "tread": 4,
			},
		},
		"unknown": set(),
	} with input.flights as [{
		"at": ["/stairs/0"],
		"comfort_least": _sum("/stairs/0", "measured_risers/1", case[0]), "comfort_least_riser": 2, "comfort_least_tread": 0,
		"comfort_most": _sum("/stairs/0", "measured_risers/4", case[1]), "comfort_most_riser": 5, "comfort_most_tread": 4,
	}]
		with data.figures as _figures
}

test_treads_alone_differ if {
	some reading in check.readings with input.flights as [{
		"at": ["/stairs/0"],
		"comfort_least": _sum("/stairs/0", "measured_treads/2", 1), "comfort_least_riser": 0, "comfort_least_tread": 3,
		"comfort_most": _sum("/stairs/0", "measured_treads/0", 2), "comfort_most_riser": 0, "comfort_most_tread": 1,
	}]
		with data.figures as _figures
	reading == {
		"at": ["/stairs/0/measured_treads/2"], "have": 1, "figure": "min", "limit": 609600000,
		"outside": true, "say": "tread", "tread": 3,
	}
}

test_treads_measured_and_rise_not_shown if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0"], "needs": "stairs[].total_rise"}}} with input.flights as [{
		"at": ["/stairs/0"], "risers": {"value": 4, "at": ["/stairs/0/risers"]},
		"tread_min": {"value": 254000000, "at": ["/stairs/0/measured_treads/0"]},
	}]
		with data.figures as _figures
}
