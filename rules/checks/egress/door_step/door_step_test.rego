package checks.egress.door_step_test

import data.checks.egress.door_step

_max := 196850000 # 7-3/4 in, 196.85 mm

_swing := 38100000 # 1-1/2 in, 38.1 mm

_said(doors) := result if {
	result := {"readings": door_step.readings, "unknown": door_step.unknown} with input as {"doors": doors}
		with data.figures as {"egress": {"door_step": {"max": _max, "max_swing": _swing}}}
}

_bare(n) := {"at": [_place(n)]}

_place(n) := sprintf("/house/openings/%d", [n])

_down(n, value) := {"step_down": {"value": value, "at": [concat("/", [_place(n), "threshold_above_decking"])]}}

_swings(is) := {"swings_over": {"value": is, "at": ["/house/openings/0/swings_over_deck"]}}

_exit(is) := {"required_exit": {"value": is, "at": ["/house/openings/0/required_egress_door"]}}

_door(n, value, swings, exit) := object.union_n([_bare(n), _down(n, value), swings, exit])

_reading(n, value, outside) := {
	"at": [concat("/", [_place(n), "threshold_above_decking"])], "have": value,
	"figure": "max", "limit": _max,
	"outside": outside,
}

_strict(n, value, outside) := object.union(_reading(n, value, outside), {"figure": "max_swing", "limit": _swing, "say": "swing"})

test_step_against_the_greater_limit if {
	every free in [[_swings(false), _exit(true)], [_swings(true), _exit(false)], [_swings(false), {}], [{}, _exit(false)]] {
		every case in [[396875, true], [10000, true], [0, false], [-396875, false], [-10000, false]] {
			value := _max + case[0]
			_said([_door(0, value, free[0], free[1])]) == {"readings": {_reading(0, value, case[1])}, "unknown": set()}
		}
	}
}

test_step_under_a_swinging_exit_door if {
	every case in [[396875, true], [10000, true], [0, false], [-396875, false], [-10000, false]] {
		value := _swing + case[0]
		_said([_door(0, value, _swings(true), _exit(true))]) == {"readings": {_strict(0, value, case[1])}, "unknown": set()}
	}
}

test_step_between_the_limits_needs_the_swing_and_the_duty if {
	every value in [_swing + 10000, _max] {
		_said([_door(0, value, {}, {})]) == {
			"readings": set(),
			"unknown": {
				{"at": ["/house/openings/0"], "needs": "house.openings[].swings_over_deck"},
				{"at": ["/house/openings/0"], "needs": "house.openings[].required_egress_door"},
			},
		}
	}
	_said([_door(0, _max, _swings(true), {})]).unknown == {{"at": ["/house/openings/0"], "needs": "house.openings[].required_egress_door"}}
	_said([_door(0, _max, {}, _exit(true))]).unknown == {{"at": ["/house/openings/0"], "needs": "house.openings[].swings_over_deck"}}
}

test_step_outside_or_inside_both_limits_needs_no_more if {
	_said([_door(0, _max + 10000, {}, {})]) == {"readings": {_reading(0, _max + 10000, true)}, "unknown": set()}
	_said([_door(0, _swing, {}, {})]) == {"readings": {_reading(0, _swing, false)}, "unknown": set()}
}

test_missing_step_is_not_shown if {
	_said([object.union_n([_bare(0), _swings(true), _exit(true)])]) == {
		"readings": set(),
		"unknown": {{"at": ["/house/openings/0"], "needs": "house.openings[].threshold_above_decking"}},
	}
}

test_one_bad_of_two if {
	_said([_door(0, 1, _swings(false), {}), _door(1, _max + 10000, _swings(false), {})]) == {
		"readings": {_reading(0, 1, false), _reading(1, _max + 10000, true)},
		"unknown": set(),
	}
}

test_no_subject_no_check if {
	not door_step.applies with input as {"doors": []}
	door_step.applies with input as {"doors": [_bare(0)]}
	_said([]) == {"readings": set(), "unknown": set()}
}
