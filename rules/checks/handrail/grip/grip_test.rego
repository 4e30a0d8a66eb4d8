package checks.handrail.grip_test

import data.checks.handrail.grip as check

# 1-1/4 to 2 in of diameter, 4 to 6-1/4 in of perimeter, 2-1/4 in of width.
_figures := {"handrail": {
	"required": {"from": 4, "sides": 1},
	"grip": {
		"kinds": ["round", "shaped"],
		"diameter_min": 31750000, "diameter_max": 50800000,
		"perimeter_min": 101600000, "perimeter_max": 158750000, "width_max": 57150000,
	},
}}

_said := {"readings": check.readings, "unknown": check.unknown, "exempt": check.exempt}

_at(stair, field) := [concat("/", ["", "stairs", stair, "handrail", "profile", field])]

_shown(stair) := {"at": [concat("/", ["", "stairs", stair, "handrail"])], "present": true, "risers": {"value": 4, "at": ["/stairs/0/risers"]}}

_profile(stair, kind) := {"profile": {"value": kind, "at": _at(stair, "type")}}

_fact(stair, name, field, value) := {name: {"value": value, "at": _at(stair, field)}}

_round(stair, diameter) := object.union_n([
	_shown(stair), _profile(stair, "round"), _fact(stair, "diameter", "diameter", diameter),
])

_shaped(stair, perimeter, width) := object.union_n([
	_shown(stair), _profile(stair, "shaped"),
	_fact(stair, "perimeter", "perimeter", perimeter), _fact(stair, "section_width", "width", width),
])

_reading(stair, fact, field, figure, value, outside) := {
	"at": _at(stair, field), "have": value, "say": fact,
	"figure": figure, "limit": _figures.handrail.grip[figure], "outside": outside,
}

_round_readings(stair, diameter, thin, thick) := {
	_reading(stair, "diameter", "diameter", "diameter_min", diameter, thin),
	_reading(stair, "diameter", "diameter", "diameter_max", diameter, thick),
}

_shaped_readings(stair, perimeter, small, width, wide) := {
	_reading(stair, "perimeter", "perimeter", "perimeter_min", perimeter, small),
	_reading(stair, "perimeter", "perimeter", "perimeter_max", perimeter, false),
	_reading(stair, "width", "width", "width_max", width, wide),
}

test_diameter[name] if {
	some name, case in {
		"1-15/64 in": [31353125, true, false],
		"31.74 mm": [31740000, true, false],
		"1-1/4 in": [31750000, false, false],
		"31.75 mm": [31750000, false, false],
		"2 in": [50800000, false, false],
		"50.8 mm": [50800000, false, false],
		"50.81 mm": [50810000, false, true],
		"2-1/64 in": [51196875, false, true],
	}
	_said == {"readings": _round_readings("0", case[0], case[1], case[2]), "unknown": set(), "exempt": set()} with input.handrails as [_round("0", case[0])]
		with data.figures as _figures
}

test_perimeter_and_width[name] if {
	some name, case in {
		"perimeter 3-63/64 in": [101203125, true, 57150000, false],
		"perimeter 101.59 mm": [101590000, true, 57150000, false],
		"perimeter 4 in, 101.6 mm": [101600000, false, 57150000, false],
		"perimeter 6-1/4 in, 158.75 mm": [158750000, false, 57150000, false],
		"width 57.14 mm": [158750000, false, 57140000, false],
		"width 2-1/4 in, 57.15 mm": [158750000, false, 57150000, false],
		"width 57.16 mm": [158750000, false, 57160000, true],
		"width 2-17/64 in": [158750000, false, 57546875, true],
	}
	_said == {
		"readings": _shaped_readings("0", case[0], case[1], case[2], case[3]),
		"unknown": set(), "exempt": set(),
	} with input.handrails as [_shaped("0", case[0], case[2])]
		with data.figures as _figures
}

test_large_perimeter[name] if {
	some name, perimeter in {"158.76 mm": 158760000, "6-17/64 in": 159146875}
	_said == {
		"readings": set(), "exempt": set(),
		"unknown": {{"at": ["/stairs/0/handrail"], "needs": "stairs[].handrail.profile.finger_recess"}},
	} with input.handrails as [_shaped("0", perimeter, 57150000)]
		with data.figures as _figures
}

test_large_perimeter_with_a_recess if {
	_said == {
		"readings": set(), "unknown": set(),
		"exempt": {{"at": _at("0", "perimeter"), "because": "large", "perimeter": 203200000, "perimeter_max": 158750000}},
	} with input.handrails as [object.union(
		_shaped("0", 203200000, 63500000),
		_fact("0", "recess_depth", "finger_recess/depth", 7937500),
	)]
		with data.figures as _figures
}

test_flat_board if {
	_said == {
		"readings": {{
			"at": _at("0", "type"), "have": "flat board",
			"figure": "kinds", "limit": ["round", "shaped"], "outside": true,
		}},
		"unknown": set(), "exempt": set(),
	} with input.handrails as [object.union(_shaped("0", 152400000, 50800000), _profile("0", "flat board"))]
		with data.figures as _figures
}

test_not_shown[name] if {
	some name, case in {
		"profile": [[], set(), "type"],
		"diameter": [[_profile("0", "round")], set(), "diameter"],
		"perimeter": [[_profile("0", "shaped"), _fact("0", "section_width", "width", 50800000)], set(), "perimeter"],
		"width": [
			[_profile("0", "shaped"), _fact("0", "perimeter", "perimeter", 152400000)],
			{
				_reading("0", "perimeter", "perimeter", "perimeter_min", 152400000, false),
				_reading("0", "perimeter", "perimeter", "perimeter_max", 152400000, false),
			},
			"width",
		],
	}
	_said == {
		"readings": case[1], "exempt": set(),
		"unknown": {{"at": ["/stairs/0/handrail"], "needs": concat(".", ["stairs[].handrail.profile", case[2]])}},
	} with input.handrails as [object.union_n(array.concat([_shown("0")], case[0]))]
		with data.figures as _figures
}

test_left_alone[name] if {
	some name, case in {
		"few risers": [
			object.union(_round("0", 0), {"risers": {"value": 3, "at": ["/stairs/0/risers"]}}),
			{"at": ["/stairs/0/handrail"], "because": "few", "risers": 3, "from": 4},
		],
		"none shown": [{"at": ["/stairs/0"], "present": false}, {"at": ["/stairs/0"], "because": "none"}],
	}
	_said == {"readings": set(), "unknown": set(), "exempt": {case[1]}} with input.handrails as [case[0]]
		with data.figures as _figures
}

test_no_stair_described if {
	not check.applies with input.handrails as []
	_said == {"readings": set(), "unknown": set(), "exempt": set()} with input.handrails as []
		with data.figures as _figures
}

test_one_of_two_is_outside if {
	check.applies with input.handrails as [_round("0", 38100000)]
	_said == {
		"readings": (_round_readings("0", 38100000, false, false) | _shaped_readings("1", 152400000, false, 63500000, true)),
		"unknown": set(), "exempt": set(),
	} with input.handrails as [_round("0", 38100000), _shaped("1", 152400000, 63500000)]
		with data.figures as _figures
}

test_large_perimeter_where_no_recess_counts if {
	figures := {"handrail": {"required": {"from": 4, "sides": 1}, "grip": object.union(_figures.handrail.grip, {"recess": false})}}
	rail := object.union(_shaped("0", 158750001, 57150001), _fact("0", "recess_depth", "finger_recess/depth", 7937500))
	_said == {
		"readings": {
			_reading("0", "perimeter", "perimeter", "perimeter_min", 158750001, false),
			_reading("0", "perimeter", "perimeter", "perimeter_max", 158750001, true),
			_reading("0", "width", "width", "width_max", 57150001, true),
		},
		"unknown": set(), "exempt": set(),
	} with input.handrails as [rail]
		with data.figures as figures
}
