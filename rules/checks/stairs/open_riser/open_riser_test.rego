package checks.stairs.open_riser_test

import data.checks.stairs.open_riser as check

# 4 in
_figures := {"stairs": {"open_riser": {"sphere": 101600000, "trigger": 762000000}}}

_said := {"readings": check.readings, "unknown": check.unknown, "exempt": check.exempt}

_flight(at, value) := {"at": [at], "riser_opening": {"value": value, "at": [concat("/", [at, "riser_opening"])]}, "risers_closed": {"value": false, "at": [concat("/", [at, "riser_opening"])]}, "opening_above": {"value": 762000001, "at": [concat("/", [at, "total_rise"])]}}

_readings(at, value, outside) := {
	{"at": [concat("/", [at, "riser_opening"])], "have": value, "figure": "sphere", "limit": 101600000, "outside": outside},
}

test_limit[name] if {
	some name, case in {
		"3-63/64 in": [101203125, false],
		"101.59 mm": [101590000, false],
		"4 in": [101600000, true],
		"101.6 mm": [101600000, true],
		"101.61 mm": [101610000, true],
		"4-1/64 in": [101996875, true],
	}
	_said == {"readings": _readings("/stairs/0", case[0], case[1]), "unknown": set(), "exempt": set()} with input.flights as [_flight("/stairs/0", case[0])]
		with data.figures as _figures
}

test_not_shown if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0"], "needs": "stairs[].riser_opening"}}, "exempt": set()} with input.flights as [{"at": ["/stairs/0"]}]
		with data.figures as _figures
}

test_none_described if {
	not check.applies with input.flights as []
	_said == {"readings": set(), "unknown": set(), "exempt": set()} with input.flights as []
		with data.figures as _figures
}

test_one_of_two_is_outside if {
	check.applies with input.flights as [_flight("/stairs/0", 101599999)]
	_said == {"readings": (_readings("/stairs/0", 101599999, false) | _readings("/stairs/1", 101600000, true)), "unknown": set(), "exempt": set()} with input.flights as [_flight("/stairs/0", 101599999), _flight("/stairs/1", 101600000)]
		with data.figures as _figures
}

_at_height(opening, above) := {
	"at": ["/stairs/0"],
	"riser_opening": {"value": opening, "at": ["/stairs/0/riser_opening"]},
	"opening_above": {"value": above, "at": ["/stairs/0/total_rise"]},
}

test_trigger_height[name] if {
	some name, above in {"30 in": 762000000, "762 mm": 762000000, "761.99 mm": 761990000}
	_said == {
		"readings": set(), "unknown": set(),
		"exempt": {{"at": ["/stairs/0/riser_opening"], "because": "low", "above": above, "trigger": 762000000}},
	} with input.flights as [_at_height(114300000, above)]
		with data.figures as _figures
}

test_over_the_trigger_height[name] if {
	some name, above in {"762.01 mm": 762010000, "30-1/64 in": 762396875}
	_said == {"readings": _readings("/stairs/0", 114300000, true), "unknown": set(), "exempt": set()} with input.flights as [_at_height(114300000, above)]
		with data.figures as _figures
}

test_closed if {
	_said == {"readings": set(), "unknown": set(), "exempt": {{"at": ["/stairs/0"], "because": "closed"}}} with input.flights as [{
		"at": ["/stairs/0"], "risers_closed": {"value": true, "at": ["/stairs/0/riser_opening"]},
	}]
		with data.figures as _figures
}

test_small_at_an_unknown_height if {
	_said == {"readings": _readings("/stairs/0", 101599999, false), "unknown": set(), "exempt": set()} with input.flights as [{
		"at": ["/stairs/0"], "riser_opening": {"value": 101599999, "at": ["/stairs/0/riser_opening"]},
	}]
		with data.figures as _figures
}

test_large_at_an_unknown_height if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0"], "needs": "stairs[].total_rise"}}, "exempt": set()} with input.flights as [{
		"at": ["/stairs/0"],
		"risers": {"value": 7, "at": ["/stairs/0/risers"]},
		"riser_opening": {"value": 101600000, "at": ["/stairs/0/riser_opening"]},
	}]
		with data.figures as _figures
}

test_at_any_height[name] if {
	some name, flight in {"low": _at_height(101600000, 1), "height not shown": {"at": ["/stairs/0"], "riser_opening": {"value": 101600000, "at": ["/stairs/0/riser_opening"]}}}
	_said == {"readings": _readings("/stairs/0", 101600000, true), "unknown": set(), "exempt": set()} with input.flights as [flight]
		with data.figures as {"stairs": {"open_riser": {"sphere": 101600000}}}
}
