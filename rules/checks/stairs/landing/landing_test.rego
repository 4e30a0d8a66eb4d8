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

# Sides of 30 in and 40 in, 762 mm and 1016 mm.
_either := {
	"at": ["/stairs/0/landing_bottom"], "where": "bottom",
	"lesser_side": {"value": 762000000, "at": ["/stairs/0/landing_bottom/out"]},
	"greater_side": {"value": 1016000000, "at": ["/stairs/0/landing_bottom/along"]},
	"way_missing": "stairs[].from.edge",
}

_asks_which_way := {{"at": ["/stairs/0/landing_bottom"], "needs": "stairs[].from.edge"}}

test_direction_not_shown[name] if {
	some name, case in {
		"30 in is enough": [762000000, {_turned("out", 762000000, 762000000, false)}, set()],
		"761.99 mm is": [761990000, {_turned("out", 762000000, 761990000, false)}, set()],
		"762.01 mm may be": [762010000, set(), _asks_which_way],
		"30-1/64 in may be": [762396875, set(), _asks_which_way],
		"40 in may be": [1016000000, set(), _asks_which_way],
		"1016.01 mm is not": [1016010000, {_turned("along", 1016000000, 1016010000, true)}, set()],
		"40-1/64 in is not": [1016396875, {_turned("along", 1016000000, 1016396875, true)}, set()],
	}
	_said == {"readings": case[1], "unknown": case[2]} with input.landings as [_either]
		with data.figures as {"stairs": {"landing": {"min": case[0]}}}
}

_turned(side, value, limit, outside) := {
	"at": [concat("/", ["/stairs/0/landing_bottom", side])], "have": value, "figure": "min", "limit": limit,
	"outside": outside, "where": "bottom", "say": {true: "either", false: "either_within"}[outside],
}

_few(facts) := object.union_n(array.concat(
	[{
		"at": ["/stairs/0"], "where": "top", "depth_field": "stairs[].landing_top",
		"risers": {"value": 3, "at": ["/stairs/0/risers"]},
		"doors_apart": {"value": true, "at": ["/house/openings/0"]},
	}],
	facts,
))

_used(use) := {"use": {"value": use, "at": ["/stairs/0/use"]}}

_deep(value) := {"depth": {"value": value, "at": ["/stairs/0/landing_top/out"]}}

_read(value, outside) := {{
	"at": ["/stairs/0/landing_top/out"], "have": value, "figure": "min", "limit": 860,
	"outside": outside, "where": "top",
}}

test_few_risers_of_one_use[name] if {
	spared := {{"at": ["/stairs/0"], "because": "few_use", "risers": 3, "few": 3, "use": "secondary"}}
	some name, case in {
		"of that use": [_few([_used("secondary")]), set(), set(), spared],
		"of that use, shallow": [_few([_used("secondary"), _deep(1)]), set(), set(), spared],
		"of another use": [_few([_used("main")]), set(), {{"at": ["/stairs/0"], "needs": "stairs[].landing_top"}}, set()],
		"of another use, shallow": [_few([_used("main"), _deep(859)]), _read(859, true), set(), set()],
		"use not shown": [_few([]), set(), {{"at": ["/stairs/0"], "needs": "stairs[].use"}}, set()],
		"use not shown, shallow": [_few([_deep(859)]), set(), {{"at": ["/stairs/0"], "needs": "stairs[].use"}}, set()],
		"use not shown, deep": [_few([_deep(860)]), _read(860, false), set(), set()],
		"more risers": [object.union(_few([_deep(859)]), {"risers": {"value": 4, "at": ["/stairs/0/risers"]}}), _read(859, true), set(), set()],
	}
	object.union(_said, {"exempt": check.exempt}) == {"readings": case[1], "unknown": case[2], "exempt": case[3]} with input.landings as [case[0]]
		with data.figures as {"stairs": {"landing": {"min": 860, "few": 3, "few_use": "secondary"}}}
}

test_few_risers_over_a_landing_whose_direction_is_not_shown if {
	_said == {"readings": set(), "unknown": set()} with input.landings as [object.union(_either, {
		"risers": {"value": 2, "at": ["/stairs/0/risers"]},
		"doors_apart": {"value": true, "at": ["/house/openings/0"]},
	})]
		with data.figures as {"stairs": {"landing": {"min": 860000000, "few": 3}}}
}

# A side that is too small for the depth, and for the width beside a stair of
# its width, decides whichever way the stair goes.
test_too_small_for_depth_and_for_width[name] if {
	said := {object.union(_turned("out", 762000000, 914400000, true), {
		"at": ["/stairs/0/landing_bottom/out", "/stairs/0/width"], "say": "neither",
	})}
	some name, case in {
		"stair of 30 in": [762000000, set(), _asks_which_way],
		"stair of 762.01 mm": [762010000, said, set()],
		"stair of 30-1/64 in": [762396875, said, set()],
	}
	_said == {"readings": case[1], "unknown": case[2]} with input.landings as [object.union(_either, {"stair_width": {"value": case[0], "at": ["/stairs/0/width"]}})]
		with data.figures as {"stairs": {"landing": {"min": 914400000, "as_wide": true}}}
}

test_too_small_for_depth_alone_where_no_width_is_asked_for if {
	_said == {"readings": set(), "unknown": _asks_which_way} with input.landings as [object.union(_either, {"stair_width": {"value": 1016000000, "at": ["/stairs/0/width"]}})]
		with data.figures as {"stairs": {"landing": {"min": 914400000}}}
}
