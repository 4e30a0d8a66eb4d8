package checks.stairs.pitch_test

import data.checks.stairs.pitch as check

_figures := {"stairs": {"pitch": {"max": 42000000}}} # 42 degrees

_said := {"readings": check.readings, "unknown": check.unknown}

_flight(at, value) := {"at": [at], "pitch": {"value": value, "at": [concat("/", [at, "tread_depth"])]}}

_reading(at, value, outside) := {
	"at": [concat("/", [at, "tread_depth"])], "have": value,
	"figure": "max", "limit": 42000000, "outside": outside,
}

test_limit[name] if {
	some name, case in {
		"a millionth of a degree under": [41999999, false],
		"42 degrees": [42000000, false],
		"a millionth of a degree over": [42000001, true],
	}
	_said == {"readings": {_reading("/stairs/0", case[0], case[1])}, "unknown": set()} with input.flights as [_flight("/stairs/0", case[0])]
		with data.figures as _figures
}

test_least_where_the_set_gives_one[name] if {
	some name, case in {
		"under": [19999999, true],
		"20 degrees": [20000000, false],
		"over": [20000001, false],
	}
	_said == {
		"readings": {
			_reading("/stairs/0", case[0], false),
			{
				"at": ["/stairs/0/tread_depth"], "have": case[0],
				"figure": "min", "limit": 20000000, "outside": case[1],
			},
		},
		"unknown": set(),
	} with input.flights as [_flight("/stairs/0", case[0])]
		with data.figures as {"stairs": {"pitch": {"max": 42000000, "min": 20000000}}}
}

test_not_shown if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0"], "needs": "stairs[].tread_depth"}}} with input.flights as [{"at": ["/stairs/0"]}]
		with data.figures as _figures
}

test_none_described if {
	not check.applies with input.flights as []
	_said == {"readings": set(), "unknown": set()} with input.flights as []
		with data.figures as _figures
}

test_one_of_two_is_outside if {
	check.applies with input.flights as [_flight("/stairs/0", 42000000)]
	_said == {
		"readings": {_reading("/stairs/0", 42000000, false), _reading("/stairs/1", 43000000, true)},
		"unknown": set(),
	} with input.flights as [_flight("/stairs/0", 42000000), _flight("/stairs/1", 43000000)]
		with data.figures as _figures
}

_of_uses := {"stairs": {"pitch": {"max": 37, "max_secondary": 41, "max_service": 47, "max_accessible": 32}}}

_by(figure, value, outside) := {{
	"at": ["/stairs/0/tread_depth"], "have": value, "figure": figure, "limit": _of_uses.stairs.pitch[figure], "outside": outside,
}}

test_use[use] if {
	some use, case in {"main": ["max", 37], "secondary": ["max_secondary", 41], "service": ["max_service", 47], "accessible": ["max_accessible", 32]}
	every value, outside in {case[1]: false, case[1] + 1: true} {
		_said == {"readings": _by(case[0], value, outside), "unknown": set()} with input.flights as [object.union(_flight("/stairs/0", value), {"use": {"value": use, "at": ["/stairs/0/use"]}})]
			with data.figures as _of_uses
	}
}

test_use_not_shown[name] if {
	some name, case in {
		"inside all": [37, _by("max", 37, false), set()],
		"between": [38, set(), {{"at": ["/stairs/0"], "needs": "stairs[].use"}}],
		"outside all": [48, _by("max_service", 48, true), set()],
	}
	_said == {"readings": case[1], "unknown": case[2]} with input.flights as [_flight("/stairs/0", case[0])]
		with data.figures as _of_uses
}
