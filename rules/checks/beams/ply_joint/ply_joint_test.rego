package checks.beams.ply_joint_test

import data.checks.beams.ply_joint

_inch := 25400000

_under(past, joints) := result if {
	result := {"readings": ply_joint.readings, "unknown": ply_joint.unknown} with input as {"ply_joints": joints}
		with data.figures as {"beams": {"ply_joint": {"past_face": past}}}
}

_joint(off) := {
	"at": ["/joint"], "beam": "B1",
	"off_post": {"value": off, "at": ["/joint", "/post"]}, "half_post": {"value": 69850000, "at": ["/size"]},
}

_row(off, limit, outside) := {
	"at": ["/joint", "/post"], "have": off, "figure": "past_face", "limit": limit, "outside": outside,
	"beam": "B1",
}

# Half of a 6x6 is 2-3/4 in, 69.85 mm.
test_off_at_and_on_the_post if {
	every case in [
		[36 * _inch, true], [69850000 + 396875, true], [69860000, true],
		[69850000, false], [69840000, false], [69850000 - 396875, false], [0, false],
	] {
		_under(0, [_joint(case[0])]) == {"readings": {_row(case[0], 69850000, case[1])}, "unknown": set()}
	}
}

test_set_that_lets_it_pass_the_face if {
	_under(_inch, [_joint(69850000 + _inch)]).readings == {_row(69850000 + _inch, 69850000 + _inch, false)}
}

test_missing_values_are_not_shown if {
	_under(0, [object.remove(_joint(0), ["off_post", "half_post"])]) == {
		"readings": set(),
		"unknown": {{"at": ["/joint"], "needs": "platforms[].beams[].posts_at"}},
	}
	_under(0, [object.remove(_joint(0), ["half_post"])]) == {
		"readings": set(),
		"unknown": {{"at": ["/joint"], "needs": "platforms[].posts.size"}},
	}
}

test_one_bad_of_two if {
	_under(0, [_joint(0), _joint(_inch * 3)]).readings == {_row(0, 69850000, false), _row(_inch * 3, 69850000, true)}
}

test_no_subject_no_check if {
	not ply_joint.applies with input as {"ply_joints": []}
	ply_joint.applies with input as {"ply_joints": [_joint(0)]}
	_under(0, []) == {"readings": set(), "unknown": set()}
}
