package lib.footings_test

import data.lib.footings

_shown(value) := {"value": value, "at": [sprintf("/%v", [value])]}

_steps := [{"upto": 40, "read": 40}, {"upto": 60, "read": 60}]

_by_area := {
	"live_steps": _steps, "tributary": "builder", "area_unit": 304800000,
	"sides": {"breaks": {"load": [40, 50], "soil": [1500, 2000], "area": [20, 40]}, "cells": [[[12, 14], [11, 13]], [[15, 17], [14, 16]]]},
}

_by_spans := {"live_steps": _steps, "sides_by_spans": {"breaks": {"load": [40], "soil": [1500], "beam_span": [6, 8], "joist_span": [10, 14]}, "cells": [[[[1, 2], [3, 4]]]]}}

_footing := {
	"at": ["/platforms/0/footings"], "missing": ["platforms[].joists"],
	"soil_bearing": _shown(1500), "live_load": _shown(40), "ground_snow_load": _shown(25),
	"tributary_area": _shown({"builder": 1858061, "statics": 1858062}),
	"beam_span": _shown(7), "joist_span": _shown(10),
}

_with(changes) := object.union(_footing, changes)

test_form_is_the_table_given if {
	footings.form(_by_area, "sides") == "sides"
	footings.form(_by_spans, "sides") == "sides_by_spans"
	not footings.form(_by_spans, "diameters")
}

test_soil_is_read_as_the_next_worse if {
	every case in [[1500, 0], [1999, 0], [2000, 1], [9000, 1]] {
		footings.soil([1500, 2000], case[0]) == case[1]
	}
	not footings.soil([1500, 2000], 1499)
}

test_limit_by_area if {
	footings.limit(_by_area, "sides", _footing) == {"figure": "sides", "cell": [0, 0, 0], "limit": 12}
	statics := object.union(_by_area, {"tributary": "statics"})
	footings.limit(statics, "sides", _footing) == {"figure": "sides", "cell": [0, 0, 1], "limit": 14}
	footings.limit(_by_area, "sides", _with({"soil_bearing": _shown(2500), "ground_snow_load": _shown(50)})) == {"figure": "sides", "cell": [1, 1, 0], "limit": 14}
	not footings.limit(_by_area, "diameters", _footing)
}

test_limit_by_spans if {
	footings.limit(_by_spans, "sides", _footing) == {"figure": "sides_by_spans", "cell": [0, 0, 1, 0], "limit": 3}
}

test_nothing_beyond if {
	footings.beyond(_by_area, "sides", _footing) == set()
	footings.beyond(_by_spans, "sides", _footing) == set()
	footings.beyond(_by_spans, "diameters", _footing) == set()
}

test_beyond_the_table if {
	every case in [
		[_by_area, {"soil_bearing": _shown(1499)}, {{"at": ["/1499"], "figure": "sides", "outside": true, "say": "beyond_soil", "soil": 1499}}],
		[_by_area, {"live_load": _shown(60)}, {{"at": ["/60"], "figure": "sides", "outside": true, "say": "beyond_load", "load": 60}}],
		[_by_area, {"tributary_area": _shown({"builder": 3716123})}, {{"at": _footing.at, "figure": "sides", "outside": true, "say": "beyond_area"}}],
		[_by_spans, {"beam_span": _shown(9)}, {{"at": _footing.at, "figure": "sides_by_spans", "outside": true, "say": "beyond_beam_span", "span": 9}}],
		[_by_spans, {"joist_span": _shown(15)}, {{"at": _footing.at, "figure": "sides_by_spans", "outside": true, "say": "beyond_joist_span", "span": 15}}],
	] {
		[figures, changes, rows] := case
		footings.beyond(figures, "sides", _with(changes)) == rows
	}
}

test_complete_with_both_loads if {
	footings.complete(_footing)
	not footings.complete(object.remove(_footing, ["live_load"]))
	not footings.complete(object.remove(_footing, ["ground_snow_load"]))
}

test_needs if {
	footings.needs(_by_area, "sides", _footing) == set()
	footings.needs(_by_spans, "sides", _footing) == set()
	footings.needs(_by_area, "sides", object.remove(_footing, ["tributary_area", "soil_bearing", "live_load"])) == {"platforms[].joists", "site.live_load", "site.soil_bearing"}
	footings.needs(_by_spans, "sides", object.remove(_footing, ["joist_span"])) == {"platforms[].joists"}
	lone := object.union(object.remove(_footing, ["joist_span", "beam_span"]), {"missing": []})
	footings.needs(_by_spans, "sides", lone) == {"platforms[].beams[].posts_at", "platforms[].beams"}
	footings.needs(_by_area, "sides", lone) == set()
}
