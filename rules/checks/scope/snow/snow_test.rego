package checks.scope.snow_test

import data.checks.scope.snow

_max := 3351618151 # 70 psf in micropascals, rounded

_said(site) := result if {
	result := {"readings": snow.readings, "unknown": snow.unknown} with input as {"platforms": [{}], "site": object.union({"at": ["/site"]}, site)}
		with data.figures as {"scope": {"snow": {"max": _max}}}
}

test_over_at_and_under_the_limit if {
	every case in [[1, true], [0, false], [-1, false]] {
		have := _max + case[0]
		_said({"ground_snow_load": {"value": have, "at": ["/snow"]}}) == {
			"readings": {{"at": ["/snow"], "have": have, "figure": "max", "limit": _max, "outside": case[1]}},
			"unknown": set(),
		}
	}
}

test_not_shown if {
	_said({}) == {"readings": set(), "unknown": {{"at": ["/site"], "needs": "site.ground_snow_load"}}}
}

test_no_platform_no_check if {
	not snow.applies with input as {"platforms": []}
	snow.applies with input as {"platforms": [{}]}
}
