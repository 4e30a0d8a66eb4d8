package checks.stairs.landing_test

import data.checks.stairs.landing as check

# 36 in
_figures := {"stairs": {"landing": {"min": 914400000}}}

_said := {"readings": check.readings, "unknown": check.unknown}

_landing(at, value) := {"at": [at], "depth": {"value": value, "at": [concat("/", [at, "out"])]}, "where": "bottom"}

_readings(at, value, outside) := {
	{"at": [concat("/", [at, "out"])], "have": value, "figure": "min", "limit": 914400000, "outside": outside, "where": "bottom"},
}

test_limit[name] if {
	some name, case in {
		"35-63/64 in": [914003125, true],
		"914.39 mm": [914390000, true],
		"36 in": [914400000, false],
		"914.4 mm": [914400000, false],
		"914.41 mm": [914410000, false],
		"36-1/64 in": [914796875, false],
	}
	_said == {"readings": _readings("/stairs/0/landing_bottom", case[0], case[1]), "unknown": set()} with input.landings as [_landing("/stairs/0/landing_bottom", case[0])]
		with data.figures as _figures
}

test_not_shown if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0/landing_bottom"], "needs": "stairs[].landing_top"}}} with input.landings as [{"at": ["/stairs/0/landing_bottom"], "where": "top", "depth_field": "stairs[].landing_top"}]
		with data.figures as _figures
}

test_none_described if {
	not check.applies with input.landings as []
	_said == {"readings": set(), "unknown": set()} with input.landings as []
		with data.figures as _figures
}

test_one_of_two_is_outside if {
	check.applies with input.landings as [_landing("/stairs/0/landing_bottom", 914400000)]
	_said == {"readings": (_readings("/stairs/0/landing_bottom", 914400000, false) | _readings("/stairs/1/landing_bottom", 914399999, true)), "unknown": set()} with input.landings as [_landing("/stairs/0/landing_bottom", 914400000), _landing("/stairs/1/landing_bottom", 914399999)]
		with data.figures as _figures
}

test_not_shown_further_down if {
	_said == {"readings": set(), "unknown": {
		{"at": ["/stairs/0"], "needs": "stairs[].landing_between"},
		{"at": ["/stairs/0"], "needs": "stairs[].landing_bottom"},
	}} with input.landings as [
		{"at": ["/stairs/0"], "where": "between", "depth_field": "stairs[].landing_between"},
		{"at": ["/stairs/0"], "where": "bottom", "depth_field": "stairs[].landing_bottom"},
	]
		with data.figures as _figures
}

test_few_risers_and_doors_apart[name] if {
	spared := {{"at": ["/stairs/0"], "because": "few", "risers": 3, "few": 3}}
	some name, case in {
		"three": [3, true, set(), spared],
		"four": [4, true, {{"at": ["/stairs/0"], "needs": "stairs[].landing_top"}}, set()],
		"a door over it": [3, false, {{"at": ["/stairs/0"], "needs": "stairs[].landing_top"}}, set()],
	}
	object.union(_said, {"exempt": check.exempt}) == {"readings": set(), "unknown": case[2], "exempt": case[3]} with input.landings as [{
		"at": ["/stairs/0"], "where": "top", "depth_field": "stairs[].landing_top",
		"risers": {"value": case[0], "at": ["/stairs/0/risers"]},
		"doors_apart": {"value": case[1], "at": ["/house/openings/0"]},
	}]
		with data.figures as {"stairs": {"landing": {"min": 860, "few": 3}}}
}

test_few_risers_over_a_shallow_landing if {
	object.union(_said, {"exempt": check.exempt}) == {
		"readings": set(), "unknown": set(),
		"exempt": {{"at": ["/stairs/0"], "because": "few", "risers": 2, "few": 3}},
	} with input.landings as [{
		"at": ["/stairs/0"], "where": "top",
		"depth": {"value": 1, "at": ["/stairs/0/landing_top/out"]},
		"risers": {"value": 2, "at": ["/stairs/0/risers"]},
		"doors_apart": {"value": true, "at": ["/house/openings/0"]},
	}]
		with data.figures as {"stairs": {"landing": {"min": 860, "few": 3}}}
}
