# METADATA
# title: Landing depth
# description: The depth of every landing in the direction of travel, against the set's limit. The set may spare the top of a few risers that no door swings over.
# custom:
#   id: stairs/landing
#   aliases: []
#   consequence: life safety
#   why: A stair begins and ends on a level place on which a person can stand and turn, or open a door.
#   applies_when: a stair is described
#   figures:
#     min: {type: length, relation: at least, about: least depth in the direction of travel}
#     few: {type: count, relation: at most, optional: true, about: risers up to which no landing is asked for at the top of a stair whose doors keep clear of it}
#   values: {where: words, risers: count, few: count}
#   messages:
#     outside: "the landing ({where}) is {have} deep in the direction of travel, the limit is {limit}"
#   exempt:
#     few: "the flight below has {risers} risers and no door swings over it; up to {few} no landing is asked for"
#   mend:
#     - "a deeper landing"
#   tries: [whole-inches]
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

unknown contains {"at": landing.at, "needs": lib.landing_fields[landing.where]} if {
	some landing in input.landings
	not landing.depth
	not _spared(landing)
}
