# METADATA
# title: Landing depth
# description: The depth of every landing in the direction of travel, against the set's limit or the width of the stair that it serves.
# custom:
#   id: stairs/landing
#   aliases: []
#   consequence: life safety
#   why: A stair begins and ends on a level place on which a person can stand and turn, or open a door.
#   applies_when: a stair is described
#   figures:
#     min: {type: length, relation: at least, optional: true, about: least depth in the direction of travel}
#     past_stair: {type: length, relation: at least, optional: true, about: least depth past the width of the stair}
#     turn_from: {type: angle, relation: at least, optional: true, about: "turn on the landing from which its depth is held against the width of the stair; without it every landing is"}
#     few: {type: count, relation: at most, optional: true, about: risers up to which no landing is asked for at the top of a stair whose doors keep clear of it}
#   values: {where: words, risers: count, few: count}
#   messages:
#     outside: "the landing ({where}) is {have} deep in the direction of travel, the limit is {limit}"
#     past_stair: "the landing ({where}) is {have} deep in the direction of travel, with the stair that it serves the limit is {limit}"
#   exempt:
#     few: "the flight below has {risers} risers and no door swings over it; up to {few} no landing is asked for"
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
	some landing in _landings
}

readings contains {
	"at": array.concat(landing.depth.at, landing.stair_width.at), "have": landing.depth.value,
	"figure": "past_stair", "limit": least,
	"outside": landing.depth.value < least,
	"where": landing.where, "say": "past_stair",
} if {
	some landing in _landings
	least := landing.stair_width.value + figures.past_stair
	_turns(landing, least)
}

_landings contains landing if {
	some landing in input.landings
	not _spared(landing)
}

_spared(landing) if {
	landing.risers.value <= figures.few
	landing.doors_apart.value
}

exempt contains {"at": landing.at, "because": "few", "risers": landing.risers.value, "few": figures.few} if {
	some landing in input.landings
	_spared(landing)
}

_turns(_, _) if not figures.turn_from

_turns(landing, _) if landing.turn.value >= figures.turn_from

# A landing that is deep enough for a turn is so without one.
_turns(landing, least) if {
	landing.where == "between"
	not landing.turn
	landing.depth.value >= least
}

unknown contains {"at": landing.at, "needs": "stairs[].landing_between.turn"} if {
	figures.turn_from
	some landing in input.landings
	landing.where == "between"
	not landing.turn
	landing.depth.value < landing.stair_width.value + figures.past_stair
}

unknown contains {"at": landing.at, "needs": "stairs[].width"} if {
	figures.past_stair >= 0
	some landing in _landings
	landing.depth
	not landing.stair_width
	not _straight(landing)
}

# A stair goes on straight at its ends, unless a turn is shown there.
_straight(landing) if {
	figures.turn_from
	landing.where != "between"
	not landing.turn
}

_straight(landing) if landing.turn.value < figures.turn_from

unknown contains {"at": landing.at, "needs": lib.landing_fields[landing.where]} if {
	some landing in _landings
	not landing.depth
}
