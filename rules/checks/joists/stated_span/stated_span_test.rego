package checks.joists.stated_span_test

import data.checks.joists.stated_span

_limit := 25400000 # 1 in, 25.4 mm

_derived := 3048000000 # 10 ft

_said(stated) := result if {
	result := {"readings": stated_span.readings, "unknown": stated_span.unknown} with input as {"stated_spans": stated}
		with data.figures as {"joists": {"stated_span": {"tolerance": _limit}}}
}

_stated(n, apart) := {
	"at": [_place(n)], "what": "clear span",
	"stated": {"value": _derived - apart, "at": [_place(n)]},
	"derived": {"value": _derived, "at": ["/platforms/0/beams/0/from_house"]},
	"difference": {"value": apart, "at": [_place(n)]},
}

_place(n) := sprintf("/platforms/%d/joists/stated_clear_span", [n])

_reading(n, apart, outside) := {
	"at": [_place(n)], "have": apart,
	"figure": "tolerance", "limit": _limit, "outside": outside,
	"what": "clear span", "stated": _derived - apart, "derived": _derived,
}

test_difference_over_at_and_under_the_tolerance if {
	every case in [[396875, true], [10000, true], [0, false], [-396875, false], [-10000, false]] {
		_said([_stated(0, _limit + case[0])]) == {"readings": {_reading(0, _limit + case[0], case[1])}, "unknown": set()}
	}
}

test_one_bad_of_two if {
	_said([_stated(0, 0), _stated(1, 2 * _limit)]) == {"readings": {_reading(0, 0, false), _reading(1, 2 * _limit, true)}, "unknown": set()}
}

test_no_subject_no_check if {
	not stated_span.applies with input as {"stated_spans": []}
	stated_span.applies with input as {"stated_spans": [_stated(0, 0)]}
	_said([]) == {"readings": set(), "unknown": set()}
}

test_plan_without_a_span_is_not_shown if {
	_said([object.remove(_stated(0, 0), ["derived", "difference"])]) == {
		"readings": set(),
		"unknown": {{"at": [_place(0)], "needs": "platforms[].beams"}},
	}
}
