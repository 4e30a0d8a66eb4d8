package checks.scope.surface_height_test

import data.checks.scope.surface_height

_said(platforms) := result if {
	result := {"readings": surface_height.readings, "unknown": surface_height.unknown} with input as {"platforms": platforms}
		with data.figures as {"scope": {"surface_height": {"max": 3000000000}}}
}

_platform(n, height) := object.union(_unstated(n, height), {"surface_above_grade": {"value": 1, "at": ["/stated"]}})

_unstated(n, height) := {"at": [sprintf("/platforms/%d", [n])], "greatest_height": {"value": height, "at": [sprintf("/height/%d", [n])]}}

_row(n, height, outside) := {"at": [sprintf("/height/%d", [n])], "have": height, "figure": "max", "limit": 3000000000, "outside": outside}

test_at_and_over_the_limit if {
	_said([_platform(0, 3000000000), _platform(1, 3000010000)]) == {
		"readings": {_row(0, 3000000000, false), _row(1, 3000010000, true)}, "unknown": set(),
	}
}

test_height_that_is_not_stated_matters_where_no_ground_lies_too_far_below if {
	_said([_unstated(0, 3000000000), _unstated(1, 3000010000)]) == {
		"readings": {_row(1, 3000010000, true)},
		"unknown": {{"at": ["/platforms/0"], "needs": "platforms[].surface_above_grade"}},
	}
}

test_not_shown if {
	_said([{"at": ["/platforms/0"]}]) == {"readings": set(), "unknown": {{"at": ["/platforms/0"], "needs": "platforms[].surface_above_grade"}}}
}

test_no_platform_no_check if {
	not surface_height.applies with input as {"platforms": []}
	surface_height.applies with input as {"platforms": [{"at": ["/platforms/0"]}]}
	_said([]) == {"readings": set(), "unknown": set()}
}
