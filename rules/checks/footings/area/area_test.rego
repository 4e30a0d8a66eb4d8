package checks.footings.area_test

import data.checks.footings.area

_inch := 25400000

_limit := 16 * _inch # 406.4 mm

_base := {"live_steps": [{"upto": 40, "read": 40}], "kinds": ["cast concrete"]}

_by_area := object.union(_base, {
	"tributary": "builder", "area_unit": 304800000,
	"diameters": {"breaks": {"load": [40, 50], "soil": [1500, 2000], "area": [20, 40]}, "cells": [[[_limit, 19 * _inch], [14 * _inch, null]], [[1, 1], [1, 1]]]},
	"sides": {"breaks": {"load": [40], "soil": [1500], "area": [40]}, "cells": [[[14 * _inch]]]},
})

_by_spans := object.union(_base, {
	"corner_share": {"rise": 9, "run": 10},
	"diameters_by_spans": {"breaks": {"load": [40], "soil": [1500], "beam_span": [6], "joist_span": [10]}, "cells": [[[[20 * _inch]]]]},
})

_under(figures, members) := result if {
	result := {"readings": area.readings, "unknown": area.unknown} with input as {"footings": members, "site": {"at": ["/site"]}, "house": {"at": []}}
		with data.figures as {"footings": {"area": figures}}
}

_said(members) := _under(_by_area, members)

_shown(path, value) := {"value": value, "at": [path]}

_bare := {
	"at": ["/footings"], "beam": "B1", "n": 2, "corner": false, "missing": ["platforms[].joists"],
	"soil_bearing": _shown("/soil", 1500), "live_load": _shown("/live", 40), "ground_snow_load": _shown("/snow", 25),
	"tributary_area": _shown("/area", {"builder": 1858061, "statics": 1858062}),
	"beam_span": _shown("/beam", 6), "joist_span": _shown("/joists", 10), "shape": _shown("/shape", "round"),
}

_round(value) := object.union(_bare, {"diameter": _shown("/wide", value)})

_square(shape, value) := object.union(_bare, {"shape": _shown("/shape", shape), "side": _shown("/wide", value)})

_with(changes) := object.union(_round(_limit), changes)

_row(figure, limit, cell, have, outside) := {
	"at": ["/wide"], "have": have, "figure": figure, "limit": limit, "cell": cell,
	"outside": outside, "beam": "B1", "n": 2,
}

_reading(row) := {"readings": {row}, "unknown": set()}

_asked(needs) := {{"at": _place(need), "needs": need} | some need in needs}

_place(need) := ["/site"] if startswith(need, "site.")

_place(need) := ["/footings"] if not startswith(need, "site.")

_steps := [[-1587500, true], [-396875, true], [-10000, true], [0, false], [10000, false], [396875, false]]

test_round_under_at_and_over_the_limit if {
	every case in _steps {
		have := _limit + case[0]
		_said([_round(have)]) == _reading(_row("diameters", _limit, [0, 0, 0], have, case[1]))
	}
}

test_square_under_at_and_over_the_limit if {
	every shape in ["square", "rectangular"] {
		every case in _steps {
			have := (14 * _inch) + case[0]
			_said([_square(shape, have)]) == _reading(_row("sides", 14 * _inch, [0, 0, 0], have, case[1]))
		}
	}
}

test_next_worse_row_and_column if {
	every case in [
		[{"tributary_area": _shown("/a", {"builder": 1858062})}, 19, [0, 0, 1]],
		[{"soil_bearing": _shown("/s", 1999)}, 16, [0, 0, 0]],
		[{"soil_bearing": _shown("/s", 2000)}, 14, [0, 1, 0]],
	] {
		_said([_with(case[0])]) == _reading(_row("diameters", case[1] * _inch, case[2], _limit, _limit < (case[1] * _inch)))
	}
}

test_area_figured_as_the_set_says if {
	statics := object.union(_by_area, {"tributary": "statics"})
	_under(statics, [_round(_limit)]) == _reading(_row("diameters", 19 * _inch, [0, 0, 1], _limit, true))
}

test_by_spans_with_less_at_the_corners if {
	_under(_by_spans, [_round(18 * _inch)]) == _reading(_row("diameters_by_spans", 20 * _inch, [0, 0, 0, 0], 18 * _inch, true))
	every case in [[0, false], [-10000, true]] {
		have := (18 * _inch) + case[0]
		footing := object.union(_round(have), {"corner": true})
		_under(_by_spans, [footing]) == _reading(_row("diameters_by_spans", 18 * _inch, [0, 0, 0, 0], have, case[1]))
	}
}

test_corner_without_a_share_of_its_own if {
	_said([_with({"corner": true})]) == _reading(_row("diameters", _limit, [0, 0, 0], _limit, false))
}

test_cell_that_permits_nothing_is_outside if {
	footing := _with({"soil_bearing": _shown("/s", 2000), "tributary_area": _shown("/a", {"builder": 1858062})})
	_said([footing]) == _reading({
		"at": ["/footings"], "figure": "diameters", "cell": [0, 1, 1],
		"outside": true, "say": "not_permitted", "beam": "B1", "n": 2,
	})
}

test_beyond_the_table_is_outside if {
	_said([_with({"soil_bearing": _shown("/x", 1499)})]) == _reading({
		"at": ["/x"], "figure": "diameters",
		"outside": true, "say": "beyond_soil", "soil": 1499,
	})
	_said([_with({"kind": _shown("/x", "helical pile")})]) == _reading({
		"at": ["/x"], "have": "helical pile", "figure": "kinds", "limit": ["cast concrete"],
		"outside": true, "say": "beyond_kind",
	})
	_said([_with({"kind": _shown("/x", "cast concrete")})]) == _reading(_row("diameters", _limit, [0, 0, 0], _limit, false))
}

test_missing_values_are_not_shown if {
	every case in [
		[["soil_bearing"], {"site.soil_bearing"}],
		[["diameter"], {"platforms[].footings.diameter"}],
		[["tributary_area"], {"platforms[].joists"}],
		[["live_load", "ground_snow_load"], {"site.live_load", "site.ground_snow_load"}],
	] {
		_said([object.remove(_round(_limit), case[0])]) == {"readings": set(), "unknown": _asked(case[1])}
	}
	_said([object.remove(_square("rectangular", 1), ["side"])]).unknown == _asked({"platforms[].footings.along", "platforms[].footings.out"})
	_said([object.remove(_round(_limit), ["shape"])]).unknown == _asked({"platforms[].footings.shape"})
}

test_missing_value_is_asked_for_only_where_it_could_decide if {
	_said([object.remove(_round(_limit), ["ground_snow_load"])]) == {"readings": set(), "unknown": _asked({"site.ground_snow_load"})}
	_said([object.remove(_round(_limit - 1), ["ground_snow_load"])]) == _reading(_row("diameters", _limit, [0, 0, 0], _limit - 1, true))
}

test_one_bad_of_two if {
	_said([_round(_limit), _round(_limit - 1)]).readings == {
		_row("diameters", _limit, [0, 0, 0], _limit, false),
		_row("diameters", _limit, [0, 0, 0], _limit - 1, true),
	}
}

test_no_subject_no_check if {
	not area.applies with input as {"footings": []}
	area.applies with input as {"footings": [_bare]}
	_said([]) == {"readings": set(), "unknown": set()}
}
