package checks.guards.stair_required_test

import data.checks.guards.stair_required

_figures := {"guards": {"stair_required": {"trigger": 762000000}}}

_limit := 762000000 # 30 in, 762 mm

_steps := [
	396875, # 1/64 in
	10000, # 0.01 mm
]

_said(subjects) := result if {
	result := {"readings": stair_required.readings, "unknown": stair_required.unknown} with input as {"stair_guards": subjects, "stairs": [{"at": ["/stairs/0"]}, {"at": ["/stairs/1"]}]}
		with data.figures as _figures
}

_subject(n, value) := object.union(_bare(n), {"drop": {"value": value, "at": [_place(n)]}})

_bare(n) := {"at": [sprintf("/stairs/%d", [n])], "stair": "ST1", "present": false}

_place(n) := sprintf("/stairs/%d/total_rise", [n])

_reading(n, value, outside) := {
	"at": [sprintf("/stairs/%d", [n]), _place(n)], "have": value,
	"figure": "trigger", "limit": _limit,
	"outside": outside, "say": {true: "outside", false: "within"}[outside],
}

test_beyond_the_limit_is_outside if {
	every step in _steps {
		_said([_subject(0, _limit + step)]) == {"readings": {_reading(0, _limit + step, true)}, "unknown": set()}
	}
}

test_at_the_limit_is_within if {
	_said([_subject(0, _limit)]) == {"readings": {_reading(0, _limit, false)}, "unknown": set()}
}

test_inside_the_limit_is_within if {
	every step in _steps {
		_said([_subject(0, _limit - step)]) == {"readings": {_reading(0, _limit - step, false)}, "unknown": set()}
	}
}

test_missing_value_is_not_shown if {
	_said([_bare(0)]) == {"readings": set(), "unknown": {{"at": [sprintf("/stairs/%d", [0])], "needs": "stairs[].total_rise"}}}
}

test_one_bad_of_two if {
	_said([_subject(0, _limit - 10000), _subject(1, _limit + 10000)]) == {
		"readings": {_reading(0, _limit - 10000, false), _reading(1, _limit + 10000, true)},
		"unknown": set(),
	}
}

test_the_edge_comes_second if {
	stair := {
		"at": ["/stairs/0"], "stair": "ST1", "present": false,
		"drop": {"value": 800000000, "at": ["/platforms/0/edges/front/drop", "/stairs/0/risers"]},
	}
	some reading in _said([stair]).readings
	reading.at == ["/stairs/0", "/platforms/0/edges/front/drop", "/stairs/0/risers"]
}

test_no_subject_no_check if {
	not stair_required.applies with input as {"stair_guards": []}
	stair_required.applies with input as {"stair_guards": [_bare(0)]}
	_said([]) == {"readings": set(), "unknown": set()}
}

test_guarded_stair_is_within_at_any_height if {
	guarded := {"at": ["/stairs/0/guard"], "stair": "ST1", "present": true}
	high := object.union(guarded, {"drop": {"value": 3048000000, "at": ["/stairs/0/total_rise"]}})
	every stair in [guarded, high] {
		_said([stair]) == {
			"readings": {{"at": ["/stairs/0/guard"], "figure": "trigger", "outside": false, "say": "guarded"}},
			"unknown": set(),
		}
	}
}

test_rise_without_risers_needs_the_risers if {
	doc := {
		"stairs": [{"at": ["/stairs/0"], "total_rise": {"value": 1219200000, "at": ["/stairs/0/total_rise"]}}],
		"stair_guards": [_bare(0)],
	}
	stair_required.unknown == {{"at": ["/stairs/0"], "needs": "stairs[].risers"}} with input as doc
		with data.figures as _figures
}

test_height_from_which_a_guard_is_asked_for if {
	every value, outside in {999990000: false, 1000000000: true} {
		stair_required.readings == {{
			"at": ["/stairs/0", _place(0)], "have": value, "figure": "from", "limit": 1000000000,
			"outside": outside, "say": {true: "outside_from", false: "within_from"}[outside],
		}} with input.stair_guards as [_subject(0, value)]
			with data.figures as {"guards": {"stair_required": {"from": 1000000000}}}
	}
}
