# METADATA
# title: Landing at a door
# description: The level depth in front of a door in the direction of travel, against the set's least depth. A door as low above grade as the set names is left alone.
# custom:
#   id: egress/door-landing
#   aliases: [egress/door-landing-depth]
#   consequence: life safety
#   why: Whoever opens the door, or is pushed through it, needs a place to stand before the next step or edge.
#   applies_when: a door opens on a platform
#   figures:
#     min: {type: length, relation: at least, about: least depth of the landing in the direction of travel}
#     low: {type: length, relation: at most, optional: true, about: height of the threshold above grade up to which no landing is asked for}
#   values: {above: length, low: length}
#   messages:
#     outside: "landing at the door is {have} deep, the limit is {limit}"
#   exempt:
#     low: "the threshold is {above} above grade, up to {low} no landing is asked for"
#   mend: ["a deeper platform at the door, or the stair further from it"]
#   tries: [whole-inches]
package checks.egress.door_landing

import data.figures.egress.door_landing as figures

applies if count(input.doors) > 0

readings contains {
	"at": door.landing_depth.at, "have": door.landing_depth.value,
	"figure": "min", "limit": figures.min,
	"outside": door.landing_depth.value < figures.min,
} if {
	some door in input.doors
	_weighed(door)
}

_weighed(_) if not figures.low

_weighed(door) if door.above_grade.value > figures.low

# A landing that is deep enough is so at any height.
_weighed(door) if {
	not door.above_grade
	door.landing_depth.value >= figures.min
}

exempt contains {"at": door.at, "because": "low", "above": door.above_grade.value, "low": figures.low} if {
	some door in input.doors
	_low(door)
}

_low(door) if door.above_grade.value <= figures.low

unknown contains {"at": door.at, "needs": "platforms[].surface_above_grade"} if {
	figures.low
	some door in input.doors
	not door.above_grade
	not _weighed(door)
}

unknown contains {"at": door.at, "needs": "house.openings[].landing_depth"} if {
	some door in input.doors
	not door.landing_depth
	not _low(door)
}
