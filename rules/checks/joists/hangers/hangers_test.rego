package checks.joists.hangers_test

import data.checks.joists.hangers

_under(required, members) := result if {
	result := {"readings": hangers.readings, "unknown": hangers.unknown, "exempt": hangers.exempt} with input as {"joined": members}
		with data.figures as {"joists": {"hangers": {"required": required}}}
}

_said(members) := _under(true, members)

_shown(path, value) := {"value": value, "at": [path]}

_joists(on_ledger, on_flush) := {"at": ["/joists"], "on_ledger": on_ledger, "on_flush": on_flush}

_hung(at_ledger, at_flush) := object.union(_joists(true, true), {"hangers_at_ledger": _shown("/ledger", at_ledger), "hangers_at_flush": _shown("/flush", at_flush)})

_row(at, have, outside, where) := {"at": [at], "have": have, "figure": "required", "limit": true, "outside": outside, "where": where}

_reading(rows) := {"readings": rows, "unknown": set(), "exempt": set()}

test_hangers_at_each_face if {
	_said([_hung(true, true)]) == _reading({_row("/ledger", true, false, "ledger"), _row("/flush", true, false, "flush beam")})
	_said([_hung(false, true)]) == _reading({_row("/ledger", false, true, "ledger"), _row("/flush", true, false, "flush beam")})
	_said([_hung(true, false)]) == _reading({_row("/ledger", true, false, "ledger"), _row("/flush", false, true, "flush beam")})
}

test_set_that_does_not_ask if {
	rows := _under(false, [_hung(false, true)]).readings
	object.union(_row("/ledger", false, false, "ledger"), {"limit": false}) in rows
}

test_joists_that_rest_at_the_ledger if {
	resting := object.union(_joists(true, false), {"bearing_at_ledger": _shown("/strip", 1)})
	every more in [{}, {"hangers_at_ledger": _shown("/ledger", false)}] {
		_said([object.union(resting, more)]) == {
			"readings": set(), "unknown": set(),
			"exempt": {{"at": ["/strip"], "because": "bearing", "where": "ledger"}},
		}
	}
	_said([object.union(resting, {"hangers_at_ledger": _shown("/ledger", true)})]) == _reading({_row("/ledger", true, false, "ledger")})
}

test_hangers_not_shown if {
	_said([_joists(true, true)]) == {"readings": set(), "exempt": set(), "unknown": {
		{"at": ["/joists"], "needs": "platforms[].joists.hangers.at_ledger"},
		{"at": ["/joists"], "needs": "platforms[].joists.hangers.at_flush_beams"},
	}}
}

test_joists_that_end_at_no_face if {
	every members in [[], [_joists(false, false)]] {
		not hangers.applies with input as {"joined": members}
		_said(members) == _reading(set())
	}
	hangers.applies with input as {"joined": [_joists(true, false)]}
	hangers.applies with input as {"joined": [_joists(false, true)]}
}
