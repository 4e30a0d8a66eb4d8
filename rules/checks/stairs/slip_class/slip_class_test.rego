package checks.stairs.slip_class_test

import data.checks.stairs.slip_class as check

_said := {"readings": check.readings, "unknown": check.unknown}

_figures := {"stairs": {"slip_class": {"accepted": ["P4", "R11"]}}}

_stair(class) := {"at": ["/stairs/0"], "slip_class": {"value": class, "at": ["/stairs/0/tread/slip_class"]}}

test_class[class] if {
	some class, outside in {"P4": false, "p4": false, "R11": false, "P3": true, "R10": true, "": true}
	_said == {
		"readings": {{
			"at": ["/stairs/0/tread/slip_class"], "have": class,
			"figure": "accepted", "limit": ["P4", "R11"], "outside": outside,
		}},
		"unknown": set(),
	} with input.stairs as [_stair(class)]
		with data.figures as _figures
}

test_not_shown if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0"], "needs": "stairs[].tread.slip_class"}}} with input.stairs as [{"at": ["/stairs/0"]}]
		with data.figures as _figures
}

test_none_described if {
	not check.applies with input.stairs as []
	check.applies with input.stairs as [_stair("P4")]
}
