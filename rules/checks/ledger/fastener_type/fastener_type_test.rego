package checks.ledger.fastener_type_test

import data.checks.ledger.fastener_type

_half := 12700000 # 1/2 in

_figures := {"accepted": ["lag screw", "bolt"], "listed": ["structural screw"], "min_diameter": _half}

_said(ledgers) := result if {
	result := {"readings": fastener_type.readings, "unknown": fastener_type.unknown, "exempt": fastener_type.exempt} with input as {"ledgers": ledgers}
		with data.figures as {"ledger": {"fastener_type": _figures}}
}

_of(kind) := {"at": ["/ledger"], "fastener_type": {"value": kind, "at": ["/type"]}}

_thick(kind, diameter) := object.union(_of(kind), {"fastener_diameter": {"value": diameter, "at": ["/diameter"]}})

_kind(have, outside) := {"at": ["/type"], "have": have, "figure": "accepted", "limit": _figures.accepted, "outside": outside}

_row(have, outside) := {"at": ["/diameter"], "have": have, "figure": "min_diameter", "limit": _half, "outside": outside, "say": "diameter"}

_asked(field) := {{"at": ["/ledger"], "needs": concat(".", ["platforms[].ledger.fasteners", field])}}

test_diameter_under_at_and_over_the_limit if {
	every kind in _figures.accepted {
		every case in [[-396875, true], [-10000, true], [0, false], [10000, false], [396875, false]] {
			have := _half + case[0]
			_said([_thick(kind, have)]) == {"readings": {_kind(kind, false), _row(have, case[1])}, "unknown": set(), "exempt": set()}
		}
	}
}

test_kinds_that_are_not_accepted if {
	_said([_thick("nail", _half)]) == {"readings": {_kind("nail", true)}, "unknown": set(), "exempt": set()}
}

test_kinds_with_a_listing_of_their_own if {
	_said([_of("structural screw")]) == {"readings": set(), "unknown": _asked("listing"), "exempt": set()}
	shown := object.union(_of("structural screw"), {"fastener_listing": {"value": "ER-1", "at": ["/listing"]}})
	_said([shown]) == {
		"readings": set(), "unknown": set(),
		"exempt": {{"at": ["/type"], "because": "listed", "fastener": "structural screw", "listing": "ER-1"}},
	}
}

test_missing_values_are_not_shown if {
	every ledger in [{"at": ["/ledger"]}, _of("unknown")] {
		_said([ledger]) == {"readings": set(), "unknown": _asked("type"), "exempt": set()}
	}
	_said([_of("bolt")]) == {"readings": {_kind("bolt", false)}, "unknown": _asked("diameter"), "exempt": set()}
}

test_one_bad_of_two if {
	_said([_thick("bolt", _half), _of("nail")]).readings == {_kind("bolt", false), _row(_half, false), _kind("nail", true)}
}

test_no_subject_no_check if {
	not fastener_type.applies with input as {"ledgers": []}
	fastener_type.applies with input as {"ledgers": [_of("bolt")]}
	_said([]) == {"readings": set(), "unknown": set(), "exempt": set()}
}
