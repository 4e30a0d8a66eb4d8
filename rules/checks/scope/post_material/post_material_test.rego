package checks.scope.post_material_test

import data.checks.scope.post_material

_accepted := ["wood"]

_said(members) := result if {
	result := {"readings": post_material.readings, "unknown": post_material.unknown, "exempt": post_material.exempt} with input as {"posts": members}
		with data.figures as {"scope": {"post_material": {"accepted": _accepted}}}
}

_at := ["/platforms/0/beams/0/posts_at/0"]

_bare := {"at": _at, "lumber": {}}

_post(material) := object.union(_bare, {"material": {"value": material, "at": ["/material"]}})

_row(have, outside) := {"at": ["/material"], "have": have, "figure": "accepted", "limit": _accepted, "outside": outside}

test_wood_and_other_materials if {
	every case in [["wood", false], ["steel", true], ["concrete", true]] {
		_said([_post(case[0])]) == {"readings": {_row(case[0], case[1])}, "unknown": set(), "exempt": set()}
	}
}

test_posts_of_a_species_are_of_wood if {
	_said([object.union(_bare, {"lumber": {"species": {"value": "redwood", "at": ["/species"]}}})]) == {
		"readings": set(), "unknown": set(),
		"exempt": {{"at": _at, "because": "lumber", "species": "redwood"}},
	}
}

test_nothing_said if {
	_said([_bare]) == {"readings": set(), "exempt": set(), "unknown": {{"at": ["/platforms/0"], "needs": "platforms[].posts.material"}}}
}

test_one_bad_of_two if _said([_post("wood"), _post("steel")]).readings == {_row("wood", false), _row("steel", true)}

test_no_subject_no_check if {
	not post_material.applies with input as {"posts": []}
	post_material.applies with input as {"posts": [_bare]}
	_said([]) == {"readings": set(), "unknown": set(), "exempt": set()}
}
