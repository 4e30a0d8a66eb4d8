package checks.joists.guard_joists_test

import data.checks.joists.guard_joists

_figures := {"min_depth": 190000000, "max_spacing": 400000000, "free": ["through post from below"]}

_doc(joists, guards) := {
	"joists": [joists], "guards": guards,
	"edges": [{"platform": "A", "name": "front", "guard": "G1"}, {"platform": "A", "name": "left", "guard": "G2"}, {"platform": "B", "name": "front"}],
}

_under(figures, doc) := result if {
	result := {"readings": guard_joists.readings, "unknown": guard_joists.unknown, "exempt": guard_joists.exempt} with input as doc
		with data.figures as {"joists": {"guard_joists": figures}}
}

_said(doc) := _under(_figures, doc)

_bare := {"at": ["/joists"], "platform": "A"}

_joists(depth, spacing) := object.union(_bare, {"depth": {"value": depth, "at": ["/size"]}, "spacing": {"value": spacing, "at": ["/spacing"]}})

_guard(mark, fixing) := {"at": [concat("/", ["/guards", mark])], "mark": mark, "post_fixing": {"value": fixing, "at": ["/fixing"]}}

_loose(mark) := {"at": [concat("/", ["/guards", mark])], "mark": mark}

_depth(value) := {"at": ["/size"], "have": value, "figure": "min_depth", "limit": 190000000, "outside": value < 190000000}

_spacing(value) := {"at": ["/spacing"], "have": value, "figure": "max_spacing", "limit": 400000000, "outside": value > 400000000, "say": "spacing"}

test_depth_and_spacing_at_and_past_the_limits if {
	every depth in [190000000, 189990000] {
		every spacing in [400000000, 400010000] {
			_said(_doc(_joists(depth, spacing), [_guard("G1", "listed bracket")])) == {
				"readings": {_depth(depth), _spacing(spacing)}, "unknown": set(), "exempt": set(),
			}
		}
	}
}

test_set_without_a_spacing if {
	_under(object.remove(_figures, ["max_spacing"]), _doc(object.remove(_joists(1, 1), ["spacing"]), [_guard("G1", "listed bracket")])) == {
		"readings": {_depth(1)}, "unknown": set(), "exempt": set(),
	}
}

test_fixing_that_is_not_shown_matters_where_the_joists_are_too_weak if {
	_said(_doc(_joists(190000000, 400010000), [_loose("G1")])) == {
		"readings": {_depth(190000000)}, "exempt": set(),
		"unknown": {{"at": ["/guards/G1"], "needs": "guards[].posts.fixing"}},
	}
	_said(_doc(_joists(190000000, 400000000), [_loose("G1")])).unknown == set()
}

test_guard_on_posts_of_its_own_loads_no_joist if {
	_said(_doc(_joists(1, 1), [_guard("G1", "through post from below")])) == {
		"readings": set(), "unknown": set(), "exempt": {{"at": ["/joists"], "because": "free"}},
	}
	_said(_doc(_joists(1, 1), [_guard("G1", "through post from below"), _guard("G2", "end grain")])).readings == {_depth(1), _spacing(1)}
}

test_what_is_not_shown if {
	_said(_doc(_bare, [_guard("G1", "end grain")])) == {
		"readings": set(), "exempt": set(),
		"unknown": {
			{"at": ["/joists"], "needs": "platforms[].joists.size"},
			{"at": ["/joists"], "needs": "platforms[].joists.spacing"},
		},
	}
}

test_no_subject_no_check if {
	not guard_joists.applies with input as _doc(_bare, [])
	not guard_joists.applies with input as _doc(object.union(_bare, {"platform": "B"}), [_loose("G1")])
	guard_joists.applies with input as _doc(_bare, [_loose("G1")])
	_said(_doc(_bare, [])) == {"readings": set(), "unknown": set(), "exempt": set()}
}
