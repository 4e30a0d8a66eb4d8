package checks.layout.rectangle_test

import data.checks.layout.rectangle

_figures := {
	"short": 3175000, "short_under": 3048000000, "long": 6350000, "miss": 6350000,
	"target": 19050000, "target_over": 30480000000, "outer": 12700000, "outer_over": 6096000000,
}

_diagonal := 6096000000 # 20 ft, 6096 mm

_target := 3810000 # 0.15 in, 3.81 mm

_outer := 12700000 # 1/2 in, 12.7 mm

_short := 3175000 # 1/8 in, 3.175 mm

_long := 6350000 # 1/4 in, 6.35 mm

_said(frames) := result if {
	result := {"readings": rectangle.readings, "unknown": rectangle.unknown} with input as {"rectangles": frames}
		with data.figures as {"layout": {"rectangle": _figures}}
}

_bare(n) := {"at": [_place(n)]}

_place(n) := sprintf("/measured/%d", [n])

_at(n, field) := [concat("/", [_place(n), field])]

_frame(n, longest, sides, diagonals, miss) := object.union(_bare(n), {
	"longest_side": {"value": longest, "at": _at(n, "sides")},
	"side_difference": {"value": sides, "at": _at(n, "sides")},
	"diagonal_difference": {"value": diagonals, "at": _at(n, "diagonals")},
	"diagonal": {"value": _diagonal, "at": _at(n, "sides")},
	"miss": {"value": miss, "at": _at(n, "diagonals")},
})

_sides(n, figure, have, limit, outside, say) := {
	"at": _at(n, "sides"), "have": have,
	"figure": figure, "limit": limit, "outside": outside,
	"say": say,
}

_near(n, have, outside, say) := {
	"at": _at(n, "diagonals"), "have": have,
	"figure": "target", "limit": _target, "outside": outside,
	"say": say, "outer": _outer,
}

_far(n, have, outside) := {
	"at": _at(n, "diagonals"), "have": have,
	"figure": "outer", "limit": _outer, "outside": outside,
}

_miss(n, have, outside, say) := {
	"at": _at(n, "diagonals"), "have": have,
	"figure": "miss", "limit": _long, "outside": outside,
	"say": say,
}

_equal := _sides(0, "long", 0, _long, false, "sides_within")

_closes := _miss(0, 0, false, "miss_within")

_drawn := {_near(0, 0, false, "within"), _far(0, 0, false)}

test_opposite_sides_of_a_long_frame if {
	every case in [[396875, true, "sides"], [10000, true, "sides"], [0, false, "sides_within"], [-396875, false, "sides_within"], [-10000, false, "sides_within"]] {
		[step, outside, say] := case
		_said([_frame(0, 4876800000, _long + step, 0, 0)]) == {
			"readings": ({_sides(0, "long", _long + step, _long, outside, say), _closes} | _drawn),
			"unknown": set(),
		}
	}
}

test_opposite_sides_of_a_short_frame if {
	every case in [[396875, true, "sides"], [10000, true, "sides"], [0, false, "sides_within"], [-396875, false, "sides_within"], [-10000, false, "sides_within"]] {
		[step, outside, say] := case
		_said([_frame(0, 3047990000, _short + step, 0, 0)]) == {
			"readings": ({_sides(0, "short", _short + step, _short, outside, say), _closes} | _drawn),
			"unknown": set(),
		}
	}
}

test_ten_feet_is_long if {
	some row in _said([_frame(0, 3048000000, 0, 0, 0)]).readings
	row == _equal
}

test_trapezoid_with_equal_diagonals_is_outside if {
	_said([_frame(0, 4876800000, 25400000, 0, 0)]).readings == {_sides(0, "long", 25400000, _long, true, "sides"), _closes} | _drawn
}

test_diagonals_around_the_working_target if {
	every step in [0, -396875, -10000] {
		have := _target + step
		_said([_frame(0, 4876800000, 0, have, 0)]).readings == {_equal, _closes, _near(0, have, false, "within"), _far(0, have, false)}
	}
	every step in [1, 396875, 10000] {
		have := _target + step
		_said([_frame(0, 4876800000, 0, have, 0)]).readings == {_equal, _closes, _near(0, have, true, "between"), _far(0, have, false)}
	}
}

test_diagonals_around_the_outer_limit if {
	every step in [0, -396875, -10000] {
		have := _outer + step
		_said([_frame(0, 4876800000, 0, have, 0)]).readings == {_equal, _closes, _near(0, have, true, "between"), _far(0, have, false)}
	}
	every step in [1, 396875, 10000] {
		have := _outer + step
		_said([_frame(0, 4876800000, 0, have, 0)]).readings == {_equal, _closes, _far(0, have, true)}
	}
}

test_sixth_measure if {
	every case in [[396875, true, "miss"], [10000, true, "miss"], [0, false, "miss_within"], [-10000, false, "miss_within"]] {
		[step, outside, say] := case
		_said([_frame(0, 4876800000, 0, 0, _long + step)]).readings == {_equal, _miss(0, _long + step, outside, say)} | _drawn
	}
}

test_impossible_figure_is_outside if {
	_said([object.remove(_frame(0, 4876800000, 0, 0, 0), ["miss"])]).readings == {
		_equal,
		{"at": ["/measured/0"], "figure": "miss", "outside": true, "say": "impossible"},
	} | _drawn
}

test_missing_values_are_not_shown if {
	_said([_bare(0)]) == {
		"readings": set(),
		"unknown": {
			{"at": ["/measured/0"], "needs": "measured[].sides"},
			{"at": ["/measured/0"], "needs": "measured[].diagonals"},
		},
	}
	_said([object.remove(_frame(0, 4876800000, 0, 0, 0), ["diagonal_difference", "miss"])]) == {
		"readings": {_equal},
		"unknown": {{"at": ["/measured/0"], "needs": "measured[].diagonals"}},
	}
}

test_one_bad_of_two if {
	{row | some row in _said([_frame(0, 4876800000, 0, 0, 0), _frame(1, 4876800000, 0, 0, 2 * _long)]).readings; row.outside} == {_miss(1, 2 * _long, true, "miss")}
}

test_no_subject_no_check if {
	not rectangle.applies with input as {"rectangles": []}
	rectangle.applies with input as {"rectangles": [_bare(0)]}
	_said([]) == {"readings": set(), "unknown": set()}
}
