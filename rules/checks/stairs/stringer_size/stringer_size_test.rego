package checks.stairs.stringer_size_test

import data.checks.stairs.stringer_size as check

_said := {"readings": check.readings, "unknown": check.unknown, "exempt": check.exempt}

_figures := {"stairs": {"stringer_size": {"depth": 235, "thickness": 38, "thickness_supported": 25}}}

_of(facts) := object.union_n(array.concat([{"at": ["/stairs/0"]}], facts))

_stock(thickness, depth) := {
	"stringer_thickness": {"value": thickness, "at": ["/stairs/0/stringers/size"]},
	"stringer_depth": {"value": depth, "at": ["/stairs/0/stringers/size"]},
}

_held(is) := {"stringers_supported_along": {"value": is, "at": ["/stairs/0/stringers/supported_along"]}}

_deep(value, outside) := {"at": ["/stairs/0/stringers/size"], "have": value, "figure": "depth", "limit": 235, "outside": outside}

_thick(figure, limit, value, outside) := {
	"at": ["/stairs/0/stringers/size"], "have": value, "figure": figure, "limit": limit, "outside": outside, "say": "thickness",
}

_asks := {{"at": ["/stairs/0"], "needs": "stairs[].stringers.supported_along"}}

test_limits[name] if {
	some name, case in {
		"shallow": [[_stock(38, 234)], {_deep(234, true), _thick("thickness", 38, 38, false)}, set()],
		"both at": [[_stock(38, 235)], {_deep(235, false), _thick("thickness", 38, 38, false)}, set()],
		"thin and held": [[_stock(25, 235), _held(true)], {_deep(235, false), _thick("thickness_supported", 25, 25, false)}, set()],
		"too thin and held": [[_stock(24, 235), _held(true)], {_deep(235, false), _thick("thickness_supported", 25, 24, true)}, set()],
		"thin and not held": [[_stock(37, 235), _held(false)], {_deep(235, false), _thick("thickness", 38, 37, true)}, set()],
		"thin": [[_stock(37, 235)], {_deep(235, false)}, _asks],
		"still thin": [[_stock(25, 235)], {_deep(235, false)}, _asks],
		"too thin": [[_stock(24, 235)], {_deep(235, false), _thick("thickness_supported", 25, 24, true)}, set()],
	}
	_said == {"readings": case[1], "unknown": case[2], "exempt": set()} with input.stairs as [_of(case[0])]
		with data.figures as _figures
}

test_not_shown if {
	_said == {"readings": set(), "unknown": {{"at": ["/stairs/0"], "needs": "stairs[].stringers.size"}}, "exempt": set()} with input.stairs as [_of([])]
		with data.figures as _figures
}

test_steel if {
	_said == {
		"readings": set(), "unknown": set(),
		"exempt": {{"at": ["/stairs/0/stringers/kind"], "because": "other", "kind": "steel"}},
	} with input.stairs as [_of([_stock(1, 1), {"stringer_kind": {"value": "steel", "at": ["/stairs/0/stringers/kind"]}}])]
		with data.figures as _figures
}

test_none_described if {
	not check.applies with input.stairs as []
	check.applies with input.stairs as [_of([])]
}
