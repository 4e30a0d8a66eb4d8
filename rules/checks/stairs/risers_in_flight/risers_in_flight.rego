# METADATA
# title: Risers in a flight
# description: The number of risers of each flight, against the least and the greatest that the set gives.
# custom:
#   id: stairs/risers-in-flight
#   aliases: []
#   consequence: life safety
#   why: A single riser is not seen and stumbled over, and in a long flight a fall goes far before a landing ends it.
#   applies_when: a flight of stairs is described
#   figures:
#     min: {type: count, unit: [riser, risers], relation: at least, optional: true, about: least number of risers in a flight}
#     max: {type: count, unit: [riser, risers], relation: at most, optional: true, about: greatest number of risers in a flight}
#   messages:
#     outside: "risers in the flight: {have}, the limit is {limit}"
#   exempt: {}
#   mend:
#     - "a landing that divides the flight, or a ramp in place of a single riser"
#   tries: [risers]
package checks.stairs.risers_in_flight

import data.figures.stairs.risers_in_flight as figures
import data.lib.stairs as lib

applies if count(input.flights) > 0

readings contains {
	"at": flight.risers.at, "have": flight.risers.value,
	"figure": "min", "limit": figures.min,
	"outside": flight.risers.value < figures.min,
} if {
	some flight in input.flights
}

readings contains {
	"at": flight.risers.at, "have": flight.risers.value,
	"figure": "max", "limit": figures.max,
	"outside": flight.risers.value > figures.max,
} if {
	some flight in input.flights
}

unknown contains {"at": flight.at, "needs": lib.field(flight, "risers")} if {
	some flight in input.flights
	not flight.risers
}
