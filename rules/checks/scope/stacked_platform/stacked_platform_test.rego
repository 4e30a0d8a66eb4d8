package checks.scope.stacked_platform_test

import data.checks.scope.stacked_platform

_under(covered, specials) := result if {
	result := stacked_platform.readings with input as {"specials": specials}
		with data.figures as {"scope": {"stacked_platform": {"covered": covered}}}
}

_thing(kind) := {"at": ["/thing"], "kind": kind}

_heavy(kind) := object.union(_thing(kind), {"weight": {"value": 1000, "at": ["/thing/weight"]}})

_row(kind, covered) := {"at": ["/thing"], "have": true, "figure": "covered", "limit": covered, "outside": covered == false, "what": kind}

_kinds := ["upper deck", "stacked platform"]

test_needs_an_engineer if {
	every kind in _kinds {
		_under(false, [_thing(kind)]) == {object.union(_row(kind, false), {"say": "outside"})}
		_under(false, [_heavy(kind)]) == {object.union(_row(kind, false), {"say": "weighed", "weight": 1000})}
	}
}

test_set_that_covers_it if {
	every kind in _kinds {
		_under(true, [_thing(kind)]) == {object.union(_row(kind, true), {"say": "outside"})}
	}
}

test_something_else_no_check if {
	every specials in [[], [_heavy("bench")]] {
		not stacked_platform.applies with input as {"specials": specials}
		_under(false, specials) == set()
	}
	stacked_platform.applies with input as {"specials": [_thing("bench"), _thing(_kinds[0])]}
}
