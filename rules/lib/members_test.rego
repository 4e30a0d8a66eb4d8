package lib.members_test

import data.lib.members

_at := ["/platforms/0/beams/0"]

_shown(value) := {"value": value, "at": _at}

test_span_by_basis if {
	bay := {"clear_span": _shown(1), "span_to_center": _shown(2)}
	members.span("clear span", bay) == _shown(1)
	members.span("span to center", bay) == _shown(2)
	not members.span("span to center", {})
	not members.span("else", bay)
}

test_joists_by_basis if {
	bay := {"joist_clear_span": _shown(1), "joist_span": _shown(2)}
	members.joists("clear span", bay) == _shown(1)
	members.joists("span to center", bay) == _shown(2)
	not members.joists("clear span", {})
}

test_missing_names_what_is_not_shown if {
	fields := {"size": "beams.size", "plies": "beams.plies"}
	members.missing({"size": _shown("2x8")}, fields) == {"beams.plies"}
	members.missing({"size": _shown("2x8"), "plies": _shown(2)}, fields) == set()
}

test_missing_lumber_and_loads if {
	members.lumber({"lumber": {"species": _shown("redwood"), "missing": ["lumber.<framing>.grade"]}}) == {"lumber.<framing>.grade"}
	members.lumber({"lumber": {"missing": []}}) == set()
	members.loads({"live_load": _shown(1)}) == {"site.ground_snow_load"}
	members.loads({"live_load": _shown(1), "ground_snow_load": _shown(0)}) == set()
}

test_place_of_a_missing_field if {
	owners := {"site": ["/site"], "house": []}
	every case in [["site.live_load", ["/site"]], ["house.floor", []], ["platforms[].beams", _at]] {
		members.place(owners, _at, case[0]) == case[1]
	}
}
