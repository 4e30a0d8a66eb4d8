package checks.guards.required_test

import data.checks.guards.required

_trigger := 762000000 # 30 in, 762 mm

_reach := 914400000 # 36 in

_said(doc) := _under({"trigger": _trigger, "reach": _reach}, doc)

_under(figures, doc) := result if {
	result := {"readings": required.readings, "unknown": required.unknown} with input as doc
		with data.figures as {"guards": {"required": figures}}
}

_doc(edges) := {"platforms": [_drawn], "edges": edges}

_drawn := {"at": ["/platforms/0"], "outline": "rectangle"}

_at(name, field) := concat("/", ["/platforms/0/edges", name, field])

_edge(name) := _shows(name, {})

# _shows is an edge with the drops given by field.
_shows(name, drops) := {
	"at": [concat("/", ["/platforms/0/edges", name])], "platform": "A", "name": name, "house": false, "guarded": false,
	"drops": [_entry(name, drops, "drop", 0), _entry(name, drops, "drop_within_36_in", _reach), _entry(name, drops, "drop_within_1200_mm", 1200000000)],
}

_entry(name, drops, field, out) := object.union(
	{"out": out, "field": field, "partial": false},
	{"drop": {"value": value, "at": [_at(name, field)]} | value := drops[field]},
)

_drop(value) := {"drop": value}

_within(value) := {"drop_within_36_in": value}

_shown(name, drop, reach) := _shows(name, {"drop": drop, "drop_within_36_in": reach})

_reading(name, field, value, outside) := {
	"at": [_at(name, field)], "have": value,
	"figure": "trigger", "limit": _trigger,
	"outside": outside, "say": {true: "outside", false: "within"}[outside], "edge": name,
}

test_drop_above_the_trigger_is_outside if {
	every step in [396875, 10000] {
		_said(_doc([_shows("left", _drop(_trigger + step))])) == {
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
	_said(_doc([_shows("left", _within(_trigger))])) == {
		"readings": {_reading("left", "drop_within_36_in", _trigger, false)},
		"unknown": set(),
	}
}

test_low_drop_without_reach_is_not_shown if {
	_said(_doc([_shows("left", _drop(_trigger))])) == {
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
	high := object.union(_shows("front", _drop(3048000000)), {"guarded": true, "guard": "G1"})
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
	partial := object.union(_shows("front", _drop(_trigger + 1)), {"guard": "G1", "unguarded": {"value": 609600000, "at": ["/platforms/0/edges/front"]}})
	_said(_doc([partial])).readings == {{
		"at": ["/platforms/0/edges/front/drop"], "have": _trigger + 1,
		"figure": "trigger", "limit": _trigger, "outside": true, "say": "partial",
		"edge": "front", "open": 609600000,
	}}
}

test_drop_from_which_a_guard_is_asked_for if {
	every value, outside in {999990000: false, 1000000000: true} {
		_under({"from": 1000000000}, _doc([_shows("left", _drop(value))])) == {
			"readings": {{
				"at": [_at("left", "drop")], "have": value,
				"figure": "from", "limit": 1000000000,
				"outside": outside, "say": {true: "outside_from", false: "within_from"}[outside], "edge": "left",
			}},
			"unknown": set(),
		}
	}
	partial := object.union(_shows("left", _drop(1000000000)), {"unguarded": {"value": 1, "at": ["/e"]}})
	{row.say | some row in _under({"from": 1000000000}, _doc([partial])).readings} == {"partial_from"}
}

test_distance_that_counts if {
	wide := {"from": 1000000000, "reach": 1200000000}
	_under(wide, _doc([_shown("left", 1, 999990000)])).unknown == {{
		"at": ["/platforms/0/edges/left"], "needs": "platforms[].edges.<left>.drop_within_1200_mm",
	}}
	every value, outside in {999990000: false, 1000000000: true} {
		result := _under(wide, _doc([_shows("left", {"drop": 1, "drop_within_1200_mm": value})]))
		result.unknown == set()
		[row.outside | some row in result.readings] == [outside]
	}
	_under({"from": 1000000000}, _doc([_shown("left", 1, 2000000000)])).readings == {{
		"at": [_at("left", "drop")], "have": 1, "figure": "from", "limit": 1000000000,
		"outside": false, "say": "within_from", "edge": "left",
	}}
}

test_greatest_drop_further_out_answers_too if {
	_said(_doc([_shows("left", {"drop_within_1200_mm": 1})])) == {
		"readings": {_reading("left", "drop_within_1200_mm", 1, false)}, "unknown": set(),
	}
	_said(_doc([_shows("left", {"drop_within_1200_mm": _trigger + 1})])) == {
		"readings": set(),
		"unknown": {{"at": ["/platforms/0/edges/left"], "needs": "platforms[].edges.<left>.drop_within_36_in"}},
	}
}

_sloping(rise, run) := object.union(_shows("left", _drop(600000000)), {"ground_slope": {"value": {"rise": rise, "run": run}, "at": ["/slope"]}})

_canada := {"trigger": 600000000, "slope": {"rise": 1, "run": 2}}

test_steep_ground_asks_for_a_guard if {
	_under(_canada, _doc([_sloping(1, 2)])).readings == {{
		"at": [_at("left", "drop")], "have": 600000000, "figure": "trigger", "limit": 600000000,
		"outside": false, "say": "within", "edge": "left",
	}}
	_under(_canada, _doc([_sloping(5001, 10000)])) == {
		"readings": {{
			"at": ["/slope"], "have": {"rise": 5001, "run": 10000}, "figure": "slope", "limit": {"rise": 1, "run": 2},
			"outside": true, "say": "steep", "edge": "left",
		}},
		"unknown": set(),
	}
	_under(_canada, _doc([_shows("left", _drop(1))])) == {
		"readings": set(),
		"unknown": {{"at": ["/platforms/0/edges/left"], "needs": "platforms[].edges.<left>.slope_within_1200_mm"}},
	}
	{row.figure | some row in _under(_canada, _doc([_shows("left", _drop(600010000))])).readings} == {"trigger"}
}

_level(value) := {
	"at": ["/platforms/0/outline"], "platform": "A", "name": "left", "house": false, "guarded": false,
	"drops": [
		{"out": 0, "field": "drop", "partial": false, "level": true, "drop": {"value": value, "at": ["/platforms/0/surface_above_grade"]}},
		{"out": _reach, "field": "drop_within_36_in", "partial": false, "level": false},
	],
}

test_height_of_the_whole_surface_is_told_as_such if {
	every value, outside in {_trigger: false, _trigger + 10000: true, _trigger + 396875: true} {
		_under({"trigger": _trigger}, _doc([_level(value)])) == {
			"readings": {{
				"at": ["/platforms/0/surface_above_grade"], "have": value, "figure": "trigger", "limit": _trigger,
				"outside": outside, "say": {true: "outside_level", false: "within_level"}[outside], "edge": "left",
			}},
			"unknown": set(),
		}
	}
	partial := object.union(_level(_trigger + 1), {"unguarded": {"value": 1, "at": ["/e"]}})
	{row.say | some row in _said(_doc([partial])).readings} == {"partial_level"}
	{row.say | some row in _under({"from": 1}, _doc([_level(1)])).readings} == {"outside_level_from"}
}

test_what_lies_within_reach_is_still_asked_for if {
	_said(_doc([_level(_trigger)])) == {
		"readings": set(),
		"unknown": {{"at": ["/platforms/0/outline"], "needs": "platforms[].edges.<left>.drop_within_36_in"}},
	}
}

_gap := 304800000 # 12 in

_falls := {"trigger": _trigger, "reach": _reach, "gap": _gap}

_pit(more) := object.union({"at": ["/o"], "name": "tree opening", "told": false, "guarded": false, "covered": false}, more)

_hole(gap, drop, told) := _pit({"gap": {"value": gap, "at": ["/o"]}, "drop": {"value": drop, "at": ["/d"]}, "told": told})

_fall(hole) := _under(_falls, {"platforms": [_drawn], "edges": [], "platform_openings": [hole]})

_asks(field) := {"at": ["/o"], "needs": concat("", ["platforms[].joists.openings[].", field])}

test_opening_without_a_guard_over_a_drop_is_outside if {
	every step in [396875, 10000] {
		_fall(_hole(_gap, _trigger + step, true)) == {
			"readings": {{
				"at": ["/o", "/d"], "have": _trigger + step, "figure": "trigger", "limit": _trigger,
				"outside": true, "say": "hole", "hole": "tree opening", "gap": _gap,
			}},
			"unknown": set(),
		}
	}
}

test_opening_over_a_small_drop_is_within if {
	every drop in [_trigger, _trigger - 396875, _trigger - 10000] {
		every told in [true, false] {
			_fall(_hole(_gap, drop, told)) == {
				"readings": {{
					"at": ["/o", "/d"], "have": drop, "figure": "trigger", "limit": _trigger,
					"outside": false, "say": "hole_within", "hole": "tree opening",
				}},
				"unknown": set(),
			}
		}
	}
}

test_opening_of_which_nothing_is_told_asks_for_its_guard if {
	_fall(_hole(_gap, _trigger + 1, false)) == {"readings": set(), "unknown": {_asks("guard")}}
	_fall(_pit({})) == {"readings": set(), "unknown": {_asks("guard")}}
	_fall(_pit({"told": true})) == {"readings": set(), "unknown": {_asks("corners"), _asks("drop")}}
}

test_narrow_opening_is_left_alone if {
	every step in [396875, 10000] {
		_fall(_hole(_gap - step, _trigger + 1, true)) == {"readings": set(), "unknown": set()}
		_fall(_hole(_gap + step, _trigger + 1, true)).readings != set()
	}
}

test_set_without_the_gap_leaves_openings_alone if {
	doc := {"platforms": [_drawn], "edges": [], "platform_openings": [_hole(_gap, _trigger + 1, true)]}
	_said(doc) == {"readings": set(), "unknown": set()}
}

test_guarded_or_covered_opening_is_within if {
	every how in [{"told": true, "guarded": true}, {"covered": true}] {
		hole := object.union(_hole(_gap, _trigger + 1, false), how)
		_fall(hole) == {
			"readings": {{"at": ["/o"], "figure": "trigger", "outside": false, "say": "closed", "hole": "tree opening"}},
			"unknown": set(),
		}
	}
}

test_opening_over_a_drop_from_which_a_guard_is_asked_for if {
	doc := {"platforms": [_drawn], "edges": [], "platform_openings": [_hole(_gap, 1000000000, true), _hole(_gap, 999990000, true)]}
	{[row.say, row.have] | some row in _under({"from": 1000000000, "gap": _gap}, doc).readings} == {
		["hole_from", 1000000000], ["hole_within_from", 999990000],
	}
}
