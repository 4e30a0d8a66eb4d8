# METADATA
# title: Stories of the house
# description: The number of stories of the house at the deck, against the greatest for which the set was made.
# custom:
#   id: scope/stories
#   aliases: []
#   consequence: structure
#   why: A tall house is not built by the book that the tables come from.
#   applies_when: the stories of the house are shown
#   figures:
#     max: {type: count, relation: at most, about: greatest number of stories}
#   messages:
#     outside: "the house has {have} stories, the set ends at {limit}: a licensed engineer is needed"
#     within: "the house has {have} stories, the set ends at {limit}"
#   mend: ["a design by a licensed engineer"]
package checks.scope.stories

import data.figures.scope.stories as figures

applies if input.house.stories

readings contains {
	"at": stories.at, "have": stories.value,
	"figure": "max", "limit": figures.max, "outside": stories.value > figures.max,
} if {
	stories := input.house.stories
}
