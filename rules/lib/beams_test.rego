package lib.beams_test

import data.lib.beams

_shown(value) := {"value": value, "at": ["/platforms/0/beams/0/size"]}

test_named_by_plies_and_stock if {
	every case in [
		[{"size": _shown("2x10"), "plies": _shown(3)}, "3-2x10"],
		[{"size": _shown("2x10"), "plies": _shown(1)}, "1-2x10"],
		[{"size": _shown("4x10")}, "4x10"],
		[{"size": _shown("4x10"), "plies": _shown(1)}, "4x10"],
		[{"size": _shown("4x10"), "plies": _shown(2)}, "2-4x10"],
	] {
		[bay, name] := case
		beams.named(bay) == object.union(bay, {"size": _shown(name)})
	}
}

test_no_size_where_plies_decide_and_are_not_shown if {
	beams.named({"size": _shown("2x10"), "bay": 1}) == {"bay": 1}
	beams.named({"plies": _shown(2)}) == {"plies": _shown(2)}
}

_figures := {
	"basis": "span to center", "joist_basis": "span to center", "both_sides": false,
	"groups": {"southern pine": ["southern pine"]}, "grades": ["No. 2"], "live_steps": [{"upto": 40, "read": 40}],
	"spans": {"breaks": {"load": [40], "joist_span": [96, 120]}, "cells": {"southern pine": {"2-2x10": [[9, 8]]}}},
}

_factored := object.union(_figures, {"factor_of": 120, "factors": {"breaks": {"cantilever": [0, 10, 30]}, "cells": [79, 93, 120]}})

_bay := {
	"at": ["/beam"], "beam": "B1", "both_sides": false, "missing": ["platforms[].joists"],
	"size": _shown("2x10"), "plies": _shown(2), "span_to_center": _shown(7), "joist_span": _shown(120), "joist_cantilever": _shown(0),
	"lumber": {"species": _shown("southern pine"), "grade": _shown("No. 2")}, "live_load": _shown(40), "ground_snow_load": _shown(25),
}

test_effective_span_of_joists if {
	beams.effective(_figures, _bay) == 120
	every case in [[0, 79], [1, 93], [10, 93], [11, 120], [30, 120]] {
		beams.effective(_factored, object.union(_bay, {"joist_cantilever": _shown(case[0])})) == case[1]
	}
	beams.effective(_factored, object.union(_bay, {"joist_span": _shown(121)})) == 80 # 79.66
	not beams.effective(_factored, object.union(_bay, {"joist_cantilever": _shown(31)}))
	not beams.effective(_figures, {})
}

test_nothing_beyond if {
	beams.beyond(_figures, _bay) == set()
	beams.beyond(_factored, _bay) == set()
}

test_beyond_the_table if {
	every case in [
		[_figures, {"both_sides": true}, {"figure": "both_sides", "say": "beyond_sides", "at": ["/beam"], "have": true, "limit": false}],
		[_figures, {"joist_span": _shown(121)}, {"figure": "spans", "say": "beyond_joists", "at": _shown(1).at, "joists": 121}],
		[_factored, {"joist_cantilever": _shown(31)}, {"figure": "factors", "say": "beyond_cantilever", "at": _shown(1).at, "past": 31, "joists": 120}],
	] {
		beams.beyond(case[0], object.union(_bay, case[1])) == {object.union(case[2], {"beam": "B1", "outside": true})}
	}
	beams.beyond(_figures, object.union(_bay, {"size": _shown("2x4")})) == {{"at": _shown(1).at, "figure": "spans", "outside": true, "say": "beyond_size", "size": "2-2x4"}}
	both := object.union(_figures, {"both_sides": true})
	beams.beyond(both, object.union(_bay, {"both_sides": true})) == set()
}

test_needs_of_the_table if {
	beams.needs(_figures, _bay) == set()
	every case in [
		[["size"], "platforms[].beams[].size"], [["plies"], "platforms[].beams[].plies"],
		[["span_to_center"], "platforms[].joists"], [["live_load"], "site.live_load"],
	] {
		beams.needs(_figures, object.remove(_bay, case[0])) == {case[1]}
	}
	lone := object.union(object.remove(_bay, ["joist_span"]), {"missing": []})
	beams.needs(_figures, lone) == {"platforms[].beams"}
}
