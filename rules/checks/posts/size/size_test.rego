package checks.posts.size_test

import data.checks.posts.size

# 3-1/2 in
_figures := {"posts": {"size": {"min": 88900000}}}

_said(members) := result if {
	result := {"readings": size.readings, "unknown": size.unknown, "exempt": size.exempt} with input as {"posts": members}
		with data.figures as _figures
}

_bare := {"at": ["/platforms/0/beams/0/posts_at/0"]}

_post(side) := object.union(_bare, {"size": {"value": "named", "at": ["/size"]}, "least_side": {"value": side, "at": ["/size"]}})

_row(have, outside) := {"at": ["/size"], "have": have, "figure": "min", "limit": 88900000, "outside": outside, "size": "named"}

test_limit[name] if {
	some name, case in {
		"3-33/64 in": [89296875, false],
		"88.91 mm": [88910000, false],
		"3-1/2 in": [88900000, false],
		"88.9 mm": [88900000, false],
		"88.89 mm": [88890000, true],
		"3-31/64 in": [88503125, true],
	}
	_said([_post(case[0])]) == {"readings": {_row(case[0], case[1])}, "unknown": set(), "exempt": set()}
}

test_other_material_is_left_alone if {
	every post in [_bare, _post(1)] {
		_said([object.union(post, {"material": {"value": "steel", "at": ["/material"]}})]) == {
			"readings": set(), "unknown": set(),
			"exempt": {{"at": _bare.at, "because": "material", "material": "steel"}},
		}
	}
}

test_size_not_shown if {
	_said([_bare]) == {"readings": set(), "exempt": set(), "unknown": {{"at": ["/platforms/0"], "needs": "platforms[].posts.size"}}}
}

test_one_bad_of_two if _said([_post(88900000), _post(1)]).readings == {_row(88900000, false), _row(1, true)}

test_no_subject_no_check if {
	not size.applies with input as {"posts": []}
	size.applies with input as {"posts": [_bare]}
	_said([]) == {"readings": set(), "unknown": set(), "exempt": set()}
}
