package checks.posts.footing_test

import data.checks.posts.footing

_under(required, members) := result if {
	result := {"readings": footing.readings, "unknown": footing.unknown, "exempt": footing.exempt} with input as {"posts": members}
		with data.figures as {"posts": {"footing": {"required": required}}}
}

_at := ["/platforms/0/beams/0/posts_at/0"]

_on := {"at": _at, "has_footing": true}

_off := {"at": _at, "has_footing": false}

_in_soil := object.union(_off, {"base_kind": {"value": "embedded in soil", "at": ["/kind"]}})

_row := {"at": _at, "have": true, "figure": "required", "limit": true, "outside": false}

_bad := {"at": ["/kind"], "have": false, "figure": "required", "limit": true, "outside": true}

test_post_with_a_footing if _under(true, [_on]) == {"readings": {_row}, "unknown": set(), "exempt": set()}

test_post_without_one_is_not_shown if {
	_under(true, [_off]) == {"readings": set(), "exempt": set(), "unknown": {{"at": ["/platforms/0"], "needs": "platforms[].footings"}}}
}

test_post_set_in_soil_without_one_is_outside if {
	_under(true, [_in_soil]) == {"readings": {_bad}, "unknown": set(), "exempt": set()}
}

test_set_that_does_not_ask if {
	every post in [_off, _in_soil] {
		_under(false, [post]) == {"readings": set(), "unknown": set(), "exempt": {{"at": _at, "because": "free"}}}
	}
}

test_one_bad_of_two if _under(true, [_on, _in_soil]).readings == {_row, _bad}

test_no_subject_no_check if {
	not footing.applies with input as {"posts": []}
	footing.applies with input as {"posts": [_on]}
	_under(true, []) == {"readings": set(), "unknown": set(), "exempt": set()}
}
