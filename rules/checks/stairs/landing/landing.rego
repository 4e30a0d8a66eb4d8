# METADATA
# title: Landing depth
# description: The depth of every landing in the direction of travel, against the set's limit. Where it is not shown which way the stair goes, both sides of the landing are held to it. The set may spare the top of a few risers that no door swings over, or of such a stair of one use.
# custom:
#   id: stairs/landing
#   aliases: []
#   consequence: life safety
#   why: A stair begins and ends on a level place on which a person can stand and turn, or open a door.
#   applies_when: a stair is described
#   figures:
#     min: {type: length, relation: at least, about: least depth in the direction of travel}
#     as_wide: {type: flag, optional: true, about: "true where a landing is no narrower than its stair, so that a side that is too small for depth and width decides"}
#     few: {type: count, unit: [riser, risers], relation: at most, optional: true, about: risers up to which no landing is asked for at the top of a stair whose doors keep clear of it}
#     few_use: {type: words, optional: true, about: "use that such a stair must have, without this figure any has"}
#   values: {where: words, risers: count, few: count, use: words}
#   messages:
#     outside: "the landing ({where}) is {have} deep in the direction of travel, the limit is {limit}"
#     neither: "one side of the landing ({where}) is {have}, too little for its depth of {limit} and for the width of the stair"
#     either: "the landing ({where}) is {have} deep at the most, whichever way the stair goes, the limit is {limit}"
#     either_within: "the landing ({where}) is {have} deep at the least, whichever way the stair goes, the limit is {limit}"
#   exempt:
#     few: "the flight below has {risers} risers and no door swings over it; up to {few} no landing is asked for"
#     few_use: "the flight below has {risers} risers, no door swings over it, and its use is {use}; up to {few} no landing is asked for"
#   mend:
#     - "a deeper landing"
#   tries: [whole-inches]
package checks.stairs.landing

import data.figures.stairs.landing as figures
import data.lib.stairs as lib

applies if count(input.landings) > 0

readings contains object.union(
	{
		"at": depth.at, "have": depth.value,
		"figure": "min", "limit": figures.min,
		"outside": short, "where": landing.where,
	},
	lib.landing_say(landing, short),
) if {
	some landing in _weighed
	depth := lib.landing_depth(landing, figures.min)
	short := depth.value < figures.min
}

readings contains {
	"at": array.concat(landing.lesser_side.at, landing.stair_width.at), "have": landing.lesser_side.value,
	"figure": "min", "limit": figures.min,
	"outside": true, "say": "neither", "where": landing.where,
} if {
	some landing in _neither
}

# Whichever way the stair goes, one side is its depth and the other its width:
# one that is too small for both decides.
_neither contains landing if {
	some landing in _weighed
	not lib.landing_depth(landing, figures.min)
	figures.as_wide
	landing.lesser_side.value < landing.stair_width.value
}

_weighed contains landing if {
	some landing in input.landings
	not lib.spared(figures, landing)
	not _hangs(landing)
}

# A landing that would be spared if the stair were of that use, and is not deep
# enough for any other.
_hangs(landing) if {
	lib.may_be_spared(figures, landing)
	not _deep(landing)
}

_deep(landing) if lib.landing_depth(landing, figures.min).value >= figures.min

exempt contains lib.spared(figures, landing) if some landing in input.landings

unknown contains {"at": landing.at, "needs": "stairs[].use"} if {
	some landing in input.landings
	_hangs(landing)
}

unknown contains {"at": landing.at, "needs": landing.depth_field} if {
	some landing in _weighed
	not landing.depth
	not landing.lesser_side
}

unknown contains {"at": landing.at, "needs": landing.way_missing} if {
	some landing in _weighed
	not lib.landing_depth(landing, figures.min)
	not landing in _neither
}
