package checks.TOPIC.stair_width_test

import data.checks.TOPIC.stair_width as check

# 36 in up to a rise of 3 ft, 42 in up to 6 ft, in nanometres.
_figures := {"TOPIC": {"stair_width": {"widths": {
	"breaks": {"rise": [914400000, 1828800000]},
	"cells": [914400000, 1066800000],
}}}}

_said := {"readings": check.readings, "unknown": check.unknown}

_stair(rise, width) := {
	"at": ["/stairs/0"],
	"total_rise": {"value": rise, "at": ["/stairs/0/total_rise"]},
	"width": {"value": width, "at": ["/stairs/0/width"]},
}

_reading(rise, width, row, limit, outside) := {
	"at": ["/stairs/0/width"], "have": width, "figure": "widths", "limit": limit, "cell": [row],
	"outside": outside, "rise": rise,
}

test_limit[name] if {
	some name, case in {
		"low stair, at the limit": {"rise": 914400000, "width": 914400000, "row": 0, "limit": 914400000, "outside": false},
		"low stair, under it": {"rise": 914400000, "width": 914399999, "row": 0, "limit": 914400000, "outside": true},
		"high stair, at the limit": {"rise": 914400001, "width": 1066800000, "row": 1, "limit": 1066800000, "outside": false},
		"high stair, under it": {"rise": 1828800000, "width": 1066799999, "row": 1, "limit": 1066800000, "outside": true},
	}
	_said == {
		"readings": {_reading(case.rise, case.width, case.row, case.limit, case.outside)},
		"unknown": set(),
	} with input.stairs as [_stair(case.rise, case.width)]
		with data.figures as _figures
}

test_higher_than_the_table if {
	_said == {
		"readings": {{
			"at": ["/stairs/0/width"], "have": 1066800000, "figure": "widths",
			"outside": true, "say": "beyond", "rise": 1828800001,
		}},
		"unknown": set(),
	} with input.stairs as [_stair(1828800001, 1066800000)]
		with data.figures as _figures
}

test_width_not_shown if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0"], "needs": "stairs[].width"}}} with input.stairs as [object.remove(_stair(1, 1), ["width"])]
		with data.figures as _figures
}

test_rise_not_shown if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0"], "needs": "stairs[].total_rise"}}} with input.stairs as [object.remove(_stair(1, 1), ["total_rise"])]
		with data.figures as _figures
}

test_no_stair if {
	not check.applies with input.stairs as []
	check.applies with input.stairs as [_stair(1, 1)]
}
