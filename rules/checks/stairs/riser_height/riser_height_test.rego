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

_of_uses := {"stairs": {"riser_height": {"max": 190, "max_secondary": 200, "max_service": 220, "max_accessible": 180}}}

_used(use, value) := object.union(_flight("/stairs/0", value), {"use": {"value": use, "at": ["/stairs/0/use"]}})

_by(figure, value, outside) := {{
	"at": ["/stairs/0/risers"], "have": value, "figure": figure, "limit": _of_uses.stairs.riser_height[figure],
	"outside": outside, "say": "outside", "n": 0,
}}

test_use[name] if {
	some name, case in {
		"main": ["main", "max", 190],
		"secondary": ["secondary", "max_secondary", 200],
		"service": ["service", "max_service", 220],
		"accessible": ["accessible", "max_accessible", 180],
	}
	every value, outside in {case[2]: false, case[2] + 1: true} {
		_said == {"readings": _by(case[1], value, outside), "unknown": set()} with input.flights as [_used(case[0], value)]
			with data.figures as _of_uses
	}
}

test_use_not_shown[name] if {
	some name, case in {
		"inside all": [190, _by("max", 190, false), set()],
		"between": [191, set(), {{"at": ["/stairs/0"], "needs": "stairs[].use"}}],
		"still between": [220, set(), {{"at": ["/stairs/0"], "needs": "stairs[].use"}}],
		"outside all": [221, _by("max_service", 221, true), set()],
	}
	_said == {"readings": case[1], "unknown": case[2]} with input.flights as [_flight("/stairs/0", case[0])]
		with data.figures as _of_uses
}

test_least[name] if {
	some name, case in {"under": [124, true], "at": [125, false], "over": [126, false]}
	flight := object.union(_flight("/stairs/0", 126), {"riser_min": {"value": case[0], "at": ["/stairs/0/measured_risers/0"]}, "riser_min_n": 1})
	_said == {
		"readings": {
			{"at": ["/stairs/0/risers"], "have": 126, "figure": "max", "limit": 200, "outside": false, "say": "outside", "n": 0},
			{"at": ["/stairs/0/measured_risers/0"], "have": case[0], "figure": "min", "limit": 125, "outside": case[1], "say": "one", "n": 1},
		},
		"unknown": set(),
	} with input.flights as [flight]
		with data.figures as {"stairs": {"riser_height": {"max": 200, "min": 125}}}
}
