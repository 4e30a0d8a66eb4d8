package checks.ledger.rim_test

import data.checks.ledger.rim

_inch := 25400000

_figures := {
	"materials": ["solid sawn", "laminated veneer lumber"], "engineered": ["laminated veneer lumber"],
	"min_thickness": 38100000, "min_engineered": _inch, "refused": ["decayed"],
}

_said(ledgers) := result if {
	result := {"readings": rim.readings, "unknown": rim.unknown, "exempt": rim.exempt} with input as {"ledgers": ledgers, "house": {"at": ["/house"]}}
		with data.figures as {"ledger": {"rim": _figures}}
}

_shown(path, value) := {"value": value, "at": [path]}

_ledger(material, thickness, condition) := {
	"at": ["/ledger"], "attached_to": _shown("/to", "house_rim"), "rim_material": _shown("/material", material),
	"rim_thickness": _shown("/thick", thickness), "rim_condition": _shown("/condition", condition),
}

_sawn := _ledger("solid sawn", 38100000, "sound")

_material(have, outside) := {"at": ["/material"], "have": have, "figure": "materials", "limit": _figures.materials, "outside": outside}

_thick(figure, have, outside) := {"at": ["/thick"], "have": have, "figure": figure, "limit": _figures[figure], "outside": outside, "say": "thickness"}

_condition(have, outside) := {"at": ["/condition"], "have": have, "figure": "refused", "outside": outside, "say": "condition"}

_rows := {_material("solid sawn", false), _thick("min_thickness", 38100000, false), _condition("sound", false)}

_asked(fields) := {{"at": ["/house"], "needs": concat(".", ["house.house_rim", field])} | some field in fields}

test_sound_rim if _said([_sawn]) == {"readings": _rows, "unknown": set(), "exempt": set()}

test_thickness_under_at_and_over_the_limit if {
	every of in [["solid sawn", "min_thickness"], ["laminated veneer lumber", "min_engineered"]] {
		[material, figure] := of
		every case in [[-396875, true], [-10000, true], [0, false], [10000, false], [396875, false]] {
			have := _figures[figure] + case[0]
			_said([_ledger(material, have, "sound")]).readings == {_material(material, false), _thick(figure, have, case[1]), _condition("sound", false)}
		}
	}
}

test_other_material_is_outside_whatever_its_thickness if {
	_said([_ledger("engineered rim board", _inch, "sound")]).readings == {_material("engineered rim board", true), _condition("sound", false)}
	_said([object.remove(_ledger("steel", 1, "sound"), ["rim_thickness"])]).unknown == set()
}

test_condition if {
	_said([_ledger("solid sawn", 38100000, "decayed")]).readings == {
		_material("solid sawn", false), _thick("min_thickness", 38100000, false),
		_condition("decayed", true),
	}
}

test_ledger_elsewhere_is_left_alone if {
	_said([object.union(_sawn, {"attached_to": _shown("/to", "concrete wall")})]) == {
		"readings": set(), "unknown": set(),
		"exempt": {{"at": ["/ledger"], "because": "wall", "wall": "concrete wall"}},
	}
}

test_missing_values_are_not_shown if {
	_said([{"at": ["/ledger"]}]) == {"readings": set(), "exempt": set(), "unknown": _asked({"material", "condition"})}
	_said([_ledger("unknown", 1, "unknown")]) == {"readings": set(), "exempt": set(), "unknown": _asked({"material", "condition"})}
	_said([object.remove(_sawn, ["rim_thickness"])]).unknown == _asked({"thickness"})
	_said([object.union(_sawn, {"attached_to": _shown("/to", "unknown")})]).readings == _rows
}

test_one_bad_of_two if {
	_said([_sawn, _ledger("solid sawn", 38100000, "decayed")]).readings == _rows | {_condition("decayed", true)}
}

test_no_rim_no_check if {
	not rim.applies with input as {"ledgers": []}
	not rim.applies with input as {"ledgers": [object.union(_sawn, {"attached_to": _shown("/to", "chimney")})]}
	rim.applies with input as {"ledgers": [{"at": ["/ledger"]}]}
	_said([]) == {"readings": set(), "unknown": set(), "exempt": set()}
}
