# METADATA
# title: Riser height
# description: The greatest and the smallest riser of a flight, as built where they were measured, against the set's limits.
# custom:
#   id: stairs/riser-height
#   aliases: []
#   consequence: life safety
#   why: A foot lifts only as high as it must. A high riser is stumbled over on the way up, and on the way down it is a drop that was not expected.
#   applies_when: a flight of stairs is described
#   figures:
#     max: {type: length, relation: at most, about: greatest height of a riser}
#     max_secondary: {type: length, relation: at most, optional: true, about: "greatest height of a riser of a secondary stair, where the set tells uses apart"}
#     max_service: {type: length, relation: at most, optional: true, about: "greatest height of a riser of a service stair, where the set tells uses apart"}
#     max_accessible: {type: length, relation: at most, optional: true, about: "greatest height of a riser of a stair that is said to be accessible, where the set tells uses apart"}
#     min: {type: length, relation: at least, optional: true, about: least height of a riser}
#   values: {n: count}
#   messages:
#     outside: "risers are {have} high, the limit is {limit}"
#     one: "riser {n} is {have} high, the limit is {limit}"
#   exempt: {}
#   mend:
#     - "another number of risers: with one more each becomes lower, and the stair one tread longer"
#   tries: [risers]
package checks.stairs.riser_height

import data.figures.stairs.riser_height as figures
import data.lib.stairs as lib

applies if count(input.flights) > 0

readings contains {
	"at": flight.riser_max.at, "have": flight.riser_max.value,
	"figure": figure, "limit": figures[figure],
	"outside": flight.riser_max.value > figures[figure],
	"say": lib.say(flight.riser_max_n), "n": flight.riser_max_n,
} if {
	some flight in input.flights
	figure := lib.at_most(figures, "max", flight, flight.riser_max.value)
}

readings contains {
	"at": flight.riser_min.at, "have": flight.riser_min.value,
	"figure": "min", "limit": figures.min,
	"outside": flight.riser_min.value < figures.min,
	"say": lib.say(flight.riser_min_n), "n": flight.riser_min_n,
} if {
	some flight in input.flights
}

unknown contains {"at": lib.stair(flight), "needs": "stairs[].use"} if {
	some flight in input.flights
	value := flight.riser_max.value
	not lib.at_most(figures, "max", flight, value)
}

unknown contains {"at": flight.at, "needs": lib.rise_field(flight)} if {
	some flight in input.flights
	not flight.riser_max
}
