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

_of_uses := {"stairs": {"tread_depth": {"min": 280, "min_secondary": 250, "min_service": 220, "min_accessible": 310}}}

_used(use, value) := object.union(_flight("/stairs/0", value), {"use": {"value": use, "at": ["/stairs/0/use"]}})

_by(figure, value, outside) := {{
	"at": ["/stairs/0/tread_depth"], "have": value, "figure": figure, "limit": _of_uses.stairs.tread_depth[figure],
	"outside": outside, "say": "outside", "n": 0,
}}

test_use[name] if {
	some name, case in {
		"main": ["main", "min", 280],
		"secondary": ["secondary", "min_secondary", 250],
		"service": ["service", "min_service", 220],
		"accessible": ["accessible", "min_accessible", 310],
	}
	every value, outside in {case[2]: false, case[2] - 1: true} {
		_said == {"readings": _by(case[1], value, outside), "unknown": set()} with input.flights as [_used(case[0], value)]
			with data.figures as _of_uses
	}
}

test_use_not_shown[name] if {
	some name, case in {
		"inside all": [280, _by("min", 280, false), set()],
		"between": [279, set(), {{"at": ["/stairs/0"], "needs": "stairs[].use"}}],
		"outside all": [219, _by("min_service", 219, true), set()],
	}
	_said == {"readings": case[1], "unknown": case[2]} with input.flights as [_flight("/stairs/0", case[0])]
		with data.figures as _of_uses
}

_bounded := {"stairs": {"tread_depth": {"min": 220, "attached": 280, "max": 300}}}

_hung(value, is) := object.union(_flight("/stairs/0", value), {"attached": {"value": is, "at": ["/platforms/0/support"]}})

_unhung(value) := object.union(_flight("/stairs/0", value), {"attached_field": "platforms[].support"})

_plain(value, outside) := {
	"at": ["/stairs/0/tread_depth"], "have": value, "figure": "min", "limit": 220,
	"outside": outside, "say": "outside", "n": 0,
}

_attached(value, outside) := {
	"at": ["/stairs/0/tread_depth"], "have": value, "figure": "attached", "limit": 280,
	"outside": outside, "say": "attached",
}

_platform := {{"at": ["/stairs/0"], "needs": "platforms[].support"}}

test_attached[name] if {
	some name, case in {
		"hung and deep": [_hung(280, true), {_attached(280, false)}, set()],
		"hung and shallow": [_hung(279, true), {_attached(279, true)}, set()],
		"free and shallow": [_hung(220, false), {_plain(220, false)}, set()],
		"not shown and deep": [_flight("/stairs/0", 280), {_plain(280, false)}, set()],
		"not shown and between": [_unhung(279), {_plain(279, false)}, _platform],
		"not shown and just inside": [_unhung(220), {_plain(220, false)}, _platform],
		"not shown and too shallow": [_flight("/stairs/0", 219), {_plain(219, true)}, set()],
	}
	_said == {"readings": case[1], "unknown": case[2]} with input.flights as [case[0]]
		with data.figures as _bounded
}

test_greatest[name] if {
	some name, case in {"under": [299, false], "at": [300, false], "over": [301, true]}
	flight := object.union(_hung(280, false), {"tread_max": {"value": case[0], "at": ["/stairs/0/measured_treads/2"]}, "tread_max_n": 3})
	_said == {
		"readings": {
			_plain(280, false),
			{"at": ["/stairs/0/measured_treads/2"], "have": case[0], "figure": "max", "limit": 300, "outside": case[1], "say": "one", "n": 3},
		},
		"unknown": set(),
	} with input.flights as [flight]
		with data.figures as _bounded
}
