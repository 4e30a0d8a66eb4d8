package checks.ledger.flashing_metal_test

import data.checks.ledger.flashing_metal

_said(ledgers) := result if {
	result := {"readings": flashing_metal.readings, "unknown": flashing_metal.unknown, "exempt": flashing_metal.exempt} with input as {"ledgers": ledgers}
		with data.figures as {"ledger": {"flashing_metal": {"refused": ["aluminum"]}}}
}

_shown(path, value) := {"value": value, "at": [path]}

_bare := {"at": ["/ledger"], "flashing_present": _shown("/present", true)}

_of(what, treated) := object.union(_bare, {"flashing_material": _shown("/of", what), "treated_lumber": _shown("/treated", treated)})

_row(have, outside) := {"at": ["/of"], "have": have, "figure": "refused", "outside": outside}

_reading(row) := {"readings": {row}, "unknown": set(), "exempt": set()}

_asked(needs) := {"readings": set(), "exempt": set(), "unknown": {{"at": ["/ledger"], "needs": needs}}}

test_metal_on_treated_lumber if {
	_said([_of("Aluminum", true)]) == _reading(_row("Aluminum", true))
	_said([_of("copper", true)]) == _reading(_row("copper", false))
}

test_untreated_lumber_is_left_alone if {
	every ledger in [_of("aluminum", false), object.remove(_of("aluminum", false), ["flashing_material"])] {
		_said([ledger]) == {"readings": set(), "unknown": set(), "exempt": {{"at": ["/ledger"], "because": "untreated"}}}
	}
}

test_treatment_is_asked_for_only_where_it_decides if {
	_said([object.remove(_of("aluminum", true), ["treated_lumber"])]) == _asked("lumber.<name>.treated")
	_said([object.remove(_of("copper", true), ["treated_lumber"])]) == _reading(_row("copper", false))
}

test_material_not_shown if _said([_bare]) == _asked("platforms[].ledger.flashing.material")

test_one_bad_of_two if _said([_of("copper", true), _of("aluminum", true)]).readings == {_row("copper", false), _row("aluminum", true)}

test_no_flashing_no_check if {
	every ledgers in [[], [{"at": ["/ledger"]}], [object.union(_bare, {"flashing_present": _shown("/present", false)})]] {
		not flashing_metal.applies with input as {"ledgers": ledgers}
		_said(ledgers) == {"readings": set(), "unknown": set(), "exempt": set()}
	}
	flashing_metal.applies with input as {"ledgers": [_bare]}
}
