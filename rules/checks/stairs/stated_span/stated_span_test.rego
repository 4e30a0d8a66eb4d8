package checks.stairs.stated_span_test

import data.checks.stairs.stated_span as check

_limit := 152400000 # 6 in, 152.4 mm

_said(spans) := result if {
	result := {"readings": check.readings, "unknown": check.unknown} with input.stated_stringers as spans
		with data.figures as {"stairs": {"stated_span": {"tolerance": _limit}}}
}

_at(n) := sprintf("/stairs/%d/stringers/stated_horizontal_span", [n])

_span(n, apart) := {
	"at": [_at(n)], "stair": "ST1", "missing": [],
	"stated": {"value": 1524000000, "at": [_at(n)]},
	"derived": {"value": 1524000000 + apart, "at": ["/stairs/0/tread_depth"]},
	"difference": {"value": apart, "at": [_at(n)]},
}

_reading(n, apart, outside) := {
	"at": [_at(n)], "have": apart, "figure": "tolerance", "limit": _limit, "outside": outside,
	"stated": 1524000000, "derived": 1524000000 + apart,
}

test_limit[name] if {
	some name, case in {
		"alike": [-152400000, false],
		"1/64 in inside": [-396875, false],
		"0.01 mm inside": [-10000, false],
		"at it": [0, false],
		"0.01 mm outside": [10000, true],
		"1/64 in outside": [396875, true],
	}
	_said([_span(0, _limit + case[0])]) == {"readings": {_reading(0, _limit + case[0], case[1])}, "unknown": set()}
}

test_one_of_two_is_outside if {
	_said([_span(0, _limit), _span(1, _limit + 1)]) == {
		"readings": {_reading(0, _limit, false), _reading(1, _limit + 1, true)},
		"unknown": set(),
	}
}

test_steps_not_shown if {
	_said([object.union(object.remove(_span(0, 0), ["derived", "difference"]), {"missing": ["stairs[].risers"]})]) == {
		"readings": set(),
		"unknown": {{"at": [_at(0)], "needs": "stairs[].risers"}},
	}
}

test_nothing_stated if {
	not check.applies with input.stated_stringers as []
	check.applies with input.stated_stringers as [_span(0, 0)]
	_said([]) == {"readings": set(), "unknown": set()}
}
