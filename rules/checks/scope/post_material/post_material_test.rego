package checks.scope.post_material_test

import data.checks.scope.post_material

_accepted := ["wood"]

_said(members) := result if {
	result := {"readings": post_material.readings, "exempt": post_material.exempt} with input as {"posts": members}
		with data.figures as {"scope": {"post_material": {"accepted": _accepted}}}
}

_post(material) := {"at": ["/post"], "material": {"value": material, "at": ["/post/material"]}}

_row(have, outside) := {"at": ["/post/material"], "have": have, "figure": "accepted", "limit": _accepted, "outside": outside}

test_wood_and_other_materials if {
	every case in [["wood", false], ["steel", true], ["concrete", true]] {
		_said([_post(case[0])]) == {"readings": {_row(case[0], case[1])}, "exempt": set()}
	}
}

test_posts_of_which_nothing_is_said_are_left_alone if {
	_said([_post("steel"), {"at": ["/bare"]}]) == {
		"readings": {_row("steel", true)},
		"exempt": {{"at": ["/bare"], "because": "unsaid"}},
	}
}

test_one_bad_of_two if _said([_post("wood"), _post("steel")]).readings == {_row("wood", false), _row("steel", true)}

test_nothing_said_no_check if {
	every members in [[], [{"at": ["/bare"]}]] {
		not post_material.applies with input as {"posts": members}
	}
	post_material.applies with input as {"posts": [_post("wood")]}
}
