package checks.ledger.point_load_test

import data.checks.ledger.point_load

_asked(ledgers) := result if {
	result := point_load.unknown with input as {"ledgers": ledgers}
		with data.figures as {"ledger": {"point_load": {"refused": ["beam"]}}}
}

_said(ledgers) := result if {
	result := point_load.readings with input as {"ledgers": ledgers}
		with data.figures as {"ledger": {"point_load": {"refused": ["beam"]}}}
}

_ledger(loads) := {"at": ["/ledger"], "point_loads": [{"at": [path], "what": what} | some path, what in loads]}

_row(at, have, outside) := {"at": [at], "have": have, "figure": "refused", "outside": outside}

test_what_may_rest_there_and_what_not if {
	_said([_ledger({"/a": "beam"})]) == {_row("/a", "beam", true)}
	_said([_ledger({"/a": "trimmer"})]) == {_row("/a", "trimmer", false)}
}

test_what_it_is_not_shown if {
	_said([_ledger({"/a": ""})]) == set()
	_asked([_ledger({"/a": "", "/b": "beam"})]) == {{"at": ["/a"], "needs": "platforms[].ledger.point_loads[].what"}}
}

test_one_bad_of_two if {
	_said([_ledger({"/a": "beam", "/b": "trimmer"}), _ledger({"/c": "beam"})]) == {
		_row("/a", "beam", true), _row("/b", "trimmer", false),
		_row("/c", "beam", true),
	}
}

test_no_load_no_check if {
	every ledgers in [[], [_ledger({})]] {
		not point_load.applies with input as {"ledgers": ledgers}
		_said(ledgers) == set()
		_asked(ledgers) == set()
	}
	point_load.applies with input as {"ledgers": [_ledger({"/a": "stair"})]}
}
