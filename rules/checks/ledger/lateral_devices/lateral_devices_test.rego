package checks.ledger.lateral_devices_test

import data.checks.ledger.lateral_devices

_strong := 6672332423 # 1500 lb in micronewtons, rounded

_weak := 3336166211 # 750 lb

_ends := 609600000 # 24 in

_deep := 76200000 # 3 in

_figures := {
	"few": 2, "few_capacity": _strong, "many": 4, "many_capacity": _weak, "many_penetration": _deep,
	"from_ends": _ends,
}

_under(figures, devices) := result if {
	result := {"readings": lateral_devices.readings, "unknown": lateral_devices.unknown} with input as {"lateral_devices": devices}
		with data.figures as {"ledger": {"lateral_devices": figures}}
}

_said(devices) := _under(_figures, devices)

_shown(path, value) := {"value": value, "at": [path]}

_ties(count, capacity, ends) := {
	"at": ["/ties"], "shown": true,
	"count": _shown("/count", count), "capacity": _shown("/capacity", capacity), "from_ends": _shown("/ends", ends),
}

_screwed(devices, depth) := object.union(devices, {"penetration": _shown("/deep", depth)})

_count(have, outside) := {"at": ["/count"], "have": have, "figure": "few", "limit": 2, "outside": outside}

_capacity(figure, have, outside) := {"at": ["/capacity"], "have": have, "figure": figure, "limit": _figures[figure], "outside": outside, "say": "capacity"}

_from(have, outside) := {"at": ["/ends"], "have": have, "figure": "from_ends", "limit": _ends, "outside": outside, "say": "ends"}

_depth(have, outside) := {"at": ["/deep"], "have": have, "figure": "many_penetration", "limit": _deep, "outside": outside, "say": "penetration"}

_asked(field) := {{"at": ["/ties"], "needs": concat(".", ["platforms[].lateral_devices", field])}}

test_few_strong_ones if {
	every case in [[-1, true], [0, false], [1, false]] {
		have := _strong + case[0]
		_said([_ties(2, have, _ends)]) == {"readings": {_count(2, false), _capacity("few_capacity", have, case[1]), _from(_ends, false)}, "unknown": set()}
	}
}

test_fewer_than_that if {
	_said([_ties(1, _strong, _ends)]).readings == {_count(1, true), _capacity("few_capacity", _strong, false), _from(_ends, false)}
	_said([_ties(3, _weak, _ends)]).readings == {_count(3, false), _capacity("few_capacity", _weak, true), _from(_ends, false)}
}

test_many_lesser_ones if {
	every case in [[-1, true], [0, false], [1, false]] {
		have := _weak + case[0]
		_said([_screwed(_ties(4, have, _ends), _deep)]) == {
			"readings": {_count(4, false), _capacity("many_capacity", have, case[1]), _from(_ends, false), _depth(_deep, false)},
			"unknown": set(),
		}
	}
}

test_depth_of_the_lesser_screws if {
	every case in [[-396875, true], [-10000, true], [0, false], [10000, false]] {
		_depth(_deep + case[0], case[1]) in _said([_screwed(_ties(4, _weak, _ends), _deep + case[0])]).readings
	}
	_said([_ties(4, _weak, _ends)]).unknown == _asked("penetration")
	_said([_ties(4, _strong, _ends)]).unknown == set()
	_under(object.remove(_figures, ["many_penetration"]), [_ties(4, _weak, _ends)]).unknown == set()
}

test_set_with_one_arrangement if {
	one := object.remove(_figures, ["many", "many_capacity", "many_penetration"])
	_under(one, [_ties(4, _weak, _ends)]).readings == {_count(4, false), _capacity("few_capacity", _weak, true), _from(_ends, false)}
}

test_distance_from_the_ends if {
	every case in [[396875, true], [10000, true], [0, false], [-10000, false], [-396875, false]] {
		_from(_ends + case[0], case[1]) in _said([_ties(2, _strong, _ends + case[0])]).readings
	}
}

test_missing_values_are_not_shown if {
	_said([{"at": ["/platforms/0"], "shown": false}]) == {
		"readings": set(),
		"unknown": {{"at": ["/platforms/0"], "needs": "platforms[].lateral_devices"}},
	}
	every case in [["count", "count"], ["capacity", "capacity"], ["from_ends", "distance_from_ends"]] {
		_said([object.remove(_ties(2, _strong, _ends), [case[0]])]).unknown == _asked(case[1])
	}
}

test_one_bad_of_two if {
	_said([_ties(2, _strong, 0), _ties(2, _strong, _ends + 1)]).readings == {
		_count(2, false), _capacity("few_capacity", _strong, false),
		_from(0, false), _from(_ends + 1, true),
	}
}

test_no_subject_no_check if {
	not lateral_devices.applies with input as {"lateral_devices": []}
	lateral_devices.applies with input as {"lateral_devices": [_ties(2, 1, 1)]}
	_said([]) == {"readings": set(), "unknown": set()}
}
