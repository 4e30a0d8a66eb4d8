package checks.guards.required_test

import data.checks.guards.required

_trigger := 762000000 # 30 in, 762 mm

_said(doc) := result if {
	result := {"readings": required.readings, "unknown": required.unknown} with input as doc
		with data.figures as {"guards": {"required": {"trigger": _trigger}}}
}

_doc(edges) := {"platforms": [_drawn], "edges": edges}

_drawn := {"at": ["/platforms/0"], "outline": "rectangle"}

_at(name, field) := concat("/", ["/platforms/0/edges", name, field])

_edge(name) := {"at": [concat("/", ["/platforms/0/edges", name])], "platform": "A", "name": name, "house": false, "guarded": false}

_drop(name, value) := {"drop": {"value": value, "at": [_at(name, "drop")]}}

_reach(name, value) := {"drop_within_36": {"value": value, "at": [_at(name, "drop_within_36_in")]}}

_shown(name, drop, reach) := object.union(_edge(name), object.union(_drop(name, drop), _reach(name, reach)))

_reading(name, field, value, outside) := {
	"at": [_at(name, field)], "have": value,
	"figure": "trigger", "limit": _trigger,
	"outside": outside, "edge": name,
}

test_drop_above_the_trigger_is_outside if {
	every step in [396875, 10000] {
		_said(_doc([object.union(_edge("left"), _drop("left", _trigger + step))])) == {
			"readings": {_reading("left", "drop", _trigger + step, true)},
			"unknown": set(),
		}
	}
}

test_drop_at_the_trigger_is_within if {
	_said(_doc([_shown("left", _trigger, _trigger)])) == {"readings": {_reading("left", "drop", _trigger, false)}, "unknown": set()}
}

test_drop_under_the_trigger_is_within if {
	every step in [396875, 10000] {
		_said(_doc([_shown("left", _trigger - step, _trigger - step)])) == {
			"readings": {_reading("left", "drop", _trigger - step, false)},
			"unknown": set(),
		}
	}
}

test_ground_falling_within_reach_counts if {
	_said(_doc([_shown("left", 660400000, 863600000)])) == {
		"readings": {_reading("left", "drop_within_36_in", 863600000, true)},
		"unknown": set(),
	}
	_said(_doc([_shown("left", 660400000, _trigger)])) == {
		"readings": {_reading("left", "drop_within_36_in", _trigger, false)},
		"unknown": set(),
	}
}

test_ground_rising_within_reach_does_not_hide_the_drop if {
	_said(_doc([_shown("left", 863600000, 660400000)])) == {
		"readings": {_reading("left", "drop", 863600000, true)},
		"unknown": set(),
	}
}

test_reach_alone_answers if {
	_said(_doc([object.union(_edge("left"), _reach("left", _trigger))])) == {
		"readings": {_reading("left", "drop_within_36_in", _trigger, false)},
		"unknown": set(),
	}
}

test_low_drop_without_reach_is_not_shown if {
	_said(_doc([object.union(_edge("left"), _drop("left", _trigger))])) == {
		"readings": set(),
		"unknown": {{"at": ["/platforms/0/edges/left"], "needs": "platforms[].edges.<left>.drop_within_36_in"}},
	}
}

test_missing_drop_is_not_shown if {
	_said(_doc([_edge("left")])) == {
		"readings": set(),
		"unknown": {{"at": ["/platforms/0/edges/left"], "needs": "platforms[].edges.<left>.drop"}},
	}
}

test_guarded_edge_is_within_whatever_its_drop if {
	bare := object.union(_edge("front"), {"guarded": true, "guard": "G1"})
	high := object.union(bare, _drop("front", 3048000000))
	every edge in [bare, high] {
		_said(_doc([edge])) == {
			"readings": {{"at": ["/platforms/0/edges/front"], "figure": "trigger", "outside": false, "say": "guarded", "edge": "front"}},
			"unknown": set(),
		}
	}
}

test_house_edge_needs_nothing if {
	house := object.union(_edge("house"), {"house": true})
	_said(_doc([house])) == {"readings": set(), "unknown": set()}
	not required.applies with input as _doc([house])
}

test_one_bad_of_two if {
	_said(_doc([_shown("left", 1, 1), _shown("right", 1, _trigger + 10000)])) == {
		"readings": {
			_reading("left", "drop", 1, false),
			_reading("right", "drop_within_36_in", _trigger + 10000, true),
		},
		"unknown": set(),
	}
}

test_platform_without_outline_is_not_shown if {
	doc := {"platforms": [_drawn, {"at": ["/platforms/1"]}], "edges": []}
	required.applies with input as doc
	_said(doc) == {"readings": set(), "unknown": {{"at": ["/platforms/1"], "needs": "platforms[].outline"}}}
	_said({"platforms": [{"at": ["/platforms/0"], "area": {"value": 1, "at": ["/platforms/0/outline"]}}], "edges": []}).unknown == set()
}

test_no_subject_no_check if {
	not required.applies with input as {"platforms": [], "edges": []}
	required.applies with input as _doc([_edge("left")])
	_said({"platforms": [], "edges": []}) == {"readings": set(), "unknown": set()}
}

test_guard_that_stops_short_is_outside if {
	partial := object.union(_edge("front"), {"guard": "G1", "unguarded": {"value": 609600000, "at": ["/platforms/0/edges/front"]}})
	_said(_doc([object.union(partial, _drop("front", _trigger + 1))])).readings == {{
		"at": ["/platforms/0/edges/front/drop"], "have": _trigger + 1,
		"figure": "trigger", "limit": _trigger, "outside": true, "say": "partial",
		"edge": "front", "open": 609600000,
	}}
}
