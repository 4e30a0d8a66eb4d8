package checks.joists.midspan_blocking_test

import data.checks.joists.midspan_blocking

_always := {"basis": "clear span", "max": 2100000000}

_slender := {"basis": "span to center", "max": 2500000000, "slender": {"rise": 4, "run": 1}}

_said(figures, spans) := result if {
	result := {"readings": midspan_blocking.readings, "unknown": midspan_blocking.unknown, "exempt": midspan_blocking.exempt} with input as {"joist_spans": spans}
		with data.figures as {"joists": {"midspan_blocking": figures}}
}

_bare := {"at": ["/joists", "/beam"], "joists": ["/joists"], "from": "ledger", "to": "B1", "missing": ["platforms[].beams"]}

_span(value) := object.union(_bare, {"clear_span": {"value": value, "at": ["/clear"]}, "span_to_center": {"value": value, "at": ["/center"]}})

_blocked(is) := {"blocked": {"value": is, "at": ["/blocking"]}}

_size(thickness, depth) := {"thickness": {"value": thickness, "at": ["/size"]}, "depth": {"value": depth, "at": ["/size"]}}

_row(at, have, limit, say) := {
	"at": at, "have": have, "figure": "max", "limit": limit, "outside": say == "outside", "say": say,
	"from": "ledger", "to": "B1",
}

_only(row) := {"readings": {row}, "unknown": set(), "exempt": set()}

_asks(field) := {"readings": set(), "exempt": set(), "unknown": {{"at": ["/joists"], "needs": field}}}

test_span_at_and_over_the_limit if {
	_said(_always, [_span(2100000000)]) == _only(_row(["/clear"], 2100000000, 2100000000, "within"))
	_said(_always, [object.union(_span(2100010000), _blocked(false))]) == _only(_row(["/clear", "/blocking"], 2100010000, 2100000000, "outside"))
	_said(_always, [object.union(_span(2100010000), _blocked(true))]) == _only(_row(["/clear", "/blocking"], 2100010000, 2100000000, "blocked"))
}

test_only_slender_joists_are_asked_for_it if {
	long := object.union(_span(2500010000), _blocked(false))
	_said(_slender, [object.union(long, _size(45000000, 180000000))]) == _only(_row(["/center", "/blocking"], 2500010000, 2500000000, "outside"))
	_said(_slender, [object.union(long, _size(45000000, 179990000))]) == {
		"readings": set(), "unknown": set(),
		"exempt": {{"at": ["/joists"], "because": "stocky", "depth": 179990000, "thickness": 45000000}},
	}
	_said(_slender, [long]) == _asks("platforms[].joists.size")
	_said(_slender, [object.union(_span(2500010000), _blocked(true))]).unknown == set()
}

test_what_is_not_shown if {
	_said(_always, [_span(2100010000)]) == _asks("platforms[].joists.blocking")
	_said(_always, [_bare]) == _asks("platforms[].beams")
}

test_one_bad_of_two if {
	{row.outside | some row in _said(_always, [_span(1), object.union(_span(2100010000), _blocked(false))]).readings} == {false, true}
}

test_no_subject_no_check if {
	not midspan_blocking.applies with input as {"joist_spans": []}
	midspan_blocking.applies with input as {"joist_spans": [_bare]}
	_said(_always, []) == {"readings": set(), "unknown": set(), "exempt": set()}
}
