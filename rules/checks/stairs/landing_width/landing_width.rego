# METADATA
# title: Landing width
# description: The width of every landing across the direction of travel, against the width of the stair that it serves. Where it is not shown which way the stair goes, both sides of the landing are held to it.
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
#     either: "the landing ({where}) is {have} wide at the most, whichever way the stair goes, with the stair that it serves the limit is {limit}"
#     either_within: "the landing ({where}) is {have} wide at the least, whichever way the stair goes, with the stair that it serves the limit is {limit}"
#   exempt: {}
#   mend:
#     - "a landing as wide as the stair"
package checks.stairs.landing_width

import data.figures.stairs.landing_width as figures
import data.lib.stairs as lib

applies if count(input.landings) > 0

readings contains object.union(
	{
		"at": array.concat(width.at, landing.stair_width.at), "have": width.value,
		"figure": "past_stair", "limit": least,
		"outside": narrow, "where": landing.where,
	},
	lib.landing_say(landing, narrow),
) if {
	some landing in input.landings
	least := landing.stair_width.value + figures.past_stair
	width := lib.landing_width(landing, least)
	narrow := width.value < least
}

unknown contains {"at": landing.at, "needs": landing.way_missing} if {
	some landing in input.landings
	not lib.landing_width(landing, landing.stair_width.value + figures.past_stair)
	landing.stair_width
}

unknown contains {"at": landing.at, "needs": lib.landing_fields[landing.where]} if {
	some landing in input.landings
	not landing.width
	not landing.lesser_side
}

unknown contains {"at": landing.at, "needs": "stairs[].width"} if {
	some landing in input.landings
	_measured(landing)
	not landing.stair_width
}

_measured(landing) if landing.width

_measured(landing) if landing.lesser_side
