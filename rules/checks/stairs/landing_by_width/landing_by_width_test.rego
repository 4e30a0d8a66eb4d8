package checks.stairs.landing_by_width_test

import data.checks.stairs.landing_by_width as check

_said := {"readings": check.readings, "unknown": check.unknown, "exempt": check.exempt}

_turning := {"stairs": {"landing_by_width": {"past_stair": 0, "turn_from": 90}}}

_every := {"stairs": {"landing_by_width": {"past_stair": 0}}}

_landing(where, facts) := object.union_n(array.concat([{"at": ["/stairs/0/l"], "where": where}], facts))

_width := {"stair_width": {"value": 1000, "at": ["/stairs/0/width"]}}

_depth(value) := {"depth": {"value": value, "at": ["/stairs/0/l/out"]}}

_turn(angle) := {"turn": {"value": angle, "at": ["/stairs/0/l/turn"]}}

_reading(where, depth, outside) := {{
	"at": ["/stairs/0/l/out", "/stairs/0/width"], "have": depth, "figure": "past_stair", "limit": 1000,
	"outside": outside, "where": where,
}}

_asks(field) := {{"at": ["/stairs/0/l"], "needs": field}}

_slight := {{"at": ["/stairs/0/l/turn"], "because": "slight", "where": "between", "turn": 89, "turn_from": 90}}

test_turn[name] if {
	some name, case in {
		"slight": [_landing("between", [_width, _depth(1), _turn(89)]), set(), set(), _slight],
		"turning, shallow": [_landing("between", [_width, _depth(999), _turn(90)]), _reading("between", 999, true), set(), set()],
		"turning, deep": [_landing("between", [_width, _depth(1000), _turn(90)]), _reading("between", 1000, false), set(), set()],
		"not shown, deep": [_landing("between", [_width, _depth(1000)]), _reading("between", 1000, false), set(), set()],
		"not shown, shallow": [_landing("between", [_width, _depth(999)]), set(), _asks("stairs[].landing_between.turn"), set()],
		"at the bottom": [_landing("bottom", [_width, _depth(1)]), set(), set(), {{"at": ["/stairs/0/l"], "because": "straight", "where": "bottom"}}],
		"turning at the top": [_landing("top", [_width, _depth(999), _turn(90)]), _reading("top", 999, true), set(), set()],
	}
	_said == {"readings": case[1], "unknown": case[2], "exempt": case[3]} with input.landings as [case[0]]
		with data.figures as _turning
}

test_every_landing[name] if {
	some name, case in {
		"shallow": [_landing("top", [_width, _depth(999)]), _reading("top", 999, true), set()],
		"deep": [_landing("top", [_width, _depth(1000)]), _reading("top", 1000, false), set()],
		"width not shown": [_landing("top", [_depth(1)]), set(), _asks("stairs[].width")],
		"depth not shown": [_landing("top", [_width, {"depth_field": "stairs[].from.at"}]), set(), _asks("stairs[].from.at")],
	}
	_said == {"readings": case[1], "unknown": case[2], "exempt": set()} with input.landings as [case[0]]
		with data.figures as _every
}

test_none_described if {
	not check.applies with input.landings as []
	check.applies with input.landings as [_landing("top", [])]
}

_either(where) := {
	"at": ["/stairs/0/l"], "where": where,
	"lesser_side": {"value": 900, "at": ["/stairs/0/l/out"]},
	"greater_side": {"value": 1100, "at": ["/stairs/0/l/along"]},
	"way_missing": "stairs[].from.edge",
}

_turned(side, value, limit, outside) := {{
	"at": [concat("/", ["/stairs/0/l", side]), "/stairs/0/width"], "have": value, "figure": "past_stair", "limit": limit,
	"outside": outside, "where": "between", "say": {true: "either", false: "either_within"}[outside],
}}

test_direction_not_shown[name] if {
	some name, case in {
		"deep enough": [900, [_turn(90)], _turned("out", 900, 900, false), set()],
		"may be": [901, [_turn(90)], set(), _asks("stairs[].from.edge")],
		"may be still": [1100, [_turn(90)], set(), _asks("stairs[].from.edge")],
		"too shallow": [1101, [_turn(90)], _turned("along", 1100, 1101, true), set()],
		"too shallow where it turns": [1101, [], set(), _asks("stairs[].landing_between.turn")],
		"deep enough for a turn": [900, [], _turned("out", 900, 900, false), set()],
	}
	width := {"stair_width": {"value": case[0], "at": ["/stairs/0/width"]}}
	_said == {"readings": case[2], "unknown": case[3], "exempt": set()} with input.landings as [object.union_n(array.concat([_either("between"), width], case[1]))]
		with data.figures as _turning
}

test_neither_direction_nor_width_shown if {
	_said == {"readings": set(), "unknown": _asks("stairs[].width"), "exempt": set()} with input.landings as [_either("top")]
		with data.figures as _every
}
