# METADATA
# title: Landing width
# description: The width of every landing across the direction of travel, against the width of the stair that it serves. Where it is not shown which way the stair goes, both sides of the landing are held to it. The set may spare the top of a few risers that no door swings over, or of such a stair of one use.
# custom:
#   id: stairs/landing-width
#   aliases: []
#   consequence: life safety
#   why: A landing that is narrower than its stair has an edge to step off where people walk.
#   applies_when: a stair is described
#   figures:
#     past_stair: {type: length, relation: at least, about: least width of a landing past the width of its stair}
#     few: {type: count, unit: [riser, risers], relation: at most, optional: true, about: risers up to which no landing is asked for at the top of a stair whose doors keep clear of it}
#     few_use: {type: words, optional: true, about: "use that such a stair must have, without this figure any has"}
#   values: {where: words, risers: count, few: count, use: words}
#   messages:
#     outside: "the landing ({where}) is {have} wide, for the width of its stair the limit is {limit}"
#     either: "the landing ({where}) is {have} wide at the most, whichever way the stair goes, for the width of its stair the limit is {limit}"
#     either_within: "the landing ({where}) is {have} wide at the least, whichever way the stair goes, for the width of its stair the limit is {limit}"
#   exempt:
#     few: "the flight below has {risers} risers and no door swings over it; up to {few} no landing is asked for"
#     few_use: "the flight below has {risers} risers, no door swings over it, and its use is {use}; up to {few} no landing is asked for"
#   mend:
#     - "a landing as wide as the stair"
#   tries: [whole-inches]
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
	some landing in _weighed
	least := landing.stair_width.value + figures.past_stair
	width := lib.landing_width(landing, least)
	narrow := width.value < least
}

_weighed contains landing if {
	some landing in input.landings
	not lib.spared(figures, landing)
	not _hangs(landing)
}

# A landing that would be spared if the stair were of that use, and is not wide
# enough for any other.
_hangs(landing) if {
	lib.may_be_spared(figures, landing)
	not _wide(landing)
}

_wide(landing) if {
	least := landing.stair_width.value + figures.past_stair
	lib.landing_width(landing, least).value >= least
}

exempt contains lib.spared(figures, landing) if some landing in input.landings

unknown contains {"at": landing.at, "needs": "stairs[].use"} if {
	some landing in input.landings
	_hangs(landing)
}

unknown contains {"at": landing.at, "needs": landing.way_missing} if {
	some landing in _weighed
	not lib.landing_width(landing, landing.stair_width.value + figures.past_stair)
	landing.stair_width
}

unknown contains {"at": landing.at, "needs": landing.width_field} if {
	some landing in _weighed
	not landing.width
	not landing.lesser_side
}

unknown contains {"at": landing.at, "needs": "stairs[].width"} if {
	some landing in _weighed
	_measured(landing)
	not landing.stair_width
}

_measured(landing) if landing.width

_measured(landing) if landing.lesser_side
