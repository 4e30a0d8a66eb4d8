# METADATA
# title: Landing depth by the width of the stair
# description: The depth of every landing in the direction of travel, or of those on which the stair turns, against the width of the stair that it serves. Where it is not shown which way the stair goes, both sides of the landing are held to it.
# custom:
#   id: stairs/landing-by-width
#   aliases: []
#   consequence: life safety
#   why: On a landing that is shallower than its stair is wide people cannot pass or turn with what they carry.
#   applies_when: a stair is described
#   figures:
#     past_stair: {type: length, relation: at least, about: least depth past the width of the stair}
#     turn_from: {type: angle, relation: at least, optional: true, about: "turn from which a landing is held to it, without this figure every landing is"}
#   values: {where: words, turn: angle, turn_from: angle}
#   messages:
#     outside: "the landing ({where}) is {have} deep in the direction of travel, for the width of its stair the limit is {limit}"
#     either: "the landing ({where}) is {have} deep at the most, whichever way the stair goes, for the width of its stair the limit is {limit}"
#     either_within: "the landing ({where}) is {have} deep at the least, whichever way the stair goes, for the width of its stair the limit is {limit}"
#   exempt:
#     straight: "no change of direction is shown at the landing ({where})"
#     slight: "the stair turns by {turn} on the landing ({where}), the width counts from {turn_from}"
#   mend:
#     - "a landing as deep as the stair is wide"
#   tries: [whole-inches]
package checks.stairs.landing_by_width

import data.figures.stairs.landing_by_width as figures
import data.lib.stairs as lib

applies if count(input.landings) > 0

readings contains object.union(
	{
		"at": array.concat(depth.at, landing.stair_width.at), "have": depth.value,
		"figure": "past_stair", "limit": least,
		"outside": short, "where": landing.where,
	},
	lib.landing_say(landing, short),
) if {
	some landing in _weighed
	least := landing.stair_width.value + figures.past_stair
	depth := lib.landing_depth(landing, least)
	short := depth.value < least
	not _hangs(landing, short)
}

# A stair goes on straight at its ends, unless a turn is shown there.
_straight(landing) if {
	figures.turn_from
	landing.where != "between"
	not landing.turn
}

_slight(landing) if landing.turn.value < figures.turn_from

_weighed contains landing if {
	some landing in input.landings
	not _straight(landing)
	not _slight(landing)
}

# A landing that is deep enough for a turn is so without one.
_hangs(landing, short) if {
	short
	figures.turn_from
	not landing.turn
}

exempt contains {"at": landing.at, "because": "straight", "where": landing.where} if {
	some landing in input.landings
	_straight(landing)
}

exempt contains {
	"at": landing.turn.at, "because": "slight", "where": landing.where,
	"turn": landing.turn.value, "turn_from": figures.turn_from,
} if {
	some landing in input.landings
	_slight(landing)
}

unknown contains {"at": landing.at, "needs": "stairs[].landing_between.turn"} if {
	some landing in _weighed
	least := landing.stair_width.value + figures.past_stair
	_hangs(landing, lib.landing_depth(landing, least).value < least)
}

unknown contains {"at": landing.at, "needs": landing.way_missing} if {
	some landing in _weighed
	not lib.landing_depth(landing, landing.stair_width.value + figures.past_stair)
	landing.stair_width
}

unknown contains {"at": landing.at, "needs": "stairs[].width"} if {
	some landing in _weighed
	_measured(landing)
	not landing.stair_width
}

_measured(landing) if landing.depth

_measured(landing) if landing.lesser_side

unknown contains {"at": landing.at, "needs": landing.depth_field} if {
	some landing in _weighed
	not landing.depth
	not landing.lesser_side
}
