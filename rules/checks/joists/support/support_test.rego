package checks.joists.support_test

import data.checks.joists.support as check

_figures := {"joists": {"support": {"single": false}}}

_said := {"readings": check.readings, "unknown": check.unknown}

_joists(platform) := {"at": [concat("/", ["/j", platform])], "platform": platform, "beams_crossed": {"value": 1, "at": ["/j"]}}

_beam(platform) := {"at": ["/b"], "platform": platform, "mark": "B1"}

_lost(platform, supports) := {"at": [concat("/", ["/j", platform])], "platform": platform, "count": 3, "supports": supports, "first": {"value": 25, "at": ["/j"]}}

_outside(platform, supports) := {
	"at": [concat("/", ["/j", platform])], "have": true, "figure": "single", "limit": false, "outside": true,
	"count": 3, "first": 25, "supports": supports,
}

_within(platform) := {"at": [concat("/", ["/j", platform])], "have": false, "figure": "single", "limit": false, "outside": false}

test_one_support_is_outside if {
	every supports in [0, 1] {
		_said == {"readings": {_outside("A", supports)}, "unknown": set()} with input as {"joists": [_joists("A")], "beams": [_beam("A")], "unsupported": [_lost("A", supports)]}
			with data.figures as _figures
	}
}

test_accepted_by_a_set_that_says_so if {
	check.readings == {{
		"at": ["/j/A"], "have": true, "figure": "single", "limit": true, "outside": false, "count": 3, "first": 25, "supports": 1,
	}} with input as {"joists": [_joists("A")], "beams": [_beam("A")], "unsupported": [_lost("A", 1)]}
		with data.figures as {"joists": {"support": {"single": true}}}
}

test_one_of_two_platforms if {
	_said == {"readings": {_outside("A", 1), _within("B")}, "unknown": set()} with input as {"joists": [_joists("A"), _joists("B")], "beams": [_beam("A"), _beam("B")], "unsupported": [_lost("A", 1)]}
		with data.figures as _figures
}

test_joists_not_placed if {
	_said == {"readings": set(), "unknown": {{"at": ["/j/A"], "needs": "platforms[].joists.layout"}}} with input as {"joists": [object.union(object.remove(_joists("A"), ["beams_crossed"]), {"missing": ["platforms[].joists.layout"]})], "beams": [_beam("A")], "unsupported": []}
		with data.figures as _figures
}

_within_reach(open) := object.union(_joists("A"), {"support_open": open, "missing": ["platforms[].decking.overhang"]})

test_frame_may_end_short_of_a_beam if {
	_said == {"readings": set(), "unknown": {{"at": ["/j/A"], "needs": "platforms[].decking.overhang"}}} with input as {"joists": [_within_reach(true)], "beams": [_beam("A")], "unsupported": []}
		with data.figures as _figures
	_said == {"readings": {_within("A")}, "unknown": set()} with input as {"joists": [_within_reach(false)], "beams": [_beam("A")], "unsupported": []}
		with data.figures as _figures
	_said == {"readings": {_outside("A", 1)}, "unknown": set()} with input as {"joists": [_within_reach(true)], "beams": [_beam("A")], "unsupported": [_lost("A", 1)]}
		with data.figures as _figures
}

test_no_beams_no_check if {
	not check.applies with input as {"joists": [_joists("A")], "beams": [_beam("B")], "unsupported": []}
	not check.applies with input as {"joists": [], "beams": [], "unsupported": []}
	check.applies with input as {"joists": [_joists("A")], "beams": [_beam("A")], "unsupported": []}
}
