package checks.scope.tall_post_test

import data.checks.scope.tall_post

_max := 4267200000 # 14 ft

_said(members) := result if {
	result := {"readings": tall_post.readings, "unknown": tall_post.unknown} with input as {"posts": members}
		with data.figures as {"scope": {"tall_post": {"max": _max}}}
}

_bare(missing) := {"at": ["/platforms/0/beams/0/posts_at/0"], "missing": missing}

_post(value) := object.union(_bare([]), {"height": {"value": value, "at": ["/height"]}})

_row(have, outside) := {"at": ["/height"], "have": have, "figure": "max", "limit": _max, "outside": outside}

test_over_at_and_under_the_limit if {
	every case in [[396875, true], [10000, true], [0, false], [-10000, false], [-396875, false]] {
		_said([_post(_max + case[0])]) == {"readings": {_row(_max + case[0], case[1])}, "unknown": set()}
	}
}

test_height_not_shown if {
	every case in [[[], "platforms[].grade_at"], [["platforms[].joists.size"], "platforms[].joists.size"]] {
		_said([_bare(case[0])]) == {"readings": set(), "unknown": {{"at": ["/platforms/0"], "needs": case[1]}}}
	}
}

test_one_bad_of_two if _said([_post(_max), _post(_max + 1)]).readings == {_row(_max, false), _row(_max + 1, true)}

test_no_subject_no_check if {
	not tall_post.applies with input as {"posts": []}
	tall_post.applies with input as {"posts": [_post(1)]}
	_said([]) == {"readings": set(), "unknown": set()}
}
