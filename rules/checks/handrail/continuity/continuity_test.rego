package checks.handrail.continuity_test

import data.checks.handrail.continuity as check

_figures(own) := {"handrail": {"continuity": own, "required": {"from": 4, "sides": 1}}}

_both := _figures({"continuous": true, "ended": true})

_said := {"readings": check.readings, "unknown": check.unknown, "exempt": check.exempt}

_shown(at) := {"at": [at], "present": true, "risers": {"value": 4, "at": ["/stairs/0/risers"]}}

_flag(at, field, value) := {field: {"value": value, "at": [concat("/", [at, field])]}}

_rail(at, continuous, returns) := object.union_n([
	_shown(at),
	_flag(at, "continuous", continuous),
	_flag(at, "returns", returns),
])

_runs(at, continuous) := {
	"at": [concat("/", [at, "continuous"])], "have": continuous,
	"figure": "continuous", "limit": true, "outside": continuous == false,
}

_ends(at, returns) := {
	"at": [concat("/", [at, "returns"])], "have": returns,
	"figure": "ended", "limit": true, "outside": returns == false, "say": {true: "ended", false: "free"}[returns],
}

test_flags[name] if {
	some name, case in {
		"both": [true, true],
		"broken": [false, true],
		"free ends": [true, false],
		"neither": [false, false],
	}
	_said == {
		"readings": {_runs("/stairs/0/handrail", case[0]), _ends("/stairs/0/handrail", case[1])},
		"unknown": set(), "exempt": set(),
	} with input.handrails as [_rail("/stairs/0/handrail", case[0], case[1])]
		with data.figures as _both
}

test_not_shown[name] if {
	some name, case in {
		"both": [[], set(), {"continuous", "returns"}],
		"ends": [
			[_flag("/stairs/0/handrail", "continuous", true)],
			{_runs("/stairs/0/handrail", true)}, {"returns"},
		],
		"run": [
			[_flag("/stairs/0/handrail", "returns", true)],
			{_ends("/stairs/0/handrail", true)}, {"continuous"},
		],
	}
	_said == {
		"readings": case[1], "exempt": set(),
		"unknown": {{"at": ["/stairs/0/handrail"], "needs": concat(".", ["stairs[].handrail", field])} | some field in case[2]},
	} with input.handrails as [object.union_n(array.concat([_shown("/stairs/0/handrail")], case[0]))]
		with data.figures as _both
}

test_set_asks_for_one_of_them[name] if {
	some name, case in {
		"run, ends left out": [{"continuous": true}, {_runs("/stairs/0/handrail", false)}],
		"run, ends refused": [{"continuous": true, "ended": false}, {_runs("/stairs/0/handrail", false)}],
		"ends": [{"continuous": false, "ended": true}, {_ends("/stairs/0/handrail", false)}],
	}
	_said == {"readings": case[1], "unknown": set(), "exempt": set()} with input.handrails as [_rail("/stairs/0/handrail", false, false)]
		with data.figures as _figures(case[0])
}

test_left_alone[name] if {
	some name, case in {
		"few risers": [
			{"at": ["/stairs/0"], "present": true, "risers": {"value": 3, "at": ["/stairs/0/risers"]}},
			{"at": ["/stairs/0"], "because": "few", "risers": 3, "from": 4},
		],
		"none shown": [{"at": ["/stairs/0"], "present": false}, {"at": ["/stairs/0"], "because": "none"}],
	}
	_said == {"readings": set(), "unknown": set(), "exempt": {case[1]}} with input.handrails as [case[0]]
		with data.figures as _both
}

test_no_stair_described if {
	not check.applies with input.handrails as []
	_said == {"readings": set(), "unknown": set(), "exempt": set()} with input.handrails as []
		with data.figures as _both
}

test_one_of_two_is_outside if {
	check.applies with input.handrails as [_shown("/stairs/0/handrail")]
	_said == {
		"readings": {
			_runs("/stairs/0/handrail", true), _ends("/stairs/0/handrail", true),
			_runs("/stairs/1/handrail", false), _ends("/stairs/1/handrail", true),
		},
		"unknown": set(), "exempt": set(),
	} with input.handrails as [_rail("/stairs/0/handrail", true, true), _rail("/stairs/1/handrail", false, true)]
		with data.figures as _both
}

test_set_asks_for_neither[name] if {
	some name, figures in {"left out": {"continuous": false}, "refused": {"continuous": false, "ended": false}}
	_said == {
		"readings": set(), "unknown": set(),
		"exempt": {{"at": ["/stairs/0/handrail"], "because": "not_asked"}},
	} with input.handrails as [_rail("/stairs/0/handrail", false, false)]
		with data.figures as _figures(figures)
}
