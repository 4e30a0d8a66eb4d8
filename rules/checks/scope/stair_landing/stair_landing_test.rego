package checks.scope.stair_landing_test

import data.checks.scope.stair_landing

_under(covered, specials) := result if {
	result := {"readings": stair_landing.readings, "unknown": stair_landing.unknown} with input as {"specials": specials}
		with data.figures as {"scope": {"stair_landing": {"covered": covered}}}
}

_thing(kind) := {"at": ["/thing"], "kind": kind}

_heavy(kind) := object.union(_thing(kind), {"weight": {"value": 1000, "at": ["/thing/weight"]}})

_row(kind, have, covered, more) := object.union(
	{"at": ["/thing"], "have": have, "figure": "covered", "limit": covered, "outside": have != covered, "what": kind},
	more,
)

_reading(row) := {"readings": {row}, "unknown": set()}

_kinds := ["stair landing", "stair on a platform"]

_other := object.union(_row("bench", false, false, {"say": "other"}), {"outside": false})

test_needs_an_engineer if {
	every kind in _kinds {
		_under(false, [_thing(kind)]) == _reading(_row(kind, true, false, {"say": "outside"}))
		_under(false, [_heavy(kind)]) == _reading(_row(kind, true, false, {"say": "weighed", "weight": 1000}))
	}
}

test_set_that_covers_it if {
	every kind in _kinds {
		_under(true, [_thing(kind)]) == _reading(_row(kind, true, true, {"say": "outside"}))
	}
}

test_something_else if _under(false, [_heavy("bench")]) == _reading(_other)

test_kind_not_shown if {
	_under(false, [_heavy("")]) == {"readings": set(), "unknown": {{"at": ["/thing"], "needs": "platforms[].loads[].kind"}}}
}

test_one_bad_of_two if {
	_under(false, [_thing("bench"), _thing(_kinds[0])]).readings == {_other, _row(_kinds[0], true, false, {"say": "outside"})}
}

test_nothing_there_no_check if {
	not stair_landing.applies with input as {"specials": []}
	stair_landing.applies with input as {"specials": [_thing("bench")]}
	_under(false, []) == {"readings": set(), "unknown": set()}
}
