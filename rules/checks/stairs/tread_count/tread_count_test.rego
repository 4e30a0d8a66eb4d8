package checks.stairs.tread_count_test

import data.checks.stairs.tread_count as check

_figures(tolerance) := {"stairs": {"tread_count": {"tolerance": tolerance}}}

_said := {"readings": check.readings, "unknown": check.unknown, "exempt": check.exempt}

# Twelve risers ask for eleven treads.
_flight(at, treads) := {
	"at": [at],
	"risers": {"value": 12, "at": [concat("/", [at, "risers"])]},
	"treads": {"value": treads, "at": [concat("/", [at, "treads"])]},
	"treads_expected": {"value": 11, "at": [concat("/", [at, "risers"])]},
}

_reading(at, treads, outside) := {
	"at": [concat("/", [at, "treads"])], "have": treads,
	"figure": "tolerance", "limit": 11, "outside": outside, "risers": 12,
}

test_count[name] if {
	some name, case in {
		"two missing": [9, 0, true],
		"one missing": [10, 0, true],
		"as many as asked for": [11, 0, false],
		"one too many": [12, 0, true],
		"one missing of one allowed": [10, 1, false],
		"one too many of one allowed": [12, 1, false],
		"two missing of one allowed": [9, 1, true],
	}
	_said == {"readings": {_reading("/stairs/0", case[0], case[2])}, "unknown": set(), "exempt": set()} with input.flights as [_flight("/stairs/0", case[0])]
		with data.figures as _figures(case[1])
}

test_not_counted if {
	_said == {"readings": set(), "unknown": set(), "exempt": {{"at": ["/stairs/0"], "because": "not_counted"}}} with input.flights as [{"at": ["/stairs/0"]}]
		with data.figures as _figures(0)
}

test_risers_not_shown if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0"], "needs": "stairs[].risers"}}, "exempt": set()} with input.flights as [object.remove(_flight("/stairs/0", 11), ["risers", "treads_expected"])]
		with data.figures as _figures(0)
}

test_none_described if {
	not check.applies with input.flights as []
	_said == {"readings": set(), "unknown": set(), "exempt": set()} with input.flights as []
		with data.figures as _figures(0)
}

test_one_of_two_is_outside if {
	check.applies with input.flights as [_flight("/stairs/0", 11)]
	_said == {
		"readings": {_reading("/stairs/0", 11, false), _reading("/stairs/1", 9, true)},
		"unknown": set(), "exempt": set(),
	} with input.flights as [_flight("/stairs/0", 11), _flight("/stairs/1", 9)]
		with data.figures as _figures(0)
}
