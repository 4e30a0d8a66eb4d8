package checks.scope.post_material_test

import data.checks.scope.post_material

_accepted := ["wood", "concrete"]

_said(members) := result if {
	result := {"readings": post_material.readings, "exempt": post_material.exempt} with input as {"posts": members}
		with data.figures as {"scope": {"post_material": {"accepted": _accepted}}}
}

_post(material) := {"at": ["/post"], "material": {"value": material, "at": ["/post/material"]}}

_row(have, outside) := {"at": ["/post/material"], "have": have, "figure": "accepted", "limit": _accepted, "outside": outside}

test_other_materials if {
	_said([_post("steel")]) == {"readings": {_row("steel", true)}, "exempt": set()}
	_said([_post("concrete")]) == {"readings": {_row("concrete", false)}, "exempt": set()}
}

test_wood_beside_steel_is_left_alone if {
	_said([_post("wood"), _post("steel"), {"at": ["/bare"]}]) == {
		"readings": {_row("steel", true)},
		"exempt": {{"at": ["/post"], "because": "wood"}, {"at": ["/bare"], "because": "wood"}},
	}
}

test_wood_alone_no_check if {
	every members in [[], [_post("wood")], [{"at": ["/bare"]}]] {
		not post_material.applies with input as {"posts": members}
	}
	post_material.applies with input as {"posts": [_post("steel")]}
}
