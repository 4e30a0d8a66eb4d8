package checks.handrail.both_sides_test

import data.checks.handrail.both_sides as check

_said := {"readings": check.readings, "unknown": check.unknown, "exempt": check.exempt}

_figures := {"handrail": {"both_sides": {"from": 1000}, "required": {"from": 4, "sides": 1}}}

_rail(facts) := object.union_n(array.concat([{"at": ["/stairs/0/handrail"], "present": true}], facts))

_sides(n) := {"sides": {"value": n, "at": ["/stairs/0/handrail/sides"]}}

_width(value) := {"width": {"value": value, "at": ["/stairs/0/width"]}}

_reading(value, outside) := {{
	"at": ["/stairs/0/handrail", "/stairs/0/width"], "have": value, "figure": "from", "limit": 1000, "outside": outside,
}}

_needs(field) := {{"at": ["/stairs/0/handrail"], "needs": field}}

_both := {{"at": ["/stairs/0/handrail", "/stairs/0/handrail/sides"], "figure": "from", "outside": false, "say": "both"}}

test_width[name] if {
	some name, case in {
		"one, narrow": [[_sides(1), _width(999)], _reading(999, false), set(), set()],
		"one, wide": [[_sides(1), _width(1000)], _reading(1000, true), set(), set()],
		"two": [[_sides(2), _width(1000)], _both, set(), set()],
		"two, width not shown": [[_sides(2)], _both, set(), set()],
		"one, width not shown": [[_sides(1)], set(), _needs("stairs[].width"), set()],
		"not told, narrow": [[_width(999)], _reading(999, false), set(), set()],
		"not told, wide": [[_width(1000)], set(), _needs("stairs[].handrail.sides"), set()],
		"few risers": [
			[_sides(1), _width(1000), {"risers": {"value": 3, "at": ["/stairs/0/risers"]}}], set(), set(),
			{{"at": ["/stairs/0/handrail"], "because": "few", "risers": 3, "from": 4}},
		],
		"none": [[{"present": false}, _width(1000)], set(), set(), {{"at": ["/stairs/0/handrail"], "because": "none"}}],
	}
	_said == {"readings": case[1], "unknown": case[2], "exempt": case[3]} with input.handrails as [_rail(case[0])]
		with data.figures as _figures
}

test_none_described if {
	not check.applies with input.handrails as []
	check.applies with input.handrails as [_rail([])]
}
