package checks.stairs.nosing_radius_test

import data.checks.stairs.nosing_radius as check

_said := {"readings": check.readings, "unknown": check.unknown}

_figures := {"stairs": {"nosing_radius": {"min": 6, "max": 14}}}

_stair(value) := {"at": ["/stairs/0"], "nosing_radius": {"value": value, "at": ["/stairs/0/nosing_radius"]}}

_reading(figure, limit, have, outside) := {
	"at": ["/stairs/0/nosing_radius"], "have": have, "figure": figure, "limit": limit, "outside": outside,
}

test_limits[name] if {
	some name, case in {"sharp": [5, true, false], "least": [6, false, false], "greatest": [14, false, false], "round": [15, false, true]}
	_said == {
		"readings": {_reading("min", 6, case[0], case[1]), _reading("max", 14, case[0], case[2])},
		"unknown": set(),
	} with input.stairs as [_stair(case[0])]
		with data.figures as _figures
}

test_not_shown if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0"], "needs": "stairs[].nosing_radius"}}} with input.stairs as [{"at": ["/stairs/0"]}]
		with data.figures as _figures
}

test_none_described if {
	not check.applies with input.stairs as []
	check.applies with input.stairs as [_stair(6)]
}
