package checks.ledger.substrate_test

import data.checks.ledger.substrate

_figures := {
	"refused": ["brick veneer"], "weak": ["chimney"], "walls": ["concrete wall"],
	"refused_floors": ["open-web trusses"], "overhanging": false,
}

_under(figures, ledgers) := result if {
	result := {"readings": substrate.readings, "unknown": substrate.unknown} with input as {"ledgers": ledgers, "house": {"at": ["/house"]}}
		with data.figures as {"ledger": {"substrate": figures}}
}

_said(ledgers) := _under(_figures, ledgers)

_shown(path, value) := {"value": value, "at": [path]}

_on(what) := {"at": ["/ledger"], "attached_to": _shown("/to", what)}

_framed(floor, overhanging) := object.union(_on("house_rim"), {"floor": _shown("/floor", floor), "cantilevered_floor": _shown("/overhang", overhanging)})

_to(figure, have, outside) := {"at": ["/to"], "have": have, "figure": figure, "outside": outside}

_floor(have, outside, say) := {"at": ["/floor"], "have": have, "figure": "refused_floors", "outside": outside, "say": say}

_overhang(have, outside, say) := {"at": ["/overhang"], "have": have, "figure": "overhanging", "limit": false, "outside": outside, "say": say}

_sound := {_to("refused", "house_rim", false), _floor("joists", false, "framed"), _overhang(false, false, "supported")}

test_sound_rim if _said([_framed("joists", false)]) == {"readings": _sound, "unknown": set()}

test_what_carries_nothing if {
	_said([_on("brick veneer")]) == {"readings": {_to("refused", "brick veneer", true)}, "unknown": set()}
	_said([_on("chimney")]) == {"readings": {_to("weak", "chimney", true)}, "unknown": set()}
}

test_word_in_both_lists_is_refused_once if {
	both := object.union(_figures, {"weak": ["brick veneer"]})
	_under(both, [_on("brick veneer")]).readings == {_to("refused", "brick veneer", true)}
}

test_set_without_further_words if {
	figures := object.remove(_figures, ["weak"])
	_to("refused", "chimney", false) in _under(figures, [_on("chimney")]).readings
}

test_wall_that_carries_whatever_the_floor if {
	_said([_on("concrete wall")]) == {"readings": {_to("refused", "concrete wall", false)}, "unknown": set()}
}

test_floor_behind_the_rim if {
	_said([_framed("open-web trusses", false)]).readings == {
		_to("refused", "house_rim", false),
		_floor("open-web trusses", true, "floor"), _overhang(false, false, "supported"),
	}
	_said([_framed("joists", true)]).readings == {
		_to("refused", "house_rim", false),
		_floor("joists", false, "framed"), _overhang(true, true, "overhanging"),
	}
}

test_set_that_accepts_an_overhanging_floor if {
	figures := object.union(_figures, {"overhanging": true})
	object.union(_overhang(true, false, "overhanging"), {"limit": true}) in _under(figures, [_framed("joists", true)]).readings
}

_clad(veneer, removed) := object.union(_framed("joists", false), {"veneer": _shown("/veneer", veneer), "cladding_removed": _shown("/off", removed)})

_on_veneer(outside, say) := {"at": ["/veneer", "/off"], "have": "brick veneer", "figure": "refused", "outside": outside, "say": say}

_of_house(field) := {{"at": ["/house"], "needs": field}}

test_veneer_on_the_wall_behind_the_rim if {
	_said([_clad("brick", false)]) == {"readings": (_sound | {_on_veneer(true, "veneer")}), "unknown": set()}
	_said([_clad("brick", true)]) == {"readings": (_sound | {_on_veneer(false, "bared")}), "unknown": set()}
	plain := {"at": ["/veneer"], "have": "none", "figure": "refused", "outside": false, "say": "plain"}
	_said([_clad("none", false)]) == {"readings": (_sound | {plain}), "unknown": set()}
	_said([_clad("stone", false)]) == {"readings": _sound, "unknown": set()}
}

test_what_is_not_shown_of_veneer if {
	_said([object.remove(_clad("brick", false), ["cladding_removed"])]) == {"readings": _sound, "unknown": _of_house("house.cladding_removed_at_ledger")}
	_said([_clad("unknown", false)]) == {"readings": _sound, "unknown": _of_house("house.veneer")}
}

test_wall_that_is_refused_asks_for_no_veneer if {
	every veneer in ["brick", "none", "unknown"] {
		ledger := object.union(_on("brick veneer"), {"veneer": _shown("/veneer", veneer)})
		_said([ledger]) == {"readings": {_to("refused", "brick veneer", true)}, "unknown": set()}
	}
}

test_missing_values_are_not_shown if {
	_said([{"at": ["/platforms/0"]}]) == {"readings": set(), "unknown": {
		{"at": ["/platforms/0"], "needs": "platforms[].ledger.attached_to"},
		{"at": ["/house"], "needs": "house.floor"},
		{"at": ["/house"], "needs": "house.cantilevered_floor"},
	}}
	_said([object.union(_framed("unknown", false), {"attached_to": _shown("/to", "unknown")})]) == {
		"readings": {_overhang(false, false, "supported")},
		"unknown": {{"at": ["/ledger"], "needs": "platforms[].ledger.attached_to"}, {"at": ["/house"], "needs": "house.floor"}},
	}
}

test_one_bad_of_two if {
	_said([_framed("joists", false), _on("chimney")]).readings == _sound | {_to("weak", "chimney", true)}
}

test_no_subject_no_check if {
	not substrate.applies with input as {"ledgers": []}
	substrate.applies with input as {"ledgers": [_on("chimney")]}
	_said([]) == {"readings": set(), "unknown": set()}
}
