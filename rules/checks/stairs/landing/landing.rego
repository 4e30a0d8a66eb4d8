# METADATA
# title: Landing depth
# description: The depth of every landing in the direction of travel, against the set's limit.
# custom:
#   id: stairs/landing
#   aliases: []
#   consequence: life safety
#   why: A stair begins and ends on a level place on which a person can stand and turn, or open a door.
#   applies_when: a stair is described
#   figures:
#     min: {type: length, relation: at least, about: least depth in the direction of travel}
#   values: {where: words}
#   messages:
#     outside: "the landing ({where}) is {have} deep in the direction of travel, the limit is {limit}"
#   exempt: {}
#   mend:
#     - "a deeper landing"
package checks.stairs.landing

import data.figures.stairs.landing as figures
import data.lib.stairs as lib

applies if count(input.landings) > 0

readings contains {
	"at": landing.depth.at, "have": landing.depth.value,
	"figure": "min", "limit": figures.min,
	"outside": landing.depth.value < figures.min,
	"where": landing.where,
} if {
	some landing in input.landings
}

unknown contains {"at": landing.at, "needs": lib.landing_fields[landing.where]} if {
	some landing in input.landings
	not landing.depth
}
