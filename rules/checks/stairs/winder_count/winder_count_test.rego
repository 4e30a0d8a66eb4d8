package checks.stairs.winder_count_test

import data.checks.stairs.winder_count as check

_said := {"readings": check.readings, "unknown": check.unknown}

_figures := {"stairs": {"winder_count": {"quarter": 3, "half": 6, "quarter_turn": 90}}}

_stair(facts) := object.union_n(array.concat([{"at": ["/stairs/0"], "winders": true}], facts))

_count(n) := {"winder_count": {"value": n, "at": ["/stairs/0/winders/count"]}}

_turn(angle) := {"winder_turn": {"value": angle, "at": ["/stairs/0/winders/turn"]}}

_quarter(n, outside) := {{"at": ["/stairs/0/winders/count"], "have": n, "figure": "quarter", "limit": 3, "outside": outside}}

_half(n, outside) := {{"at": ["/stairs/0/winders/count"], "have": n, "figure": "half", "limit": 6, "outside": outside, "say": "half"}}

_asks(field) := {{"at": ["/stairs/0"], "needs": field}}

test_winders[name] if {
	some name, case in {
		"quarter, at": [[_count(3), _turn(90)], _quarter(3, false), set()],
		"quarter, over": [[_count(4), _turn(90)], _quarter(4, true), set()],
		"half, at": [[_count(6), _turn(91)], _half(6, false), set()],
		"half, over": [[_count(7), _turn(180)], _half(7, true), set()],
		"turn not shown, few": [[_count(3)], _quarter(3, false), set()],
		"turn not shown, between": [[_count(4)], set(), _asks("stairs[].winders.turn")],
		"turn not shown, still between": [[_count(6)], set(), _asks("stairs[].winders.turn")],
		"turn not shown, many": [[_count(7)], _half(7, true), set()],
		"count not shown": [[_turn(90)], set(), _asks("stairs[].winders.count")],
	}
	_said == {"readings": case[1], "unknown": case[2]} with input.stairs as [_stair(case[0])]
		with data.figures as _figures
}

test_straight_stair_is_left_alone if {
	not check.applies with input.stairs as [{"at": ["/stairs/0"], "winders": false}]
	check.applies with input.stairs as [_stair([])]
}
