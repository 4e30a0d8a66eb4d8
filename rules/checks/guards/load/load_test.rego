package checks.guards.load_test

import data.checks.guards.load

_single := 889644323 # 200 lb in micronewtons

_infill := 222411081 # 50 lb in micronewtons

_said(guards) := result if {
	result := {"readings": load.readings, "unknown": load.unknown, "exempt": load.exempt} with input as {"guards": guards}
		with data.figures as {"guards": {"load": {"single": _single, "infill": _infill}, "required": {"trigger": 762000000}}}
}

_bare(n) := {"at": [sprintf("/guards/%d", [n])], "edges": ["front"], "drops": []}

_guard(n, single, infill) := object.union(_bare(n), {
	"listed_load": {"value": single, "at": [sprintf("/guards/%d/listed_load", [n])]},
	"infill_load": {"value": infill, "at": [sprintf("/guards/%d/infill_load", [n])]},
})

_readings(n, single, infill) := {
	{
		"at": [sprintf("/guards/%d/listed_load", [n])], "have": single,
		"figure": "single", "limit": _single,
		"outside": single < _single,
	},
	{
		"at": [sprintf("/guards/%d/infill_load", [n])], "have": infill,
		"figure": "infill", "limit": _infill,
		"outside": infill < _infill, "say": "infill",
	},
}

_outside(guards) := {row.figure | some row in _said(guards).readings; row.outside}

test_loads_over_at_and_under_the_limits if {
	_said([_guard(0, _single, _infill)]) == {"readings": _readings(0, _single, _infill), "unknown": set(), "exempt": set()}
	_outside([_guard(0, _single, _infill)]) == set()
	_outside([_guard(0, _single + 1, _infill + 1)]) == set()
	_outside([_guard(0, _single - 1, _infill)]) == {"single"}
	_outside([_guard(0, _single, _infill - 1)]) == {"infill"}
}

test_missing_values_are_not_shown if {
	_said([_bare(0)]) == {
		"readings": set(), "exempt": set(),
		"unknown": {
			{"at": ["/guards/0"], "needs": "guards[].listed_load"},
			{"at": ["/guards/0"], "needs": "guards[].infill_load"},
		},
	}
}

test_one_bad_of_two if {
	_said([_guard(0, _single, _infill), _guard(1, _single - 1, _infill)]) == {
		"readings": (_readings(0, _single, _infill) | _readings(1, _single - 1, _infill)),
		"unknown": set(), "exempt": set(),
	}
}

test_low_guard_is_left_alone if {
	low := object.union(_guard(0, 1, 1), {"drops": [{"out": 0, "field": "drop", "partial": false, "drop": {"value": 1, "at": ["/d"]}}]})
	_said([low]) == {
		"readings": set(), "unknown": set(),
		"exempt": {{"at": ["/guards/0"], "because": "low", "drop": 1, "trigger": 762000000}},
	}
}

test_no_subject_no_check if {
	not load.applies with input as {"guards": []}
	load.applies with input as {"guards": [_bare(0)]}
	_said([]) == {"readings": set(), "unknown": set(), "exempt": set()}
}

test_load_that_the_set_does_not_name_is_left_alone if {
	every name in ["single", "infill"] {
		result := {"readings": load.readings, "unknown": load.unknown} with input as {"guards": [_guard(0, 1, 1), _bare(1)]}
			with data.figures as {"guards": {"load": {name: 2}, "required": {"trigger": 762000000}}}
		{row.figure | some row in result.readings} == {name}
		count(result.unknown) == 1
	}
}
