package checks.beams.depth_test

import data.checks.beams.depth

_deep := 234950000 # 9-1/4 in

_said(beams) := result if {
	result := {"readings": depth.readings, "unknown": depth.unknown, "exempt": depth.exempt} with input as {"beams": beams}
		with data.figures as {"beams": {"depth": {"below_joists": 0}}}
}

_shown(path, value) := {"value": value, "at": [path]}

_beam(value) := {
	"at": ["/beam"], "mark": "B1", "kind": _shown("/kind", "flush"),
	"depth": _shown("/size", value), "joist_depth": _shown("/joists/size", _deep),
}

_dropped := object.union(_beam(1), {"kind": _shown("/kind", "dropped")})

_row(have, outside) := {"at": ["/size"], "have": have, "figure": "below_joists", "limit": _deep, "outside": outside, "beam": "B1"}

test_under_at_and_over_the_limit if {
	every case in [[-396875, true], [-10000, true], [0, false], [10000, false], [396875, false]] {
		have := _deep + case[0]
		_said([_beam(have)]) == {"readings": {_row(have, case[1])}, "unknown": set(), "exempt": set()}
	}
}

test_set_that_asks_for_more_than_the_joists if {
	depth.readings == {object.union(_row(_deep, true), {"limit": _deep + 1})} with input as {"beams": [_beam(_deep)]}
		with data.figures as {"beams": {"depth": {"below_joists": 1}}}
}

test_dropped_beam_is_left_alone if {
	_said([_dropped]) == {"readings": set(), "unknown": set(), "exempt": {{"at": ["/beam"], "because": "dropped"}}}
}

test_missing_values_are_not_shown if {
	every case in [["kind", "platforms[].beams[].kind"], ["depth", "platforms[].beams[].size"], ["joist_depth", "platforms[].joists.size"]] {
		_said([object.remove(_beam(_deep), [case[0]])]) == {
			"readings": set(), "exempt": set(),
			"unknown": {{"at": ["/beam"], "needs": case[1]}},
		}
	}
}

test_applies_to_beams_that_may_be_flush if {
	not depth.applies with input as {"beams": [_dropped]}
	not depth.applies with input as {"beams": []}
	depth.applies with input as {"beams": [_dropped, _beam(1)]}
	depth.applies with input as {"beams": [object.remove(_beam(1), ["kind"])]}
}

test_one_bad_of_two if _said([_beam(_deep), _beam(1)]).readings == {_row(_deep, false), _row(1, true)}
