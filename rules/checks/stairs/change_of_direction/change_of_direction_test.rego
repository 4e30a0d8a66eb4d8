package checks.stairs.change_of_direction_test

import data.checks.stairs.change_of_direction as check

_said := {"readings": check.readings, "unknown": check.unknown, "exempt": check.exempt}

_figures := {"stairs": {"change_of_direction": {"max": 36, "turn": 30}}}

_stair(flights, risers) := {"at": ["/stairs/0"], "flights": flights, "risers": {"value": risers, "at": ["/stairs/0/flights/0/risers"]}}

_turning(angle) := {"at": ["/stairs/0/landing_between"], "where": "between", "turn": {"value": angle, "at": ["/stairs/0/landing_between/turn"]}}

_plain := {"at": ["/stairs/0/landing_between"], "where": "between"}

# A turn on a landing of another stair, and on one that does not lie between flights.
_elsewhere := [
	{"at": ["/stairs/1/landing_between"], "where": "between", "turn": {"value": 90, "at": ["/stairs/1/landing_between/turn"]}},
	{"at": ["/stairs/0/landing_top"], "where": "top", "turn": {"value": 90, "at": ["/stairs/0/landing_top/turn"]}},
]

_reading(risers, outside) := {{
	"at": ["/stairs/0/flights/0/risers"], "have": risers, "figure": "max", "limit": 36, "outside": outside,
}}

_turns(angle) := {{"at": ["/stairs/0"], "because": "turns", "turn": angle}}

_asks := {{"at": ["/stairs/0"], "needs": "stairs[].landing_between.turn"}}

test_turn[name] if {
	some name, case in {
		"few, not shown": [_stair(2, 36), [_plain], _reading(36, false), set(), set()],
		"many, not shown": [_stair(2, 37), [_plain], set(), _asks, set()],
		"many, straight": [_stair(2, 37), [_turning(29)], _reading(37, true), set(), set()],
		"many, turning": [_stair(2, 37), [_turning(30)], set(), set(), _turns(30)],
		"many, one of two turns": [_stair(3, 50), [_turning(0), _turning(90)], set(), set(), _turns(90)],
		"many, one of two not shown": [_stair(3, 50), [_turning(0), _plain], set(), _asks, set()],
		"many, both straight": [_stair(3, 50), [_turning(0), _turning(0)], _reading(50, true), set(), set()],
		"many in one flight": [_stair(1, 37), [], _reading(37, true), set(), set()],
		"turns elsewhere": [_stair(2, 37), array.concat([_turning(0)], _elsewhere), _reading(37, true), set(), set()],
	}
	_said == {"readings": case[2], "unknown": case[3], "exempt": case[4]} with input.stairs as [case[0]]
		with input.landings as case[1]
		with data.figures as _figures
}

test_risers_not_shown if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0"], "needs": "stairs[].risers"}}, "exempt": set()} with input.stairs as [object.remove(_stair(1, 1), ["risers"])]
		with input.landings as []
		with data.figures as _figures
}

test_none_described if {
	not check.applies with input.stairs as []
	check.applies with input.stairs as [_stair(1, 1)]
}
