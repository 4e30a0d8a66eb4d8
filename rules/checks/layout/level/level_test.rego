package checks.layout.level_test

import data.checks.layout.level

_figures := {"max": 19050000, "over": 6096000000}

_said(levels) := result if {
	result := {"readings": level.readings, "unknown": level.unknown} with input as {"levels": levels}
		with data.figures as {"layout": {"level": _figures}}
}

_bare(n) := {"at": [sprintf("/measured/%d", [n])]}

_at(n) := [sprintf("/measured/%d/points", [n])]

_level(n, difference, distance) := object.union(_bare(n), {
	"difference": {"value": difference, "at": _at(n)},
	"distance": {"value": distance, "at": _at(n)},
})

_reading(n, difference, distance, limit, outside) := {
	"at": _at(n), "have": difference,
	"figure": "max", "limit": limit, "outside": outside,
	"distance": distance,
}

test_difference_over_at_and_under_the_limit if {
	every pair in [[6096000000, 19050000], [3048000000, 9525000]] {
		[distance, limit] := pair
		every case in [[396875, true], [10000, true], [1, true], [0, false], [-396875, false], [-10000, false]] {
			difference := limit + case[0]
			_said([_level(0, difference, distance)]) == {"readings": {_reading(0, difference, distance, limit, case[1])}, "unknown": set()}
		}
	}
}

test_limit_between_whole_numbers_rounds_down_and_compares_exactly if {
	_said([_level(0, 3, 1000)]) == {"readings": {_reading(0, 3, 1000, 3, false)}, "unknown": set()}
	_said([_level(0, 4, 1000)]) == {"readings": {_reading(0, 4, 1000, 3, true)}, "unknown": set()}
}

test_missing_value_is_not_shown if {
	every missing in [["measured[].points"], ["measured[].points[].at", "measured[].points[].height"]] {
		_said([object.union(_bare(0), {"missing": missing})]) == {
			"readings": set(),
			"unknown": {{"at": ["/measured/0"], "needs": need} | some need in missing},
		}
	}
}

test_two_readings_of_one_spot if {
	_said([object.union(_bare(0), {"missing": []})]) == {"readings": set(), "unknown": {{"at": ["/measured/0"], "needs": "measured[].points"}}}
}

test_one_bad_of_two if {
	_said([_level(0, 0, 6096000000), _level(1, 25400000, 6096000000)]) == {
		"readings": {_reading(0, 0, 6096000000, 19050000, false), _reading(1, 25400000, 6096000000, 19050000, true)},
		"unknown": set(),
	}
}

test_no_subject_no_check if {
	not level.applies with input as {"levels": []}
	level.applies with input as {"levels": [_bare(0)]}
	_said([]) == {"readings": set(), "unknown": set()}
}
