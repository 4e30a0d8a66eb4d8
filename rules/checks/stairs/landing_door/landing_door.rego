# METADATA
# title: Door at a landing
# description: The depth of a landing that the swing of a door or gate leaves clear, against the set's least.
# custom:
#   id: stairs/landing-door
#   aliases: []
#   consequence: life safety
#   why: Someone who comes down meets the opening door, and needs a place to stand in front of it.
#   applies_when: a door is said to swing over a landing or to keep clear of it
#   figures:
#     min: {type: length, relation: at least, about: least depth that the swing leaves clear}
#   values: {where: words}
#   messages:
#     outside: "the door leaves {have} of the landing ({where}) clear, the limit is {limit}"
#   exempt:
#     apart: "no door swings over the landing ({where})"
#     none: "no door is described at the landing ({where})"
#   mend:
#     - "a deeper landing, or a door that opens the other way"
#   tries: [whole-inches]
package checks.stairs.landing_door

import data.figures.stairs.landing_door as figures

applies if {
	some landing in input.landings
	landing.door_swings
}

readings contains {
	"at": landing.clear_of_door.at, "have": landing.clear_of_door.value,
	"figure": "min", "limit": figures.min,
	"outside": landing.clear_of_door.value < figures.min,
	"where": landing.where,
} if {
	some landing in input.landings
	landing.door_swings.value
}

exempt contains {"at": landing.door_swings.at, "because": "apart", "where": landing.where} if {
	some landing in input.landings
	landing.door_swings.value == false
}

exempt contains {"at": landing.at, "because": "none", "where": landing.where} if {
	some landing in input.landings
	not landing.door_swings
}

_fields := {
	"top": "stairs[].landing_top.clear_of_door",
	"between": "stairs[].landing_between.clear_of_door",
	"bottom": "stairs[].landing_bottom.clear_of_door",
}

unknown contains {"at": landing.at, "needs": _fields[landing.where]} if {
	some landing in input.landings
	landing.door_swings.value
	not landing.clear_of_door
}
