package checks.joists.lateral_restraint_test

import data.checks.joists.lateral_restraint

_figures := {
	"ends": ["rim joist", "full-depth blocking", "hangers"],
	"at_beams": ["full-depth blocking", "hangers"],
	"min_share": {"rise": 3, "run": 5},
}

_said(joists) := result if {
	result := {"readings": lateral_restraint.readings, "unknown": lateral_restraint.unknown} with input as {"joists": joists}
		with data.figures as {"joists": {"lateral_restraint": _figures}}
}

_bare(n) := {"at": [_place(n)], "platform": "A"}

_place(n) := sprintf("/platforms/%d/joists", [n])

_at(n, field) := [sprintf("/platforms/%d/joists/lateral_restraint/%s", [n, field])]

_held(n, ends, beams) := object.union(_bare(n), {
	"restraint_at_ends": {"value": ends, "at": _at(n, "ends")},
	"restraint_at_beams": {"value": beams, "at": _at(n, "at_beams")},
})

_blocked(n, deep) := object.union(_held(n, "rim joist", "partial-depth blocking"), {
	"depth": {"value": 234950000, "at": ["/platforms/0/joists/size"]}, # 9-1/4 in
	"restraint_depth": {"value": deep, "at": _at(n, "depth")},
})

_ends(n, way, outside) := {
	"at": _at(n, "ends"), "have": way,
	"figure": "ends", "limit": _figures.ends, "outside": outside,
}

_beams(n, way, outside) := {
	"at": _at(n, "at_beams"), "have": way,
	"figure": "at_beams", "limit": _figures.at_beams, "outside": outside,
	"say": "beams",
}

_shallow(n, deep, outside) := {
	"at": _at(n, "depth"), "have": {"rise": deep, "run": 234950000},
	"figure": "min_share", "limit": _figures.min_share, "outside": outside,
	"say": "shallow", "depth": deep, "joist": 234950000,
}

test_accepted_ways_are_within if {
	_said([_held(0, "rim joist", "full-depth blocking")]) == {
		"readings": {_ends(0, "rim joist", false), _beams(0, "full-depth blocking", false)},
		"unknown": set(),
	}
}

test_other_ways_are_outside if {
	_said([_held(0, "none", "beam ties")]) == {
		"readings": {_ends(0, "none", true), _beams(0, "beam ties", true)},
		"unknown": set(),
	}
}

test_partial_blocking_against_its_share_of_the_joist if {
	limit := 140970000 # 5.55 in, 140.97 mm
	every case in [[-396875, true], [-10000, true], [0, false], [396875, false], [10000, false]] {
		deep := limit + case[0]
		_said([_blocked(0, deep)]) == {"readings": {_ends(0, "rim joist", false), _shallow(0, deep, case[1])}, "unknown": set()}
	}
}

test_missing_values_are_not_shown if {
	_said([_bare(0)]) == {
		"readings": set(),
		"unknown": {
			{"at": [_place(0)], "needs": "platforms[].joists.lateral_restraint.ends"},
			{"at": [_place(0)], "needs": "platforms[].joists.lateral_restraint.at_beams"},
		},
	}
	_said([_held(0, "rim joist", "partial-depth blocking")]) == {
		"readings": {_ends(0, "rim joist", false)},
		"unknown": {
			{"at": [_place(0)], "needs": "platforms[].joists.lateral_restraint.depth"},
			{"at": [_place(0)], "needs": "platforms[].joists.size"},
		},
	}
}

test_joists_on_no_beam_need_nothing_there if {
	hung := object.union(_bare(0), {
		"beams_crossed": {"value": 0, "at": [_place(0)]},
		"restraint_at_ends": {"value": "hangers", "at": _at(0, "ends")},
	})
	_said([hung]) == {"readings": {_ends(0, "hangers", false)}, "unknown": set()}
}

test_joists_on_a_beam_need_it if {
	carried := object.union(_bare(0), {
		"beams_crossed": {"value": 1, "at": [_place(0)]},
		"restraint_at_ends": {"value": "hangers", "at": _at(0, "ends")},
	})
	_said([carried]).unknown == {{"at": [_place(0)], "needs": "platforms[].joists.lateral_restraint.at_beams"}}
}

test_one_bad_of_two if {
	_said([_held(0, "rim joist", "hangers"), _held(1, "none", "hangers")]) == {
		"readings": {
			_ends(0, "rim joist", false), _beams(0, "hangers", false),
			_ends(1, "none", true), _beams(1, "hangers", false),
		},
		"unknown": set(),
	}
}

test_no_subject_no_check if {
	not lateral_restraint.applies with input as {"joists": []}
	lateral_restraint.applies with input as {"joists": [_bare(0)]}
	_said([]) == {"readings": set(), "unknown": set()}
}
