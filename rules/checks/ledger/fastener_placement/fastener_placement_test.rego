package checks.ledger.fastener_placement_test

import data.checks.ledger.fastener_placement

_inch := 25400000

_figures := {
	"top_min": 2 * _inch, "bottom_min": 19050000, "end_min": 2 * _inch, "end_max": 5 * _inch,
	"row_min": 41275000, "row_max": 5 * _inch, "rim_min": 2 * _inch, "staggered": true,
	"row_to_top": {"breaks": {}, "cells": {"2x10": {"bolt": 165100000}}},
}

_under(figures, ledgers) := result if {
	result := {"readings": fastener_placement.readings, "unknown": fastener_placement.unknown, "exempt": fastener_placement.exempt} with input as {"ledgers": ledgers}
		with data.figures as {"ledger": {"fastener_placement": figures}}
}

_said(ledgers) := _under(_figures, ledgers)

_shown(path, value) := {"value": value, "at": [path]}

_ledger := {
	"at": ["/ledger"], "fasteners_shown": true, "size": _shown("/size", "2x10"), "fastener_type": _shown("/type", "bolt"),
	"fastener_rows": _shown("/rows", 2), "staggered": _shown("/staggered", true), "row_spacing": _shown("/row", 4 * _inch),
	"edge_top": _shown("/top", 2 * _inch), "edge_bottom": _shown("/bottom", 2 * _inch), "end_distance": _shown("/end", 3 * _inch),
	"rim_edge": _shown("/rim", 2 * _inch), "bottom_row_to_top": _shown("/low", 180000000),
}

_with(changes) := object.union(_ledger, changes)

_row(at, figure, have, outside, say) := {"at": [at], "have": have, "figure": figure, "limit": _figures[figure], "outside": outside, "say": say}

_low(have, outside) := {
	"at": ["/low"], "have": have, "figure": "row_to_top", "limit": 165100000, "cell": ["2x10", "bolt"],
	"outside": outside, "say": "row_to_top", "size": "2x10",
}

_rows := {
	"top_min": _row("/top", "top_min", 2 * _inch, false, "outside"),
	"bottom_min": _row("/bottom", "bottom_min", 2 * _inch, false, "bottom"),
	"end_min": _row("/end", "end_min", 3 * _inch, false, "end"),
	"end_max": _row("/end", "end_max", 3 * _inch, false, "end"),
	"row_min": _row("/row", "row_min", 4 * _inch, false, "row"),
	"row_max": _row("/row", "row_max", 4 * _inch, false, "row"),
	"rim_min": _row("/rim", "rim_min", 2 * _inch, false, "rim"),
	"staggered": _row("/staggered", "staggered", true, false, "staggered"),
	"row_to_top": _low(180000000, false),
}

_but(changes) := {row | some row in object.union(_rows, changes)}

_without(names) := {row | some name, row in _rows; not name in names}

test_all_in_place if _said([_ledger]) == {"readings": _but({}), "unknown": set(), "exempt": set()}

test_under_at_and_over_the_least if {
	every of in [
		["edge_top", "/top", "top_min", "outside"], ["edge_bottom", "/bottom", "bottom_min", "bottom"],
		["rim_edge", "/rim", "rim_min", "rim"],
	] {
		[fact, at, figure, say] := of
		every case in [[-396875, true], [-10000, true], [0, false], [10000, false], [396875, false]] {
			have := _figures[figure] + case[0]
			_said([_with({fact: _shown(at, have)})]).readings == _but({figure: _row(at, figure, have, case[1], say)})
		}
	}
}

test_between_the_least_and_the_most if {
	every of in [["end_distance", "/end", "end_min", "end_max", "end"], ["row_spacing", "/row", "row_min", "row_max", "row"]] {
		[fact, at, least, most, say] := of
		every case in [
			[_figures[least] - 396875, true, false], [_figures[least] - 10000, true, false], [_figures[least], false, false],
			[_figures[most], false, false], [_figures[most] + 10000, false, true], [_figures[most] + 396875, false, true],
		] {
			[have, low, high] := case
			_said([_with({fact: _shown(at, have)})]).readings == _but({
				least: _row(at, least, have, low, say),
				most: _row(at, most, have, high, say),
			})
		}
	}
}

test_rows_one_above_the_other if {
	_said([_with({"staggered": _shown("/staggered", false)})]).readings == _but({"staggered": _row("/staggered", "staggered", false, true, "aligned")})
	free := object.union(_figures, {"staggered": false})
	object.union(_row("/staggered", "staggered", false, false, "aligned"), {"limit": false}) in _under(free, [_with({"staggered": _shown("/staggered", false)})]).readings
}

test_lower_row_below_the_top_edge if {
	every case in [[165100000, false], [165090000, true], [165100000 - 396875, true]] {
		_said([_with({"bottom_row_to_top": _shown("/low", case[0])})]).readings == _but({"row_to_top": _low(case[0], case[1])})
	}
	_said([_with({"size": _shown("/size", "2x14")})]).readings == _without({"row_to_top"})
	_under(object.remove(_figures, ["row_to_top"]), [_ledger]).readings == _without({"row_to_top"})
}

test_single_row if {
	_said([_with({"fastener_rows": _shown("/rows", 1)})]) == {
		"readings": _without({"row_min", "row_max", "staggered"}), "unknown": set(),
		"exempt": {{"at": ["/rows"], "because": "single"}},
	}
}

test_missing_values_are_not_shown if {
	every case in [
		["edge_top", {"top_min"}, "edge_distance_top"], ["edge_bottom", {"bottom_min"}, "edge_distance_bottom"],
		["end_distance", {"end_min", "end_max"}, "end_distance"], ["rim_edge", {"rim_min"}, "house_rim_edge_distance"],
		["row_spacing", {"row_min", "row_max"}, "row_spacing"], ["staggered", {"staggered"}, "staggered"],
	] {
		_said([object.remove(_ledger, [case[0]])]) == {
			"readings": _without(case[1]), "exempt": set(),
			"unknown": {{"at": ["/ledger"], "needs": concat(".", ["platforms[].ledger.fasteners", case[2]])}},
		}
	}
	_said([{"at": ["/ledger"], "fasteners_shown": false}]) == {
		"readings": set(), "exempt": set(),
		"unknown": {{"at": ["/ledger"], "needs": "platforms[].ledger.fasteners"}},
	}
}

test_one_bad_of_two if {
	_said([_ledger, _with({"edge_top": _shown("/top", 0)})]).readings == _but({}) | {_row("/top", "top_min", 0, true, "outside")}
}

test_no_subject_no_check if {
	not fastener_placement.applies with input as {"ledgers": []}
	fastener_placement.applies with input as {"ledgers": [_ledger]}
	_said([]) == {"readings": set(), "unknown": set(), "exempt": set()}
}
