# METADATA
# title: Rise of a flight
# description: The height from landing to landing that one flight climbs, against the set's limit.
# custom:
#   id: stairs/flight-rise
#   aliases: []
#   consequence: life safety
#   why: A landing gives a rest, and ends a fall.
#   applies_when: a flight of stairs is described
#   figures:
#     max: {type: length, relation: at most, about: greatest rise between landings}
#   messages:
#     outside: "the flight rises {have} between landings, the limit is {limit}"
#   exempt: {}
#   mend:
#     - "a landing between two flights"
#   tries: []
package checks.stairs.flight_rise

import data.figures.stairs.flight_rise as figures

applies if count(input.flights) > 0

readings contains {
	"at": flight.rise.at, "have": flight.rise.value,
	"figure": "max", "limit": figures.max,
	"outside": flight.rise.value > figures.max,
} if {
	some flight in input.flights
}

unknown contains {"at": flight.at, "needs": flight.rise_field} if {
	some flight in input.flights
	not flight.rise
}
