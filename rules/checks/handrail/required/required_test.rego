package checks.handrail.required_test

import data.checks.handrail.required as check

_figures(sides) := {"handrail": {"required": {"from": 4, "sides": sides}}}

_said := {"readings": check.readings, "unknown": check.unknown, "exempt": check.exempt}

_risers(n) := {"risers": {"value": n, "at": ["/stairs/0/risers"]}}

_none(at, risers) := object.union(_risers(risers), {"at": [at], "present": false})

_shown(at, risers) := object.union(_risers(risers), {"at": [at], "present": true})

_on(at, risers, sides) := object.union(_shown(at, risers), {"sides": {"value": sides, "at": [concat("/", [at, "sides"])]}})

_reading(at, risers, have, sides, say) := {
	"at": [at], "have": have, "figure": "sides", "limit": sides, "outside": have < sides,
	"say": say, "risers": risers, "from": 4,
}

test_from_so_many_risers[name] if {
	some name, case in {
		"three": [3, set(), {{"at": ["/stairs/0"], "because": "few", "risers": 3, "from": 4}}],
		"four": [4, {_reading("/stairs/0", 4, 0, 1, "outside")}, set()],
		"five": [5, {_reading("/stairs/0", 5, 0, 1, "outside")}, set()],
	}
	_said == {"readings": case[1], "unknown": set(), "exempt": case[2]} with input.handrails as [_none("/stairs/0", case[0])]
		with data.figures as _figures(1)
}

test_sides[name] if {
	some name, case in {
		"none of one": [_on("/stairs/0/handrail", 4, 0), 0, 1],
		"one of one": [_on("/stairs/0/handrail", 4, 1), 1, 1],
		"two of one": [_on("/stairs/0/handrail", 4, 2), 2, 1],
		"not told of one": [_shown("/stairs/0/handrail", 4), 1, 1],
		"one of two": [_on("/stairs/0/handrail", 4, 1), 1, 2],
		"two of two": [_on("/stairs/0/handrail", 4, 2), 2, 2],
	}
	_said == {
		"readings": {_reading("/stairs/0/handrail", 4, case[1], case[2], "sides")},
		"unknown": set(), "exempt": set(),
	} with input.handrails as [case[0]]
		with data.figures as _figures(case[2])
}

test_sides_not_told_of_two if {
	_said == {
		"readings": set(), "exempt": set(),
		"unknown": {{"at": ["/stairs/0/handrail"], "needs": "stairs[].handrail.sides"}},
	} with input.handrails as [_shown("/stairs/0/handrail", 4)]
		with data.figures as _figures(2)
}

test_risers_not_shown[name] if {
	some name, present in {"handrail": true, "none": false}
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0"], "needs": "stairs[].risers"}}, "exempt": set()} with input.handrails as [{"at": ["/stairs/0"], "present": present}]
		with data.figures as _figures(1)
}

test_no_stair_described if {
	not check.applies with input.handrails as []
	_said == {"readings": set(), "unknown": set(), "exempt": set()} with input.handrails as []
		with data.figures as _figures(1)
}

test_one_of_two_is_outside if {
	check.applies with input.handrails as [_none("/stairs/1", 7)]
	_said == {
		"readings": {
			_reading("/stairs/0/handrail", 7, 1, 1, "sides"),
			_reading("/stairs/1", 7, 0, 1, "outside"),
		},
		"unknown": set(), "exempt": set(),
	} with input.handrails as [_on("/stairs/0/handrail", 7, 1), _none("/stairs/1", 7)]
		with data.figures as _figures(1)
}

_other := {"handrail": {"required": {"rise_from": 1000, "sides": 1}}}

_rises(value) := {"at": ["/stairs/0"], "present": false, "rise": {"value": value, "at": ["/stairs/0/total_rise"]}}

test_from_so_much_rise[name] if {
	some name, case in {
		"under": [999, set(), {{"at": ["/stairs/0"], "because": "low", "rise": 999, "rise_from": 1000}}],
		"at": [1000, {{"at": ["/stairs/0"], "have": 0, "figure": "sides", "limit": 1, "outside": true, "say": "rise", "rise": 1000, "rise_from": 1000}}, set()],
	}
	_said == {"readings": case[1], "unknown": set(), "exempt": case[2]} with input.handrails as [_rises(case[0])]
		with data.figures as _other
}

test_rise_not_shown if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0"], "needs": "stairs[].total_rise"}}, "exempt": set()} with input.handrails as [{"at": ["/stairs/0"], "present": false}]
		with data.figures as _other
}

test_asked_for_on_every_stair if {
	_said == {
		"readings": {{"at": ["/stairs/0"], "have": 0, "figure": "sides", "limit": 1, "outside": true, "say": "none"}},
		"unknown": set(), "exempt": set(),
	} with input.handrails as [{"at": ["/stairs/0"], "present": false}]
		with data.figures as {"handrail": {"required": {"sides": 1}}}
}
