package checks.guards.climbable_test

import data.checks.guards.climbable

_required := {"trigger": 600000000}

_anywhere := {"band_from": 140000000, "band_to": 900000000, "kinds": ["horizontal rails"]}

_high := object.union(_anywhere, {"above": 4200000000})

_plain := {"kinds": ["horizontal rails"]}

_toes := {"kinds": ["horizontal rails"], "toehold": 15000000}

_said(figures, guards) := result if {
	result := {"readings": climbable.readings, "unknown": climbable.unknown, "exempt": climbable.exempt} with input as {"guards": guards}
		with data.figures as {"guards": {"climbable": figures, "required": _required}}
}

_guard(drop, infill) := object.union(
	{"at": ["/guards/0"], "footholds": [], "drops": [{"out": 0, "field": "drop", "partial": false, "drop": {"value": drop, "at": ["/drop"]}}]},
	infill,
)

_undropped(infill) := object.union({"at": ["/guards/0"], "footholds": [], "drops": []}, infill)

_kind(word) := {"infill_kind": {"value": word, "at": ["/kind"]}}

_flag(is) := {"climbable": {"value": is, "at": ["/climbable"]}}

_footholds(heights) := {"footholds": [{"value": height, "at": ["/foothold"]} | some height in heights]}

_only(row) := {"readings": {row}, "unknown": set(), "exempt": set()}

_asks(field) := {"readings": set(), "exempt": set(), "unknown": {{"at": ["/guards/0"], "needs": field}}}

_alone(row) := {"readings": set(), "unknown": set(), "exempt": {object.union({"at": ["/guards/0"]}, row)}}

_foothold(height, figure, outside) := {
	"at": ["/foothold"], "have": height, "figure": figure, "limit": _anywhere[figure],
	"outside": outside, "say": "foothold", "from": 140000000, "to": 900000000,
}

test_foothold_in_the_band_is_outside if {
	every case in [
		[139990000, "band_from", false],
		[140000000, "band_from", true],
		[520000000, "band_from", true],
		[520010000, "band_to", true],
		[900000000, "band_to", true],
		[900010000, "band_to", false],
	] {
		[height, figure, outside] := case
		_said(_anywhere, [_guard(1000000000, _footholds([height]))]) == _only(_foothold(height, figure, outside))
	}
}

test_each_foothold_is_held_against_the_band if {
	_said(_anywhere, [_guard(1000000000, object.union(_kind("horizontal rails"), _footholds([100000000, 300000000])))]) == {
		"readings": {_foothold(100000000, "band_from", false), _foothold(300000000, "band_from", true)},
		"unknown": set(), "exempt": set(),
	}
}

test_footholds_count_above_a_drop if {
	climbed := object.union(_kind("horizontal rails"), _footholds([300000000]))
	_said(_high, [_guard(4200010000, climbed)]) == _only(_foothold(300000000, "band_from", true))
	_said(_high, [_guard(4200000000, climbed)]) == _alone({"because": "modest", "drop": 4200000000, "trigger": 4200000000})
	_said(_high, [_undropped(climbed)]) == _asks("platforms[].edges.<edge>.drop")
	_said(_high, [_undropped(_flag(false))]) == _only({"at": ["/climbable"], "figure": "kinds", "outside": false, "say": "none"})
}

test_footholds_count_at_any_drop_where_the_set_says_so if {
	climbed := object.union(_kind("horizontal rails"), _footholds([300000000]))
	any_drop := object.union(_high, {"any_drop": true})
	every guard in [_guard(600010000, climbed), _undropped(climbed)] {
		_said(any_drop, [guard]) == _only(_foothold(300000000, "band_from", true))
	}
	_said(object.union(_high, {"any_drop": false}), [_guard(600010000, climbed)]) == _alone({"because": "modest", "drop": 600010000, "trigger": 4200000000})
}

test_level_rails_can_be_climbed if {
	row := {"at": ["/kind"], "figure": "kinds", "outside": true, "say": "kind", "kind": "horizontal rails"}
	every figures in [_anywhere, _plain] {
		_said(figures, [_guard(1000000000, object.union(_kind("horizontal rails"), _flag(false)))]) == _only(row)
	}
	every figures in [_anywhere, _plain] {
		_said(figures, [_guard(1000000000, _kind("balusters"))]) == _only({
			"at": ["/kind"], "figure": "kinds",
			"outside": false, "say": "other", "kind": "balusters",
		})
	}
}

test_gap_between_rails_that_gives_no_toehold if {
	every gap, outside in {14990000: false, 15000000: true} {
		opening := {"opening": {"value": gap, "at": ["/opening"]}}
		_said(_toes, [_guard(1000000000, object.union(_kind("horizontal rails"), opening))]) == _only({
			"at": ["/opening"], "have": gap, "figure": "toehold", "limit": 15000000, "outside": outside, "say": "toehold",
		})
	}
	_said(_toes, [_guard(1000000000, _kind("horizontal rails"))]) == _asks("guards[].infill.opening")
}

test_infill_said_to_be_climbable if {
	climbed := object.union(_kind("mesh"), _flag(true))
	every figures in [_anywhere, _plain] {
		_said(figures, [_guard(1000000000, climbed)]) == _only({"at": ["/climbable"], "figure": "kinds", "outside": true})
	}
	_said(_anywhere, [_guard(1000000000, object.union(climbed, _footholds([100000000])))]) == _only(_foothold(100000000, "band_from", false))
}

test_what_is_not_shown_is_asked_for if {
	every figures in [_anywhere, _plain] {
		_said(figures, [_guard(1000000000, {})]) == _asks("guards[].infill.kind")
	}
}

test_guards_that_are_left_alone if {
	_said(_plain, [_guard(600000000, _kind("horizontal rails"))]) == _alone({"because": "low", "drop": 600000000, "trigger": 600000000})
	_said(_plain, [_guard(600010000, _kind("none"))]) == _alone({"because": "bare"})
}

test_one_bad_of_two if {
	{row.outside | some row in _said(_plain, [_guard(1000000000, _kind("balusters")), _guard(1000000000, _kind("horizontal rails"))]).readings} == {false, true}
}

test_no_subject_no_check if {
	not climbable.applies with input as {"guards": []}
	climbable.applies with input as {"guards": [_undropped({})]}
	_said(_plain, []) == {"readings": set(), "unknown": set(), "exempt": set()}
}
