package checks.footings.depth_test

import data.checks.footings.depth

_inch := 25400000

_min := 12 * _inch # 304.8 mm

_frost := 32 * _inch

_figures := {"min": _min, "below_frost": 0, "freestanding": false, "solid": ["rock"]}

_under(figures, members) := result if {
	result := {"readings": depth.readings, "unknown": depth.unknown, "exempt": depth.exempt} with input as {"footings": members, "site": {"at": ["/site"]}}
		with data.figures as {"footings": {"depth": figures}}
}

_said(members) := _under(_figures, members)

_shown(path, value) := {"value": value, "at": [path]}

_footing(value) := {
	"at": ["/footings"], "beam": "B1", "n": 2, "freestanding": false,
	"depth": _shown("/depth", value), "frost_depth": _shown("/frost", _frost),
}

_with(changes) := object.union(_footing(_frost), changes)

_row(figure, limit, have, outside, more) := object.union(
	{"at": ["/depth"], "have": have, "figure": figure, "limit": limit, "outside": outside, "beam": "B1", "n": 2},
	more,
)

_least(have, outside) := _row("min", _min, have, outside, {})

_frozen(have, outside) := _row("below_frost", _frost, have, outside, {"say": "frost"})

_reading(rows) := {"readings": rows, "unknown": set(), "exempt": set()}

_spared(because, rows) := {"readings": rows, "unknown": set(), "exempt": {{"at": ["/footings"], "because": because, "beam": "B1", "n": 2}}}

_steps := [[-396875, true], [-10000, true], [0, false], [10000, false], [396875, false]]

test_least_depth_where_frost_does_not_matter if {
	warm := object.remove(_figures, ["below_frost"])
	every case in _steps {
		_under(warm, [_footing(_min + case[0])]) == _reading({_least(_min + case[0], case[1])})
	}
}

test_frost_depth if {
	every case in _steps {
		have := _frost + case[0]
		_said([_footing(have)]) == _reading({_least(have, false), _frozen(have, case[1])})
	}
}

test_least_depth_counts_undisturbed_soil if {
	_said([_with({"depth_in_soil": _shown("/soil", _min - 1)})]) == _reading({
		object.union(_least(_min - 1, true), {"at": ["/soil"]}),
		_frozen(_frost, false),
	})
}

test_what_frost_does_not_reach if {
	_said([object.union(_footing(_min), {"frost_protected": _shown("/protected", true)})]) == _spared("protected", {_least(_min, false)})
	_said([object.union(_footing(_min), {"freestanding": true})]) == _spared("freestanding", {_least(_min, false)})
	_said([object.union(_footing(_min), {"frost_protected": _shown("/protected", false)})]).readings == {_least(_min, false), _frozen(_min, true)}
	strict := object.union(_figures, {"freestanding": true})
	_under(strict, [object.union(_footing(_min), {"freestanding": true})]).readings == {_least(_min, false), _frozen(_min, true)}
}

test_rock_needs_no_depth if {
	_said([object.union(_footing(0), {"soil": _shown("/soil", "rock")})]) == {
		"readings": set(), "unknown": set(),
		"exempt": {{"at": ["/footings"], "because": "solid", "beam": "B1", "n": 2, "ground": "rock"}},
	}
	_said([_with({"soil": _shown("/soil", "undisturbed")})]) == _reading({_least(_frost, false), _frozen(_frost, false)})
}

test_missing_values_are_not_shown if {
	_said([object.remove(_footing(1), ["depth"])]) == {
		"readings": set(), "exempt": set(),
		"unknown": {{"at": ["/footings"], "needs": "platforms[].footings.depth"}},
	}
	_said([object.remove(_with({"depth_in_soil": _shown("/soil", _min)}), ["depth"])]).unknown == {{"at": ["/footings"], "needs": "platforms[].footings.depth"}}
	_said([object.remove(_footing(_min), ["frost_depth"])]) == {
		"readings": {_least(_min, false)}, "exempt": set(),
		"unknown": {{"at": ["/site"], "needs": "site.frost_depth"}},
	}
}

test_one_bad_of_two if {
	_said([_footing(_frost), _footing(_frost - 1)]).readings == {
		_least(_frost, false), _frozen(_frost, false),
		_least(_frost - 1, false), _frozen(_frost - 1, true),
	}
}

test_no_subject_no_check if {
	not depth.applies with input as {"footings": []}
	depth.applies with input as {"footings": [_footing(1)]}
	_said([]) == _reading(set())
}

# Where the set gives the frost depth of its place, that of the site does not
# count and is not asked for.
test_frost_depth_of_the_place if {
	place := object.union(_figures, {"frost": 42 * _inch})
	bare := object.remove(_footing(0), ["frost_depth"])
	every case in _steps {
		have := (42 * _inch) + case[0]
		every footing in [_footing(have), object.union(bare, {"depth": _shown("/depth", have)})] {
			_under(place, [footing]) == _reading({_least(have, false), _row("frost", 42 * _inch, have, case[1], {"say": "frost"})})
		}
	}
	_under(place, [object.union(_footing(_min), {"freestanding": true})]) == _spared("freestanding", {_least(_min, false)})
}
