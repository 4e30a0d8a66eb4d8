package checks.joists.ties_test

import data.checks.joists.ties

_under(required, members) := result if {
	result := {"readings": ties.readings, "unknown": ties.unknown, "exempt": ties.exempt} with input as {"joined": members}
		with data.figures as {"joists": {"ties": {"required": required}}}
}

_joists(on_dropped) := {"at": ["/joists"], "on_dropped": on_dropped}

_tied(value) := object.union(_joists(true), {"beam_ties": {"value": value, "at": ["/ties"]}})

_row(have, limit, outside) := {"at": ["/ties"], "have": have, "figure": "required", "limit": limit, "outside": outside}

test_tied_or_not if {
	_under(true, [_tied(true)]) == {"readings": {_row(true, true, false)}, "unknown": set(), "exempt": set()}
	_under(true, [_tied(false)]) == {"readings": {_row(false, true, true)}, "unknown": set(), "exempt": set()}
}

test_set_that_does_not_ask if _under(false, [_tied(false)]).readings == {_row(false, false, false)}

test_not_shown if {
	_under(true, [_joists(true)]) == {"readings": set(), "exempt": set(), "unknown": {{"at": ["/joists"], "needs": "platforms[].joists.beam_ties"}}}
}

test_joists_on_no_beam_are_left_alone if {
	_under(true, [_tied(true), _joists(false)]) == {
		"readings": {_row(true, true, false)}, "unknown": set(),
		"exempt": {{"at": ["/joists"], "because": "none"}},
	}
}

test_one_bad_of_two if _under(true, [_tied(true), _tied(false)]).readings == {_row(true, true, false), _row(false, true, true)}

test_no_subject_no_check if {
	not ties.applies with input as {"joined": []}
	not ties.applies with input as {"joined": [_joists(false)]}
	ties.applies with input as {"joined": [_joists(false), _joists(true)]}
	_under(true, []) == {"readings": set(), "unknown": set(), "exempt": set()}
}
