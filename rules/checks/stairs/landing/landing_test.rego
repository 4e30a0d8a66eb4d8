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
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0/landing_bottom"], "needs": "stairs[].landing_top"}}} with input.landings as [{"at": ["/stairs/0/landing_bottom"], "where": "top"}]
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
	}} with input.landings as [{"at": ["/stairs/0"], "where": "between"}, {"at": ["/stairs/0"], "where": "bottom"}]
		with data.figures as _figures
}

_wide(where, depth, more) := object.union_n([
	{"at": ["/stairs/0/l"], "where": where, "stair_width": {"value": 1000, "at": ["/stairs/0/width"]}},
	{"depth": {"value": depth, "at": ["/stairs/0/l/out"]}}, more,
])

_turn(angle) := {"turn": {"value": angle, "at": ["/stairs/0/l/turn"]}}

_deep(where, depth, outside) := {
	"at": ["/stairs/0/l/out"], "have": depth, "figure": "min", "limit": 860, "outside": outside, "where": where,
}

_past(where, depth, outside) := {
	"at": ["/stairs/0/l/out", "/stairs/0/width"], "have": depth, "figure": "past_stair", "limit": 1000,
	"outside": outside, "where": where, "say": "past_stair",
}

_asks_turn := {{"at": ["/stairs/0/l"], "needs": "stairs[].landing_between.turn"}}

test_turn[name] if {
	some name, case in {
		"straight": [_wide("between", 860, _turn(89)), {_deep("between", 860, false)}, set()],
		"turning": [_wide("between", 999, _turn(90)), {_deep("between", 999, false), _past("between", 999, true)}, set()],
		"turning, wide enough": [_wide("between", 1000, _turn(90)), {_deep("between", 1000, false), _past("between", 1000, false)}, set()],
		"not shown, wide enough": [_wide("between", 1000, {}), {_deep("between", 1000, false), _past("between", 1000, false)}, set()],
		"not shown": [_wide("between", 999, {}), {_deep("between", 999, false)}, _asks_turn],
		"at the bottom": [_wide("bottom", 859, {}), {_deep("bottom", 859, true)}, set()],
	}
	_said == {"readings": case[1], "unknown": case[2]} with input.landings as [case[0]]
		with data.figures as {"stairs": {"landing": {"min": 860, "past_stair": 0, "turn_from": 90}}}
}

test_stair_width_decides[name] if {
	some name, case in {"under": [999, true], "at": [1000, false]}
	_said == {"readings": {_past("top", case[0], case[1])}, "unknown": set()} with input.landings as [_wide("top", case[0], {})]
		with data.figures as {"stairs": {"landing": {"past_stair": 0}}}
}

test_stair_width_not_shown[name] if {
	some name, case in {
		"asked for": [{"past_stair": 0}, {}, {{"at": ["/stairs/0/l"], "needs": "stairs[].width"}}],
		"not at an end": [{"past_stair": 0, "turn_from": 90}, {}, set()],
		"not where it goes straight on": [{"past_stair": 0, "turn_from": 90}, _turn(89), set()],
		"where it turns": [{"past_stair": 0, "turn_from": 90}, _turn(90), {{"at": ["/stairs/0/l"], "needs": "stairs[].width"}}],
	}
	_said == {"readings": set(), "unknown": case[2]} with input.landings as [object.union({"at": ["/stairs/0/l"], "where": "top", "depth": {"value": 1, "at": ["/stairs/0/l/out"]}}, case[1])]
		with data.figures as {"stairs": {"landing": case[0]}}
}

test_few_risers_and_doors_apart[name] if {
	spared := {{"at": ["/stairs/0/l"], "because": "few", "risers": 3, "few": 3}}
	some name, case in {
		"three": [3, true, set(), spared],
		"four": [4, true, {_deep("top", 1, true)}, set()],
		"a door over it": [3, false, {_deep("top", 1, true)}, set()],
	}
	{"readings": case[2], "exempt": case[3]} == {"readings": check.readings, "exempt": check.exempt} with input.landings as [_wide("top", 1, {
		"risers": {"value": case[0], "at": ["/stairs/0/risers"]},
		"doors_apart": {"value": case[1], "at": ["/house/openings/0"]},
	})]
		with data.figures as {"stairs": {"landing": {"min": 860, "few": 3}}}
}
