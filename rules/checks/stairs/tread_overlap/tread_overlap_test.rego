package checks.stairs.tread_overlap_test

import data.checks.stairs.tread_overlap as check

_said := {"readings": check.readings, "unknown": check.unknown, "exempt": check.exempt}

_figures := {"stairs": {"tread_overlap": {"min": 16, "max": 25}}}

_flight(facts) := object.union_n(array.concat([{"at": ["/stairs/0"]}], facts))

_closed(is) := {"risers_closed": {"value": is, "at": ["/stairs/0/riser_opening"]}}

_nosing(value) := {"nosing": {"value": value, "at": ["/stairs/0/nosing"]}}

_readings(value, less, more) := {
	{"at": ["/stairs/0/nosing"], "have": value, "figure": "min", "limit": 16, "outside": less},
	{"at": ["/stairs/0/nosing"], "have": value, "figure": "max", "limit": 25, "outside": more},
}

_asks(field) := {{"at": ["/stairs/0"], "needs": field}}

test_overlap[name] if {
	some name, case in {
		"less": [[_closed(false), _nosing(15)], _readings(15, true, false), set(), set()],
		"least": [[_closed(false), _nosing(16)], _readings(16, false, false), set(), set()],
		"most": [[_closed(false), _nosing(25)], _readings(25, false, false), set(), set()],
		"more": [[_closed(false), _nosing(26)], _readings(26, false, true), set(), set()],
		"closed": [[_closed(true), _nosing(0)], set(), set(), {{"at": ["/stairs/0/riser_opening"], "because": "closed"}}],
		"risers not shown": [[_nosing(0)], set(), _asks("stairs[].riser_opening"), set()],
		"overlap not shown": [[_closed(false)], set(), _asks("stairs[].nosing"), set()],
	}
	_said == {"readings": case[1], "unknown": case[2], "exempt": case[3]} with input.flights as [_flight(case[0])]
		with data.figures as _figures
}

test_least_alone if {
	_said == {
		"readings": {{"at": ["/stairs/0/nosing"], "have": 26, "figure": "min", "limit": 16, "outside": false}},
		"unknown": set(), "exempt": set(),
	} with input.flights as [_flight([_closed(false), _nosing(26)])]
		with data.figures as {"stairs": {"tread_overlap": {"min": 16}}}
}

test_none_described if {
	not check.applies with input.flights as []
	check.applies with input.flights as [_flight([])]
}
