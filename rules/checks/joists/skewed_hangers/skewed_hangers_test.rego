package checks.joists.skewed_hangers_test

import data.checks.joists.skewed_hangers

_under(required, members) := result if {
	result := {"readings": skewed_hangers.readings, "unknown": skewed_hangers.unknown, "exempt": skewed_hangers.exempt} with input as {"joined": members}
		with data.figures as {"joists": {"skewed_hangers": {"required": required}}}
}

_joists(skewed, shown) := {"at": ["/joists"], "skewed": skewed, "skewed_hangers": shown}

_row(edge) := {"at": ["/joists"], "have": true, "figure": "required", "limit": true, "outside": false, "edge": edge}

_asked := {{"at": ["/joists"], "needs": "platforms[].joists.hangers.skewed_at"}}

test_shown_at_the_edge if {
	_under(true, [_joists(["clip"], ["clip"])]) == {"readings": {_row("clip")}, "unknown": set(), "exempt": set()}
}

test_not_shown_at_the_edge if {
	_under(true, [_joists(["clip"], [])]) == {"readings": set(), "unknown": _asked, "exempt": set()}
}

test_shown_elsewhere_alone if {
	straight := object.union(_row("clip"), {"have": false, "outside": true})
	_under(true, [_joists(["clip"], ["front"])]) == {"readings": {straight}, "unknown": set(), "exempt": set()}
	_under(true, [_joists(["clip", "inner"], ["inner"])]) == {"readings": {_row("inner"), straight}, "unknown": set(), "exempt": set()}
}

test_set_that_does_not_ask if {
	_under(false, [_joists(["clip"], [])]) == {"readings": set(), "unknown": set(), "exempt": {{"at": ["/joists"], "because": "straight"}}}
}

test_square_joists_no_check if {
	every members in [[], [_joists([], ["clip"])]] {
		not skewed_hangers.applies with input as {"joined": members}
		_under(true, members) == {"readings": set(), "unknown": set(), "exempt": set()}
	}
	skewed_hangers.applies with input as {"joined": [_joists(["clip"], [])]}
}
