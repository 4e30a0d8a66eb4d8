package lib.ledgers_test

import data.lib.ledgers

_shown(value) := {"value": value, "at": [sprintf("/%v", [value])]}

_figures := {
	"rims": {"sawn": ["solid sawn"], "engineered": ["engineered rim board"]},
	"joist_basis": "span to center", "washer_gap": 8,
	"live_steps": [{"upto": 40, "read": 40}],
	"spacings": {"breaks": {"rim_thickness": [16, 24], "gap": [8, 16], "load": [40], "joist_span": [72, 96]}, "cells": {}},
}

_ledger := {
	"missing": ["platforms[].beams"], "rim_material": _shown("solid sawn"), "rim_thickness": _shown(24), "sheathing": _shown(7),
	"fastener_type": _shown("bolt"), "fastener_spacing": _shown(15), "joist_span": _shown(90),
	"live_load": _shown(40), "ground_snow_load": _shown(25),
}

_with(changes) := object.union(_ledger, changes)

test_rim_by_material if {
	ledgers.rim(_figures, _ledger) == "sawn"
	not ledgers.rim(_figures, _with({"rim_material": _shown("steel")}))
	not ledgers.rim(_figures, {})
}

test_thickness_is_read_as_the_next_worse if {
	every case in [[16, 0], [23, 0], [24, 1], [99, 1]] {
		ledgers.thickness([16, 24], case[0]) == case[1]
	}
	not ledgers.thickness([16, 24], 15)
}

test_width_counts_sheathing_foam_and_washers if {
	ledgers.width(_figures, _ledger) == 7
	ledgers.width(_figures, _with({"foam": _shown(4)})) == 11
	ledgers.width(_figures, _with({"washers_between": _shown(true)})) == 15
	ledgers.width(_figures, _with({"washers_between": _shown(false)})) == 7
	not ledgers.width(_figures, {})
}

test_gap_by_width_and_foam if {
	every case in [
		[{}, 0], [{"sheathing": _shown(8)}, 0], [{"sheathing": _shown(9)}, 1],
		[{"washers_between": _shown(true)}, 1], [{"foam": _shown(1)}, 1], [{"foam": _shown(0)}, 0],
	] {
		ledgers.gap(_figures, _with(case[0])) == case[1]
	}
	not ledgers.gap(_figures, _with({"sheathing": _shown(17)}))
	not ledgers.gap(_figures, _with({"foam": _shown(17)}))
}

test_nothing_beyond if {
	ledgers.beyond(_figures, _ledger) == set()
	ledgers.beyond(_figures, _with({"rim_material": _shown("unknown")})) == set()
	ledgers.beyond(_figures, {}) == set()
}

test_beyond_the_table if {
	every case in [
		[{"rim_material": _shown("steel")}, {"say": "beyond_rim", "rim": "steel", "at": ["/steel"]}],
		[{"rim_thickness": _shown(15)}, {"say": "beyond_thickness", "thickness": 15, "at": ["/15"]}],
		[{"sheathing": _shown(17)}, {"say": "beyond_gap", "gap": 17, "at": ["/17"]}],
		[{"joist_span": _shown(97)}, {"say": "beyond_joists", "joists": 97, "at": ["/97"]}],
		[{"ground_snow_load": _shown(41)}, {"say": "beyond_load", "load": 41, "at": ["/41"]}],
	] {
		ledgers.beyond(_figures, _with(case[0])) == {object.union(case[1], {"figure": "spacings", "outside": true})}
	}
}

test_missing_names_every_field if {
	ledgers.missing(_figures, _ledger) == set()
	ledgers.missing(_figures, {"missing": ["platforms[].beams"]}) == {
		"house.house_rim.material", "house.house_rim.thickness",
		"platforms[].ledger.fasteners.type", "platforms[].ledger.fasteners.spacing", "platforms[].ledger.sheathing_thickness",
		"platforms[].beams", "site.live_load", "site.ground_snow_load",
	}
	ledgers.missing(_figures, _with({"fastener_type": _shown("unknown")})) == {"platforms[].ledger.fasteners.type"}
}
