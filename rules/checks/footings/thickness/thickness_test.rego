package checks.footings.thickness_test

import data.checks.footings.thickness

_inch := 25400000

_min := 6 * _inch # 152.4 mm

_limit := 8 * _inch

_plain := {"min": _min, "kinds": ["cast concrete"]}

_tabled := object.union(_plain, {
	"live_steps": [{"upto": 40, "read": 40}], "tributary": "builder", "area_unit": 304800000,
	"thicknesses": {"breaks": {"load": [40], "soil": [1500], "area": [20, 40]}, "cells": [[[_limit, 9 * _inch]]]},
})

_under(figures, members) := result if {
	result := {"readings": thickness.readings, "unknown": thickness.unknown, "exempt": thickness.exempt} with input as {
		"footings": members,
		"site": {"at": ["/site"]}, "house": {"at": []},
	}
		with data.figures as {"footings": {"thickness": figures}}
}

_shown(path, value) := {"value": value, "at": [path]}

_footing(value) := {
	"at": ["/footings"], "beam": "B1", "n": 2, "missing": ["platforms[].joists"],
	"thickness": _shown("/thick", value), "soil_bearing": _shown("/soil", 1500),
	"live_load": _shown("/live", 40), "ground_snow_load": _shown("/snow", 25),
	"tributary_area": _shown("/area", {"builder": 1858061, "statics": 1858062}),
}

_with(changes) := object.union(_footing(_limit), changes)

_least(have, outside) := {"at": ["/thick"], "have": have, "figure": "min", "limit": _min, "outside": outside, "beam": "B1", "n": 2}

_row(limit, cell, have, outside) := {
	"at": ["/thick"], "have": have, "figure": "thicknesses", "limit": limit, "cell": cell,
	"outside": outside, "beam": "B1", "n": 2,
}

_reading(rows) := {"readings": rows, "unknown": set(), "exempt": set()}

_steps := [[-396875, true], [-10000, true], [0, false], [10000, false], [396875, false]]

test_least_thickness if {
	every case in _steps {
		_under(_plain, [_footing(_min + case[0])]) == _reading({_least(_min + case[0], case[1])})
	}
}

test_thickness_of_the_table if {
	every case in _steps {
		have := _limit + case[0]
		_under(_tabled, [_footing(have)]) == _reading({_least(have, false), _row(_limit, [0, 0, 0], have, case[1])})
	}
	_under(_tabled, [_with({"tributary_area": _shown("/a", {"builder": 1858062})})]) == _reading({_least(_limit, false), _row(9 * _inch, [0, 0, 1], _limit, true)})
}

test_other_kinds_are_left_alone if {
	_under(_tabled, [_with({"kind": _shown("/kind", "helical pile")})]) == {
		"readings": set(), "unknown": set(),
		"exempt": {{"at": ["/footings"], "because": "kind", "kind": "helical pile"}},
	}
	_under(_plain, [_with({"kind": _shown("/kind", "cast concrete")})]) == _reading({_least(_limit, false)})
}

test_beyond_the_table_the_least_is_left if {
	_under(_tabled, [_with({"soil_bearing": _shown("/soil", 1000)})]) == {
		"readings": {_least(_limit, false)}, "unknown": set(),
		"exempt": {{"at": ["/footings"], "because": "beyond", "beam": "B1", "n": 2}},
	}
}

test_missing_values_are_not_shown if {
	_under(_plain, [object.remove(_footing(1), ["thickness"])]) == {
		"readings": set(), "exempt": set(),
		"unknown": {{"at": ["/footings"], "needs": "platforms[].footings.thickness"}},
	}
	every case in [
		[["soil_bearing"], "site.soil_bearing", ["/site"]],
		[["ground_snow_load"], "site.ground_snow_load", ["/site"]],
		[["tributary_area"], "platforms[].joists", ["/footings"]],
	] {
		_under(_tabled, [object.remove(_footing(_limit), case[0])]) == {
			"readings": {_least(_limit, false)}, "exempt": set(),
			"unknown": {{"at": case[2], "needs": case[1]}},
		}
	}
}

test_missing_value_is_asked_for_only_where_it_could_decide if {
	_under(_tabled, [object.remove(_footing(_limit - 1), ["ground_snow_load"])]) == _reading({_least(_limit - 1, false), _row(_limit, [0, 0, 0], _limit - 1, true)})
}

test_one_bad_of_two if {
	_under(_plain, [_footing(_min), _footing(_min - 1)]) == _reading({_least(_min, false), _least(_min - 1, true)})
}

test_no_subject_no_check if {
	not thickness.applies with input as {"footings": []}
	thickness.applies with input as {"footings": [_footing(1)]}
	_under(_tabled, []) == _reading(set())
}
