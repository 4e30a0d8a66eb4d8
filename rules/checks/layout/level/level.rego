# METADATA
# title: Surface level
# description: The difference in height between two points of a surface, against a limit in proportion to their distance.
# custom:
#   id: layout/level
#   aliases: []
#   consequence: workmanship
#   why: A deck out of level shows against the siding, and doors, rails and stairs are cut to fit the slope.
#   applies_when: heights of a surface were measured
#   figures:
#     max: {type: length, relation: at most, about: "greatest difference in height, over the distance that it is given for"}
#     over: {type: length, about: distance between two points that the limit is given for}
#   values: {distance: length}
#   messages:
#     outside: "heights differ by {have} over {distance}, the limit is {limit}"
#     within: "heights differ by {have} over {distance}"
#   mend: ["posts or beam shimmed or trimmed before the boards go down"]
#   tries: []
package checks.layout.level

import data.figures.layout.level as figures

applies if count(input.levels) > 0

readings contains {
	"at": level.difference.at, "have": level.difference.value,
	"figure": "max", "limit": floor((level.distance.value * figures.max) / figures.over),
	"outside": (level.difference.value * figures.over) > (level.distance.value * figures.max),
	"distance": level.distance.value,
} if {
	some level in input.levels
}

unknown contains {"at": level.at, "needs": need} if {
	some level in input.levels
	not level.difference
	some need in level.missing
}

# Two readings of one spot say nothing of a slope.
unknown contains {"at": level.at, "needs": "measured[].points"} if {
	some level in input.levels
	not level.difference
	count(level.missing) == 0
}
