package checks.posts.joint_post_test

import data.checks.posts.joint_post

_accepted := ["6x6", "8x8"]

_said(members) := result if {
	result := {"readings": joint_post.readings, "unknown": joint_post.unknown, "exempt": joint_post.exempt} with input as {"posts": members}
		with data.figures as {"posts": {"joint_post": {"accepted": _accepted}}}
}

_bare := {"at": ["/platforms/0/beams/0/posts_at/1"], "joint_above": true}

_post(value) := object.union(_bare, {"size": {"value": value, "at": ["/size"]}})

_whole := object.union(_post("4x4"), {"joint_above": false})

_row(have, outside) := {"at": ["/size"], "have": have, "figure": "accepted", "limit": _accepted, "outside": outside}

test_accepted_and_other_sizes if {
	every case in [["6x6", false], ["8x8", false], ["4x4", true], ["4x6", true]] {
		_said([_post(case[0])]) == {"readings": {_row(case[0], case[1])}, "unknown": set(), "exempt": set()}
	}
}

test_post_below_whole_plies_is_left_alone if {
	_said([_whole]) == {"readings": set(), "unknown": set(), "exempt": {{"at": _bare.at, "because": "whole"}}}
}

test_size_not_shown if {
	_said([_bare]) == {"readings": set(), "exempt": set(), "unknown": {{"at": ["/platforms/0"], "needs": "platforms[].posts.size"}}}
}

test_one_bad_of_two if _said([_post("6x6"), _post("4x4")]).readings == {_row("6x6", false), _row("4x4", true)}

test_no_joint_no_check if {
	not joint_post.applies with input as {"posts": []}
	not joint_post.applies with input as {"posts": [_whole]}
	joint_post.applies with input as {"posts": [_whole, _bare]}
	_said([]) == {"readings": set(), "unknown": set(), "exempt": set()}
}
