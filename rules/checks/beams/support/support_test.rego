package checks.beams.support_test

import data.checks.beams.support

_under(two, beams) := result if {
	result := {"readings": support.readings, "unknown": support.unknown} with input as {"beams": beams}
		with data.figures as {"beams": {"support": {"two": two}}}
}

_beam(supported) := {"at": ["/beam"], "mark": "B1", "supported": supported}

_posted(supported, posts) := object.union(_beam(supported), {"posts": {"value": posts, "at": ["/beam/posts_at"]}})

_row(supported, two, outside) := {"at": ["/beam"], "have": supported, "figure": "two", "limit": two, "outside": outside, "beam": "B1"}

test_two_supports_or_more if {
	_under(true, [_posted(true, 3)]) == {"readings": {object.union(_row(true, true, false), {"posts": 3})}, "unknown": set()}
}

test_fewer_than_two if {
	_under(true, [_posted(false, 1)]) == {"readings": {object.union(_row(false, true, true), {"posts": 1})}, "unknown": set()}
}

test_end_supports_without_posts if {
	_under(true, [_beam(true)]) == {"readings": {_row(true, true, false)}, "unknown": set()}
}

test_posts_not_shown if {
	_under(true, [_beam(false)]) == {"readings": set(), "unknown": {{"at": ["/beam"], "needs": "platforms[].beams[].posts_at"}}}
}

test_set_that_does_not_ask if {
	_under(false, [_posted(false, 1)]).readings == {object.union(_row(false, false, false), {"posts": 1})}
}

test_one_bad_of_two if {
	_under(true, [_posted(true, 2), _posted(false, 1)]).readings == {
		object.union(_row(true, true, false), {"posts": 2}),
		object.union(_row(false, true, true), {"posts": 1}),
	}
}

test_no_subject_no_check if {
	not support.applies with input as {"beams": []}
	support.applies with input as {"beams": [_beam(true)]}
	_under(true, []) == {"readings": set(), "unknown": set()}
}
