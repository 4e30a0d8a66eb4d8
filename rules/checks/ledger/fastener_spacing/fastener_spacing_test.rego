package checks.ledger.fastener_spacing_test

import data.checks.ledger.fastener_spacing

_inch := 25400000

_limit := 15 * _inch # 381 mm

_lag := [[_limit, 13 * _inch], [11 * _inch, 9 * _inch]]

_bolt := [[29 * _inch, 24 * _inch], [20 * _inch, 17 * _inch]]

_none := [[null, null], [null, null]]

_figures := {
	"rims": {"band joist": ["solid sawn"]}, "joist_basis": "span to center", "washer_gap": 12700000,
	"live_steps": [{"upto": 40, "read": 40}, {"upto": 60, "read": 70}],
	"spacings": {
		"breaks": {"rim_thickness": [_inch], "gap": [12700000, _inch], "load": [40, 70], "joist_span": [144 * _inch, 168 * _inch]},
		"cells": {"band joist": [{"lag screw": [_lag, _none], "bolt": [_bolt, _bolt]}]},
	},
}

_said(ledgers) := result if {
	result := {"readings": fastener_spacing.readings, "unknown": fastener_spacing.unknown, "exempt": fastener_spacing.exempt} with input as {
		"ledgers": ledgers,
		"site": {"at": ["/site"]}, "house": {"at": ["/house"]},
	}
		with data.figures as {"ledger": {"fastener_spacing": _figures}}
}

_shown(path, value) := {"value": value, "at": [path]}

_base := {
	"at": ["/ledger"], "missing": ["platforms[].beams"],
	"rim_material": _shown("/rim", "solid sawn"), "rim_thickness": _shown("/rim/size", 38100000),
	"sheathing": _shown("/sheathing", 12700000), "fastener_type": _shown("/type", "lag screw"),
	"joist_span": _shown("/joists", 144 * _inch), "live_load": _shown("/live", 40), "ground_snow_load": _shown("/snow", 25),
}

_ledger(value) := object.union(_base, {"fastener_spacing": _shown("/spacing", value)})

_with(changes) := object.union(_ledger(_inch), changes)

_row(limit, cell, have, outside, kind, joists) := {
	"at": ["/spacing"], "have": have, "figure": "spacings", "limit": limit, "cell": cell,
	"outside": outside, "fastener": kind, "joists": joists,
}

_plain(have, outside) := _row(_limit, ["band joist", 0, "lag screw", 0, 0, 0], have, outside, "lag screw", 144 * _inch)

_reading(row) := {"readings": {row}, "unknown": set(), "exempt": set()}

_asked(needs) := {"readings": set(), "exempt": set(), "unknown": {{"at": _place(need), "needs": need} | some need in needs}}

_place(need) := ["/site"] if startswith(need, "site.")

_place(need) := ["/house"] if startswith(need, "house.")

_place(need) := ["/ledger"] if startswith(need, "platforms")

test_over_at_and_under_the_limit if {
	every case in [[1587500, true], [396875, true], [10000, true], [0, false], [-10000, false], [-396875, false]] {
		_said([_ledger(_limit + case[0])]) == _reading(_plain(_limit + case[0], case[1]))
	}
}

test_next_worse_row_and_column if {
	every case in [
		[{"joist_span": _shown("/j", (144 * _inch) + 1)}, 13, ["lag screw", 0, 0, 1], (144 * _inch) + 1],
		[{"ground_snow_load": _shown("/g", 41)}, 11, ["lag screw", 0, 1, 0], 144 * _inch],
		[{"live_load": _shown("/l", 60)}, 11, ["lag screw", 0, 1, 0], 144 * _inch],
	] {
		[changes, limit, cell, joists] := case
		_said([_with(changes)]) == _reading(_row(limit * _inch, array.concat(["band joist", 0], cell), _inch, false, "lag screw", joists))
	}
}

test_bolts_with_a_wider_gap if {
	bolt := {"fastener_type": _shown("/type", "bolt")}
	every case in [[{}, 0], [{"foam": _shown("/foam", 1)}, 1], [{"washers_between": _shown("/washers", true)}, 1]] {
		row := _row(29 * _inch, ["band joist", 0, "bolt", case[1], 0, 0], _inch, false, "bolt", 144 * _inch)
		_said([_with(object.union(bolt, case[0]))]) == _reading(row)
	}
}

test_lag_screws_with_a_wider_gap_are_not_permitted if {
	_said([_with({"sheathing": _shown("/sheathing", 12700001)})]) == _reading({
		"at": ["/type"], "figure": "spacings", "cell": ["band joist", 0, "lag screw", 1, 0, 0],
		"outside": true, "say": "not_permitted", "fastener": "lag screw",
	})
}

test_beyond_the_table_is_outside if {
	_said([_with({"rim_material": _shown("/rim", "engineered rim board")})]) == _reading({
		"at": ["/rim"], "figure": "spacings",
		"outside": true, "say": "beyond_rim", "rim": "engineered rim board",
	})
	_said([_with({"ground_snow_load": _shown("/g", 71)})]) == _reading({
		"at": ["/g"], "figure": "spacings",
		"outside": true, "say": "beyond_load", "load": 71,
	})
}

test_other_fasteners_are_left_alone if {
	_said([_with({"fastener_type": _shown("/type", "nail")})]) == {
		"readings": set(), "unknown": set(),
		"exempt": {{"at": ["/type"], "because": "fastener", "fastener": "nail"}},
	}
}

test_missing_values_are_not_shown if {
	every case in [
		[["fastener_spacing"], {"platforms[].ledger.fasteners.spacing"}],
		[["fastener_type"], {"platforms[].ledger.fasteners.type"}],
		[["sheathing"], {"platforms[].ledger.sheathing_thickness"}],
		[["joist_span"], {"platforms[].beams"}],
		[["rim_material", "rim_thickness"], {"house.house_rim.material", "house.house_rim.thickness"}],
		[["live_load", "ground_snow_load"], {"site.live_load", "site.ground_snow_load"}],
	] {
		_said([object.remove(_ledger(_inch), case[0])]) == _asked(case[1])
	}
	_said([_with({"fastener_type": _shown("/type", "unknown")})]) == _asked({"platforms[].ledger.fasteners.type"})
}

test_missing_value_is_asked_for_only_where_it_could_decide if {
	_said([object.remove(_ledger(_limit), ["ground_snow_load"])]) == _asked({"site.ground_snow_load"})
	_said([object.remove(_ledger(_limit + 1), ["ground_snow_load"])]) == _reading(_plain(_limit + 1, true))
}

test_one_bad_of_two if {
	_said([_ledger(_limit), _ledger(_limit + 1)]).readings == {_plain(_limit, false), _plain(_limit + 1, true)}
}

test_no_subject_no_check if {
	not fastener_spacing.applies with input as {"ledgers": []}
	fastener_spacing.applies with input as {"ledgers": [_base]}
	_said([]) == {"readings": set(), "unknown": set(), "exempt": set()}
}
