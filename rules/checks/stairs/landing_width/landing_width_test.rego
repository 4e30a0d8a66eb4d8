package checks.stairs.landing_width_test

import data.checks.stairs.landing_width as check

_level := {"stairs": {"landing_width": {"past_stair": 0}}}

_said := {"readings": check.readings, "unknown": check.unknown}

# The stair is 36 in wide, 914.4 mm.
_landing(at, value) := {
	"at": [concat("/", [at, "landing_bottom"])], "where": "bottom",
	"width": {"value": value, "at": [concat("/", [at, "landing_bottom", "along"])]},
	"stair_width": {"value": 914400000, "at": [concat("/", [at, "width"])]},
}

_reading(at, value, limit, outside) := {
	"at": [concat("/", [at, "landing_bottom", "along"]), concat("/", [at, "width"])], "have": value,
	"figure": "past_stair", "limit": limit, "outside": outside, "where": "bottom",
}

test_as_wide_as_the_stair[name] if {
	some name, case in {
		"35-63/64 in": [914003125, true],
		"914.39 mm": [914390000, true],
		"36 in": [914400000, false],
		"914.4 mm": [914400000, false],
		"914.41 mm": [914410000, false],
		"36-1/64 in": [914796875, false],
	}
	_said == {"readings": {_reading("/stairs/0", case[0], 914400000, case[1])}, "unknown": set()} with input.landings as [_landing("/stairs/0", case[0])]
		with data.figures as _level
}

test_wider_than_the_stair[name] if {
	some name, case in {
		"100 mm more": [1014400000, false],
		"99.99 mm more": [1014390000, true],
	}
	_said == {"readings": {_reading("/stairs/0", case[0], 1014400000, case[1])}, "unknown": set()} with input.landings as [_landing("/stairs/0", case[0])]
		with data.figures as {"stairs": {"landing_width": {"past_stair": 100000000}}}
}

test_not_shown[name] if {
	some name, case in {
		"landing": [{"at": ["/stairs/0"], "where": "top", "width_field": "stairs[].landing_top.along"}, "stairs[].landing_top.along"],
		"width of the stair": [object.remove(_landing("/stairs/0", 914400000), ["stair_width"]), "stairs[].width"],
	}
	_said == {"readings": set(), "unknown": {{"at": case[0].at, "needs": case[1]}}} with input.landings as [case[0]]
		with data.figures as _level
}

test_none_described if {
	not check.applies with input.landings as []
	_said == {"readings": set(), "unknown": set()} with input.landings as []
		with data.figures as _level
}

test_one_of_two_is_outside if {
	check.applies with input.landings as [_landing("/stairs/0", 914400000)]
	_said == {
		"readings": {
			_reading("/stairs/0", 914400000, 914400000, false),
			_reading("/stairs/1", 900000000, 914400000, true),
		},
		"unknown": set(),
	} with input.landings as [_landing("/stairs/0", 914400000), _landing("/stairs/1", 900000000)]
		with data.figures as _level
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
		"a stair of 30 in": [762000000, {_turned("out", 762000000, 762000000, false)}, set()],
		"of 762.01 mm": [762010000, set(), _asks_which_way],
		"of 40 in": [1016000000, set(), _asks_which_way],
		"of 1016.01 mm": [1016010000, {_turned("along", 1016000000, 1016010000, true)}, set()],
	}
	_said == {"readings": case[1], "unknown": case[2]} with input.landings as [object.union(_either, {"stair_width": {"value": case[0], "at": ["/stairs/0/width"]}})]
		with data.figures as _level
}

_turned(side, value, limit, outside) := {
	"at": [concat("/", ["/stairs/0/landing_bottom", side]), "/stairs/0/width"], "have": value, "figure": "past_stair", "limit": limit,
	"outside": outside, "where": "bottom", "say": {true: "either", false: "either_within"}[outside],
}

test_neither_direction_nor_width_of_the_stair_shown if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0/landing_bottom"], "needs": "stairs[].width"}}} with input.landings as [_either]
		with data.figures as _level
}

_few(facts) := object.union_n(array.concat(
	[{
		"at": ["/stairs/0"], "where": "top",
		"risers": {"value": 3, "at": ["/stairs/0/risers"]},
		"doors_apart": {"value": true, "at": ["/house/openings/0"]},
		"stair_width": {"value": 900, "at": ["/stairs/0/width"]},
	}],
	facts,
))

_used(use) := {"use": {"value": use, "at": ["/stairs/0/use"]}}

_wide(value) := {"width": {"value": value, "at": ["/stairs/0/landing_top/along"]}}

_read(value, outside) := {{
	"at": ["/stairs/0/landing_top/along", "/stairs/0/width"], "have": value, "figure": "past_stair", "limit": 900,
	"outside": outside, "where": "top",
}}

test_few_risers_of_one_use[name] if {
	spared := {{"at": ["/stairs/0"], "because": "few_use", "risers": 3, "few": 3, "use": "secondary"}}
	some name, case in {
		"of that use": [_few([_used("secondary"), _wide(1)]), set(), set(), spared],
		"of another use": [_few([_used("main"), _wide(899)]), _read(899, true), set(), set()],
		"use not shown, narrow": [_few([_wide(899)]), set(), {{"at": ["/stairs/0"], "needs": "stairs[].use"}}, set()],
		"use not shown, wide": [_few([_wide(900)]), _read(900, false), set(), set()],
		"nothing shown": [_few([]), set(), {{"at": ["/stairs/0"], "needs": "stairs[].use"}}, set()],
		"more risers": [object.union(_few([_wide(899)]), {"risers": {"value": 4, "at": ["/stairs/0/risers"]}}), _read(899, true), set(), set()],
	}
	object.union(_said, {"exempt": check.exempt}) == {"readings": case[1], "unknown": case[2], "exempt": case[3]} with input.landings as [case[0]]
		with data.figures as {"stairs": {"landing_width": {"past_stair": 0, "few": 3, "few_use": "secondary"}}}
}
