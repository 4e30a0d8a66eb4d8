package checks.decking.fasteners_test

import data.checks.decking.fasteners

_figures := {"decking": {"fasteners": {"min": 2}}}

_limit := 2 # fasteners

_steps := [
	1, # one fastener
	2, # two
]

_said(subjects) := result if {
	result := {"readings": fasteners.readings, "unknown": fasteners.unknown, "exempt": fasteners.exempt} with input as {"decking": subjects}
		with data.figures as _figures
}

_subject(n, value) := object.union(_bare(n), {"fasteners_per_joist": {"value": value, "at": [_place(n)]}})

_bare(n) := {"at": [sprintf("/platforms/%d/decking", [n])], "platform": "A", "picture_frame": false, "material": {"value": "wood", "at": ["/m"]}}

_place(n) := sprintf("/platforms/%d/decking/fasteners_per_joist", [n])

_reading(n, value, outside) := {
	"at": [_place(n)], "have": value,
	"figure": "min", "limit": _limit,
	"outside": outside,
}

test_beyond_the_limit_is_outside if {
	every step in _steps {
		_said([_subject(0, _limit - step)]) == {"readings": {_reading(0, _limit - step, true)}, "unknown": set(), "exempt": set()}
	}
}

test_at_the_limit_is_within if {
	_said([_subject(0, _limit)]) == {"readings": {_reading(0, _limit, false)}, "unknown": set(), "exempt": set()}
}

test_inside_the_limit_is_within if {
	every step in _steps {
		_said([_subject(0, _limit + step)]) == {"readings": {_reading(0, _limit + step, false)}, "unknown": set(), "exempt": set()}
	}
}

test_missing_value_is_not_shown if {
	_said([_bare(0)]) == {"readings": set(), "unknown": {{"at": [sprintf("/platforms/%d/decking", [0])], "needs": "platforms[].decking.fasteners_per_joist"}}, "exempt": set()}
}

test_one_bad_of_two if {
	_said([_subject(0, _limit + 1), _subject(1, _limit - 1)]) == {
		"readings": {_reading(0, _limit + 1, false), _reading(1, _limit - 1, true)},
		"unknown": set(), "exempt": set(),
	}
}

test_no_subject_no_check if {
	not fasteners.applies with input as {"decking": []}
	fasteners.applies with input as {"decking": [_bare(0)]}
	_said([]) == {"readings": set(), "unknown": set(), "exempt": set()}
}

test_listed_boards_are_left_alone if {
	composite := {"at": ["/platforms/0/decking"], "platform": "A", "picture_frame": false, "material": {"value": "composite", "at": ["/platforms/0/decking/material"]}}
	_said([composite]) == {
		"readings": set(), "unknown": set(),
		"exempt": {{"at": ["/platforms/0/decking/material"], "because": "listed"}},
	}
}

test_missing_material_is_not_shown if {
	_said([{"at": ["/platforms/0/decking"], "platform": "A", "picture_frame": false}]) == {
		"readings": set(), "exempt": set(),
		"unknown": {{"at": ["/platforms/0/decking"], "needs": "platforms[].decking.material"}},
	}
}
