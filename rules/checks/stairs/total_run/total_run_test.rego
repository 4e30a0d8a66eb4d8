package checks.stairs.total_run_test

import data.checks.stairs.total_run as check

# 1/4 in
_figures := {"stairs": {"total_run": {"tolerance": 6350000}}}

_said(runs) := result if {
	result := {"readings": check.readings, "unknown": check.unknown} with input.stated_runs as runs
		with data.figures as _figures
}

_run(at, apart) := {
	"at": [at], "stair": "ST1", "missing": [],
	"stated": {"value": 1524000000, "at": [at]},
	"derived": {"value": 1524000000 + apart, "at": ["/stairs/0/tread_depth"]},
	"difference": {"value": apart, "at": [at]},
}

_reading(at, apart, outside) := {
	"at": [at], "have": apart, "figure": "tolerance", "limit": 6350000, "outside": outside,
	"stated": 1524000000, "derived": 1524000000 + apart,
}

test_limit[name] if {
	some name, case in {
		"none": [0, false],
		"15/64 in": [5953125, false],
		"6.34 mm": [6340000, false],
		"1/4 in": [6350000, false],
		"6.36 mm": [6360000, true],
		"17/64 in": [6746875, true],
	}
	_said([_run("/stairs/0/total_run", case[0])]) == {
		"readings": {_reading("/stairs/0/total_run", case[0], case[1])},
		"unknown": set(),
	}
}

test_one_of_two_is_outside if {
	_said([_run("/stairs/0/flights/0/total_run", 6350000), _run("/stairs/0/flights/1/total_run", 6350001)]) == {
		"readings": {
			_reading("/stairs/0/flights/0/total_run", 6350000, false),
			_reading("/stairs/0/flights/1/total_run", 6350001, true),
		},
		"unknown": set(),
	}
}

test_steps_not_shown if {
	_said([{"at": ["/stairs/0/total_run"], "stair": "ST1", "missing": ["stairs[].tread_depth"], "stated": {"value": 1524000000, "at": ["/stairs/0/total_run"]}}]) == {
		"readings": set(),
		"unknown": {{"at": ["/stairs/0/total_run"], "needs": "stairs[].tread_depth"}},
	}
}

test_nothing_stated if {
	not check.applies with input.stated_runs as []
	check.applies with input.stated_runs as [_run("/stairs/0/total_run", 0)]
	_said([]) == {"readings": set(), "unknown": set()}
}
