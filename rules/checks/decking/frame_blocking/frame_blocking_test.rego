package checks.decking.frame_blocking_test

import data.checks.decking.frame_blocking

_said(boards) := result if {
	result := {"readings": frame_blocking.readings, "unknown": frame_blocking.unknown} with input as {"decking": boards}
		with data.figures as {"decking": {"frame_blocking": {"blocking": true}}}
}

_bare(n) := {"at": [_place(n)], "platform": "A", "picture_frame": true}

_place(n) := sprintf("/platforms/%d/decking", [n])

_at(n) := [concat("/", [_place(n), "picture_frame/blocking"])]

_framed(n, blocked) := object.union(_bare(n), {"frame_blocking": {"value": blocked, "at": _at(n)}})

_reading(n, blocked) := {
	"at": _at(n), "have": blocked,
	"figure": "blocking", "limit": true, "outside": blocked == false,
}

test_border_with_and_without_blocking if {
	_said([_framed(0, true)]) == {"readings": {_reading(0, true)}, "unknown": set()}
	_said([_framed(0, false)]) == {"readings": {_reading(0, false)}, "unknown": set()}
	_reading(0, false).outside
}

test_missing_value_is_not_shown if {
	_said([_bare(0)]) == {"readings": set(), "unknown": {{"at": ["/platforms/0/decking"], "needs": "platforms[].decking.picture_frame.blocking"}}}
}

test_one_bad_of_two if {
	_said([_framed(0, true), _framed(1, false)]) == {"readings": {_reading(0, true), _reading(1, false)}, "unknown": set()}
}

test_no_border_no_check if {
	plain := object.union(_bare(0), {"picture_frame": false})
	not frame_blocking.applies with input as {"decking": []}
	not frame_blocking.applies with input as {"decking": [plain]}
	frame_blocking.applies with input as {"decking": [_bare(0)]}
	_said([plain]) == {"readings": set(), "unknown": set()}
}
