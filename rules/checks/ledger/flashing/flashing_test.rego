package checks.ledger.flashing_test

import data.checks.ledger.flashing

_under(required, ledgers) := result if {
	result := {"readings": flashing.readings, "unknown": flashing.unknown} with input as {"ledgers": ledgers}
		with data.figures as {"ledger": {"flashing": {"required": required}}}
}

_ledger(present) := {"at": ["/ledger"], "flashing_present": {"value": present, "at": ["/present"]}}

_row(have, limit, outside) := {"at": ["/present"], "have": have, "figure": "required", "limit": limit, "outside": outside}

test_present_or_not if {
	_under(true, [_ledger(true)]) == {"readings": {_row(true, true, false)}, "unknown": set()}
	_under(true, [_ledger(false)]) == {"readings": {_row(false, true, true)}, "unknown": set()}
}

test_set_that_does_not_ask if _under(false, [_ledger(false)]).readings == {_row(false, false, false)}

test_not_shown if {
	_under(true, [{"at": ["/ledger"]}]) == {"readings": set(), "unknown": {{"at": ["/ledger"], "needs": "platforms[].ledger.flashing.present"}}}
}

test_one_bad_of_two if _under(true, [_ledger(true), _ledger(false)]).readings == {_row(true, true, false), _row(false, true, true)}

test_no_subject_no_check if {
	not flashing.applies with input as {"ledgers": []}
	flashing.applies with input as {"ledgers": [{"at": ["/ledger"]}]}
	_under(true, []) == {"readings": set(), "unknown": set()}
}
