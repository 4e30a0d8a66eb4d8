package checks.posts.size_test

import data.checks.posts.size

_accepted := ["4x4", "6x6"]

_said(members) := result if {
	result := {"readings": size.readings, "unknown": size.unknown, "exempt": size.exempt} with input as {"posts": members}
		with data.figures as {"posts": {"size": {"accepted": _accepted}}}
}

_bare := {"at": ["/platforms/0/beams/0/posts_at/0"]}

_post(value) := object.union(_bare, {"size": {"value": value, "at": ["/size"]}})

_row(have, outside) := {"at": ["/size"], "have": have, "figure": "accepted", "limit": _accepted, "outside": outside}

test_accepted_and_other_sizes if {
	every case in [["4x4", false], ["6x6", false], ["2x4", true], ["90 mm x 90 mm", true]] {
		_said([_post(case[0])]) == {"readings": {_row(case[0], case[1])}, "unknown": set(), "exempt": set()}
	}
}

test_other_material_is_left_alone if {
	every post in [_bare, _post("2x4")] {
		_said([object.union(post, {"material": {"value": "steel", "at": ["/material"]}})]) == {
			"readings": set(), "unknown": set(),
			"exempt": {{"at": _bare.at, "because": "material", "material": "steel"}},
		}
	}
}

test_size_not_shown if {
	_said([_bare]) == {"readings": set(), "exempt": set(), "unknown": {{"at": ["/platforms/0"], "needs": "platforms[].posts.size"}}}
}

test_one_bad_of_two if _said([_post("4x4"), _post("2x4")]).readings == {_row("4x4", false), _row("2x4", true)}

test_no_subject_no_check if {
	not size.applies with input as {"posts": []}
	size.applies with input as {"posts": [_bare]}
	_said([]) == {"readings": set(), "unknown": set(), "exempt": set()}
}
