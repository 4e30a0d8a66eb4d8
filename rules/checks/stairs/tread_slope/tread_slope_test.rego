package checks.stairs.tread_slope_test

import data.checks.stairs.tread_slope as check

_said := {"readings": check.readings, "unknown": check.unknown}

_figures := {"stairs": {"tread_slope": {"max": {"rise": 1, "run": 50}}}}

_stair(rise, run) := {"at": ["/stairs/0"], "tread_slope": {"value": {"rise": rise, "run": run}, "at": ["/stairs/0/tread/slope"]}}

test_limit[name] if {
	some name, case in {"1 in 51": [1, 51, false], "2%": [2, 100, false], "1 in 49": [1, 49, true], "the other way": [-1, 49, true]}
	_said == {
		"readings": {{
			"at": ["/stairs/0/tread/slope"], "have": {"rise": case[0], "run": case[1]},
			"figure": "max", "limit": {"rise": 1, "run": 50}, "outside": case[2],
		}},
		"unknown": set(),
	} with input.stairs as [_stair(case[0], case[1])]
		with data.figures as _figures
}

test_not_shown if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0"], "needs": "stairs[].tread.slope"}}} with input.stairs as [{"at": ["/stairs/0"]}]
		with data.figures as _figures
}

test_none_described if {
	not check.applies with input.stairs as []
	check.applies with input.stairs as [_stair(1, 50)]
}
