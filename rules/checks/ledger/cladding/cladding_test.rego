package checks.ledger.cladding_test

import data.checks.ledger.cladding

_under(removed, ledgers) := result if {
	result := {"readings": cladding.readings, "unknown": cladding.unknown, "exempt": cladding.exempt} with input as {"ledgers": ledgers, "house": {"at": ["/house"]}}
		with data.figures as {"ledger": {"cladding": {"removed": removed, "bare": ["concrete wall"]}}}
}

_bare := {"at": ["/ledger"]}

_ledger(removed) := object.union(_bare, {"cladding_removed": {"value": removed, "at": ["/removed"]}})

_row(have, limit, outside) := {"at": ["/removed"], "have": have, "figure": "removed", "limit": limit, "outside": outside}

test_removed_or_not if {
	_under(true, [_ledger(true)]) == {"readings": {_row(true, true, false)}, "unknown": set(), "exempt": set()}
	_under(true, [_ledger(false)]) == {"readings": {_row(false, true, true)}, "unknown": set(), "exempt": set()}
}

test_set_that_does_not_ask if _under(false, [_ledger(false)]).readings == {_row(false, false, false)}

test_wall_without_cladding_is_left_alone if {
	wall := {"attached_to": {"value": "concrete wall", "at": ["/to"]}}
	every ledger in [_bare, _ledger(false)] {
		_under(true, [object.union(ledger, wall)]) == {
			"readings": set(), "unknown": set(),
			"exempt": {{"at": ["/ledger"], "because": "bare", "wall": "concrete wall"}},
		}
	}
}

test_not_shown if {
	_under(true, [_bare]) == {"readings": set(), "exempt": set(), "unknown": {{"at": ["/house"], "needs": "house.cladding_removed_at_ledger"}}}
}

test_one_bad_of_two if _under(true, [_ledger(true), _ledger(false)]).readings == {_row(true, true, false), _row(false, true, true)}

test_no_subject_no_check if {
	not cladding.applies with input as {"ledgers": []}
	cladding.applies with input as {"ledgers": [_bare]}
	_under(true, []) == {"readings": set(), "unknown": set(), "exempt": set()}
}
