package checks.layout.even_joists_test

import data.checks.layout.even_joists

_spacing := 406400000 # 16 in

_half := 203200000 # 8 in, 203.2 mm

_said(joists) := result if {
	result := {"readings": even_joists.readings, "unknown": even_joists.unknown, "exempt": even_joists.exempt} with input as {"joists": joists}
		with data.figures as {"layout": {"even_joists": {"min_share": {"rise": 1, "run": 2}}}}
}

_bare(n) := {"at": [_place(n)], "platform": "A"}

_place(n) := sprintf("/platforms/%d/joists", [n])

_at(n, field) := [concat("/", [_place(n), field])]

_laid(n, how) := object.union(_bare(n), {"layout": {"value": how, "at": _at(n, "layout")}})

_fixed(n, bay) := object.union(_laid(n, "on_center"), {
	"spacing": {"value": _spacing, "at": _at(n, "spacing")},
	"last_bay": {"value": bay, "at": _at(n, "spacing")},
})

_reading(n, bay, outside) := {
	"at": _at(n, "spacing"), "have": {"rise": bay, "run": _spacing},
	"figure": "min_share", "limit": {"rise": 1, "run": 2}, "outside": outside,
	"bay": bay, "spacing": _spacing,
}

test_last_bay_against_half_the_spacing if {
	every case in [[-396875, true], [-10000, true], [-1, true], [0, false], [396875, false], [10000, false]] {
		bay := _half + case[0]
		_said([_fixed(0, bay)]) == {"readings": {_reading(0, bay, case[1])}, "unknown": set(), "exempt": set()}
	}
}

test_equal_and_listed_joists_are_left_alone if {
	every case in [["equal", "even"], ["listed", "listed"]] {
		_said([_laid(0, case[0])]) == {
			"readings": set(), "unknown": set(),
			"exempt": {{"at": _at(0, "layout"), "because": case[1]}},
		}
	}
}

test_missing_values_are_not_shown if {
	every case in [
		[_bare(0), "platforms[].joists.layout"],
		[_laid(0, "on_center"), "platforms[].joists.spacing"],
		[object.union(object.remove(_fixed(0, 1), ["last_bay"]), {"missing": ["platforms[].decking.overhang"]}), "platforms[].decking.overhang"],
	] {
		_said([case[0]]) == {"readings": set(), "exempt": set(), "unknown": {{"at": [_place(0)], "needs": case[1]}}}
	}
}

test_two_joists_have_no_bay_left_over if {
	pair := object.union(object.remove(_fixed(0, 1), ["last_bay"]), {"missing": []})
	_said([pair]) == {"readings": set(), "unknown": set(), "exempt": {{"at": [_place(0)], "because": "few"}}}
}

test_one_bad_of_two if {
	_said([_fixed(0, _half), _fixed(1, 1)]) == {
		"readings": {_reading(0, _half, false), _reading(1, 1, true)},
		"unknown": set(), "exempt": set(),
	}
}

test_no_subject_no_check if {
	not even_joists.applies with input as {"joists": []}
	even_joists.applies with input as {"joists": [_bare(0)]}
	_said([]) == {"readings": set(), "unknown": set(), "exempt": set()}
}
