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

_measured := {
	"at": ["/stairs/0"],
	"riser_spread": {"value": 9, "at": ["/stairs/0/measured_risers/1"]},
	"riser_step": {"value": 6, "at": ["/stairs/0/measured_risers/2"]},
	"upper_riser_step": {"value": 5, "at": ["/stairs/0/measured_risers/3"]},
	"upper_riser_off": {"value": 4, "at": ["/stairs/0/measured_risers/4"]},
	"bottom_riser_off": {"value": 3, "at": ["/stairs/0/measured_risers/0"]},
	"cross_fall": {"value": 20, "at": ["/stairs/0/landing_bottom/slope_along"]},
	"cross_slope": {"value": {"rise": -1, "run": 12}, "at": ["/stairs/0/landing_bottom/slope_along"]},
}

_at_most(fact, say, figure, limit, outside) := {{
	"at": _measured[fact].at, "have": _measured[fact].value, "figure": figure, "limit": limit, "outside": outside, "say": say,
}}

test_each_figure[name] if {
	some name, case in {
		"adjacent at": [{"adjacent": 6}, _at_most("riser_step", "adjacent", "adjacent", 6, false)],
		"adjacent over": [{"adjacent": 5}, _at_most("riser_step", "adjacent", "adjacent", 5, true)],
		"upper at": [{"adjacent_upper": 5}, _at_most("upper_riser_step", "adjacent", "adjacent_upper", 5, false)],
		"upper over": [{"adjacent_upper": 4}, _at_most("upper_riser_step", "adjacent", "adjacent_upper", 4, true)],
		"planned at": [{"planned_upper": 4}, _at_most("upper_riser_off", "planned", "planned_upper", 4, false)],
		"planned over": [{"planned_upper": 3}, _at_most("upper_riser_off", "planned", "planned_upper", 3, true)],
		"slope at": [{"cross_slope": {"rise": 1, "run": 12}}, _at_most("cross_slope", "cross_slope", "cross_slope", {"rise": 1, "run": 12}, false)],
		"slope over": [{"cross_slope": {"rise": 1, "run": 13}}, _at_most("cross_slope", "cross_slope", "cross_slope", {"rise": 1, "run": 13}, true)],
	}
	_said == {"readings": case[1], "unknown": set()} with input.flights as [_measured]
		with data.figures as {"stairs": {"riser_variation": case[0]}}
}

_spread := {"at": ["/stairs/0/measured_risers/1"], "have": 9, "figure": "max", "limit": 9, "outside": false}

test_fall_across_the_stair[name] if {
	some name, case in {
		"counts": [{"max": 9}, ({_spread} | _at_most("cross_fall", "cross_fall", "max", 9, true))],
		"measured in the middle": [{"max": 9, "centered": true}, {_spread}],
		"limited by its slope": [{"max": 9, "cross_slope": {"rise": 1, "run": 1}}, ({_spread} | _at_most("cross_slope", "cross_slope", "cross_slope", {"rise": 1, "run": 1}, false))],
	}
	_said == {"readings": case[1], "unknown": set()} with input.flights as [_measured]
		with data.figures as {"stairs": {"riser_variation": case[0]}}
}

test_plan_not_shown if {
	flight := object.union(object.filter(_measured, ["at", "riser_spread"]), {"riser_heights": [180, 189]})
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0"], "needs": "stairs[].total_rise"}}} with input.flights as [flight]
		with data.figures as {"stairs": {"riser_variation": {"planned_upper": 5}}}
}

_sloping := {
	"at": ["/stairs/0"],
	"riser_spread": _measured.riser_spread,
	"cross_fall_lesser": {"value": 10, "at": ["/stairs/0/landing_bottom/slope_along"]},
	"cross_fall_greater": {"value": 20, "at": ["/stairs/0/landing_bottom/slope_out"]},
	"cross_slope_lesser": {"value": {"rise": -1, "run": 100}, "at": ["/stairs/0/landing_bottom/slope_along"]},
	"cross_slope_greater": {"value": {"rise": 1, "run": 50}, "at": ["/stairs/0/landing_bottom/slope_out"]},
	"way_missing": "stairs[].from.edge",
}

_across(fact, figure, limit, outside) := {{
	"at": _sloping[fact].at, "have": _sloping[fact].value, "figure": figure, "limit": limit, "outside": outside,
	"say": {"max": "cross_fall", "cross_slope": "cross_slope"}[figure],
}}

_asks_which_way := {{"at": ["/stairs/0"], "needs": "stairs[].from.edge"}}

test_fall_across_where_the_direction_is_not_shown[name] if {
	some name, case in {
		"little either way": [20, _across("cross_fall_greater", "max", 20, false), set()],
		"may be too much": [19, set(), _asks_which_way],
		"may be little enough": [10, set(), _asks_which_way],
		"too much either way": [9, _across("cross_fall_lesser", "max", 9, true), set()],
	}
	spread := {{"at": _sloping.riser_spread.at, "have": 9, "figure": "max", "limit": case[0], "outside": false}}
	_said == {"readings": (spread | case[1]), "unknown": case[2]} with input.flights as [_sloping]
		with data.figures as {"stairs": {"riser_variation": {"max": case[0]}}}
}

test_slope_across_where_the_direction_is_not_shown[name] if {
	some name, case in {
		"little either way": [50, _across("cross_slope_greater", "cross_slope", {"rise": 1, "run": 50}, false), set()],
		"may be too steep": [51, set(), _asks_which_way],
		"may be gentle enough": [100, set(), _asks_which_way],
		"steep either way": [101, _across("cross_slope_lesser", "cross_slope", {"rise": 1, "run": 101}, true), set()],
	}
	_said == {"readings": case[1], "unknown": case[2]} with input.flights as [_sloping]
		with data.figures as {"stairs": {"riser_variation": {"cross_slope": {"rise": 1, "run": case[0]}}}}
}

test_fall_across_does_not_count_in_the_middle if {
	_said == {"readings": {_spread}, "unknown": set()} with input.flights as [_sloping]
		with data.figures as {"stairs": {"riser_variation": {"max": 9, "centered": true}}}
}

_risers(n) := {
	"at": ["/stairs/0"],
	"riser_spread": {"value": 0, "at": ["/stairs/0/risers"]},
	"riser_heights": [150 | some _ in numbers.range(1, n)],
}

test_too_few_risers[name] if {
	few := {{"at": ["/stairs/0/risers"], "because": "few"}}
	some name, case in {
		"one for the plan": [1, {"planned_upper": 5}, few],
		"two for the plan": [2, {"planned_upper": 5}, set()],
		"one that follows none": [1, {"adjacent_upper": 5}, few],
		"two that follow each other": [2, {"adjacent_upper": 5}, few],
		"three that follow each other": [3, {"adjacent_upper": 5}, set()],
		"one where only the landing is limited": [1, {"cross_slope": {"rise": 1, "run": 50}}, set()],
		"one for both": [1, {"adjacent_upper": 5, "planned_upper": 5}, few],
		"two for one of both": [2, {"adjacent_upper": 5, "planned_upper": 5}, set()],
		"one within the whole": [1, {"max": 5, "adjacent_upper": 5}, set()],
		"one beside none": [1, {"adjacent": 5, "planned_upper": 5}, set()],
	}
	check.exempt == case[2] with input.flights as [_risers(case[0])]
		with data.figures as {"stairs": {"riser_variation": case[1]}}
}

test_single_riser_asks_for_no_plan if {
	_said == {"readings": set(), "unknown": set()} with input.flights as [_risers(1)]
		with data.figures as {"stairs": {"riser_variation": {"planned_upper": 5}}}
}
