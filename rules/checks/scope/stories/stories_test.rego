package checks.scope.stories_test

import data.checks.scope.stories

_story := 3048000000 # 10 ft

_under(figures, house, surface) := result if {
	result := {"readings": stories.readings, "unknown": stories.unknown, "exempt": stories.exempt} with input as {"house": house, "platforms": [{"surface_above_grade": {"value": surface, "at": ["/surface"]}}]}
		with data.figures as {"scope": {"stories": figures}}
}

_bare := {"at": ["/house"]}

_house(n) := {"at": ["/house"], "stories": {"value": n, "at": ["/house/stories"]}}

_figures := {"max": 3, "story": _story}

_low := {"readings": set(), "unknown": set(), "exempt": {{"at": ["/house"], "because": "low"}}}

test_over_at_and_under_the_limit if {
	every case in [[4, true], [3, false], [1, false]] {
		_under(_figures, _house(case[0]), 0) == {
			"readings": {{"at": ["/house/stories"], "have": case[0], "figure": "max", "limit": 3, "outside": case[1]}},
			"unknown": set(), "exempt": set(),
		}
	}
}

test_asked_for_where_a_platform_stands_high if {
	_under(_figures, _bare, _story + 1) == {"readings": set(), "exempt": set(), "unknown": {{"at": ["/house"], "needs": "house.stories"}}}
	_under(_figures, _bare, _story) == _low
	_under({"max": 3}, _bare, _story + 1) == _low
}

test_no_house_no_check if {
	not stories.applies with input as {"house": {"at": []}, "platforms": [{}]}
	not stories.applies with input as {"house": _bare, "platforms": []}
	stories.applies with input as {"house": _bare, "platforms": [{}]}
	stories.applies with input as {"house": _house(2), "platforms": []}
}
