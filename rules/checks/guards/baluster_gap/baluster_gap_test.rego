package checks.guards.baluster_gap_test

import data.checks.guards.baluster_gap

_said(guards) := result if {
	result := {"readings": baluster_gap.readings, "unknown": baluster_gap.unknown} with input as {"guards": guards}
		with data.figures as {"guards": {"baluster_gap": {"min_share": {"rise": 1, "run": 2}}}}
}

_bare(n) := {
	"at": [sprintf("/guards/%d", [n])], "edges": ["front"], "drop_partial": false,
	"infill_kind": {"value": "balusters", "at": ["/guards/0/infill/kind"]},
}

_opening := {"opening": {"value": 95250000, "at": ["/guards/0/infill/opening"]}} # 3-3/4 in

_width := {"baluster_width": {"value": 31750000, "at": ["/guards/0/infill/baluster_width"]}}

_guard(n, gap) := object.union_n([_bare(n), _opening, _width, {"last_gap": {"value": gap, "at": [sprintf("/guards/%d/posts/max_spacing", [n])]}}])

_reading(n, gap, outside) := {
	"at": [sprintf("/guards/%d/posts/max_spacing", [n])],
	"have": {"rise": gap, "run": 95250000},
	"figure": "min_share", "limit": {"rise": 1, "run": 2},
	"outside": outside, "gap": gap, "opening": 95250000,
}

test_last_gap_against_half_the_opening if {
	half := 47625000 # 1-7/8 in, 47.625 mm
	every case in [[half - 396875, true], [half - 10000, true], [half, false], [half + 396875, false], [half + 10000, false]] {
		_said([_guard(0, case[0])]) == {"readings": {_reading(0, case[0], case[1])}, "unknown": set()}
	}
}

test_half_of_an_odd_opening_is_exact if {
	odd := object.union(_guard(0, 47625000), {"opening": {"value": 95250001, "at": ["/o"]}})
	[row.outside | some row in _said([odd]).readings] == [true]
}

test_missing_values_are_asked_for_one_at_a_time if {
	every case in [
		[_bare(0), "guards[].infill.opening"],
		[object.union(_bare(0), _opening), "guards[].infill.baluster_width"],
		[object.union_n([_bare(0), _opening, _width]), "guards[].posts.max_spacing"],
	] {
		_said([case[0]]) == {"readings": set(), "unknown": {{"at": ["/guards/0"], "needs": case[1]}}}
	}
}

test_one_bad_of_two if {
	_said([_guard(0, 50000000), _guard(1, 10000000)]) == {
		"readings": {_reading(0, 50000000, false), _reading(1, 10000000, true)},
		"unknown": set(),
	}
}

test_other_infill_has_no_last_gap if {
	cables := object.union(_bare(0), {"infill_kind": {"value": "cables", "at": ["/guards/0/infill/kind"]}})
	not baluster_gap.applies with input as {"guards": [cables]}
	_said([cables]) == {"readings": set(), "unknown": set()}
}

test_no_subject_no_check if {
	not baluster_gap.applies with input as {"guards": []}
	baluster_gap.applies with input as {"guards": [_bare(0)]}
	_said([]) == {"readings": set(), "unknown": set()}
}
