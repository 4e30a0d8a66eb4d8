package checks.layout.right_angle_test

import data.checks.layout.right_angle

_figures := {"target": 19050000, "target_over": 30480000000, "outer": 12700000, "outer_over": 6096000000}

_square := 6096000000 # 20 ft, 6096 mm: the diagonal of 12 ft by 16 ft

_target := 3810000 # 3/4 in in 100 ft gives 0.15 in, 3.81 mm

_outer := 12700000 # 1/2 in, 12.7 mm

_said(triangles) := result if {
	result := {"readings": right_angle.readings, "unknown": right_angle.unknown} with input as {"triangles": triangles}
		with data.figures as {"layout": {"right_angle": _figures}}
}

_bare(n) := {"at": [sprintf("/measured/%d", [n])], "possible": true}

_at(n) := [sprintf("/measured/%d/diagonal", [n])]

_triangle(n, off) := object.union(_bare(n), {
	"diagonal": {"value": _square + off, "at": _at(n)},
	"square": {"value": _square, "at": [sprintf("/measured/%d/legs", [n])]},
	"deviation": {"value": abs(off), "at": _at(n)},
})

_near(n, off, outside, say) := {
	"at": _at(n), "have": abs(off),
	"figure": "target", "limit": _target, "outside": outside,
	"say": say, "square": _square, "diagonal": _square + off, "outer": _outer,
}

_far(n, off, outside) := {
	"at": _at(n), "have": abs(off),
	"figure": "outer", "limit": _outer, "outside": outside,
	"square": _square, "diagonal": _square + off,
}

test_around_the_working_target if {
	every case in [[_target - 396875, false], [_target - 10000, false], [_target, false], [-1 * _target, false]] {
		_said([_triangle(0, case[0])]) == {"readings": {_near(0, case[0], false, "within"), _far(0, case[0], false)}, "unknown": set()}
	}
	every off in [_target + 1, _target + 10000, _target + 396875, -1 * (_target + 10000)] {
		_said([_triangle(0, off)]) == {"readings": {_near(0, off, true, "between"), _far(0, off, false)}, "unknown": set()}
	}
}

test_around_the_outer_limit if {
	every off in [_outer - 396875, _outer - 10000, _outer] {
		_said([_triangle(0, off)]) == {"readings": {_near(0, off, true, "between"), _far(0, off, false)}, "unknown": set()}
	}
	every off in [_outer + 1, _outer + 10000, _outer + 396875] {
		_said([_triangle(0, off)]) == {"readings": {_far(0, off, true)}, "unknown": set()}
	}
}

test_limits_go_with_the_diagonal if {
	half := {
		"at": ["/measured/0"], "possible": true,
		"diagonal": {"value": 3048000000, "at": _at(0)},
		"square": {"value": 3048000000, "at": ["/measured/0/legs"]},
		"deviation": {"value": 0, "at": _at(0)},
	}
	{[row.figure, row.limit] | some row in _said([half]).readings} == {["target", 1905000], ["outer", 6350000]}
}

test_impossible_triangle_is_outside if {
	_said([{"at": ["/measured/0"], "possible": false, "diagonal": {"value": 1, "at": _at(0)}}]) == {
		"readings": {{"at": _at(0), "figure": "outer", "outside": true, "say": "impossible"}},
		"unknown": set(),
	}
}

test_missing_values_are_not_shown if {
	_said([_bare(0)]) == {
		"readings": set(),
		"unknown": {
			{"at": ["/measured/0"], "needs": "measured[].diagonal"},
			{"at": ["/measured/0"], "needs": "measured[].legs"},
		},
	}
}

test_one_bad_of_two if {
	_said([_triangle(0, 0), _triangle(1, 2 * _outer)]) == {
		"readings": {_near(0, 0, false, "within"), _far(0, 0, false), _far(1, 2 * _outer, true)},
		"unknown": set(),
	}
}

test_no_subject_no_check if {
	not right_angle.applies with input as {"triangles": []}
	right_angle.applies with input as {"triangles": [_bare(0)]}
	_said([]) == {"readings": set(), "unknown": set()}
}
