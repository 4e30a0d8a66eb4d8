package checks.decking.gap_test

import data.checks.decking.gap

_min := 3175000 # 1/8 in, 3.175 mm

_max := 6350000 # 1/4 in, 6.35 mm

_said(boards) := result if {
	result := {"readings": gap.readings, "unknown": gap.unknown} with input as {"decking": boards}
		with data.figures as {"decking": {"gap": {"min": _min, "max": _max}}}
}

_bare(n) := {"at": [sprintf("/platforms/%d/decking", [n])], "platform": "A", "picture_frame": false}

_boards(n, value) := object.union(_bare(n), {"gap": {"value": value, "at": [sprintf("/platforms/%d/decking/gap", [n])]}})

_readings(n, value, narrow, wide) := {
	{
		"at": [sprintf("/platforms/%d/decking/gap", [n])], "have": value,
		"figure": "min", "limit": _min, "outside": narrow,
	},
	{
		"at": [sprintf("/platforms/%d/decking/gap", [n])], "have": value,
		"figure": "max", "limit": _max, "outside": wide,
		"say": "wide",
	},
}

test_gap_around_the_least if {
	every case in [[-396875, true], [-10000, true], [0, false], [396875, false], [10000, false]] {
		value := _min + case[0]
		_said([_boards(0, value)]) == {"readings": _readings(0, value, case[1], false), "unknown": set()}
	}
}

test_gap_around_the_greatest if {
	every case in [[396875, true], [10000, true], [0, false], [-396875, false], [-10000, false]] {
		value := _max + case[0]
		_said([_boards(0, value)]) == {"readings": _readings(0, value, false, case[1]), "unknown": set()}
	}
}

test_missing_value_is_not_shown if {
	_said([_bare(0)]) == {"readings": set(), "unknown": {{"at": ["/platforms/0/decking"], "needs": "platforms[].decking.gap"}}}
}

test_one_bad_of_two if {
	_said([_boards(0, _min), _boards(1, 0)]) == {
		"readings": (_readings(0, _min, false, false) | _readings(1, 0, true, false)),
		"unknown": set(),
	}
}

test_no_subject_no_check if {
	not gap.applies with input as {"decking": []}
	gap.applies with input as {"decking": [_bare(0)]}
	_said([]) == {"readings": set(), "unknown": set()}
}
