package checks.stairs.nosing_test

import data.checks.stairs.nosing as check

# 3/4 in, 1-1/4 in
_figures := {"stairs": {"nosing": {"min": 19050000, "max": 31750000, "not_from": 279400000}}}

_said := {"readings": check.readings, "unknown": check.unknown, "exempt": check.exempt}

_flight(at, value) := {"at": [at], "nosing": {"value": value, "at": [concat("/", [at, "nosing"])]}, "risers_closed": {"value": true, "at": [concat("/", [at, "riser_opening"])]}, "tread_min": {"value": 279399999, "at": [concat("/", [at, "tread_depth"])]}}

_readings(at, value, min_outside, max_outside) := {
	{"at": [concat("/", [at, "nosing"])], "have": value, "figure": "min", "limit": 19050000, "outside": min_outside},
	{"at": [concat("/", [at, "nosing"])], "have": value, "figure": "max", "limit": 31750000, "outside": max_outside},
}

test_limit_min[name] if {
	some name, case in {
		"47/64 in": [18653125, true, false],
		"19.04 mm": [19040000, true, false],
		"3/4 in": [19050000, false, false],
		"19.05 mm": [19050000, false, false],
		"19.06 mm": [19060000, false, false],
		"49/64 in": [19446875, false, false],
	}
	_said == {"readings": _readings("/stairs/0", case[0], case[1], case[2]), "unknown": set(), "exempt": set()} with input.flights as [_flight("/stairs/0", case[0])]
		with data.figures as _figures
}

test_limit_max[name] if {
	some name, case in {
		"1-15/64 in": [31353125, false, false],
		"31.74 mm": [31740000, false, false],
		"1-1/4 in": [31750000, false, false],
		"31.75 mm": [31750000, false, false],
		"31.76 mm": [31760000, false, true],
		"1-17/64 in": [32146875, false, true],
	}
	_said == {"readings": _readings("/stairs/0", case[0], case[1], case[2]), "unknown": set(), "exempt": set()} with input.flights as [_flight("/stairs/0", case[0])]
		with data.figures as _figures
}

test_none_described if {
	not check.applies with input.flights as []
	_said == {"readings": set(), "unknown": set(), "exempt": set()} with input.flights as []
		with data.figures as _figures
}

test_one_of_two_is_outside if {
	check.applies with input.flights as [_flight("/stairs/0", 31750000)]
	_said == {"readings": (_readings("/stairs/0", 31750000, false, false) | _readings("/stairs/1", 31750001, false, true)), "unknown": set(), "exempt": set()} with input.flights as [_flight("/stairs/0", 31750000), _flight("/stairs/1", 31750001)]
		with data.figures as _figures
}

_closed := {"risers_closed": {"value": true, "at": ["/stairs/0/riser_opening"]}}

_open := {"risers_closed": {"value": false, "at": ["/stairs/0/riser_opening"]}}

_tread(depth) := {"tread_min": {"value": depth, "at": ["/stairs/0/tread_depth"]}}

_nosing := {"nosing": {"value": 0, "at": ["/stairs/0/nosing"]}}

_deep := {"at": ["/stairs/0/tread_depth"], "because": "deep", "tread": 279400000, "not_from": 279400000}

# 11 in, and 279.4 mm, of tread need no nosing; a hair less do.
test_left_alone_or_not_shown[name] if {
	some name, case in {
		"deep treads": [[_closed, _tread(279400000), _nosing], {_deep}, set()],
		"deep treads, risers not shown": [[_tread(279400000)], {_deep}, set()],
		"open risers": [[_open, _tread(254000000)], {{"at": ["/stairs/0/riser_opening"], "because": "open"}}, set()],
		"open risers and deep treads": [[_open, _tread(279400000)], {{"at": ["/stairs/0/riser_opening"], "because": "open"}}, set()],
		"nothing shown": [[], set(), {{"at": ["/stairs/0"], "needs": "stairs[].riser_opening"}}],
		"risers not shown": [[_tread(279399999), _nosing], set(), {{"at": ["/stairs/0"], "needs": "stairs[].riser_opening"}}],
		"treads not shown": [[_closed, _nosing], set(), {{"at": ["/stairs/0"], "needs": "stairs[].tread_depth"}}],
		"nosing not shown": [[_closed, _tread(279390000)], set(), {{"at": ["/stairs/0"], "needs": "stairs[].nosing"}}],
	}
	_said == {"readings": set(), "unknown": case[2], "exempt": case[1]} with input.flights as [object.union_n(array.concat([{"at": ["/stairs/0"]}], case[0]))]
		with data.figures as _figures
}

test_treads_of_any_depth[name] if {
	some name, case in {"at": [25, false], "over": [26, true]}
	_said == {
		"readings": {
			{"at": ["/stairs/0/nosing"], "have": case[0], "figure": "min", "limit": 0, "outside": false},
			{"at": ["/stairs/0/nosing"], "have": case[0], "figure": "max", "limit": 25, "outside": case[1]},
		},
		"unknown": set(), "exempt": set(),
	} with input.flights as [object.union_n([{"at": ["/stairs/0"]}, _closed, {"nosing": {"value": case[0], "at": ["/stairs/0/nosing"]}}])]
		with data.figures as {"stairs": {"nosing": {"min": 0, "max": 25}}}
}
