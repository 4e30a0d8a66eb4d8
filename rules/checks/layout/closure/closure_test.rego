package checks.layout.closure_test

import data.checks.layout.closure

_figures := {"short": 3175000, "short_under": 3048000000, "long": 6350000}

_said(platforms) := result if {
	result := {"readings": closure.readings, "unknown": closure.unknown} with input as {"platforms": platforms}
		with data.figures as {"layout": {"closure": _figures}}
}

_bare(n) := {"at": [sprintf("/platforms/%d", [n])], "outline": "walk"}

_at(n) := [sprintf("/platforms/%d/outline/walk", [n])]

_walk(n, walked, miss) := object.union(_bare(n), {
	"closure": {"value": miss, "at": _at(n)},
	"walk_length": {"value": walked, "at": _at(n)},
})

_reading(n, walked, miss, band, outside) := {
	"at": _at(n), "have": miss,
	"figure": band, "limit": _figures[band], "outside": outside,
	"walked": walked,
}

test_miss_over_at_and_under_the_limit if {
	every band in [["long", 17068800000], ["long", 3048000000], ["short", 3047990000]] {
		[figure, walked] := band
		every case in [[396875, true], [10000, true], [0, false], [-396875, false], [-10000, false]] {
			miss := _figures[figure] + case[0]
			_said([_walk(0, walked, miss)]) == {"readings": {_reading(0, walked, miss, figure, case[1])}, "unknown": set()}
		}
	}
}

test_walk_without_a_length_is_not_shown if {
	_said([_bare(0)]) == {"readings": set(), "unknown": {{"at": ["/platforms/0"], "needs": "platforms[].outline.walk[].go"}}}
}

test_other_outlines_close_by_themselves if {
	doc := [{"at": ["/platforms/0"], "outline": "rectangle"}, {"at": ["/platforms/1"], "outline": "corners"}, {"at": ["/platforms/2"]}]
	not closure.applies with input as {"platforms": doc}
	_said(doc) == {"readings": set(), "unknown": set()}
}

test_one_bad_of_two if {
	_said([_walk(0, 17068800000, 0), _walk(1, 17068800000, 44627800)]) == {
		"readings": {_reading(0, 17068800000, 0, "long", false), _reading(1, 17068800000, 44627800, "long", true)},
		"unknown": set(),
	}
}

test_no_subject_no_check if {
	not closure.applies with input as {"platforms": []}
	closure.applies with input as {"platforms": [_bare(0)]}
	_said([]) == {"readings": set(), "unknown": set()}
}
