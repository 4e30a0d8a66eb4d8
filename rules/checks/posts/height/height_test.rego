package checks.posts.height_test

import data.checks.posts.height

_inch := 25400000

_limit := 96 * _inch # 8 ft, 2438.4 mm

_by_size := {
	"live_steps": [{"upto": 40, "read": 40}, {"upto": 60, "read": 70}],
	"by_size": {"breaks": {"load": [40], "plies": [2, 3]}, "cells": {"4x4": [[_limit, 81 * _inch]], "6x6": [[_limit, null]]}},
}

_by_area := {
	"live_steps": [{"upto": 40, "read": 40}], "groups": {"southern pine": ["southern pine"]}, "grades": ["No. 2"],
	"tributary": "builder", "area_unit": 304800000,
	"by_area": {"breaks": {"load": [40], "area": [20, 40]}, "cells": {"southern pine": {"4x4": [[_limit, 80 * _inch]]}}},
}

_under(figures, members) := result if {
	result := {"readings": height.readings, "unknown": height.unknown, "exempt": height.exempt} with input as {
		"posts": members,
		"site": {"at": ["/site"]}, "house": {"at": []},
	}
		with data.figures as {"posts": {"height": figures}}
}

_shown(path, value) := {"value": value, "at": [path]}

_at := "/platforms/0/beams/0/posts_at/0"

_base := {
	"at": [_at], "missing": ["platforms[].grade_at"],
	"size": _shown("/size", "4x4"), "beam_plies": _shown("/plies", 2),
	"lumber": {"species": _shown("/species", "southern pine"), "grade": _shown("/grade", "No. 2")},
	"tributary_area": _shown("/area", {"builder": 1000000, "statics": 3000000}),
	"live_load": _shown("/live", 40), "ground_snow_load": _shown("/snow", 25),
}

_post(value) := object.union(_base, {"height": _shown("/height", value)})

_with(changes) := object.union(_post(_inch), changes)

_without(keys) := object.remove(_post(_inch), keys)

_row(form, limit, cell, have, outside) := {
	"at": ["/height"], "have": have, "figure": form, "limit": limit, "cell": cell,
	"outside": outside, "size": "4x4",
}

_reading(row) := {"readings": {row}, "unknown": set(), "exempt": set()}

_asked(needs) := {{"at": _place(need), "needs": need} | some need in needs}

_place(need) := ["/site"] if startswith(need, "site.")

_place(need) := ["/platforms/0"] if not startswith(need, "site.")

_steps := [[396875, true], [10000, true], [0, false], [-10000, false], [-396875, false]]

test_over_at_and_under_the_limit_by_size if {
	every case in _steps {
		have := _limit + case[0]
		_under(_by_size, [_post(have)]) == _reading(_row("by_size", _limit, ["4x4", 0, 0], have, case[1]))
	}
}

test_over_at_and_under_the_limit_by_area if {
	every case in _steps {
		have := _limit + case[0]
		_under(_by_area, [_post(have)]) == _reading(_row("by_area", _limit, ["southern pine", "4x4", 0, 0], have, case[1]))
	}
}

test_area_figured_as_the_set_says if {
	statics := object.union(_by_area, {"tributary": "statics"})
	_under(statics, [_post(_limit)]) == _reading(_row("by_area", 80 * _inch, ["southern pine", "4x4", 0, 1], _limit, true))
}

test_three_plies_have_a_column_of_their_own if {
	post := object.union(_post(_limit), {"beam_plies": _shown("/plies", 3)})
	_under(_by_size, [post]) == _reading(_row("by_size", 81 * _inch, ["4x4", 0, 1], _limit, true))
}

test_cell_that_permits_nothing_is_outside if {
	post := _with({"beam_plies": _shown("/plies", 3), "size": _shown("/size", "6x6")})
	_under(_by_size, [post]) == _reading({
		"at": [_at], "figure": "by_size", "cell": ["6x6", 0, 1],
		"outside": true, "say": "not_permitted", "size": "6x6",
	})
}

test_beyond_the_table_is_outside if {
	_under(_by_size, [_with({"live_load": _shown("/x", 60)})]) == _reading({
		"at": ["/x"], "figure": "by_size",
		"outside": true, "say": "beyond_load", "load": 60,
	})
	_under(_by_area, [_with({"lumber": {"grade": _shown("/x", "No. 3")}})]) == _reading({
		"at": ["/x"], "figure": "grades",
		"outside": true, "say": "beyond_grade", "grade": "No. 3",
	})
}

test_other_material_is_left_alone if {
	_under(_by_size, [_with({"material": _shown("/material", "steel")})]) == {
		"readings": set(), "unknown": set(),
		"exempt": {{"at": [_at], "because": "material", "material": "steel"}},
	}
	_under(_by_size, [_with({"material": _shown("/material", "wood")})]) == _reading(_row("by_size", _limit, ["4x4", 0, 0], _inch, false))
}

test_missing_values_are_not_shown if {
	every case in [
		[_by_size, ["size"], {"platforms[].posts.size"}],
		[_by_size, ["beam_plies"], {"platforms[].beams[].plies"}],
		[_by_size, ["height"], {"platforms[].grade_at"}],
		[_by_size, ["live_load", "ground_snow_load"], {"site.live_load", "site.ground_snow_load"}],
		[_by_area, ["tributary_area"], {"platforms[].grade_at"}],
	] {
		_under(case[0], [_without(case[1])]) == {"readings": set(), "exempt": set(), "unknown": _asked(case[2])}
	}
	_under(_by_area, [object.union(_without(["lumber"]), {"lumber": {"missing": ["platforms[].posts.lumber"]}})]).unknown == _asked({"platforms[].posts.lumber"})
}

test_spans_not_shown_where_the_table_asks_for_them if {
	by_spans := object.union(object.remove(_by_area, ["by_area"]), {"by_spans": {"breaks": {"load": [40], "beam_span": [6], "joist_span": [10]}, "cells": {"southern pine": {"4x4": [[[_limit]]]}}}})
	spanned := _with({"beam_span": _shown("/beam", 6), "joist_span": _shown("/joists", 10)})
	_under(by_spans, [spanned]) == _reading(_row("by_spans", _limit, ["southern pine", "4x4", 0, 0, 0], _inch, false))
	lone := object.union(_post(_inch), {"missing": []})
	_under(by_spans, [lone]).unknown == _asked({"platforms[].beams[].posts_at", "platforms[].beams"})
}

test_missing_value_is_asked_for_only_where_it_could_decide if {
	inside := object.remove(_post(_limit), ["ground_snow_load"])
	_under(_by_size, [inside]) == {"readings": set(), "exempt": set(), "unknown": _asked({"site.ground_snow_load"})}
	over := object.remove(_post(_limit + 1), ["ground_snow_load"])
	_under(_by_size, [over]) == _reading(_row("by_size", _limit, ["4x4", 0, 0], _limit + 1, true))
}

test_one_bad_of_two if {
	_under(_by_size, [_post(_limit), _post(_limit + 1)]).readings == {
		_row("by_size", _limit, ["4x4", 0, 0], _limit, false),
		_row("by_size", _limit, ["4x4", 0, 0], _limit + 1, true),
	}
}

test_no_subject_no_check if {
	not height.applies with input as {"posts": []}
	height.applies with input as {"posts": [_base]}
	_under(_by_size, []) == {"readings": set(), "unknown": set(), "exempt": set()}
}
