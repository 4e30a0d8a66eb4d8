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
