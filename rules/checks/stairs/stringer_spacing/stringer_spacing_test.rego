package checks.stairs.stringer_spacing_test

import data.checks.stairs.stringer_spacing as check

# 18 in
_figures := {"stairs": {"stringer_spacing": {"wood": 457200000, "cap": 914400000}}}

_said := {"readings": check.readings, "unknown": check.unknown}

_stair(at, value) := {"at": [at], "stringer_spacing": {"value": value, "at": [concat("/", [at, "stringers/count"])]}, "tread_material": {"value": "wood", "at": [concat("/", [at, "tread", "material"])]}}

_readings(at, value, outside) := {
	{"at": [concat("/", [at, "stringers/count"])], "have": value, "figure": "wood", "limit": 457200000, "outside": outside},
}

test_limit[name] if {
	some name, case in {
		"17-63/64 in": [456803125, false],
		"457.19 mm": [457190000, false],
		"18 in": [457200000, false],
		"457.2 mm": [457200000, false],
		"457.21 mm": [457210000, true],
		"18-1/64 in": [457596875, true],
	}
	_said == {"readings": _readings("/stairs/0", case[0], case[1]), "unknown": set()} with input.stairs as [_stair("/stairs/0", case[0])]
		with data.figures as _figures
}

test_none_described if {
	not check.applies with input.stairs as []
	_said == {"readings": set(), "unknown": set()} with input.stairs as []
		with data.figures as _figures
}

test_one_of_two_is_outside if {
	check.applies with input.stairs as [_stair("/stairs/0", 457200000)]
	_said == {"readings": (_readings("/stairs/0", 457200000, false) | _readings("/stairs/1", 457200001, true)), "unknown": set()} with input.stairs as [_stair("/stairs/0", 457200000), _stair("/stairs/1", 457200001)]
		with data.figures as _figures
}

_spaced := {"stringer_spacing": {"value": 304800000, "at": ["/stairs/0/stringers/count"]}}

_material(word) := {"tread_material": {"value": word, "at": ["/stairs/0/tread/material"]}}

_listing(value) := {"tread_listed": {"value": value, "at": ["/stairs/0/tread/listed_max_stringer_spacing"]}}

_composite(listed) := object.union_n([{"at": ["/stairs/0"]}, _spaced, _material("composite"), _listing(listed)])

_against(listed, outside) := {
	"at": ["/stairs/0/stringers/count", "/stairs/0/tread/listed_max_stringer_spacing"], "have": 304800000,
	"figure": "cap", "limit": listed, "stated_at": ["/stairs/0/tread/listed_max_stringer_spacing"], "outside": outside,
	"say": "listed", "material": "composite", "listed": listed,
}

_over(cap, outside) := {
	"at": ["/stairs/0/stringers/count"], "have": 304800000,
	"figure": "cap", "limit": cap, "outside": outside, "say": "cap", "material": "composite",
}

_limited(cap) := {"stairs": {"stringer_spacing": {"wood": 457200000, "cap": cap}}}

test_listing[name] if {
	some name, case in {
		"11-63/64 in": [304403125, true],
		"304.79 mm": [304790000, true],
		"12 in": [304800000, false],
		"304.8 mm": [304800000, false],
		"304.81 mm": [304810000, false],
	}
	_said == {"readings": {_against(case[0], case[1])}, "unknown": set()} with input.stairs as [_composite(case[0])]
		with data.figures as _figures
}

test_cap_on_the_listing[name] if {
	some name, case in {
		"less": [279400000, _over(279400000, true)],
		"just less": [304799999, _over(304799999, true)],
		"equal": [304800000, _against(304800000, false)],
		"more": [330200000, _against(304800000, false)],
	}
	_said == {"readings": {case[1]}, "unknown": set()} with input.stairs as [_composite(304800000)]
		with data.figures as _limited(case[0])
}

test_cap_below_what_the_listing_allows if {
	_said == {"readings": {_over(304800000, false)}, "unknown": set()} with input.stairs as [_composite(304800001)]
		with data.figures as _limited(304800000)
}

test_listing_not_shown_and_over_the_cap if {
	bare := object.union_n([{"at": ["/stairs/0"]}, _spaced, _material("composite")])
	_said == {"readings": {_over(304799999, true)}, "unknown": set()} with input.stairs as [bare]
		with data.figures as _limited(304799999)
}

test_not_shown[name] if {
	some name, case in {
		"nothing": [[], {"stairs[].tread.material", "stairs[].stringers.count"}],
		"material": [[_spaced], {"stairs[].tread.material"}],
		"count": [[_material("wood")], {"stairs[].stringers.count"}],
		"width": [[_material("wood"), {"stringer_count": {"value": 3, "at": ["/stairs/0/stringers/count"]}}], {"stairs[].width"}],
	}
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0"], "needs": field} | some field in case[1]}} with input.stairs as [object.union_n(array.concat([{"at": ["/stairs/0"]}], case[0]))]
		with data.figures as _figures
}

test_listing_not_shown if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0/tread/material"], "needs": "stairs[].tread.listed_max_stringer_spacing"}}} with input.stairs as [object.union_n([{"at": ["/stairs/0"]}, _spaced, _material("pvc")])]
		with data.figures as _figures
}

_carried := {"stairs": {"stringer_spacing": {"wood": 900, "with_risers": 1200, "cap": 900}}}

_boarded(value, facts) := object.union_n([_stair("/stairs/0", value), facts])

_carry(is) := {"risers_carry_treads": {"value": is, "at": ["/stairs/0/risers_carry_treads"]}}

_open := {"risers_closed": {"value": false, "at": ["/stairs/0/riser_opening"]}}

_by(figure, value, outside) := {{
	"at": ["/stairs/0/stringers/count"], "have": value, "figure": figure,
	"limit": _carried.stairs.stringer_spacing[figure], "outside": outside,
}}

_asks := {{"at": ["/stairs/0"], "needs": "stairs[].risers_carry_treads"}}

test_risers_that_carry[name] if {
	some name, case in {
		"carry, at": [1200, _carry(true), _by("with_risers", 1200, false), set()],
		"carry, over": [1201, _carry(true), _by("with_risers", 1201, true), set()],
		"do not, at": [900, _carry(false), _by("wood", 900, false), set()],
		"do not, over": [901, _carry(false), _by("wood", 901, true), set()],
		"open, over": [901, _open, _by("wood", 901, true), set()],
		"not shown, inside": [900, {}, _by("wood", 900, false), set()],
		"not shown, between": [901, {}, set(), _asks],
		"not shown, still between": [1200, {}, set(), _asks],
		"not shown, outside": [1201, {}, _by("wood", 1201, true), set()],
	}
	_said == {"readings": case[2], "unknown": case[3]} with input.stairs as [_boarded(case[0], case[1])]
		with data.figures as _carried
}
