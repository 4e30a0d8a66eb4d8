package lib.spans_test

import data.lib.spans

_figures := {
	"groups": {"southern pine": ["southern pine", "syp"], "redwood group": ["redwood"]},
	"grades": ["No. 2", "No. 1"],
	"live_steps": [{"upto": 40, "read": 40}, {"upto": 60, "read": 70}],
	"spans": {"breaks": {"spacing": [12, 16, 24], "load": [40, 50, 70]}, "cells": {"southern pine": {"2x8": []}, "redwood group": {"2x8": []}}},
	"limits": {"breaks": {"load": [40]}, "cells": {"southern pine": {"2x8": []}}},
}

_shown(value) := {"value": value, "at": [sprintf("/%v", [value])]}

_member := {
	"size": _shown("2x8"), "spacing": _shown(16),
	"lumber": {"species": _shown("Southern Pine"), "grade": _shown("no. 2")},
	"live_load": _shown(40), "ground_snow_load": _shown(25),
}

_with(changes) := object.union(_member, changes)

test_column_is_the_first_that_covers if {
	every case in [[0, 0], [12, 0], [13, 1], [16, 1], [24, 2]] {
		spans.column([12, 16, 24], case[0]) == case[1]
	}
	not spans.column([12, 16, 24], 25)
	not spans.column([], 1)
}

test_live_load_is_read_by_steps if {
	every case in [[0, 40], [40, 40], [41, 70], [60, 70]] {
		spans.live(_figures.live_steps, case[0]) == case[1]
	}
	not spans.live(_figures.live_steps, 61)
}

test_loads_holds_what_is_shown if {
	spans.loads(_figures, _member) == {40, 25}
	spans.loads(_figures, _with({"live_load": _shown(60)})) == {70, 25}
	spans.loads(_figures, object.remove(_member, ["ground_snow_load"])) == {40}
	spans.loads(_figures, {}) == set()
}

test_group_of_a_species if {
	spans.group(_figures, _member) == "southern pine"
	spans.group(_figures, _with({"lumber": {"species": _shown("SYP")}})) == "southern pine"
	not spans.group(_figures, _with({"lumber": {"species": _shown("teak")}}))
	not spans.group(_figures, {"lumber": {}})
}

test_grade_of_a_member if {
	spans.graded(_figures, _member)
	not spans.graded(_figures, _with({"lumber": {"grade": _shown("No. 3")}}))
	not spans.graded(_figures, {"lumber": {}})
}

test_complete_needs_grade_and_both_loads if {
	spans.complete(_figures, _member)
	not spans.complete(_figures, object.remove(_member, ["live_load"]))
	not spans.complete(_figures, object.remove(_member, ["ground_snow_load"]))
	not spans.complete(_figures, object.remove(_member, ["lumber"]))
}

test_nothing_beyond if {
	spans.beyond(_figures, "spans", _member) == set()
	spans.beyond(_figures, "spans", {"lumber": {}}) == set()
}

test_beyond_names_what_is_outside_the_table if {
	every case in [
		[{"lumber": {"species": _shown("teak")}}, {"figure": "groups", "say": "beyond_species", "species": "teak"}],
		[{"lumber": {"grade": _shown("No. 3")}}, {"figure": "grades", "say": "beyond_grade", "grade": "No. 3"}],
		[{"size": _shown("2x4")}, {"figure": "spans", "say": "beyond_size", "size": "2x4"}],
		[{"spacing": _shown(25)}, {"figure": "spans", "say": "beyond_spacing", "spacing": 25}],
		[{"live_load": _shown(61)}, {"figure": "spans", "say": "beyond_load", "load": 61}],
		[{"ground_snow_load": _shown(71)}, {"figure": "spans", "say": "beyond_load", "load": 71}],
	] {
		[changes, row] := case
		rows := spans.beyond(_figures, "spans", _with(changes))
		{object.remove(r, ["at"]) | some r in rows} == {object.union(row, {"outside": true})}
		{r.at | some r in rows} == {[sprintf("/%v", [v.value])] | some _, v in object.union(object.get(changes, "lumber", {}), object.remove(changes, ["lumber"]))}
	}
}

test_live_load_read_in_a_column_that_is_missing_is_beyond if {
	rows := spans.beyond(_figures, "limits", _with({"live_load": _shown(60)}))
	rows == {{"at": ["/60"], "figure": "limits", "outside": true, "say": "beyond_load", "load": 60}}
}

test_table_without_spacing_knows_no_spacing_beyond if {
	spans.beyond(_figures, "limits", _with({"spacing": _shown(99)})) == set()
}

test_missing_names_every_field if {
	spans.missing(_member) == set()
	spans.missing({"lumber": {"missing": ["platforms[].joists.lumber"]}, "spacing_field": "platforms[].measured_to"}) == {
		"platforms[].joists.size", "platforms[].measured_to", "platforms[].joists.lumber",
		"site.live_load", "site.ground_snow_load",
	}
}

test_beside if {
	spans.beside({"have": 1}, {"engineered": {"governs": "bending"}}) == {"have": 1, "engineered": {"governs": "bending"}}
	spans.beside({"have": 1}, {"size": "2x10"}) == {"have": 1}
}

test_what_an_excerpt_leaves_alone if {
	every say, apart in {"beyond_species": true, "beyond_joists": true, "beyond_load": false, "beyond_sides": false} {
		[1 | spans.apart({"excerpt": true}, {"say": say})] == [1 | apart]
	}
	not spans.apart({}, {"say": "beyond_size"})
	not spans.apart({"excerpt": false}, {"say": "beyond_size"})
}

test_load_of_a_member_that_is_left_alone_is_not_told if {
	[load, species, sides] := [{"say": "beyond_load"}, {"say": "beyond_species"}, {"say": "beyond_sides"}]
	every case in [
		[{"excerpt": true}, {load}, {load}],
		[{"excerpt": true}, {load, species}, set()],
		[{"excerpt": true}, {load, species, sides}, {sides}],
		[{"excerpt": true}, {load, sides}, {load, sides}],
		[{}, {load, species}, {load, species}],
	] {
		[figures, rows, told] := case
		spans.told(figures, rows) == told
	}
}

test_exempt_keeps_the_values_of_the_row if {
	row := {"at": ["/x"], "figure": "spans", "outside": true, "say": "beyond_size", "size": "2x4"}
	spans.exempt({"at": ["/joists"]}, row) == {"at": ["/joists"], "because": "beyond_size", "size": "2x4"}
}
