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
