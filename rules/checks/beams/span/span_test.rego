package checks.beams.span_test

import data.checks.beams.span

_inch := 25400000

_psf := 47880259 # micropascals, rounded

_figures := {
	"basis": "span to center", "joist_basis": "span to center", "both_sides": false,
	"groups": {"southern pine": ["southern pine"], "other": ["redwood"]},
	"grades": ["No. 2"],
	"live_steps": [{"upto": 40 * _psf, "read": 40 * _psf}, {"upto": 60 * _psf, "read": 70 * _psf}],
	"spans": {
		"breaks": {"load": [40 * _psf, 50 * _psf], "joist_span": [120 * _inch, 144 * _inch]},
		"cells": {
			"southern pine": {"2-2x10": [[96 * _inch, 88 * _inch], [90 * _inch, 82 * _inch]], "4x10": [[60 * _inch, 50 * _inch], [1, 1]]},
			"other": {"2-2x10": [[null, null], [null, null]], "4x10": [[1, 1], [1, 1]]},
		},
	},
}

# Cantilevers and effective spans of joists that span 10 ft.
_factored := object.union(_figures, {
	"factor_of": 120 * _inch,
	"factors": {"breaks": {"cantilever": [0, 12 * _inch, 30 * _inch]}, "cells": [80 * _inch, 96 * _inch, 120 * _inch]},
})

_under(figures, bays) := result if {
	result := {"readings": span.readings, "unknown": span.unknown} with input as {
		"beam_spans": bays,
		"site": {"at": ["/site"]}, "house": {"at": []},
	}
		with data.figures as {"beams": {"span": figures}}
}

_said(bays) := _under(_figures, bays)

_shown(path, value) := {"value": value, "at": [path]}

_beam := "/platforms/0/beams/0"

_base := {
	"at": [_beam], "beam": "B1", "bay": 1, "both_sides": false, "missing": ["platforms[].beams[].posts_at"],
	"size": _shown("/size", "2x10"), "plies": _shown("/plies", 2),
	"lumber": {"species": _shown("/species", "southern pine"), "grade": _shown("/grade", "No. 2")},
	"joist_span": _shown("/joists", 120 * _inch), "joist_clear_span": _shown("/joists", 117 * _inch),
	"joist_cantilever": _shown("/past", 0),
	"live_load": _shown("/live", 40 * _psf), "ground_snow_load": _shown("/snow", 25 * _psf),
}

_bay(value) := object.union(_base, {
	"span_to_center": _shown("/posts_at/1", value),
	"clear_span": _shown("/posts_at/1", value - (5 * _inch)),
})

_with(changes) := object.union(_bay(_inch), changes)

_without(keys) := object.remove(_bay(_inch), keys)

_row(value, limit, cell, outside) := {
	"at": ["/posts_at/1"], "have": value, "figure": "spans", "limit": limit, "cell": cell,
	"outside": outside, "say": "outside", "beam": "B1", "bay": 1, "joists": 120 * _inch,
}

_cell(load, row) := ["southern pine", "2-2x10", load, row]

_limit := 96 * _inch # 8 ft, 2438.4 mm

_asked(needs) := {{"at": _place(need), "needs": need} | some need in needs}

_place(need) := ["/site"] if startswith(need, "site.")

_place(need) := [_beam] if not startswith(need, "site.")

test_span_over_at_and_under_the_limit if {
	every case in [[1587500, true], [396875, true], [10000, true], [0, false], [-396875, false], [-10000, false]] {
		value := _limit + case[0]
		_said([_bay(value)]) == {"readings": {_row(value, _limit, _cell(0, 0), case[1])}, "unknown": set()}
	}
}

test_clear_spans_where_the_set_says_so if {
	clear := object.union(_figures, {"basis": "clear span", "joist_basis": "clear span"})
	row := _row(_limit - (5 * _inch), _limit, _cell(0, 0), false)
	_under(clear, [_bay(_limit)]).readings == {object.union(row, {"joists": 117 * _inch})}
}

test_next_worse_row_and_column if {
	every case in [
		[{"joist_span": _shown("/j", (120 * _inch) + 1)}, 88, 0, 1],
		[{"joist_span": _shown("/j", 144 * _inch)}, 88, 0, 1],
		[{"ground_snow_load": _shown("/g", 40 * _psf)}, 96, 0, 0],
		[{"ground_snow_load": _shown("/g", (40 * _psf) + 1)}, 90, 1, 0],
	] {
		[changes, limit, load, row] := case
		rows := _said([_with(changes)]).readings
		{object.filter(r, ["limit", "cell", "outside"]) | some r in rows} == {{"limit": limit * _inch, "cell": _cell(load, row), "outside": false}}
	}
}

test_solid_stick_under_its_own_name if {
	solid := object.union(_without(["plies"]), {"size": _shown("/size", "4x10")})
	_said([solid]).readings == {_row(_inch, 60 * _inch, ["southern pine", "4x10", 0, 0], false)}
}

test_effective_span_of_the_joists if {
	every case in [
		[120 * _inch, 0, 80 * _inch, 0],
		[120 * _inch, 1, 96 * _inch, 0],
		[120 * _inch, 12 * _inch, 96 * _inch, 0],
		[120 * _inch, (12 * _inch) + 1, 120 * _inch, 0],
		[120 * _inch, 30 * _inch, 120 * _inch, 0],
		[150 * _inch, 15 * _inch, 120 * _inch, 0],
		[(150 * _inch) + 1, 15 * _inch, (120 * _inch) + 1, 1],
	] {
		[joists, past, effective, row] := case
		bay := _with({"joist_span": _shown("/j", joists), "joist_cantilever": _shown("/past", past)})
		{object.filter(r, ["joists", "cell", "say"]) | some r in _under(_factored, [bay]).readings} == {{
			"joists": effective, "cell": _cell(0, row),
			"say": "effective",
		}}
	}
}

test_cell_that_permits_nothing_is_outside if {
	_said([_with({"lumber": {"species": _shown("/s", "redwood")}})]) == {
		"readings": {{
			"at": [_beam], "figure": "spans", "cell": ["other", "2-2x10", 0, 0],
			"outside": true, "say": "not_permitted", "size": "2-2x10",
		}},
		"unknown": set(),
	}
}

test_beyond_the_table_is_outside if {
	every case in [
		[{"lumber": {"species": _shown("/x", "teak")}}, {"figure": "groups", "say": "beyond_species", "species": "teak"}],
		[{"lumber": {"grade": _shown("/x", "No. 3")}}, {"figure": "grades", "say": "beyond_grade", "grade": "No. 3"}],
		[{"size": _shown("/x", "2x4")}, {"figure": "spans", "say": "beyond_size", "size": "2-2x4"}],
		[{"live_load": _shown("/x", 60 * _psf)}, {"figure": "spans", "say": "beyond_load", "load": 60 * _psf}],
		[{"ground_snow_load": _shown("/x", 51 * _psf)}, {"figure": "spans", "say": "beyond_load", "load": 51 * _psf}],
		[{"joist_span": _shown("/x", 145 * _inch)}, {"figure": "spans", "say": "beyond_joists", "beam": "B1", "joists": 145 * _inch}],
		[{"at": ["/x"], "both_sides": true}, {"figure": "both_sides", "say": "beyond_sides", "beam": "B1", "have": true, "limit": false}],
	] {
		_said([_with(case[0])]) == {
			"readings": {object.union(case[1], {"at": ["/x"], "outside": true})},
			"unknown": set(),
		}
	}
}

test_joists_from_both_sides_where_the_set_covers_them if {
	both := object.union(_figures, {"both_sides": true})
	_under(both, [_with({"both_sides": true})]).readings == {_row(_inch, _limit, _cell(0, 0), false)}
}

test_cantilever_beyond_the_factors_is_outside if {
	_under(_factored, [_with({"joist_cantilever": _shown("/past", (30 * _inch) + 1)})]) == {
		"readings": {{
			"at": ["/past"], "figure": "factors", "outside": true, "say": "beyond_cantilever",
			"beam": "B1", "past": (30 * _inch) + 1, "joists": 120 * _inch,
		}},
		"unknown": set(),
	}
}

test_missing_values_are_not_shown if {
	every case in [
		[["size"], {"platforms[].beams[].size"}],
		[["plies"], {"platforms[].beams[].plies"}],
		[["span_to_center"], {"platforms[].beams[].posts_at"}],
		[["joist_span"], {"platforms[].beams[].posts_at"}],
		[["live_load", "ground_snow_load"], {"site.live_load", "site.ground_snow_load"}],
	] {
		_said([_without(case[0])]) == {"readings": set(), "unknown": _asked(case[1])}
	}
	_said([object.union(_without(["lumber"]), {"lumber": {"missing": ["platforms[].beams[].lumber"]}})]).unknown == _asked({"platforms[].beams[].lumber"})
	_said([object.union(_without(["joist_span"]), {"missing": []})]).unknown == _asked({"platforms[].beams"})
	_under(_factored, [_without(["joist_cantilever"])]).unknown == _asked({"platforms[].beams[].posts_at"})
}

test_missing_value_is_asked_for_only_where_it_could_decide if {
	inside := object.remove(_bay(_limit), ["ground_snow_load"])
	_said([inside]) == {"readings": set(), "unknown": _asked({"site.ground_snow_load"})}
	over := object.remove(_bay(_limit + 10000), ["ground_snow_load"])
	_said([over]) == {"readings": {_row(_limit + 10000, _limit, _cell(0, 0), true)}, "unknown": set()}
}

test_one_bad_of_two if {
	_said([_bay(_limit), object.union(_bay(_limit + 10000), {"bay": 2})]).readings == {
		_row(_limit, _limit, _cell(0, 0), false),
		object.union(_row(_limit + 10000, _limit, _cell(0, 0), true), {"bay": 2}),
	}
}

test_no_subject_no_check if {
	not span.applies with input as {"beam_spans": []}
	span.applies with input as {"beam_spans": [_base]}
	_said([]) == {"readings": set(), "unknown": set()}
}

_holed := object.union(_figures, {
	"joist_basis": "span and cantilever", "without_snow": true,
	"spans": {
		"breaks": {"load": [40 * _psf], "joist_span": [120 * _inch, 144 * _inch]},
		"cells": {
			"southern pine": {"2-2x10": [[96 * _inch, "not in this table"]], "4x10": [[1, 1]]},
			"other": {"2-2x10": [[null, null]], "4x10": [[1, 1]]},
		},
	},
})

test_joists_with_their_cantilever_choose_the_row if {
	_under(_holed, [_bay(_inch)]).readings == {_row(_inch, _limit, _cell(0, 0), false)}
	past := _with({"joist_cantilever": _shown("/past", 1)})
	_under(_holed, [past]) == {
		"readings": {{
			"at": [_beam], "figure": "spans", "cell": _cell(0, 1), "outside": true, "say": "left_out",
			"size": "2-2x10", "joists": (120 * _inch) + 1,
		}},
		"unknown": set(),
	}
}

test_table_that_is_not_read_by_snow if {
	_under(_holed, [_without(["ground_snow_load"])]) == {"readings": {_row(_inch, _limit, _cell(0, 0), false)}, "unknown": set()}
	_under(_holed, [_without(["ground_snow_load", "live_load"])]) == {"readings": set(), "unknown": _asked({"site.live_load"})}
}

_excerpt := object.union(_holed, {"excerpt": true})

_exempt(figures, bays) := result if {
	result := {"readings": span.readings, "unknown": span.unknown, "exempt": span.exempt} with input as {
		"beam_spans": bays,
		"site": {"at": ["/site"]}, "house": {"at": []},
	}
		with data.figures as {"beams": {"span": figures}}
}

test_excerpt_leaves_alone_what_it_does_not_hold if {
	every case in [
		[{"lumber": {"species": _shown("/x", "teak")}}, {"because": "beyond_species", "species": "teak"}],
		[{"lumber": {"grade": _shown("/x", "No. 3")}}, {"because": "beyond_grade", "grade": "No. 3"}],
		[{"size": _shown("/x", "2x4")}, {"because": "beyond_size", "size": "2-2x4"}],
		[{"joist_span": _shown("/x", 145 * _inch)}, {"because": "beyond_joists", "beam": "B1", "joists": 145 * _inch}],
		[{"joist_span": _shown("/x", 144 * _inch)}, {"because": "left_out", "size": "2-2x10", "joists": 144 * _inch}],
	] {
		_exempt(_excerpt, [_with(case[0])]) == {
			"readings": set(), "unknown": set(),
			"exempt": {object.union({"at": [_beam]}, case[1])},
		}
	}
}

test_excerpt_holds_what_it_has if {
	_exempt(_excerpt, [_bay(_limit + 1)]) == {
		"readings": {_row(_limit + 1, _limit, _cell(0, 0), true)},
		"unknown": set(), "exempt": set(),
	}
	_exempt(_excerpt, [_with({"at": ["/x"], "both_sides": true})]) == {
		"readings": {{"at": ["/x"], "figure": "both_sides", "outside": true, "say": "beyond_sides", "beam": "B1", "have": true, "limit": false}},
		"unknown": set(), "exempt": set(),
	}
	_exempt(_holed, [_with({"size": _shown("/x", "2x4")})]).exempt == set()
}
