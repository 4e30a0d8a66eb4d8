package checks.guards.post_fixing_test

import data.checks.guards.post_fixing

_figures := {"loose": ["bolts to rim joist only"], "refused": ["end grain", "screws or nails"], "notched": false, "notched_sizes": ["4x4"]}

_under(figures, guards) := result if {
	result := {"readings": post_fixing.readings, "unknown": post_fixing.unknown, "exempt": post_fixing.exempt} with input as {"guards": guards}
		with data.figures as {"guards": {"post_fixing": figures, "required": {"trigger": 762000000}}}
}

_said(guards) := _under(_figures, guards)

_bare(n) := {"at": [sprintf("/guards/%d", [n])], "edges": ["front"], "drops": []}

_at(n, field) := [sprintf("/guards/%d/posts/%s", [n, field])]

_fixed(n, way) := object.union(_bare(n), {"post_fixing": {"value": way, "at": _at(n, "fixing")}})

_notch(n, is) := {"post_notched": {"value": is, "at": _at(n, "notched")}}

_size(n, nominal) := {"post_size": {"value": nominal, "at": _at(n, "size")}}

_guard(n, way, is, nominal) := object.union(object.union(_fixed(n, way), _notch(n, is)), _size(n, nominal))

_good(n) := {"at": _at(n, "fixing"), "have": "hold-down to joist", "figure": "refused", "outside": false}

_whole(n) := {"at": _at(n, "notched"), "have": false, "figure": "notched", "limit": false, "outside": false, "say": "whole"}

_cut(n) := {"at": _at(n, "notched"), "have": true, "figure": "notched", "limit": false, "outside": true, "say": "notched"}

test_accepted_fixing_is_within if {
	_said([_guard(0, "hold-down to joist", false, "4x4")]) == {"readings": {_good(0), _whole(0)}, "unknown": set(), "exempt": set()}
}

test_refused_fixing_is_outside if {
	_said([_guard(0, "end grain", false, "4x4")]) == {
		"readings": {{"at": _at(0, "fixing"), "have": "end grain", "figure": "refused", "outside": true}, _whole(0)},
		"unknown": set(), "exempt": set(),
	}
}

test_fixing_to_a_member_that_rotates_is_outside if {
	_said([_guard(0, "bolts to rim joist only", false, "4x4")]) == {
		"readings": {{"at": _at(0, "fixing"), "have": "bolts to rim joist only", "figure": "loose", "outside": true, "say": "loose"}, _whole(0)},
		"unknown": set(), "exempt": set(),
	}
}

test_word_in_both_lists_is_said_once if {
	both := object.union(_figures, {"loose": ["end grain"]})
	_under(both, [_guard(0, "end grain", false, "4x4")]).readings == {
		{"at": _at(0, "fixing"), "have": "end grain", "figure": "loose", "outside": true, "say": "loose"},
		_whole(0),
	}
}

test_set_without_the_loose_list if {
	bare := {"refused": ["end grain"], "notched": false}
	_under(bare, [_guard(0, "hold-down to joist", true, "6x6")]) == {"readings": {_good(0), _cut(0)}, "unknown": set(), "exempt": set()}
}

test_notched_post_is_outside if {
	_said([_guard(0, "hold-down to joist", true, "4x4")]) == {"readings": {_good(0), _cut(0)}, "unknown": set(), "exempt": set()}
}

test_notch_that_the_set_allows_is_within if {
	allowing := object.union(_figures, {"notched": true})
	_under(allowing, [_guard(0, "hold-down to joist", true, "4x4")]).readings == {
		_good(0),
		{"at": _at(0, "notched"), "have": true, "figure": "notched", "limit": true, "outside": false, "say": "notched"},
	}
}

test_notched_larger_post_is_left_alone if {
	_said([_guard(0, "hold-down to joist", true, "6x6")]) == {
		"readings": {_good(0)}, "unknown": set(),
		"exempt": {{"at": _at(0, "notched"), "because": "large", "size": "6x6"}},
	}
}

test_notched_post_of_unknown_size_is_not_shown if {
	_said([object.union(_fixed(0, "hold-down to joist"), _notch(0, true))]) == {
		"readings": {_good(0)}, "exempt": set(),
		"unknown": {{"at": ["/guards/0"], "needs": "guards[].posts.size"}},
	}
}

test_missing_fixing_is_asked_for_once if {
	_said([_bare(0)]) == {
		"readings": set(), "exempt": set(),
		"unknown": {{"at": ["/guards/0"], "needs": "guards[].posts.fixing"}},
	}
}

test_fixing_that_says_nothing_is_not_shown if {
	every word in ["other", "unknown"] {
		_said([object.union(_fixed(0, word), _notch(0, false))]) == {
			"readings": {_whole(0)}, "exempt": set(),
			"unknown": {{"at": ["/guards/0"], "needs": "guards[].posts.fixing"}},
		}
	}
}

test_missing_notch_is_not_shown if {
	_said([_fixed(0, "hold-down to joist")]) == {
		"readings": {_good(0)}, "exempt": set(),
		"unknown": {{"at": ["/guards/0"], "needs": "guards[].posts.notched"}},
	}
	_said([object.union(_fixed(0, "hold-down to joist"), _size(0, "6x6"))]) == {"readings": {_good(0)}, "unknown": set(), "exempt": set()}
}

test_low_guard_is_left_alone if {
	low := object.union(_guard(0, "end grain", true, "4x4"), {"drops": [{"out": 0, "field": "drop", "partial": false, "drop": {"value": 762000000, "at": ["/d"]}}]})
	_said([low]) == {
		"readings": set(), "unknown": set(),
		"exempt": {{"at": ["/guards/0"], "because": "low", "drop": 762000000, "trigger": 762000000}},
	}
}

test_one_bad_of_two if {
	_said([_guard(0, "hold-down to joist", false, "4x4"), _guard(1, "hold-down to joist", true, "4x4")]) == {
		"readings": {_good(0), _whole(0), _good(1), _cut(1)},
		"unknown": set(), "exempt": set(),
	}
}

test_no_subject_no_check if {
	not post_fixing.applies with input as {"guards": []}
	post_fixing.applies with input as {"guards": [_bare(0)]}
	_said([]) == {"readings": set(), "unknown": set(), "exempt": set()}
}
