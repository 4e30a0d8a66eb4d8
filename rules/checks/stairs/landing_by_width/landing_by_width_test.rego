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
