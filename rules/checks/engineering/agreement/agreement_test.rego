package checks.engineering.agreement_test

import data.checks.engineering.agreement as check

# 6 in
_figures := {"engineering": {"agreement": {"past": 152400000}}}

_said := {"readings": check.readings, "unknown": check.unknown, "exempt": check.exempt}

_site := {"at": ["/site"], "live_load": {"value": 1, "at": ["/site/live_load"]}}

_length(value) := {"value": value, "at": ["/v"]}

_engineered := {"limit": {"value": 2540000000, "at": []}, "governs": "bending", "working": ["w = 1 plf"]}

_doc(facts) := object.union(
	{
		"site": _site, "joist_spans": [], "joist_cantilevers": [], "beam_spans": [], "beam_cantilevers": [], "posts": [],
		"ledgers": [], "flights": [],
	},
	facts,
)

_row(what, drawn, past, outside) := {
	"at": ["/v"], "have": past, "figure": "past", "limit": 152400000, "outside": outside,
	"what": what, "drawn": drawn, "allowed": 2540000000, "governs": "bending", "engineered": _engineered,
}

# 100 in is allowed; 6 in past it is still within.
test_joist_span[name] if {
	some name, case in {
		"under": [2400000000, 0, false],
		"106 in": [2692400000, 152400000, false],
		"2692.4 mm and a nanometre": [2692400001, 152400001, true],
		"105-63/64 in": [2692003125, 152003125, false],
	}
	_said == {"readings": {_row("joist span", case[0], case[1], case[2])}, "unknown": set(), "exempt": set()} with input as _doc({"joist_spans": [{"at": ["/j"], "span_to_center": _length(case[0]), "engineered": _engineered}]})
		with data.figures as _figures
}

test_every_kind_of_member_speaks if {
	{row.what | some row in check.readings} == {
		"joist cantilever", "span of beam B1", "cantilever of beam B1", "height of post 2 below beam B1",
		"spacing of ledger fasteners", "stringer span of stair ST1",
	} with input as _doc({
		"joist_cantilevers": [{"at": ["/c"], "cantilever": _length(1), "engineered": _engineered}],
		"beam_spans": [{"at": ["/b"], "beam": "B1", "span_to_center": _length(1), "engineered": _engineered}],
		"beam_cantilevers": [{"at": ["/b"], "beam": "B1", "cantilever": _length(1), "engineered": _engineered}],
		"posts": [{"at": ["/p"], "n": 2, "beam": "B1", "height": _length(1), "engineered": _engineered}],
		"ledgers": [{"at": ["/l"], "fastener_spacing": _length(1), "engineered": _engineered}],
		"flights": [{"at": ["/s"], "stair": "ST1", "stringer_run": _length(1), "engineered": _engineered}],
	})
		with data.figures as _figures
}

test_loads_not_shown if {
	_said == {"readings": set(), "unknown": {{"at": ["/site"], "needs": "site.live_load"}}, "exempt": set()} with input as json.remove(_doc({"joist_spans": [{"at": ["/j"]}]}), ["/site/live_load"])
		with data.figures as _figures
}

test_wood_not_known if {
	_said == {"readings": set(), "unknown": set(), "exempt": {{"at": ["/p"], "because": "open"}, {"at": ["/b"], "because": "open"}}} with input as _doc({"posts": [{"at": ["/p"]}], "beam_spans": [{"at": ["/b"]}]})
		with data.figures as _figures
}

test_no_frame_no_check if {
	not check.applies with input as _doc({})
}

test_applies_to_each if {
	check.applies with input as _doc({"joist_spans": [{"at": ["/j"]}]})
	check.applies with input as _doc({"ledgers": [{"at": ["/l"], "fastener_spacing": _length(1), "engineered": _engineered}]})
}
