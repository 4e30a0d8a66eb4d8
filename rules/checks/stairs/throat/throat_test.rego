package checks.stairs.throat_test

import data.checks.stairs.throat as check

# 5 in
_figures := {"stairs": {"throat": {"min": 127000000}}}

_said := {"readings": check.readings, "unknown": check.unknown, "exempt": check.exempt}

_flight(at, value) := {"at": [at], "throat": {"value": value, "at": [concat("/", [at, "stringers/size"])]}, "stringer_kind": {"value": "cut", "at": [concat("/", [at, "stringers", "kind"])]}}

_readings(at, value, outside) := {
	{"at": [concat("/", [at, "stringers/size"])], "have": value, "figure": "min", "limit": 127000000, "outside": outside},
}

test_limit[name] if {
	some name, case in {
		"4-63/64 in": [126603125, true],
		"126.99 mm": [126990000, true],
		"5 in": [127000000, false],
		"127 mm": [127000000, false],
		"127.01 mm": [127010000, false],
		"5-1/64 in": [127396875, false],
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
	check.applies with input.flights as [_flight("/stairs/0", 127000000)]
	_said == {"readings": (_readings("/stairs/0", 127000000, false) | _readings("/stairs/1", 126999999, true)), "unknown": set(), "exempt": set()} with input.flights as [_flight("/stairs/0", 127000000), _flight("/stairs/1", 126999999)]
		with data.figures as _figures
}

_kind(word) := {"at": ["/stairs/0"], "stringer_kind": {"value": word, "at": ["/stairs/0/stringers/kind"]}}

_size := {"stringer_size": {"value": "2x12", "at": ["/stairs/0/stringers/size"]}}

test_uncut if {
	_said == {
		"readings": set(), "unknown": set(),
		"exempt": {{"at": ["/stairs/0/stringers/kind"], "because": "uncut", "kind": "solid"}},
	} with input.flights as [_kind("solid")]
		with data.figures as _figures
}

test_size_not_shown if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0"], "needs": "stairs[].stringers.size"}}, "exempt": set()} with input.flights as [_kind("cut")]
		with data.figures as _figures
}

test_step_not_shown if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0"], "needs": "stairs[].tread_depth"}}, "exempt": set()} with input.flights as [object.union(_kind("cut"), _size)]
		with data.figures as _figures
}
