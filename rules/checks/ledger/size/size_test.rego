package checks.ledger.size_test

import data.checks.ledger.size

_accepted := ["2x8", "2x10", "2x12"]

_said(ledgers) := result if {
	result := {"readings": size.readings, "unknown": size.unknown} with input as {"ledgers": ledgers}
		with data.figures as {"ledger": {"size": {"accepted": _accepted}}}
}

_ledger(value) := {"at": ["/ledger"], "size": {"value": value, "at": ["/ledger/size"]}}

_row(have, outside) := {"at": ["/ledger/size"], "have": have, "figure": "accepted", "limit": _accepted, "outside": outside}

test_accepted_and_other_sizes if {
	every case in [["2x8", false], ["2x10", false], ["2x12", false], ["2x6", true], ["45 mm x 190 mm", true]] {
		_said([_ledger(case[0])]) == {"readings": {_row(case[0], case[1])}, "unknown": set()}
	}
}

test_size_not_shown if {
	_said([{"at": ["/platforms/0"]}]) == {"readings": set(), "unknown": {{"at": ["/platforms/0"], "needs": "platforms[].ledger.size"}}}
}

test_one_bad_of_two if _said([_ledger("2x8"), _ledger("2x6")]).readings == {_row("2x8", false), _row("2x6", true)}

test_no_subject_no_check if {
	not size.applies with input as {"ledgers": []}
	size.applies with input as {"ledgers": [_ledger("2x8")]}
	_said([]) == {"readings": set(), "unknown": set()}
}
