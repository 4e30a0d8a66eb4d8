package checks.joists.span_test

import data.checks.joists.span

_inch := 25400000

_psf := 47880259 # micropascals, rounded

_figures := {
	"basis": "clear span",
	"groups": {"southern pine": ["southern pine"], "redwood group": ["redwood"]},
	"grades": ["No. 2", "No. 1"],
	"live_steps": [{"upto": 40 * _psf, "read": 40 * _psf}, {"upto": 60 * _psf, "read": 70 * _psf}],
	"spans": {
		"breaks": {"spacing": [12 * _inch, 16 * _inch, 24 * _inch], "load": [40 * _psf, 50 * _psf, 70 * _psf]},
		"cells": {
			"southern pine": {"2x10": [
				[194 * _inch, 185 * _inch, 165 * _inch],
				[168 * _inch, 165 * _inch, 143 * _inch],
				[137 * _inch, 135 * _inch, null],
			]},
			"redwood group": {"2x10": [
				[1, 1, 1],
				[1, 1, 1],
				[1, 1, 1],
			]},
		},
	},
}

_under(figures, members) := result if {
	result := {"readings": span.readings, "unknown": span.unknown} with input as {"site": {"at": ["/site"]}, "joist_spans": members}
		with data.figures as {"joists": {"span": figures}}
}

_said(members) := _under(_figures, members)

_shown(path, value) := {"value": value, "at": [path]}

_joists := "/platforms/0/joists"

_base := {
	"at": [_joists, "/platforms/0/beams/0"], "joists": [_joists],
	"platform": "A", "missing": ["platforms[].beams"], "from": "ledger", "to": "B1", "count": 11,
	"size": _shown("/platforms/0/joists/size", "2x10"),
	"spacing": _shown("/platforms/0/joists/spacing", 16 * _inch),
	"lumber": {"species": _shown("/lumber/framing/species", "southern pine"), "grade": _shown("/lumber/framing/grade", "No. 2")},
	"live_load": _shown("/site/live_load", 40 * _psf),
	"ground_snow_load": _shown("/site/ground_snow_load", 25 * _psf),
}

_member(value) := object.union(_base, {
	"clear_span": _shown("/platforms/0/beams/0/from_house", value),
	"span_to_center": _shown("/platforms/0/beams/0/from_house", value + (3 * _inch)),
})

_row(value, limit, cell, outside) := {
	"at": ["/platforms/0/beams/0/from_house"], "have": value,
	"figure": "spans", "limit": limit, "cell": cell, "outside": outside,
	"from": "ledger", "to": "B1",
}

_cell(row, column) := ["southern pine", "2x10", row, column]

_limit := 168 * _inch # 14 ft, 4267.2 mm

_asked(needs) := {{"at": [_lacks(need)], "needs": need} | some need in needs}

_lacks(need) := "/site" if startswith(need, "site.")

_lacks(need) := _joists if not startswith(need, "site.")

test_span_over_at_and_under_the_limit if {
	every case in [[396875, true], [10000, true], [0, false], [-396875, false], [-10000, false]] {
		value := _limit + case[0]
		_said([_member(value)]) == {"readings": {_row(value, _limit, _cell(1, 0), case[1])}, "unknown": set()}
	}
}

test_span_to_center_where_the_set_says_so if {
	center := object.union(_figures, {"basis": "span to center"})
	_under(center, [_member(_limit)]).readings == {_row(_limit + (3 * _inch), _limit, _cell(1, 0), true)}
	_under(center, [_member(_limit - (3 * _inch))]).readings == {_row(_limit, _limit, _cell(1, 0), false)}
}

test_next_worse_row_and_column if {
	every case in [
		[{"spacing": _shown("/s", 12 * _inch)}, 194, 0, 0],
		[{"spacing": _shown("/s", (12 * _inch) + 1)}, 168, 1, 0],
		[{"spacing": _shown("/s", (16 * _inch) + 1)}, 137, 2, 0],
		[{"ground_snow_load": _shown("/g", 40 * _psf)}, 168, 1, 0],
		[{"ground_snow_load": _shown("/g", (40 * _psf) + 1)}, 165, 1, 1],
		[{"ground_snow_load": _shown("/g", 70 * _psf)}, 143, 1, 2],
		[{"live_load": _shown("/l", 60 * _psf)}, 143, 1, 2],
	] {
		[changes, limit, row, column] := case
		_said([object.union(_member(_inch), changes)]) == {
			"readings": {_row(_inch, limit * _inch, _cell(row, column), false)},
			"unknown": set(),
		}
	}
}

test_cell_that_permits_nothing_is_outside if {
	joist := object.union(_member(_inch), {"spacing": _shown("/s", 24 * _inch), "live_load": _shown("/l", 60 * _psf)})
	_said([joist]) == {
		"readings": {{
			"at": [_joists, "/platforms/0/beams/0"],
			"figure": "spans", "cell": _cell(2, 2),
			"outside": true, "say": "not_permitted",
		}},
		"unknown": set(),
	}
}

test_beyond_the_table_is_outside if {
	every case in [
		[{"lumber": {"species": _shown("/x", "teak")}}, {"figure": "groups", "say": "beyond_species", "species": "teak"}],
		[{"lumber": {"grade": _shown("/x", "No. 3")}}, {"figure": "grades", "say": "beyond_grade", "grade": "No. 3"}],
		[{"size": _shown("/x", "2x4")}, {"figure": "spans", "say": "beyond_size", "size": "2x4"}],
		[{"spacing": _shown("/x", 25 * _inch)}, {"figure": "spans", "say": "beyond_spacing", "spacing": 25 * _inch}],
		[{"live_load": _shown("/x", 61 * _psf)}, {"figure": "spans", "say": "beyond_load", "load": 61 * _psf}],
		[{"ground_snow_load": _shown("/x", 71 * _psf)}, {"figure": "spans", "say": "beyond_load", "load": 71 * _psf}],
	] {
		_said([object.union(_member(_inch), case[0])]) == {
			"readings": {object.union(case[1], {"at": ["/x"], "outside": true})},
			"unknown": set(),
		}
	}
}

test_missing_values_are_not_shown if {
	_said([object.remove(_member(_inch), ["size"])]) == {"readings": set(), "unknown": _asked({"platforms[].joists.size"})}
	unspaced := object.union(object.remove(_member(_inch), ["spacing"]), {"spacing_field": "platforms[].joists.spacing"})
	_said([unspaced]) == {"readings": set(), "unknown": _asked({"platforms[].joists.spacing"})}
	_said([object.union(object.remove(_member(_inch), ["lumber"]), {"lumber": {"missing": ["platforms[].joists.lumber"]}})]) == {
		"readings": set(),
		"unknown": _asked({"platforms[].joists.lumber"}),
	}
	_said([object.remove(_member(_inch), ["live_load", "ground_snow_load"])]) == {
		"readings": set(),
		"unknown": _asked({"site.live_load", "site.ground_snow_load"}),
	}
	_said([object.remove(_member(_inch), ["clear_span"])]) == {"readings": set(), "unknown": _asked({"platforms[].beams"})}
}

test_missing_value_is_asked_for_only_where_it_could_decide if {
	inside := object.remove(_member(_limit), ["ground_snow_load"])
	_said([inside]) == {"readings": set(), "unknown": _asked({"site.ground_snow_load"})}
	beyond := object.remove(_member(_limit + 10000), ["ground_snow_load"])
	_said([beyond]) == {"readings": {_row(_limit + 10000, _limit, _cell(1, 0), true)}, "unknown": set()}
	unlived := object.remove(_member(_limit + 10000), ["live_load"])
	_said([unlived]) == {"readings": {_row(_limit + 10000, _limit, _cell(1, 0), true)}, "unknown": set()}
}

test_one_bad_of_two if {
	_said([_member(_limit), object.union(_member(_limit), {"spacing": _shown("/s", 24 * _inch)})]) == {
		"readings": {_row(_limit, _limit, _cell(1, 0), false), _row(_limit, 137 * _inch, _cell(2, 0), true)},
		"unknown": set(),
	}
}

test_no_subject_no_check if {
	not span.applies with input as {"joist_spans": []}
	span.applies with input as {"joist_spans": [_base]}
	_said([]) == {"readings": set(), "unknown": set()}
}

_dry := object.union(object.remove(_figures, ["live_steps"]), {
	"live_steps": [{"upto": 40 * _psf, "read": 40 * _psf}],
	"without_snow": true,
	"spans": {
		"breaks": {"spacing": [16 * _inch, 24 * _inch], "load": [40 * _psf]},
		"cells": {"southern pine": {"2x10": [[168 * _inch], ["not in this table"]]}, "redwood group": {"2x10": [[1], [1]]}},
	},
})

test_table_that_is_not_read_by_snow if {
	row := _row(168 * _inch, 168 * _inch, ["southern pine", "2x10", 0, 0], false)
	bare := object.remove(_member(168 * _inch), ["ground_snow_load"])
	_under(_dry, [bare]) == {"readings": {row}, "unknown": set()}
	_under(_dry, [object.union(bare, {"ground_snow_load": _shown("/site/ground_snow_load", 90 * _psf)})]) == {"readings": {row}, "unknown": set()}
	_under(_dry, [object.remove(bare, ["live_load"])]) == {"readings": set(), "unknown": {{"at": ["/site"], "needs": "site.live_load"}}}
}

test_cell_that_the_set_does_not_hold if {
	wide := object.union(_member(_inch), {"spacing": _shown("/platforms/0/joists/spacing", 24 * _inch)})
	_under(_dry, [wide]) == {
		"readings": {{
			"at": wide.at, "figure": "spans", "cell": ["southern pine", "2x10", 1, 0], "outside": true, "say": "left_out",
			"size": "2x10", "spacing": 24 * _inch,
		}},
		"unknown": set(),
	}
}

_excerpt := object.union(_dry, {"excerpt": true})

_exempt(figures, members) := result if {
	result := {"readings": span.readings, "unknown": span.unknown, "exempt": span.exempt} with input as {"site": {"at": ["/site"]}, "joist_spans": members}
		with data.figures as {"joists": {"span": figures}}
}

test_excerpt_leaves_alone_what_it_does_not_hold if {
	every case in [
		[{"lumber": {"species": _shown("/x", "teak")}}, {"because": "beyond_species", "species": "teak"}],
		[{"lumber": {"grade": _shown("/x", "No. 3")}}, {"because": "beyond_grade", "grade": "No. 3"}],
		[{"size": _shown("/x", "2x4")}, {"because": "beyond_size", "size": "2x4"}],
		[{"spacing": _shown("/x", 25 * _inch)}, {"because": "beyond_spacing", "spacing": 25 * _inch}],
		[{"spacing": _shown("/x", 24 * _inch)}, {"because": "left_out", "size": "2x10", "spacing": 24 * _inch}],
	] {
		_exempt(_excerpt, [object.union(_member(_inch), case[0])]) == {
			"readings": set(), "unknown": set(),
			"exempt": {object.union({"at": _base.at}, case[1])},
		}
	}
}

test_load_beyond_an_excerpt_is_told_of_what_it_holds_alone if {
	heavy := object.union(_member(_inch), {"live_load": _shown("/x", 61 * _psf)})
	said := _exempt(_excerpt, [heavy])
	said.exempt == set()
	{row.say | some row in said.readings} == {"beyond_load"}
	_exempt(_excerpt, [object.union(heavy, {"size": _shown("/x", "2x4")})]) == {
		"readings": set(), "unknown": set(),
		"exempt": {{"at": _base.at, "because": "beyond_size", "size": "2x4"}},
	}
}

test_excerpt_holds_what_it_has if {
	_exempt(_excerpt, [_member((168 * _inch) + 1)]) == {
		"readings": {_row((168 * _inch) + 1, 168 * _inch, ["southern pine", "2x10", 0, 0], true)},
		"unknown": set(), "exempt": set(),
	}
	_exempt(_excerpt, [object.union(_member(_inch), {"live_load": _shown("/x", 41 * _psf)})]) == {
		"readings": {{"at": ["/x"], "figure": "spans", "outside": true, "say": "beyond_load", "load": 41 * _psf}},
		"unknown": set(), "exempt": set(),
	}
	_exempt(_dry, [object.union(_member(_inch), {"size": _shown("/x", "2x4")})]).exempt == set()
}
