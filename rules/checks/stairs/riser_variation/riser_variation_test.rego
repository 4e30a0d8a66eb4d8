package checks.stairs.riser_variation_test

import data.checks.stairs.riser_variation as check

# 3/8 in
_figures := {"stairs": {"riser_variation": {"max": 9525000}}}

_said := {"readings": check.readings, "unknown": check.unknown}

_flight(at, value) := {"at": [at], "riser_spread": {"value": value, "at": [concat("/", [at, "measured_risers"])]}}

_readings(at, value, outside) := {
	{"at": [concat("/", [at, "measured_risers"])], "have": value, "figure": "max", "limit": 9525000, "outside": outside},
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
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0"], "needs": "stairs[].risers"}}} with input.flights as [{"at": ["/stairs/0"]}]
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

_crossed(fall) := {
	"at": ["/stairs/0"],
	"riser_spread": {"value": 0, "at": ["/stairs/0/risers"]},
	"cross_fall": {"value": fall, "at": ["/stairs/0/landing_bottom/slope_along"]},
}

test_cross_fall[name] if {
	some name, case in {
		"9.52 mm": [9520000, false],
		"3/8 in": [9525000, false],
		"25/64 in": [9921875, true],
	}
	_said == {
		"readings": {
			{"at": ["/stairs/0/risers"], "have": 0, "figure": "max", "limit": 9525000, "outside": false},
			{
				"at": ["/stairs/0/landing_bottom/slope_along"], "have": case[0],
				"figure": "max", "limit": 9525000, "outside": case[1], "say": "cross_fall",
			},
		},
		"unknown": set(),
	} with input.flights as [_crossed(case[0])]
		with data.figures as _figures
}

test_rise_not_shown if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0"], "needs": "stairs[].total_rise"}}} with input.flights as [{
		"at": ["/stairs/0"], "risers": {"value": 7, "at": ["/stairs/0/risers"]},
	}]
		with data.figures as _figures
}
