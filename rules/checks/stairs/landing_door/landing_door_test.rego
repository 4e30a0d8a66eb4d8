package checks.stairs.landing_door_test

import data.checks.stairs.landing_door as check

_said := {"readings": check.readings, "unknown": check.unknown, "exempt": check.exempt}

_figures := {"stairs": {"landing_door": {"min": 400}}}

_landing(facts) := object.union_n(array.concat([{"at": ["/stairs/0/landing_bottom"], "where": "bottom"}], facts))

_swings(is) := {"door_swings": {"value": is, "at": ["/stairs/0/landing_bottom/door_swings_over"]}}

_clear(value) := {"clear_of_door": {"value": value, "at": ["/stairs/0/landing_bottom/clear_of_door"]}}

_reading(value, outside) := {
	"at": ["/stairs/0/landing_bottom/clear_of_door"], "have": value,
	"figure": "min", "limit": 400, "outside": outside, "where": "bottom",
}

test_door[name] if {
	some name, case in {
		"tight": [[_swings(true), _clear(399)], {_reading(399, true)}, set(), set()],
		"at": [[_swings(true), _clear(400)], {_reading(400, false)}, set(), set()],
		"not shown": [[_swings(true)], set(), {{"at": ["/stairs/0/landing_bottom"], "needs": "stairs[].landing_bottom.clear_of_door"}}, set()],
		"apart": [[_swings(false)], set(), set(), {{"at": ["/stairs/0/landing_bottom/door_swings_over"], "because": "apart", "where": "bottom"}}],
		"none": [[], set(), set(), {{"at": ["/stairs/0/landing_bottom"], "because": "none", "where": "bottom"}}],
	}
	_said == {"readings": case[1], "unknown": case[2], "exempt": case[3]} with input.landings as [_landing(case[0])]
		with data.figures as _figures
}

test_no_door_described if {
	not check.applies with input.landings as []
	not check.applies with input.landings as [_landing([])]
	check.applies with input.landings as [_landing([_swings(false)])]
}
