package checks.handrail.finger_recess_test

import data.checks.handrail.finger_recess as check

# From 3/4 in down, 5/16 in deep within 7/8 in, 1-1/4 to 2-3/4 in wide above it.
_figures := {"handrail": {
	"required": {"from": 4, "sides": 1},
	"grip": {"perimeter_max": 158750000},
	"finger_recess": {
		"start_max": 19050000, "depth_min": 7937500,
		"reach_max": 22225000, "width_min": 31750000, "width_max": 69850000,
	},
}}

_said := {"readings": check.readings, "unknown": check.unknown, "exempt": check.exempt}

_at(stair, field) := [concat("/", ["", "stairs", stair, "handrail", "profile", field])]

_paths := {
	"recess_start": "finger_recess/start_below_top", "recess_depth": "finger_recess/depth",
	"recess_reach": "finger_recess/depth_reached_below_widest",
	"width_above_recess": "width_above_recess", "perimeter": "perimeter",
}

_shown(stair) := {
	"at": [concat("/", ["", "stairs", stair, "handrail"])], "present": true,
	"risers": {"value": 4, "at": ["/stairs/0/risers"]},
	"profile": {"value": "shaped", "at": _at(stair, "type")},
}

_facts(stair, values) := {name: {"value": value, "at": _at(stair, _paths[name])} | some name, value in values}

_rail(stair, values) := object.union(_shown(stair), _facts(stair, values))

_say := {"recess_start": "outside", "recess_depth": "depth", "recess_reach": "reach", "width_above_recess": "width"}

# A profile that is inside every limit, and exactly at each that it can be at.
_good := {"perimeter": 203200000, "recess_start": 19050000, "recess_depth": 7937500, "recess_reach": 22225000, "width_above_recess": 69850000}

_reading(stair, fact, figure, value, outside) := {
	"at": _at(stair, _paths[fact]), "have": value, "say": _say[fact],
	"figure": figure, "limit": _figures.handrail.finger_recess[figure], "outside": outside,
}

# The figures that are broken are named.
_readings(stair, values, broken) := {
	_reading(stair, "recess_start", "start_max", values.recess_start, "start_max" in broken),
	_reading(stair, "recess_depth", "depth_min", values.recess_depth, "depth_min" in broken),
	_reading(stair, "recess_reach", "reach_max", values.recess_reach, "reach_max" in broken),
	_reading(stair, "width_above_recess", "width_min", values.width_above_recess, "width_min" in broken),
	_reading(stair, "width_above_recess", "width_max", values.width_above_recess, "width_max" in broken),
}

test_limits[name] if {
	some name, case in {
		"all at their limit": [{}, set()],
		"start 19.06 mm": [{"recess_start": 19060000}, {"start_max"}],
		"start 49/64 in": [{"recess_start": 19446875}, {"start_max"}],
		"start 47/64 in": [{"recess_start": 18653125}, set()],
		"depth 7.93 mm": [{"recess_depth": 7930000}, {"depth_min"}],
		"depth 19/64 in": [{"recess_depth": 7540625}, {"depth_min"}],
		"depth 21/64 in": [{"recess_depth": 8334375}, set()],
		"reach 22.23 mm": [{"recess_reach": 22230000}, {"reach_max"}],
		"reach 57/64 in": [{"recess_reach": 22621875}, {"reach_max"}],
		"reach 55/64 in": [{"recess_reach": 21828125}, set()],
		"width 1-1/4 in, 31.75 mm": [{"width_above_recess": 31750000}, set()],
		"width 31.74 mm": [{"width_above_recess": 31740000}, {"width_min"}],
		"width 1-15/64 in": [{"width_above_recess": 31353125}, {"width_min"}],
		"width 69.86 mm": [{"width_above_recess": 69860000}, {"width_max"}],
		"width 2-49/64 in": [{"width_above_recess": 70246875}, {"width_max"}],
	}
	values := object.union(_good, case[0])
	_said == {"readings": _readings("0", values, case[1]), "unknown": set(), "exempt": set()} with input.handrails as [_rail("0", values)]
		with data.figures as _figures
}

test_perimeter_not_shown_but_a_recess if {
	_said == {"readings": _readings("0", _good, set()), "unknown": set(), "exempt": set()} with input.handrails as [_rail("0", object.remove(_good, ["perimeter"]))]
		with data.figures as _figures
}

test_not_shown[name] if {
	some name, case in {
		"all but the start": [
			["recess_depth", "recess_reach", "width_above_recess"],
			{_reading("0", "recess_start", "start_max", 19050000, false)},
			{"finger_recess.depth", "finger_recess.depth_reached_below_widest", "width_above_recess"},
		],
		"all but the depth": [
			["recess_start", "recess_reach", "width_above_recess"],
			{_reading("0", "recess_depth", "depth_min", 7937500, false)},
			{"finger_recess.start_below_top", "finger_recess.depth_reached_below_widest", "width_above_recess"},
		],
	}
	_said == {
		"readings": case[1], "exempt": set(),
		"unknown": {{"at": ["/stairs/0/handrail"], "needs": concat(".", ["stairs[].handrail.profile", field])} | some field in case[2]},
	} with input.handrails as [_rail("0", object.remove(_good, case[0]))]
		with data.figures as _figures
}

test_left_alone[name] if {
	some name, case in {
		"few risers": [
			object.union(_rail("0", _good), {"risers": {"value": 3, "at": ["/stairs/0/risers"]}}),
			{"at": ["/stairs/0/handrail"], "because": "few", "risers": 3, "from": 4},
		],
		"none shown": [{"at": ["/stairs/0"], "present": false}, {"at": ["/stairs/0"], "because": "none"}],
		"no recess": [
			_rail("0", {"perimeter": 203200000}),
			{"at": ["/stairs/0/handrail"], "because": "plain"},
		],
		"perimeter that needs none": [
			_rail("0", object.union(_good, {"perimeter": 158750000})),
			{"at": _at("0", "perimeter"), "because": "small", "perimeter": 158750000, "perimeter_max": 158750000},
		],
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
	check.applies with input.handrails as [_shown("0")]
	_said == {
		"readings": (_readings("0", _good, set()) | _readings("1", object.union(_good, {"recess_depth": 6350000}), {"depth_min"})),
		"unknown": set(), "exempt": set(),
	} with input.handrails as [_rail("0", _good), _rail("1", object.union(_good, {"recess_depth": 6350000}))]
		with data.figures as _figures
}
