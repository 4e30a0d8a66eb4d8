# METADATA
# title: Landing at a door
# description: The level depth in front of a door in the direction of travel, against the set's least depth.
# custom:
#   id: egress/door-landing
#   aliases: [egress/door-landing-depth]
#   consequence: life safety
#   why: Whoever opens the door, or is pushed through it, needs a place to stand before the next step or edge.
#   applies_when: a door opens on a platform
#   figures:
#     min: {type: length, relation: at least, about: least depth of the landing in the direction of travel}
#   messages:
#     outside: "landing at the door is {have} deep, the limit is {limit}"
#   mend: ["a deeper platform at the door, or the stair further from it"]
package checks.egress.door_landing

import data.figures.egress.door_landing as figures

applies if count(input.doors) > 0

readings contains {
	"at": door.landing_depth.at, "have": door.landing_depth.value,
	"figure": "min", "limit": figures.min,
	"outside": door.landing_depth.value < figures.min,
} if {
	some door in input.doors
}

unknown contains {"at": door.at, "needs": "house.openings[].landing_depth"} if {
	some door in input.doors
	not door.landing_depth
}
