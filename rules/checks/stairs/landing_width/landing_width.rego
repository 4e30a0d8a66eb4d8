# METADATA
# title: Landing width
# description: The width of every landing across the direction of travel, against the width of the stair that it serves.
# custom:
#   id: stairs/landing-width
#   aliases: []
#   consequence: life safety
#   why: A landing that is narrower than its stair has an edge to step off where people walk.
#   applies_when: a stair is described
#   figures:
#     past_stair: {type: length, relation: at least, about: least width of a landing past the width of its stair}
#   values: {where: words}
#   messages:
#     outside: "the landing ({where}) is {have} wide, with the stair that it serves the limit is {limit}"
#   exempt: {}
#   mend:
#     - "a landing as wide as the stair"
#   tries: [whole-inches]
package checks.stairs.landing_width

import data.figures.stairs.landing_width as figures
import data.lib.stairs as lib

applies if count(input.landings) > 0

readings contains {
	"at": array.concat(landing.width.at, landing.stair_width.at), "have": landing.width.value,
	"figure": "past_stair", "limit": least,
	"outside": landing.width.value < least,
	"where": landing.where,
} if {
	some landing in input.landings
	least := landing.stair_width.value + figures.past_stair
}

unknown contains {"at": landing.at, "needs": lib.landing_fields[landing.where]} if {
	some landing in input.landings
	not landing.width
}

unknown contains {"at": landing.at, "needs": "stairs[].width"} if {
	some landing in input.landings
	landing.width
	not landing.stair_width
}
