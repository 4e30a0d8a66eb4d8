package checks.stairs.lighting_test

import data.checks.stairs.lighting as check

_figures(needed) := {"stairs": {"lighting": {"needed": needed}}}

_said := {"readings": check.readings, "unknown": check.unknown, "exempt": check.exempt}

_stair(at, lit) := {"at": [at], "lighting": {"value": lit, "at": [concat("/", [at, "lighting"])]}}

_reading(at, lit, outside) := {
	"at": [concat("/", [at, "lighting"])], "have": lit,
	"figure": "needed", "limit": true, "outside": outside,
}

test_lit_and_unlit if {
	check.applies with input.stairs as [_stair("/stairs/0", true)]
	_said == {
		"readings": {_reading("/stairs/0", true, false), _reading("/stairs/1", false, true)},
		"unknown": set(), "exempt": set(),
	} with input.stairs as [_stair("/stairs/0", true), _stair("/stairs/1", false)]
		with data.figures as _figures(true)
}

test_not_shown if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0"], "needs": "stairs[].lighting"}}, "exempt": set()} with input.stairs as [{"at": ["/stairs/0"]}]
		with data.figures as _figures(true)
}

test_set_asks_for_none[name] if {
	some name, stair in {
		"lit": _stair("/stairs/0", true),
		"unlit": _stair("/stairs/0", false),
		"not shown": {"at": ["/stairs/0"]},
	}
	_said == {"readings": set(), "unknown": set(), "exempt": {{"at": ["/stairs/0"], "because": "not_asked"}}} with input.stairs as [stair]
		with data.figures as _figures(false)
}

test_none_described if {
	not check.applies with input.stairs as []
	_said == {"readings": set(), "unknown": set(), "exempt": set()} with input.stairs as []
		with data.figures as _figures(true)
}
