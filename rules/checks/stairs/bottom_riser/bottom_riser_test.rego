package checks.stairs.bottom_riser_test

import data.checks.stairs.bottom_riser as check

_said := {"readings": check.readings, "unknown": check.unknown, "exempt": check.exempt}

_figures := {"stairs": {"bottom_riser": {"off": 15, "lower": 12}}}

_riser := "/stairs/0/measured_risers/0"

_flight(off, lower) := object.union_n([_spread, {
	"bottom_riser_off": {"value": off, "at": [_riser]},
	"bottom_riser_lower": {"value": lower, "at": [_riser]},
}])

_spread := {"at": ["/stairs/0"], "riser_spread": {"value": 20, "at": ["/stairs/0/measured_risers/1"]}}

_off(have, outside) := {"at": [_riser], "have": have, "figure": "off", "limit": 15, "outside": outside}

_lower(have, outside) := {"at": [_riser], "have": have, "figure": "lower", "limit": 12, "outside": outside, "say": "lower"}

test_limits[name] if {
	some name, case in {
		"under": [14, 11, false, false],
		"at": [15, 12, false, false],
		"off": [16, 12, true, false],
		"lower": [15, 13, false, true],
		"higher than those above": [15, -15, false, false],
	}
	_said == {"readings": {_off(case[0], case[2]), _lower(case[1], case[3])}, "unknown": set(), "exempt": set()} with input.flights as [_flight(case[0], case[1])]
		with data.figures as _figures
}

test_only_riser if {
	_said == {
		"readings": {_off(0, false)}, "unknown": set(),
		"exempt": {{"at": ["/stairs/0"], "because": "only"}},
	} with input.flights as [object.remove(_flight(0, 0), ["bottom_riser_lower"])]
		with data.figures as _figures
}

test_not_shown[name] if {
	some name, case in {
		"risers": [{"at": ["/stairs/0"]}, set(), "stairs[].risers"],
		"rise": [object.remove(_flight(0, 12), ["bottom_riser_off"]), {_lower(12, false)}, "stairs[].total_rise"],
	}
	_said == {"readings": case[1], "unknown": {{"at": ["/stairs/0"], "needs": case[2]}}, "exempt": set()} with input.flights as [case[0]]
		with data.figures as _figures
}

test_one_of_two_figures[name] if {
	some name, case in {"off": [{"off": 15}, {_off(16, true)}], "lower": [{"lower": 12}, {_lower(13, true)}]}
	_said == {"readings": case[1], "unknown": set(), "exempt": set()} with input.flights as [_flight(16, 13)]
		with data.figures as {"stairs": {"bottom_riser": case[0]}}
}

test_none_described if {
	not check.applies with input.flights as []
	check.applies with input.flights as [_spread]
}
