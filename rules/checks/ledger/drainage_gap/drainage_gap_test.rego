package checks.ledger.drainage_gap_test

import data.checks.ledger.drainage_gap

_said(ledgers) := result if {
	result := {"readings": drainage_gap.readings, "unknown": drainage_gap.unknown, "exempt": drainage_gap.exempt} with input as {"ledgers": ledgers}
		with data.figures as {"ledger": {"drainage_gap": {"min": 12000000}}}
}

_ledger(n, gap) := {"at": [sprintf("/ledgers/%d", [n])], "gap_to_house": {"value": gap, "at": [sprintf("/gap/%d", [n])]}}

_row(n, gap, outside) := {"at": [sprintf("/gap/%d", [n])], "have": gap, "figure": "min", "limit": 12000000, "outside": outside}

test_at_and_under_the_limit if {
	_said([_ledger(0, 12000000), _ledger(1, 11990000)]) == {
		"readings": {_row(0, 12000000, false), _row(1, 11990000, true)}, "unknown": set(), "exempt": set(),
	}
}

test_not_shown if {
	_said([{"at": ["/ledgers/0"]}]) == {"readings": set(), "unknown": {{"at": ["/ledgers/0"], "needs": "platforms[].ledger.gap_to_house"}}, "exempt": set()}
}

test_no_ledger_no_check if {
	not drainage_gap.applies with input as {"ledgers": []}
	drainage_gap.applies with input as {"ledgers": [{"at": ["/ledgers/0"]}]}
	_said([]) == {"readings": set(), "unknown": set(), "exempt": set()}
}

_clad(removed) := {"cladding_removed": {"value": removed, "at": ["/house/cladding_removed_at_ledger"]}}

test_cladding_that_is_taken_off if {
	every ledger in [_ledger(0, 0), {"at": ["/ledgers/0"]}] {
		_said([object.union(ledger, _clad(true))]) == {
			"readings": set(), "unknown": set(), "exempt": {{"at": ["/ledgers/0"], "because": "bare"}},
		}
	}
	_said([object.union(_ledger(0, 11990000), _clad(false))]) == {
		"readings": {_row(0, 11990000, true)}, "unknown": set(), "exempt": set(),
	}
}
