# METADATA
# title: Difference between treads
# description: The greatest tread depth of a flight less its smallest, against the set's limit.
# custom:
#   id: stairs/tread-variation
#   aliases: []
#   consequence: life safety
#   why: The foot lands where the tread before has taught it to. One that is shallower than the others is missed.
#   applies_when: a flight of stairs is described
#   figures:
#     max: {type: length, relation: at most, about: greatest difference between the treads of a flight}
#   messages:
#     outside: "treads of the flight differ by {have}, the limit is {limit}"
#   exempt: {}
#   mend:
#     - "set the treads again from one end with the same depth"
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

unknown contains {"at": flight.at, "needs": lib.field(flight, "tread_depth")} if {
	some flight in input.flights
	not flight.tread_spread
}
