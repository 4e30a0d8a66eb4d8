package checks.joists.cantilever_test

import data.checks.joists.cantilever

_inch := 25400000

_psf := 47880259 # micropascals, rounded

_quarter := {"max_ratio": {"rise": 1, "run": 4}}

_figures := object.union(_quarter, {
	"groups": {"southern pine": ["southern pine"]},
	"grades": ["No. 2"],
	"live_steps": [{"upto": 40 * _psf, "read": 40 * _psf}, {"upto": 60 * _psf, "read": 70 * _psf}],
	"limits": {
		"breaks": {"back_span": [72 * _inch, 96 * _inch, 120 * _inch], "load": [40 * _psf]},
		"cells": {"southern pine": {"2x6": [[18 * _inch], [17 * _inch], [null]]}},
	},
})

_under(figures, members) := result if {
	result := {"readings": cantilever.readings, "unknown": cantilever.unknown} with input as {"site": {"at": ["/site"]}, "joist_cantilevers": members}
		with data.figures as {"joists": {"cantilever": figures}}
}

_said(members) := _under(_figures, members)

_shown(path, value) := {"value": value, "at": [path]}

_joists := "/platforms/0/joists"

_base := {
	"at": [_joists, "/platforms/0/beams/0"], "joists": [_joists],
	"platform": "A", "missing": ["platforms[].beams"], "past": "B1", "count": 11,
	"size": _shown("/platforms/0/joists/size", "2x6"),
	"spacing": _shown("/platforms/0/joists/spacing", 16 * _inch),
	"lumber": {"species": _shown("/lumber/framing/species", "southern pine"), "grade": _shown("/lumber/framing/grade", "No. 2")},
	"live_load": _shown("/site/live_load", 40 * _psf),
	"ground_snow_load": _shown("/site/ground_snow_load", 25 * _psf),
}

_joist(past, behind) := object.union(_base, {"cantilever": _shown("/c", past), "back_span": _shown("/b", behind)})

_ratio(past, behind, outside) := {
	"at": ["/c"], "have": {"rise": past, "run": behind},
	"figure": "max_ratio", "limit": {"rise": 1, "run": 4},
	"outside": outside, "cantilever": past, "back_span": behind,
}

_table(past, behind, limit, row, outside) := {
	"at": ["/c"], "have": past,
	"figure": "limits", "limit": limit, "cell": ["southern pine", "2x6", row, 0],
	"outside": outside, "say": "table", "back_span": behind,
}

_asked(needs) := {{"at": [_lacks(need)], "needs": need} | some need in needs}

_lacks(need) := "/site" if startswith(need, "site.")

_lacks(need) := _joists if not startswith(need, "site.")

test_quarter_of_the_back_span_is_exact_in_both_units if {
	every case in [[18 * _inch, 72 * _inch], [650000000, 2600000000]] {
		[past, behind] := case
		_under(_quarter, [_joist(past, behind)]) == {"readings": {_ratio(past, behind, false)}, "unknown": set()}
		every step in [396875, 10000, 1] {
			_under(_quarter, [_joist(past + step, behind)]) == {"readings": {_ratio(past + step, behind, true)}, "unknown": set()}
			_under(_quarter, [_joist(past - step, behind)]) == {"readings": {_ratio(past - step, behind, false)}, "unknown": set()}
		}
	}
}

test_table_governs_where_it_gives_less if {
	limit := 17 * _inch
	every case in [[396875, true], [10000, true], [0, false], [-396875, false], [-10000, false]] {
		past := limit + case[0]
		_said([_joist(past, 96 * _inch)]) == {"readings": {_table(past, 96 * _inch, limit, 1, case[1])}, "unknown": set()}
	}
}

test_share_governs_where_it_gives_less_or_the_same if {
	every behind in [60 * _inch, 68 * _inch, 72 * _inch] {
		_said([_joist(_inch, behind)]) == {"readings": {_ratio(_inch, behind, false)}, "unknown": set()}
	}
	_said([_joist((18 * _inch) + 1, 72 * _inch)]) == {"readings": {_ratio((18 * _inch) + 1, 72 * _inch, true)}, "unknown": set()}
}

test_back_span_between_rows_is_read_in_the_longer if {
	behind := (72 * _inch) + 1
	_said([_joist(17 * _inch, behind)]) == {"readings": {_table(17 * _inch, behind, 17 * _inch, 1, false)}, "unknown": set()}
}

test_cell_that_permits_nothing_is_outside if {
	_said([_joist(_inch, 97 * _inch)]) == {
		"readings": {{
			"at": ["/c"], "figure": "limits", "cell": ["southern pine", "2x6", 2, 0],
			"outside": true, "say": "not_permitted",
			"cantilever": _inch, "back_span": 97 * _inch,
		}},
		"unknown": set(),
	}
}

test_beyond_the_table_is_outside if {
	every case in [
		[{"lumber": {"species": _shown("/x", "teak")}}, {"figure": "groups", "say": "beyond_species", "species": "teak"}],
		[{"lumber": {"grade": _shown("/x", "No. 3")}}, {"figure": "grades", "say": "beyond_grade", "grade": "No. 3"}],
		[{"size": _shown("/x", "2x4")}, {"figure": "limits", "say": "beyond_size", "size": "2x4"}],
		[{"live_load": _shown("/x", 41 * _psf)}, {"figure": "limits", "say": "beyond_load", "load": 41 * _psf}],
		[{"ground_snow_load": _shown("/x", 41 * _psf)}, {"figure": "limits", "say": "beyond_load", "load": 41 * _psf}],
		[{"back_span": _shown("/x", 121 * _inch)}, {"figure": "limits", "say": "beyond_back_span", "back_span": 121 * _inch}],
	] {
		_said([object.union(_joist(_inch, 96 * _inch), case[0])]) == {
			"readings": {object.union(case[1], {"at": ["/x"], "outside": true})},
			"unknown": set(),
		}
	}
}

test_over_the_share_the_table_has_nothing_to_add if {
	joist := object.union(_joist(25 * _inch, 96 * _inch), {"ground_snow_load": _shown("/x", 60 * _psf)})
	_said([joist]) == {"readings": {_ratio(25 * _inch, 96 * _inch, true)}, "unknown": set()}
	bare := object.remove(_joist(25 * _inch, 96 * _inch), ["size", "live_load", "ground_snow_load"])
	_said([bare]) == {"readings": {_ratio(25 * _inch, 96 * _inch, true)}, "unknown": set()}
}

_bounded(past, back) := object.union(object.remove(_joist(past, back), ["cantilever"]), {
	"cantilever_at_most": {"value": past, "at": ["/c"]}, "missing": ["platforms[].decking.overhang"],
})

_overhang := _asked({"platforms[].decking.overhang"})

# 18 in on 6 ft and 450 mm on 1800 mm are a quarter.
test_inside_to_the_edge_of_the_outline if {
	every past, inside in {18 * _inch: true, (18 * _inch) - 10000: true, (18 * _inch) + 10000: false} {
		said := _under(_quarter, [_bounded(past, 72 * _inch)])
		said == {
			true: {"readings": {object.union(_ratio(past, 72 * _inch, false), {"say": "at_most"})}, "unknown": set()},
			false: {"readings": set(), "unknown": _overhang},
		}[inside]
	}
	every past, inside in {600000000: true, 599990000: true, 600010000: false} {
		_under({"max": 600000000}, [_bounded(past, 1)]) == {
			true: {"readings": {object.union(_most(past, false), {"say": "reach"})}, "unknown": set()},
			false: {"readings": set(), "unknown": _overhang},
		}[inside]
	}
	table := object.union(_table(17 * _inch, 96 * _inch, 17 * _inch, 1, false), {"say": "reach"})
	_said([_bounded(17 * _inch, 96 * _inch)]) == {"readings": {table}, "unknown": set()}
	_said([_bounded((17 * _inch) + 10000, 96 * _inch)]) == {"readings": set(), "unknown": _overhang}
}

test_inside_the_share_and_outside_the_length_to_the_edge_of_the_outline if {
	both := object.union(_quarter, {"max": 600000000})
	_under(both, [_bounded(600010000, 9600000000)]) == {"readings": set(), "unknown": _overhang}
	count(_under(both, [_bounded(600000000, 9600000000)]).readings) == 2
}

test_beyond_the_table_to_the_edge_of_the_outline if {
	teak := object.union(_bounded(30 * _inch, 96 * _inch), {"lumber": {"species": _shown("/x", "teak")}})
	_said([teak]) == {"readings": {{"at": ["/x"], "figure": "groups", "outside": true, "say": "beyond_species", "species": "teak"}}, "unknown": set()}
}

test_missing_values_are_not_shown if {
	_said([object.remove(_joist(_inch, 96 * _inch), ["size"])]) == {"readings": set(), "unknown": _asked({"platforms[].joists.size"})}
	_said([object.remove(_joist(_inch, 96 * _inch), ["ground_snow_load"])]) == {"readings": set(), "unknown": _asked({"site.ground_snow_load"})}
	bare := object.union(object.remove(_joist(_inch, 96 * _inch), ["lumber", "live_load"]), {"lumber": {"missing": ["lumber.<framing>.grade"]}})
	_said([bare]) == {"readings": set(), "unknown": _asked({"lumber.<framing>.grade", "site.live_load"})}
	_said([object.remove(_joist(_inch, 96 * _inch), ["back_span"])]) == {"readings": set(), "unknown": _asked({"platforms[].beams"})}
	_under(_quarter, [_base]) == {"readings": set(), "unknown": _asked({"platforms[].beams"})}
}

test_spacing_does_not_matter_here if {
	_said([object.remove(_joist(_inch, 96 * _inch), ["spacing"])]) == {"readings": {_table(_inch, 96 * _inch, 17 * _inch, 1, false)}, "unknown": set()}
}

test_one_bad_of_two if {
	_said([_joist(_inch, 72 * _inch), _joist(18 * _inch, 96 * _inch)]) == {
		"readings": {_ratio(_inch, 72 * _inch, false), _table(18 * _inch, 96 * _inch, 17 * _inch, 1, true)},
		"unknown": set(),
	}
}

test_no_subject_no_check if {
	not cantilever.applies with input as {"joist_cantilevers": []}
	cantilever.applies with input as {"joist_cantilevers": [_base]}
	_said([]) == {"readings": set(), "unknown": set()}
}

_by_spacing := object.union(object.remove(_figures, ["limits"]), {"limits_by_spacing": {
	"breaks": {"spacing": [12 * _inch, 16 * _inch, 24 * _inch], "load": [40 * _psf]},
	"cells": {"southern pine": {"2x6": [[15 * _inch], [16 * _inch], [18 * _inch]]}},
}})

_spaced(past, limit, row, outside) := {
	"at": ["/c"], "have": past,
	"figure": "limits_by_spacing", "limit": limit, "cell": ["southern pine", "2x6", row, 0],
	"outside": outside, "say": "table_by_spacing", "spacing": 16 * _inch,
}

test_table_by_spacing_governs_where_it_gives_less if {
	limit := 16 * _inch
	every case in [[396875, true], [10000, true], [0, false], [-396875, false], [-10000, false]] {
		past := limit + case[0]
		_under(_by_spacing, [_joist(past, 96 * _inch)]) == {"readings": {_spaced(past, limit, 1, case[1])}, "unknown": set()}
	}
}

test_a_quarter_governs_where_the_table_by_spacing_gives_more if {
	past := 12 * _inch
	_under(_by_spacing, [_joist(past, 48 * _inch)]) == {"readings": {_ratio(past, 48 * _inch, false)}, "unknown": set()}
}

test_spacing_past_the_table_is_beyond if {
	wide := object.union(_joist(10 * _inch, 96 * _inch), {"spacing": _shown("/s", (24 * _inch) + 1)})
	_under(_by_spacing, [wide]) == {
		"readings": {{"at": ["/s"], "figure": "limits_by_spacing", "outside": true, "say": "beyond_spacing", "spacing": (24 * _inch) + 1}},
		"unknown": set(),
	}
}

test_table_by_spacing_asks_for_the_spacing if {
	bare := object.union(object.remove(_joist(10 * _inch, 96 * _inch), ["spacing"]), {"spacing_field": "platforms[].measured_to"})
	_under(_by_spacing, [bare]) == {
		"readings": set(),
		"unknown": _asked({"platforms[].measured_to"}),
	}
}

_most(past, outside) := {"at": ["/c"], "have": past, "figure": "max", "limit": 600000000, "outside": outside, "say": "most"}

test_greatest_length_alone if {
	every past, outside in {600000000: false, 600010000: true} {
		_under({"max": 600000000}, [_joist(past, 1)]) == {"readings": {_most(past, outside)}, "unknown": set()}
	}
	_under({"max": 600000000}, [_base]) == {"readings": set(), "unknown": _asked({"platforms[].beams"})}
}

test_greatest_length_beside_the_share if {
	_under(object.union(_quarter, {"max": 600000000}), [_joist(600010000, 2400000000)]).readings == {
		_most(600010000, true),
		_ratio(600010000, 2400000000, true),
	}
}
