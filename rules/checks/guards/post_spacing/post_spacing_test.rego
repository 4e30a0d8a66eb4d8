package checks.guards.post_spacing_test

import data.checks.guards.post_spacing

_max := 1828800000 # 6 ft

_said(guards) := result if {
	result := {"readings": post_spacing.readings, "unknown": post_spacing.unknown} with input as {"guards": guards}
		with data.figures as {"guards": {"post_spacing": {"max": _max}}}
}

_guard(value) := {"at": ["/guards/0"], "post_spacing": {"value": value, "at": ["/guards/0/posts/max_spacing"]}}

_row(have, outside) := {"at": ["/guards/0/posts/max_spacing"], "have": have, "figure": "max", "limit": _max, "outside": outside}

test_over_at_and_under_the_limit if {
	every case in [[396875, true], [10000, true], [0, false], [-10000, false], [-396875, false]] {
		_said([_guard(_max + case[0])]) == {"readings": {_row(_max + case[0], case[1])}, "unknown": set()}
	}
}

test_not_shown if {
	_said([{"at": ["/guards/0"]}]) == {"readings": set(), "unknown": {{"at": ["/guards/0"], "needs": "guards[].posts.max_spacing"}}}
}

test_one_bad_of_two if _said([_guard(_max), _guard(_max + 1)]).readings == {_row(_max, false), _row(_max + 1, true)}

test_no_subject_no_check if {
	not post_spacing.applies with input as {"guards": []}
	post_spacing.applies with input as {"guards": [_guard(1)]}
	_said([]) == {"readings": set(), "unknown": set()}
}
