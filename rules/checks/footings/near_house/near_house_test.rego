package checks.footings.near_house_test

import data.checks.footings.near_house

_inch := 25400000

_near := 60 * _inch

_house := 48 * _inch

_said(members) := result if {
	result := {"readings": near_house.readings, "unknown": near_house.unknown, "exempt": near_house.exempt} with input as {"footings": members, "house": {"at": ["/house"]}}
		with data.figures as {"footings": {"near_house": {"near": _near, "below_house": 0}}}
}

_shown(path, value) := {"value": value, "at": [path]}

_footing(distance, value) := {
	"at": ["/footings"], "beam": "B1", "n": 2, "to_house": _shown("/place", distance),
	"depth": _shown("/depth", value), "foundation_depth": _shown("/house/depth", _house),
}

_row(distance, have, outside) := {
	"at": ["/depth"], "have": have, "figure": "below_house", "limit": _house, "outside": outside,
	"beam": "B1", "n": 2, "distance": distance,
}

_reading(row) := {"readings": {row}, "unknown": set(), "exempt": set()}

_asked(at, needs) := {"readings": set(), "exempt": set(), "unknown": {{"at": [at], "needs": needs}}}

test_depth_under_at_and_over_that_of_the_house if {
	every case in [[-396875, true], [-10000, true], [0, false], [10000, false], [396875, false]] {
		_said([_footing(0, _house + case[0])]) == _reading(_row(0, _house + case[0], case[1]))
	}
}

test_distance_within_which_it_counts if {
	every distance in [_near - 1, _near - 10000, _near - 396875] {
		_said([_footing(distance, 0)]) == _reading(_row(distance, 0, true))
	}
	every distance in [_near, _near + 10000, _near + 396875] {
		_said([_footing(distance, 0)]) == {
			"readings": set(), "unknown": set(),
			"exempt": {{"at": ["/footings"], "because": "far", "beam": "B1", "n": 2, "distance": distance, "near": _near}},
		}
	}
}

test_depth_stated_for_the_near_ones if {
	footing := object.union(_footing(0, 0), {"near_house_depth": _shown("/near", _house)})
	_said([footing]) == _reading(object.union(_row(0, _house, false), {"at": ["/near"]}))
}

test_missing_values_are_not_shown if {
	_said([object.remove(_footing(0, 0), ["to_house"])]) == _asked("/footings", "platforms[].footings.distance_from_house")
	_said([object.remove(_footing(0, 0), ["depth"])]) == _asked("/footings", "platforms[].footings.near_house_depth")
	_said([object.remove(_footing(0, 0), ["foundation_depth"])]) == _asked("/house", "house.foundation_depth")
}

test_one_bad_of_two if _said([_footing(0, _house), _footing(1, 0)]).readings == {_row(0, _house, false), _row(1, 0, true)}

test_no_house_no_check if {
	not near_house.applies with input as {"footings": [], "house": {"at": ["/house"]}}
	not near_house.applies with input as {"footings": [_footing(0, 0)], "house": {"at": []}}
	near_house.applies with input as {"footings": [_footing(0, 0)], "house": {"at": ["/house"]}}
	_said([]) == {"readings": set(), "unknown": set(), "exempt": set()}
}
