# METADATA
# title: Difference between tread depths
# description: How much the tread depths of a flight differ, as a whole and from one tread to the next, against the set's limits.
# custom:
#   id: stairs/tread-variation
#   aliases: []
#   consequence: life safety
#   why: The foot lands where the tread before has taught it to. One that is shallower than the others is missed.
#   applies_when: a flight of stairs is described
#   figures:
#     max: {type: length, relation: at most, about: greatest difference between the tread depths of a flight}
#     adjacent: {type: length, relation: at most, optional: true, about: greatest difference between the tread depths of two treads that follow each other}
#   messages:
#     outside: "tread depths of the flight differ by {have}, the limit is {limit}"
#     adjacent: "tread depths that follow each other differ by {have}, the limit is {limit}"
#   exempt: {}
#   mend:
#     - "set the treads again from one end with the same depth"
#   tries: []
package checks.stairs.tread_variation

import data.figures.stairs.tread_variation as figures
import data.lib.stairs as lib

applies if count(input.flights) > 0

readings contains {
	"at": flight.tread_spread.at, "have": flight.tread_spread.value,
	"figure": "max", "limit": figures.max,
	"outside": flight.tread_spread.value > figures.max,
} if {
	some flight in input.flights
}

readings contains {
	"at": flight.tread_step.at, "have": flight.tread_step.value,
	"figure": "adjacent", "limit": figures.adjacent,
	"outside": flight.tread_step.value > figures.adjacent,
	"say": "adjacent",
} if {
	some flight in input.flights
}

unknown contains {"at": flight.at, "needs": lib.field(flight, "tread_depth")} if {
	some flight in input.flights
	not flight.tread_spread
}
