package checks.stairs.stringer_span_test

import data.checks.stairs.stringer_span as check

# 72 in
_figures := {"stairs": {"stringer_span": {"cut": 1828800000, "solid": 4038600000}}}

_said := {"readings": check.readings, "unknown": check.unknown, "exempt": check.exempt}

_flight(at, value) := {"at": [at], "stringer_run": {"value": value, "at": [concat("/", [at, "tread_depth"])]}, "stringer_kind": {"value": "cut", "at": [concat("/", [at, "stringers", "kind"])]}}

_readings(at, value, outside) := {
	{"at": [concat("/", [at, "tread_depth"])], "have": value, "figure": "cut", "limit": 1828800000, "outside": outside, "kind": "cut"},
}

test_limit[name] if {
	some name, case in {
		"71-63/64 in": [1828403125, false],
		"1828.79 mm": [1828790000, false],
		"72 in": [1828800000, false],
		"1828.8 mm": [1828800000, false],
		"1828.81 mm": [1828810000, true],
		"72-1/64 in": [1829196875, true],
	}
	_said == {"readings": _readings("/stairs/0", case[0], case[1]), "unknown": set(), "exempt": set()} with input.flights as [_flight("/stairs/0", case[0])]
		with data.figures as _figures
}

test_not_shown if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0"], "needs": "stairs[].stringers.kind"}}, "exempt": set()} with input.flights as [{"at": ["/stairs/0"]}]
		with data.figures as _figures
}

test_none_described if {
	not check.applies with input.flights as []
	_said == {"readings": set(), "unknown": set(), "exempt": set()} with input.flights as []
		with data.figures as _figures
}

test_one_of_two_is_outside if {
	check.applies with input.flights as [_flight("/stairs/0", 1828800000)]
	_said == {"readings": (_readings("/stairs/0", 1828800000, false) | _readings("/stairs/1", 1828800001, true)), "unknown": set(), "exempt": set()} with input.flights as [_flight("/stairs/0", 1828800000), _flight("/stairs/1", 1828800001)]
		with data.figures as _figures
}

_kind(word) := {"at": ["/stairs/0"], "stringer_kind": {"value": word, "at": ["/stairs/0/stringers/kind"]}}

test_limit_solid[name] if {
	some name, case in {
		"13 ft 3 in": [4038600000, false],
		"4038.61 mm": [4038610000, true],
	}
	_said == {
		"readings": {{
			"at": ["/stairs/0/tread_depth"], "have": case[0], "figure": "solid", "limit": 4038600000,
			"outside": case[1], "kind": "solid",
		}},
		"unknown": set(), "exempt": set(),
	} with input.flights as [object.union(_kind("solid"), {"stringer_run": {"value": case[0], "at": ["/stairs/0/tread_depth"]}})]
		with data.figures as _figures
}

test_run_not_shown if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0"], "needs": "stairs[].tread_depth"}}, "exempt": set()} with input.flights as [_kind("cut")]
		with data.figures as _figures
}

test_kind_without_figure if {
	_said == {
		"readings": set(), "unknown": set(),
		"exempt": {{"at": ["/stairs/0/stringers/kind"], "because": "other", "kind": "steel"}},
	} with input.flights as [_kind("steel")]
		with data.figures as _figures
}
