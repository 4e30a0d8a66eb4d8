package checks.footings.pressure_test

import data.checks.footings.pressure

_one := {"rise": 1, "run": 1}

_figures := {"max_share": _one, "dead_load": 10}

_on(site, members) := result if {
	result := {"readings": pressure.readings, "unknown": pressure.unknown} with input as {
		"footings": members,
		"site": object.union({"at": ["/site"]}, site), "house": {"at": []},
	}
		with data.figures as {"footings": {"pressure": _figures}}
}

_said(members) := _on({}, members)

_shown(path, value) := {"value": value, "at": [path]}

# 600 of area by 50 of load stand on 20 of area and 1500 of soil.
_footing(carried) := {
	"at": ["/footings"], "beam": "B1", "n": 2, "missing": ["platforms[].joists"], "shape": _shown("/shape", "round"),
	"plan_area": _shown("/wide", 20), "soil_bearing": _shown("/soil", 1500),
	"live_load": _shown("/live", 40), "ground_snow_load": _shown("/snow", 25),
	"tributary_area": _shown("/area", {"builder": 0, "statics": carried}),
}

_row(load, dead, outside) := {
	"at": ["/wide"], "have": {"rise": load, "run": 30000}, "figure": "max_share", "limit": _one, "outside": outside,
	"beam": "B1", "n": 2, "dead": dead, "soil": 1500,
}

_reading(row) := {"readings": {row}, "unknown": set()}

test_over_at_and_under_what_the_soil_bears if {
	every case in [[601, true], [600, false], [599, false]] {
		_said([_footing(case[0])]) == _reading(_row(case[0] * 50, 10, case[1]))
	}
}

test_greater_of_live_and_snow if {
	_said([object.union(_footing(600), {"ground_snow_load": _shown("/snow", 60)})]) == _reading(_row(42000, 10, true))
}

test_dead_load_of_the_design_goes_before_the_figure if {
	_on({"dead_load": _shown("/dead", 15)}, [_footing(500)]) == _reading(_row(27500, 15, false))
}

test_missing_values_are_not_shown if {
	every case in [
		[["live_load"], {{"at": ["/site"], "needs": "site.live_load"}}],
		[["ground_snow_load"], {{"at": ["/site"], "needs": "site.ground_snow_load"}}],
		[["soil_bearing"], {{"at": ["/site"], "needs": "site.soil_bearing"}}],
		[["plan_area"], {{"at": ["/footings"], "needs": "platforms[].footings.diameter"}}],
		[["plan_area", "shape"], {{"at": ["/footings"], "needs": "platforms[].footings.shape"}}],
		[["tributary_area"], {{"at": ["/footings"], "needs": "platforms[].joists"}}],
	] {
		_said([object.remove(_footing(600), case[0])]) == {"readings": set(), "unknown": case[1]}
	}
}

test_one_bad_of_two if _said([_footing(600), _footing(601)]).readings == {_row(30000, 10, false), _row(30050, 10, true)}

test_no_subject_no_check if {
	not pressure.applies with input as {"footings": []}
	pressure.applies with input as {"footings": [_footing(1)]}
	_said([]) == {"readings": set(), "unknown": set()}
}
