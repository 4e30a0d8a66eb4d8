package checks.beams.joint_bearing_test

import data.checks.beams.joint_bearing

_min := 38100000 # 1-1/2 in

_said(joints) := result if {
	result := {
		"readings": joint_bearing.readings,
		"unknown": joint_bearing.unknown,
		"exempt": joint_bearing.exempt,
	} with input as {"ply_joints": joints}
		with data.figures as {"beams": {"joint_bearing": {"min": _min}}}
}

_joint := {"at": ["/joint"], "beam": "B1"}

_over(off) := object.union(_joint, {"off_post": {"value": off, "at": ["/joint", "/post"]}, "half_post": {"value": 69850000, "at": ["/size"]}})

_stated(value) := object.union(_joint, {"bearing": {"value": value, "at": ["/bearing"]}})

_row(at, have, outside) := {"at": at, "have": have, "figure": "min", "limit": _min, "outside": outside, "beam": "B1"}

_reading(row) := {"readings": {row}, "unknown": set(), "exempt": set()}

test_stated_under_at_and_over_the_limit if {
	every case in [[-396875, true], [-10000, true], [0, false], [10000, false], [396875, false]] {
		_said([_stated(_min + case[0])]) == _reading(_row(["/bearing"], _min + case[0], case[1]))
	}
}

test_what_the_post_leaves if {
	every case in [[0, 69850000, false], [31750000, _min, false], [31760000, _min - 10000, true]] {
		[off, left, outside] := case
		_said([_over(off)]) == _reading(_row(["/joint", "/post"], left, outside))
	}
}

test_stated_length_goes_before_the_post if {
	_said([object.union(_over(0), _stated(_min - 1))]) == _reading(_row(["/bearing"], _min - 1, true))
}

test_off_the_post_is_left_alone if {
	_said([_over(69850000)]) == {"readings": set(), "unknown": set(), "exempt": {{"at": ["/joint"], "because": "off"}}}
}

test_missing_values_are_not_shown if {
	every joint in [_joint, object.remove(_over(0), ["half_post"])] {
		_said([joint]) == {
			"readings": set(), "exempt": set(),
			"unknown": {{"at": ["/joint"], "needs": "platforms[].beams[].bearing_at_joint"}},
		}
	}
}

test_one_bad_of_two if {
	_said([_stated(_min), _stated(_min - 1)]).readings == {_row(["/bearing"], _min, false), _row(["/bearing"], _min - 1, true)}
}

test_no_subject_no_check if {
	not joint_bearing.applies with input as {"ply_joints": []}
	joint_bearing.applies with input as {"ply_joints": [_joint]}
	_said([]) == {"readings": set(), "unknown": set(), "exempt": set()}
}
