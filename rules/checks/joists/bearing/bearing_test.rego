package checks.joists.bearing_test

import data.checks.joists.bearing

_wood := 38100000 # 1-1/2 in

_concrete := 76200000 # 3 in

_said(members) := result if {
	result := {"readings": bearing.readings, "unknown": bearing.unknown, "exempt": bearing.exempt} with input as {"joined": members}
		with data.figures as {"joists": {"bearing": {"min_wood": _wood, "min_concrete": _concrete, "hard": ["concrete"]}}}
}

_shown(path, value) := {"value": value, "at": [path]}

_joists(on_ledger, on_dropped) := {"at": ["/joists"], "on_ledger": on_ledger, "on_dropped": on_dropped}

_at_beams(value) := object.union(_joists(false, true), {"bearing_at_beams": _shown("/beams", value)})

_at_ledger(value) := object.union(_joists(true, false), {"bearing_at_ledger": _shown("/ledger", value)})

_on(what, joined) := object.union(joined, {"bearing_on": _shown("/on", what)})

_row(at, figure, limit, have, outside) := {"at": [at], "have": have, "figure": figure, "limit": limit, "outside": outside}

_reading(row) := {"readings": {row}, "unknown": set(), "exempt": set()}

_spared(because) := {"readings": set(), "unknown": set(), "exempt": {{"at": ["/joists"], "because": because}}}

_asked(field) := {"readings": set(), "exempt": set(), "unknown": {{"at": ["/joists"], "needs": concat(".", ["platforms[].joists", field])}}}

_steps := [[-396875, true], [-10000, true], [0, false], [10000, false], [396875, false]]

test_on_wood if {
	every case in _steps {
		have := _wood + case[0]
		every joined in [_at_beams(have), _on("metal", _at_beams(have))] {
			_said([joined]) == _reading(_row("/beams", "min_wood", _wood, have, case[1]))
		}
		_said([_at_ledger(have)]) == _reading(_row("/ledger", "min_wood", _wood, have, case[1]))
	}
}

test_on_concrete if {
	every case in _steps {
		have := _concrete + case[0]
		_said([_on("concrete", _at_beams(have))]) == _reading(_row("/beams", "min_concrete", _concrete, have, case[1]))
	}
}

test_over_the_whole_beam_where_nothing_is_stated if {
	whole := object.union(_joists(false, true), {"beam_width": _shown("/width", _wood)})
	_said([whole]) == _reading(_row("/width", "min_wood", _wood, _wood, false))
	_said([object.union(whole, _at_beams(_wood - 1))]) == _reading(_row("/beams", "min_wood", _wood, _wood - 1, true))
}

test_hangers_at_the_ledger if {
	hung := {"hangers_at_ledger": _shown("/hangers", true)}
	bare := {"hangers_at_ledger": _shown("/hangers", false)}
	_said([object.union(_joists(true, false), hung)]) == _spared("hangers")
	_said([_joists(true, false)]) == _spared("open")
	_said([object.union(_joists(true, false), bare)]) == _asked("bearing_at_ledger")
}

test_nothing_shown_at_the_beams if _said([_joists(false, true)]) == _asked("bearing_at_beams")

test_one_bad_of_two if {
	_said([_at_beams(_wood), _at_beams(_wood - 1)]).readings == {
		_row("/beams", "min_wood", _wood, _wood, false),
		_row("/beams", "min_wood", _wood, _wood - 1, true),
	}
}

test_joists_that_rest_on_neither if {
	every members in [[], [_joists(false, false)]] {
		not bearing.applies with input as {"joined": members}
		_said(members) == {"readings": set(), "unknown": set(), "exempt": set()}
	}
	bearing.applies with input as {"joined": [_joists(true, false)]}
	bearing.applies with input as {"joined": [_joists(false, true)]}
}
