package checks.scope.soil_test

import data.checks.scope.soil

_min := 71820388936 # 1500 psf in micropascals, rounded

_under(figures, site) := result if {
	result := {"readings": soil.readings, "unknown": soil.unknown} with input as {"footings": [{}], "site": object.union({"at": ["/site"]}, site)}
		with data.figures as {"scope": {"soil": figures}}
}

_said(site) := _under({"min": _min, "refused": ["peat"]}, site)

_shown(path, value) := {"value": value, "at": [path]}

_row(have, outside) := {"at": ["/bearing"], "have": have, "figure": "min", "limit": _min, "outside": outside}

test_under_at_and_over_the_limit if {
	every case in [[-1, true], [0, false], [1, false]] {
		have := _min + case[0]
		_said({"soil_bearing": _shown("/bearing", have)}) == {"readings": {_row(have, case[1])}, "unknown": set()}
	}
}

test_kind_of_soil if {
	bearing := {"soil_bearing": _shown("/bearing", _min)}
	_said(object.union(bearing, {"soil_class": _shown("/class", "Peat")})).readings == {
		_row(_min, false),
		{"at": ["/class"], "have": "Peat", "figure": "refused", "outside": true, "say": "kind"},
	}
	_said(object.union(bearing, {"soil_class": _shown("/class", "clay")})).readings == {_row(_min, false)}
	_under({"min": _min}, object.union(bearing, {"soil_class": _shown("/class", "peat")})).readings == {_row(_min, false)}
}

test_not_shown if {
	_said({}) == {"readings": set(), "unknown": {{"at": ["/site"], "needs": "site.soil_bearing"}}}
}

test_no_footing_no_check if {
	not soil.applies with input as {"footings": []}
	soil.applies with input as {"footings": [{}]}
}
