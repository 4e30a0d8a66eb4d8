package checks.layout.joist_marks_test

import data.checks.layout.joist_marks

_figures := {"short": 3175000, "short_under": 3048000000, "long": 6350000}

_said(marks) := result if {
	result := {"readings": joist_marks.readings, "unknown": joist_marks.unknown} with input as {"joist_marks": marks}
		with data.figures as {"layout": {"joist_marks": _figures}}
}

_bare(n, missing) := {"at": [_place(n)], "on": "ledger", "worst_n": 0, "missing": missing}

_place(n) := sprintf("/measured/%d", [n])

_at(n) := [concat("/", [_place(n), "positions/4"])]

_marks(n, total, worst) := object.union(_bare(n, 0), {
	"worst_n": 5,
	"worst": {"value": worst, "at": _at(n)},
	"length": {"value": total, "at": ["/platforms/0/outline"]},
})

_reading(n, worst, band, outside) := {
	"at": _at(n), "have": worst,
	"figure": band, "limit": _figures[band], "outside": outside,
	"n": 5, "on": "ledger",
}

test_worst_mark_over_at_and_under_the_tolerance if {
	every band in [["long", 6096000000], ["long", 3048000000], ["short", 3047990000]] {
		[figure, total] := band
		every case in [[396875, true], [10000, true], [0, false], [-396875, false], [-10000, false]] {
			worst := _figures[figure] + case[0]
			_said([_marks(0, total, worst)]) == {"readings": {_reading(0, worst, figure, case[1])}, "unknown": set()}
		}
	}
}

test_wrong_number_of_marks_is_outside if {
	_said([object.union(_marks(0, 6096000000, 0), {"missing": 2})]) == {
		"readings": {{"at": ["/measured/0"], "figure": "long", "outside": true, "say": "few", "missing": 2, "on": "ledger"}},
		"unknown": set(),
	}
	_said([_bare(0, -1)]) == {
		"readings": {{"at": ["/measured/0"], "figure": "long", "outside": true, "say": "many", "extra": 1, "on": "ledger"}},
		"unknown": set(),
	}
}

test_missing_layout_is_not_shown if {
	_said([_bare(0, 0)]) == {"readings": set(), "unknown": {{"at": ["/measured/0"], "needs": "platforms[].joists.spacing"}}}
}

test_one_bad_of_two if {
	_said([_marks(0, 6096000000, 0), _marks(1, 6096000000, 9525000)]) == {
		"readings": {_reading(0, 0, "long", false), _reading(1, 9525000, "long", true)},
		"unknown": set(),
	}
}

test_no_subject_no_check if {
	not joist_marks.applies with input as {"joist_marks": []}
	joist_marks.applies with input as {"joist_marks": [_bare(0, 0)]}
	_said([]) == {"readings": set(), "unknown": set()}
}
