package checks.scope.stories_test

import data.checks.scope.stories

_house(n) := {"house": {"at": ["/house"], "stories": {"value": n, "at": ["/house/stories"]}}}

test_over_at_and_under_the_limit if {
	every case in [[4, true], [3, false], [1, false]] {
		rows := stories.readings with input as _house(case[0]) with data.figures as {"scope": {"stories": {"max": 3}}}
		rows == {{"at": ["/house/stories"], "have": case[0], "figure": "max", "limit": 3, "outside": case[1]}}
	}
}

test_not_shown_no_check if {
	not stories.applies with input as {"house": {"at": []}}
	stories.applies with input as _house(1)
	rows := stories.readings with input as {"house": {"at": []}}
	rows == set()
}
