package checks.scope.live_load_test

import data.checks.scope.live_load

_min := 1915210372 # 40 psf in micropascals, rounded

_max := 2872815558 # 60 psf

_said(site) := result if {
	result := {"readings": live_load.readings, "unknown": live_load.unknown} with input as {"platforms": [{}], "site": object.union({"at": ["/site"]}, site)}
		with data.figures as {"scope": {"live_load": {"min": _min, "max": _max}}}
}

_least(have, outside) := {"at": ["/live"], "have": have, "figure": "min", "limit": _min, "outside": outside}

_most(have, outside, say) := {"at": ["/live"], "have": have, "figure": "max", "limit": _max, "outside": outside, "say": say}

test_between_the_least_and_the_most if {
	every case in [
		[_min - 1, true, false, "covered"], [_min, false, false, "covered"],
		[_max, false, false, "covered"], [_max + 1, false, true, "beyond"],
	] {
		[have, low, high, say] := case
		_said({"live_load": {"value": have, "at": ["/live"]}}) == {
			"readings": {_least(have, low), _most(have, high, say)},
			"unknown": set(),
		}
	}
}

test_not_shown if {
	_said({}) == {"readings": set(), "unknown": {{"at": ["/site"], "needs": "site.live_load"}}}
}

test_no_platform_no_check if {
	not live_load.applies with input as {"platforms": []}
	live_load.applies with input as {"platforms": [{}]}
}

_snowed(site) := result if {
	result := {"readings": live_load.readings, "unknown": live_load.unknown} with input as {"platforms": [{}], "site": object.union({"at": ["/site"]}, site)}
		with data.figures as {"scope": {"live_load": {"min": 1900000000, "roof_snow": true}}}
}

_live(value) := {"live_load": {"value": value, "at": ["/live"]}}

_roof(value) := {"roof_snow_load": {"value": value, "at": ["/roof"]}}

_by(limit, have, outside) := {"at": ["/live"], "have": have, "figure": "min", "limit": limit, "outside": outside}

test_snow_of_roofs_raises_the_least if {
	_snowed(object.union(_live(1900000000), _roof(1900000000))) == {"readings": {_by(1900000000, 1900000000, false)}, "unknown": set()}
	every have, outside in {1999999999: true, 2000000000: false} {
		_snowed(object.union(_live(have), _roof(2000000000))) == {
			"readings": {object.union(_by(2000000000, have, outside), {"say": "snow"})}, "unknown": set(),
		}
	}
}

test_snow_that_is_not_shown_matters_where_the_least_is_met if {
	_snowed(_live(1900000000)) == {"readings": set(), "unknown": {{"at": ["/site"], "needs": "site.roof_snow_load"}}}
	_snowed(_live(1899999999)) == {"readings": {_by(1900000000, 1899999999, true)}, "unknown": set()}
}
