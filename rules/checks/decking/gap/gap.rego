# METADATA
# title: Gap between deck boards
# description: The gap between one board and the next, against the least and the greatest usual gap.
# custom:
#   id: decking/gap
#   aliases: []
#   consequence: workmanship
#   why: Too narrow a gap holds water and dirt, too wide a one catches heels and paws.
#   applies_when: decking is described
#   figures:
#     min: {type: length, relation: at least, about: least gap between boards}
#     max: {type: length, relation: at most, about: greatest gap between boards}
#   messages:
#     outside: "gap between boards is {have}, {limit} and more is usual"
#     within: "gap between boards is {have}"
#     wide: "gap between boards is {have}, {limit} and less is usual"
#   mend: ["another spacer: the gap also decides how wide the last row comes out"]
#   tries: [board-gap]
package checks.decking.gap

import data.figures.decking.gap as figures

applies if count(input.decking) > 0

readings contains {
	"at": boards.gap.at, "have": boards.gap.value,
	"figure": "min", "limit": figures.min,
	"outside": boards.gap.value < figures.min,
} if {
	some boards in input.decking
}

readings contains {
	"at": boards.gap.at, "have": boards.gap.value,
	"figure": "max", "limit": figures.max,
	"outside": boards.gap.value > figures.max,
	"say": "wide",
} if {
	some boards in input.decking
}

unknown contains {"at": boards.at, "needs": "platforms[].decking.gap"} if {
	some boards in input.decking
	not boards.gap
}
