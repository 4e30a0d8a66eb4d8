package checks.ledger.drainage_gap_test

import data.checks.ledger.drainage_gap

_said(ledgers) := result if {
	result := {"readings": drainage_gap.readings, "unknown": drainage_gap.unknown} with input as {"ledgers": ledgers}
		with data.figures as {"ledger": {"drainage_gap": {"min": 12000000}}}
}

_ledger(n, gap) := {"at": [sprintf("/ledgers/%d", [n])], "gap_to_house": {"value": gap, "at": [sprintf("/gap/%d", [n])]}}

_row(n, gap, outside) := {"at": [sprintf("/gap/%d", [n])], "have": gap, "figure": "min", "limit": 12000000, "outside": outside}

test_at_and_under_the_limit if {
	_said([_ledger(0, 12000000), _ledger(1, 11990000)]) == {
		"readings": {_row(0, 12000000, false), _row(1, 11990000, true)}, "unknown": set(),
	}
}

test_not_shown if {
	_said([{"at": ["/ledgers/0"]}]) == {"readings": set(), "unknown": {{"at": ["/ledgers/0"], "needs": "platforms[].ledger.gap_to_house"}}}
}

test_no_ledger_no_check if {
	not drainage_gap.applies with input as {"ledgers": []}
	drainage_gap.applies with input as {"ledgers": [{"at": ["/ledgers/0"]}]}
	_said([]) == {"readings": set(), "unknown": set()}
}
