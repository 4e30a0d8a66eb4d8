package checks.stairs.width_at_rails_test

import data.checks.stairs.width_at_rails as check

# 31-1/2 in
_figures := {"stairs": {"width_at_rails": {"one_rail": 800100000, "two_rails": 685800000}}}

_said := {"readings": check.readings, "unknown": check.unknown, "exempt": check.exempt}

_stair(at, value) := {"at": [at], "width_at_rails": {"value": value, "at": [concat("/", [at, "clear_width_at_handrail"])]}, "rail_sides": {"value": 1, "at": [concat("/", [at, "handrail", "sides"])]}}

_readings(at, value, outside) := {
	{"at": [concat("/", [at, "clear_width_at_handrail"])], "have": value, "figure": "one_rail", "limit": 800100000, "outside": outside, "sides": 1},
}

test_limit[name] if {
	some name, case in {
		"31-31/64 in": [799703125, true],
		"800.09 mm": [800090000, true],
		"31-1/2 in": [800100000, false],
		"800.1 mm": [800100000, false],
		"800.11 mm": [800110000, false],
		"31-33/64 in": [800496875, false],
	}
	_said == {"readings": _readings("/stairs/0", case[0], case[1]), "unknown": set(), "exempt": set()} with input.stairs as [_stair("/stairs/0", case[0])]
		with data.figures as _figures
}

test_not_shown if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0"], "needs": "stairs[].handrail.sides"}}, "exempt": set()} with input.stairs as [{"at": ["/stairs/0"]}]
		with data.figures as _figures
}

test_none_described if {
	not check.applies with input.stairs as []
	_said == {"readings": set(), "unknown": set(), "exempt": set()} with input.stairs as []
		with data.figures as _figures
}

test_one_of_two_is_outside if {
	check.applies with input.stairs as [_stair("/stairs/0", 800100000)]
	_said == {"readings": (_readings("/stairs/0", 800100000, false) | _readings("/stairs/1", 800099999, true)), "unknown": set(), "exempt": set()} with input.stairs as [_stair("/stairs/0", 800100000), _stair("/stairs/1", 800099999)]
		with data.figures as _figures
}

_sides(n) := {"rail_sides": {"value": n, "at": ["/stairs/0/handrail/sides"]}}

test_limit_two_rails[name] if {
	some name, case in {
		"26-63/64 in": [685403125, true],
		"685.79 mm": [685790000, true],
		"27 in": [685800000, false],
		"685.8 mm": [685800000, false],
		"27-1/64 in": [686196875, false],
	}
	_said == {
		"readings": {{
			"at": ["/stairs/0/width"], "have": case[0], "figure": "two_rails", "limit": 685800000,
			"outside": case[1], "sides": 2,
		}},
		"unknown": set(), "exempt": set(),
	} with input.stairs as [object.union(_sides(2), {
		"at": ["/stairs/0"], "width_at_rails": {"value": case[0], "at": ["/stairs/0/width"]},
	})]
		with data.figures as _figures
}

test_no_handrail[name] if {
	some name, stair in {
		"none": {"at": ["/stairs/0"]},
		"on no side": object.union(_sides(0), {"at": ["/stairs/0"]}),
	}
	_said == {"readings": set(), "unknown": set(), "exempt": {{"at": ["/stairs/0"], "because": "no_rail"}}} with input.stairs as [stair]
		with input.handrails as [{"at": ["/stairs/0"], "present": false}]
		with data.figures as _figures
}

test_width_at_the_rails_not_shown[name] if {
	some name, n in {"one": 1, "two": 2}
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0"], "needs": "stairs[].clear_width_at_handrail"}}, "exempt": set()} with input.stairs as [object.union(_sides(n), {"at": ["/stairs/0"]})]
		with input.handrails as [{"at": ["/stairs/0/handrail"], "present": true}]
		with data.figures as _figures
}
