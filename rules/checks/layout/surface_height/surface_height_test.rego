package checks.layout.surface_height_test

import data.checks.layout.surface_height as check

_limit := 25400000 # 1 in, 25.4 mm

_said(surfaces) := result if {
	result := {"readings": check.readings, "unknown": check.unknown} with input.stated_heights as surfaces
		with data.figures as {"layout": {"surface_height": {"tolerance": _limit}}}
}

_at(n) := sprintf("/platforms/%d/surface_above_grade", [n])

_surface(n, apart) := {
	"at": [_at(n)], "platform": "A", "missing": [],
	"stated": {"value": 1270000000 + apart, "at": [_at(n)]},
	"derived": {"value": 1270000000, "at": ["/platforms/0/edges/front/drop"]},
	"difference": {"value": apart, "at": [_at(n)]},
}

_reading(n, apart, outside) := {
	"at": [_at(n)], "have": apart, "figure": "tolerance", "limit": _limit, "outside": outside,
	"stated": 1270000000 + apart, "derived": 1270000000,
}

test_limit[name] if {
	some name, case in {
		"alike": [-25400000, false],
		"1/64 in inside": [-396875, false],
		"0.01 mm inside": [-10000, false],
		"at it": [0, false],
		"0.01 mm outside": [10000, true],
		"1/64 in outside": [396875, true],
	}
	_said([_surface(0, _limit + case[0])]) == {"readings": {_reading(0, _limit + case[0], case[1])}, "unknown": set()}
}

test_one_of_two_is_outside if {
	_said([_surface(0, 0), _surface(1, _limit + 1)]) == {
		"readings": {_reading(0, 0, false), _reading(1, _limit + 1, true)},
		"unknown": set(),
	}
}

test_ground_not_shown_counts_past_the_tolerance if {
	_said([_partly(0, _limit), _partly(1, _limit + 1)]) == {
		"readings": {_reading(0, _limit, false)},
		"unknown": {{"at": [_at(1)], "needs": "platforms[].edges.<left>.drop"}},
	}
}

_partly(n, apart) := object.union(_surface(n, apart), {"missing": ["platforms[].edges.<left>.drop"]})

test_nothing_to_compare if {
	not check.applies with input.stated_heights as []
	check.applies with input.stated_heights as [_surface(0, 0)]
	_said([]) == {"readings": set(), "unknown": set()}
}
