package checks.stairs.landing_slope_test

import data.checks.stairs.landing_slope as check

_figures := {"stairs": {"landing_slope": {"max": {"rise": 1, "run": 48}}}}

_said := {"readings": check.readings, "unknown": check.unknown, "exempt": check.exempt}

_slope(stair, place, field, rise, run) := {field: {
	"value": {"rise": rise, "run": run},
	"at": [concat("/", ["", "stairs", stair, place, field])],
}}

_bottom(stair) := {"at": [concat("/", ["", "stairs", stair, "landing_bottom"])], "where": "bottom"}

# Level along the house, so that the slope out from it decides.
_falling(stair, rise, run) := object.union_n([
	_bottom(stair),
	_slope(stair, "landing_bottom", "slope_along", 0, 1),
	_slope(stair, "landing_bottom", "slope_out", rise, run),
])

_reading(stair, field, rise, run, outside) := {
	"at": [concat("/", ["", "stairs", stair, "landing_bottom", field])],
	"have": {"rise": rise, "run": run},
	"figure": "max", "limit": {"rise": 1, "run": 48}, "outside": outside, "where": "bottom",
}

test_limit[name] if {
	some name, case in {
		"1 in 49": [1, 49, false],
		"2 %": [1, 50, false],
		"1 in 48": [1, 48, false],
		"25 mm in 1200 mm": [25, 1200, false],
		"1 in 47": [1, 47, true],
		"2.1 %": [21, 1000, true],
		"towards the house, 1 in 48": [-1, 48, false],
		"towards the house, 1 in 47": [-1, 47, true],
	}
	_said == {
		"readings": {
			_reading("0", "slope_along", 0, 1, false),
			_reading("0", "slope_out", case[0], case[1], case[2]),
		},
		"unknown": set(), "exempt": set(),
	} with input.landings as [_falling("0", case[0], case[1])]
		with data.figures as _figures
}

test_not_shown_on_the_ground[name] if {
	some name, case in {
		"both": [[], set(), {"slope_along", "slope_out"}],
		"along": [[_slope("0", "landing_bottom", "slope_out", 1, 60)], {_reading("0", "slope_out", 1, 60, false)}, {"slope_along"}],
		"out": [[_slope("0", "landing_bottom", "slope_along", 1, 60)], {_reading("0", "slope_along", 1, 60, false)}, {"slope_out"}],
	}
	_said == {
		"readings": case[1],
		"unknown": {{"at": ["/stairs/0/landing_bottom"], "needs": concat(".", ["stairs[].landing_bottom", field])} | some field in case[2]},
		"exempt": set(),
	} with input.landings as [object.union_n(array.concat([_bottom("0")], case[0]))]
		with data.figures as _figures
}

test_framed[name] if {
	some name in {"top", "between"}
	_said == {"readings": set(), "unknown": set(), "exempt": {{"at": ["/stairs/0"], "because": "framed", "where": name}}} with input.landings as [{"at": ["/stairs/0"], "where": name}]
		with data.figures as _figures
}

test_framed_with_a_slope if {
	_said == {
		"readings": {{
			"at": ["/stairs/0/landing_between/slope_out"], "have": {"rise": 1, "run": 40},
			"figure": "max", "limit": {"rise": 1, "run": 48}, "outside": true, "where": "between",
		}},
		"unknown": set(), "exempt": set(),
	} with input.landings as [object.union(
		{"at": ["/stairs/0/landing_between"], "where": "between"},
		_slope("0", "landing_between", "slope_out", 1, 40),
	)]
		with data.figures as _figures
}

test_none_described if {
	not check.applies with input.landings as []
	_said == {"readings": set(), "unknown": set(), "exempt": set()} with input.landings as []
		with data.figures as _figures
}

test_one_of_two_is_outside if {
	check.applies with input.landings as [_falling("0", 1, 48)]
	_said == {
		"readings": {
			_reading("0", "slope_along", 0, 1, false), _reading("0", "slope_out", 1, 48, false),
			_reading("1", "slope_along", 0, 1, false), _reading("1", "slope_out", 1, 40, true),
		},
		"unknown": set(), "exempt": set(),
	} with input.landings as [_falling("0", 1, 48), _falling("1", 1, 40)]
		with data.figures as _figures
}
