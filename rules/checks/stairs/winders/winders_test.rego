package checks.stairs.winders_test

import data.checks.stairs.winders as check

# 10 in, 6 in
_figures := {"stairs": {"winders": {"walkline": 254000000, "narrowest": 152400000}}}

_said := {"readings": check.readings, "unknown": check.unknown}

_stair(at, walkline, narrowest) := {
	"at": [at], "winders": true,
	"winder_at_walkline": {"value": walkline, "at": [concat("", [at, "/w"])]},
	"winder_narrowest": {"value": narrowest, "at": [concat("", [at, "/n"])]},
}

_readings(at, walkline, narrowest, bad_walkline, bad_narrowest) := {
	{"at": [concat("", [at, "/w"])], "have": walkline, "figure": "walkline", "limit": 254000000, "outside": bad_walkline, "say": "walkline"},
	{"at": [concat("", [at, "/n"])], "have": narrowest, "figure": "narrowest", "limit": 152400000, "outside": bad_narrowest},
}

test_limits[name] if {
	some name, case in {
		"9-63/64 in and 6 in": [253603125, 152400000, true, false],
		"253.99 mm and 152.4 mm": [253990000, 152400000, true, false],
		"10 in and 6 in": [254000000, 152400000, false, false],
		"254.01 mm and 152.41 mm": [254010000, 152410000, false, false],
		"10 in and 5-63/64 in": [254000000, 152003125, false, true],
		"254 mm and 152.39 mm": [254000000, 152390000, false, true],
	}
	_said == {"readings": _readings("/stairs/0", case[0], case[1], case[2], case[3]), "unknown": set()} with input.stairs as [_stair("/stairs/0", case[0], case[1])]
		with data.figures as _figures
}

test_not_shown if {
	_said == {
		"readings": set(),
		"unknown": {
			{"at": ["/stairs/0"], "needs": "stairs[].winders.tread_depth_at_walkline"},
			{"at": ["/stairs/0"], "needs": "stairs[].winders.narrowest_tread_depth"},
		},
	} with input.stairs as [{"at": ["/stairs/0"], "winders": true}]
		with data.figures as _figures
}

test_straight_stair_is_left_alone if {
	not check.applies with input.stairs as [{"at": ["/stairs/0"], "winders": false}]
	not check.applies with input.stairs as []
}

test_one_of_two_is_outside if {
	check.applies with input.stairs as [_stair("/stairs/0", 254000000, 152400000)]
	_said == {"readings": (_readings("/stairs/0", 254000000, 152400000, false, false) | _readings("/stairs/1", 253999999, 152399999, true, true)), "unknown": set()} with input.stairs as [_stair("/stairs/0", 254000000, 152400000), _stair("/stairs/1", 253999999, 152399999)]
		with data.figures as _figures
}
