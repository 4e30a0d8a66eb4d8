package checks.guards.opening_test

import data.checks.guards.opening

_limit := 101600000 # 4 in, 101.6 mm

_said(guards) := result if {
	result := {"readings": opening.readings, "unknown": opening.unknown, "exempt": opening.exempt} with input as {"guards": guards}
		with data.figures as {"guards": {"opening": {"sphere": _limit}, "required": {"trigger": 762000000}}}
}

_bare(n) := {
	"at": [sprintf("/guards/%d", [n])], "edges": ["front"], "drops": [],
	"infill_kind": {"value": "balusters", "at": [_place(n, "kind")]},
}

_place(n, field) := sprintf("/guards/%d/infill/%s", [n, field])

_opening(n, value) := {"opening": {"value": value, "at": [_place(n, "opening")]}}

_below(n, value) := {"bottom_gap": {"value": value, "at": [_place(n, "bottom_gap")]}}

_guard(n, between, below) := object.union(_bare(n), object.union(_opening(n, between), _below(n, below)))

_reading(n, field, value, outside) := object.union(
	{
		"at": [_place(n, field)], "have": value,
		"figure": "sphere", "limit": _limit,
		"outside": outside,
	},
	{"opening": {}, "bottom_gap": {"say": "below"}}[field],
)

test_opening_at_or_over_the_sphere_is_outside if {
	every value in [_limit, _limit + 396875, _limit + 10000] {
		_said([_guard(0, value, 1)]) == {
			"readings": {_reading(0, "opening", value, true), _reading(0, "bottom_gap", 1, false)},
			"unknown": set(), "exempt": set(),
		}
	}
}

test_gap_at_or_over_the_sphere_is_outside if {
	every value in [_limit, _limit + 396875, _limit + 10000] {
		_said([_guard(0, 1, value)]) == {
			"readings": {_reading(0, "opening", 1, false), _reading(0, "bottom_gap", value, true)},
			"unknown": set(), "exempt": set(),
		}
	}
}

test_smaller_openings_are_within if {
	every step in [396875, 10000] {
		value := _limit - step
		_said([_guard(0, value, value)]) == {
			"readings": {_reading(0, "opening", value, false), _reading(0, "bottom_gap", value, false)},
			"unknown": set(), "exempt": set(),
		}
	}
}

test_missing_values_are_not_shown if {
	_said([_bare(0)]) == {
		"readings": set(), "exempt": set(),
		"unknown": {
			{"at": ["/guards/0"], "needs": "guards[].infill.opening"},
			{"at": ["/guards/0"], "needs": "guards[].infill.bottom_gap"},
		},
	}
}

test_unknown_kind_of_infill_is_read_all_the_same if {
	guard := object.remove(_guard(0, _limit, 1), ["infill_kind"])
	_said([guard]).readings == {_reading(0, "opening", _limit, true), _reading(0, "bottom_gap", 1, false)}
}

test_no_infill_is_outside if {
	guard := object.union(_bare(0), {"infill_kind": {"value": "none", "at": ["/guards/0/infill/kind"]}})
	_said([guard]) == {
		"readings": {{
			"at": ["/guards/0/infill/kind"],
			"figure": "sphere", "limit": _limit,
			"outside": true, "say": "none",
		}},
		"unknown": set(), "exempt": set(),
	}
}

test_one_bad_of_two if {
	_said([_guard(0, 1, 2), _guard(1, _limit, 2)]) == {
		"readings": {
			_reading(0, "opening", 1, false), _reading(0, "bottom_gap", 2, false),
			_reading(1, "opening", _limit, true), _reading(1, "bottom_gap", 2, false),
		},
		"unknown": set(), "exempt": set(),
	}
}

_drops(partial) := {"drops": [{"out": 0, "field": "drop", "partial": partial, "drop": {"value": 762000000, "at": ["/platforms/0/edges/front/drop"]}}]}

test_low_guard_is_left_alone if {
	_said([object.union(_guard(0, _limit, _limit), _drops(false))]) == {
		"readings": set(), "unknown": set(),
		"exempt": {{"at": ["/guards/0"], "because": "low", "drop": 762000000, "trigger": 762000000}},
	}
	count(_said([object.union(_guard(0, _limit, _limit), _drops(true))]).readings) == 2
}

test_no_subject_no_check if {
	not opening.applies with input as {"guards": []}
	opening.applies with input as {"guards": [_bare(0)]}
	_said([]) == {"readings": set(), "unknown": set(), "exempt": set()}
}

_under(figures, guards) := result if {
	result := {"readings": opening.readings, "unknown": opening.unknown} with input as {"guards": guards}
		with data.figures as {"guards": {"opening": figures, "required": {"from": 1000000000}}}
}

test_widest_opening_is_within_at_the_limit if {
	every value, outside in {99990000: false, 100000000: false, 100010000: true} {
		_under({"widest": 100000000, "widest_below": 100000000}, [_guard(0, value, value)]) == {
			"readings": {
				{
					"at": [_place(0, "opening")], "have": value, "figure": "widest", "limit": 100000000,
					"outside": outside, "say": "widest",
				},
				{
					"at": [_place(0, "bottom_gap")], "have": value, "figure": "widest_below", "limit": 100000000,
					"outside": outside, "say": "widest_below",
				},
			},
			"unknown": set(),
		}
	}
	count(_under({"widest": 1, "widest_below": 1}, [_bare(0)]).unknown) == 2
}

test_gap_below_is_left_alone_where_the_set_says_nothing_of_it if {
	_under({"widest": 120000000}, [_bare(0)]) == {"readings": set(), "unknown": {{"at": ["/guards/0"], "needs": "guards[].infill.opening"}}}
	none := object.union(_bare(0), {"infill_kind": {"value": "none", "at": ["/guards/0/infill/kind"]}})
	_under({"widest": 120000000}, [none]).readings == {{
		"at": ["/guards/0/infill/kind"],
		"figure": "widest", "limit": 120000000,
		"outside": true, "say": "none_widest",
	}}
}
