# METADATA
# title: Riser height
# description: The greatest riser of a flight, as built where it was measured, against the set's limit.
# custom:
#   id: stairs/riser-height
#   aliases: []
#   consequence: life safety
#   why: A foot lifts only as high as it must. A high riser is stumbled over on the way up, and on the way down it is a drop that was not expected.
#   applies_when: a flight of stairs is described
#   figures:
#     max: {type: length, relation: at most, about: greatest height of a riser}
#   values: {n: count}
#   messages:
#     outside: "risers are {have} high, the limit is {limit}"
#     one: "riser {n} is {have} high, the limit is {limit}"
#   exempt: {}
#   mend:
#     - "more risers: each becomes lower, and the stair one tread longer"
package checks.stairs.riser_height

import data.figures.stairs.riser_height as figures
import data.lib.stairs as lib

applies if count(input.flights) > 0

readings contains {
	"at": flight.riser_max.at, "have": flight.riser_max.value,
	"figure": "max", "limit": figures.max,
	"outside": flight.riser_max.value > figures.max,
	"say": lib.say(flight.riser_max_n), "n": flight.riser_max_n,
} if {
	some flight in input.flights
}

unknown contains {"at": flight.at, "needs": lib.rise_field(flight)} if {
	some flight in input.flights
	not flight.riser_max
}
