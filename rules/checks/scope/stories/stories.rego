# METADATA
# title: Stories of the house
# description: The number of stories of the house at the deck, against the greatest for which the set was made. It is asked for where a platform stands a story above the ground or more.
# custom:
#   id: scope/stories
#   aliases: []
#   consequence: structure
#   why: A tall house is not built by the book that the tables come from.
#   applies_when: a house is described, with its stories or with a platform beside it
#   figures:
#     max: {type: count, unit: [story, stories], relation: at most, about: greatest number of stories}
#     story: {type: length, optional: true, about: height of a platform above the ground from which on the number must be known}
#   messages:
#     outside: "the house has {have} stories, the set ends at {limit}: a licensed engineer is needed"
#     within: "the house has {have} stories, the set ends at {limit}"
#   exempt:
#     low: "no platform is shown to stand a story above the ground"
#   mend: ["a design by a licensed engineer"]
#   tries: []
package checks.scope.stories

import data.figures.scope.stories as figures

applies if input.house.stories

applies if {
	count(input.platforms) > 0
	count(input.house.at) > 0
}

_high if {
	some platform in input.platforms
	platform.surface_above_grade.value > figures.story
}

readings contains {
	"at": stories.at, "have": stories.value,
	"figure": "max", "limit": figures.max, "outside": stories.value > figures.max,
} if {
	stories := input.house.stories
}

exempt contains {"at": input.house.at, "because": "low"} if {
	not input.house.stories
	not _high
}

unknown contains {"at": input.house.at, "needs": "house.stories"} if {
	not input.house.stories
	_high
}
