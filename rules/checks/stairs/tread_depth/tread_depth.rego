# METADATA
# title: Tread depth
# description: The smallest and the greatest tread depth of a flight, from the front edge of one tread to that of the next, against the set's limits.
# custom:
#   id: stairs/tread-depth
#   aliases: []
#   consequence: life safety
#   why: On a shallow tread the heel or the ball of the foot hangs over the edge, and the foot slips off it on the way down.
#   applies_when: a flight of stairs is described
#   figures:
#     min: {type: length, relation: at least, about: "least tread depth, front edge to front edge"}
#     min_secondary: {type: length, relation: at least, optional: true, about: "least tread depth of a secondary stair, where the set tells uses apart"}
#     min_service: {type: length, relation: at least, optional: true, about: "least tread depth of a service stair, where the set tells uses apart"}
#     min_accessible: {type: length, relation: at least, optional: true, about: "least tread depth of an accessible stair, where the set tells uses apart"}
#     attached: {type: length, relation: at least, optional: true, about: least tread depth of a stair outdoors whose platform hangs on the house}
#     max: {type: length, relation: at most, optional: true, about: "greatest tread depth, front edge to front edge"}
#   values: {n: count}
#   messages:
#     outside: "tread depth is {have}, the limit is {limit}"
#     one: "tread depth at tread {n} is {have}, the limit is {limit}"
#     attached: "the smallest tread depth is {have}, the limit outdoors for a stair that is part of the house is {limit}"
#   exempt: {}
#   mend:
#     - "treads of another depth: the stair becomes longer or shorter by as much on every tread"
#   tries: [treads]
package checks.stairs.tread_depth

import data.figures.stairs.tread_depth as figures
import data.lib.stairs as lib

applies if count(input.flights) > 0

readings contains {
	"at": flight.tread_min.at, "have": flight.tread_min.value,
	"figure": figure, "limit": figures[figure],
	"outside": flight.tread_min.value < figures[figure],
	"say": lib.say(flight.tread_min_n), "n": flight.tread_min_n,
} if {
	some flight in input.flights
	not _of_house(flight)
	figure := lib.at_least(figures, "min", flight, flight.tread_min.value)
}

# Of a stair that hangs on the house the greater of the two limits speaks alone.
_of_house(flight) if {
	flight.attached.value
	figures.attached >= figures.min
}

readings contains {
	"at": flight.tread_min.at, "have": flight.tread_min.value,
	"figure": "attached", "limit": figures.attached,
	"outside": flight.tread_min.value < figures.attached,
	"say": "attached",
} if {
	some flight in input.flights
	flight.attached.value
}

readings contains {
	"at": flight.tread_max.at, "have": flight.tread_max.value,
	"figure": "max", "limit": figures.max,
	"outside": flight.tread_max.value > figures.max,
	"say": lib.say(flight.tread_max_n), "n": flight.tread_max_n,
} if {
	some flight in input.flights
}

unknown contains {"at": lib.stair(flight), "needs": "stairs[].use"} if {
	some flight in input.flights
	value := flight.tread_min.value
	not lib.at_least(figures, "min", flight, value)
}

# How the platform stands matters only between the two limits.
unknown contains {"at": lib.stair(flight), "needs": flight.attached_field} if {
	some flight in input.flights
	not flight.attached
	flight.tread_min.value < figures.attached
	flight.tread_min.value >= figures.min
}

unknown contains {"at": flight.at, "needs": lib.field(flight, "tread_depth")} if {
	some flight in input.flights
	not flight.tread_min
}
