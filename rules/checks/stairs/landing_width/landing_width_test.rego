package checks.stairs.landing_width_test

import data.checks.stairs.landing_width as check

_level := {"stairs": {"landing_width": {"past_stair": 0}}}

_said := {"readings": check.readings, "unknown": check.unknown}

# The stair is 36 in wide, 914.4 mm.
_landing(at, value) := {
	"at": [concat("/", [at, "landing_bottom"])], "where": "bottom",
	"width": {"value": value, "at": [concat("/", [at, "landing_bottom", "along"])]},
	"stair_width": {"value": 914400000, "at": [concat("/", [at, "width"])]},
}

_reading(at, value, limit, outside) := {
	"at": [concat("/", [at, "landing_bottom", "along"]), concat("/", [at, "width"])], "have": value,
	"figure": "past_stair", "limit": limit, "outside": outside, "where": "bottom",
}

test_as_wide_as_the_stair[name] if {
	some name, case in {
		"35-63/64 in": [914003125, true],
		"914.39 mm": [914390000, true],
		"36 in": [914400000, false],
		"914.4 mm": [914400000, false],
		"914.41 mm": [914410000, false],
		"36-1/64 in": [914796875, false],
	}
	_said == {"readings": {_reading("/stairs/0", case[0], 914400000, case[1])}, "unknown": set()} with input.landings as [_landing("/stairs/0", case[0])]
		with data.figures as _level
}

test_wider_than_the_stair[name] if {
	some name, case in {
		"100 mm more": [1014400000, false],
		"99.99 mm more": [1014390000, true],
	}
	_said == {"readings": {_reading("/stairs/0", case[0], 1014400000, case[1])}, "unknown": set()} with input.landings as [_landing("/stairs/0", case[0])]
		with data.figures as {"stairs": {"landing_width": {"past_stair": 100000000}}}
}

test_not_shown[name] if {
	some name, case in {
		"landing": [{"at": ["/stairs/0"], "where": "top", "width_field": "stairs[].landing_top.along"}, "stairs[].landing_top.along"],
		"width of the stair": [object.remove(_landing("/stairs/0", 914400000), ["stair_width"]), "stairs[].width"],
	}
	_said == {"readings": set(), "unknown": {{"at": case[0].at, "needs": case[1]}}} with input.landings as [case[0]]
		with data.figures as _level
}

test_none_described if {
	not check.applies with input.landings as []
	_said == {"readings": set(), "unknown": set()} with input.landings as []
		with data.figures as _level
}

test_one_of_two_is_outside if {
	check.applies with input.landings as [_landing("/stairs/0", 914400000)]
	_said == {
		"readings": {
			_reading("/stairs/0", 914400000, 914400000, false),
			_reading("/stairs/1", 900000000, 914400000, true),
		},
		"unknown": set(),
	} with input.landings as [_landing("/stairs/0", 914400000), _landing("/stairs/1", 900000000)]
		with data.figures as _level
}
