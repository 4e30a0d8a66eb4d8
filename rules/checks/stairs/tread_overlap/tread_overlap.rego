# METADATA
# title: Overlap of open treads
# description: How far treads with open risers reach out over the tread below, against the least and the greatest that the set gives.
# custom:
#   id: stairs/tread-overlap
#   aliases: []
#   consequence: life safety
#   why: Seen from above, treads that do not overlap leave gaps through which the ground shows and the eye loses the edge.
#   applies_when: a flight of stairs is described
#   figures:
#     min: {type: length, relation: at least, about: least overlap}
#     max: {type: length, relation: at most, optional: true, about: greatest overlap}
#   messages:
#     outside: "treads with open risers overlap by {have}, the limit is {limit}"
#   exempt:
#     closed: "risers are closed, an overlap is asked for with open ones"
#   mend:
#     - "treads of another width on the same stringers"
#   tries: [nosing]
package checks.stairs.tread_overlap

import data.figures.stairs.tread_overlap as figures

applies if count(input.flights) > 0

readings contains {
	"at": flight.nosing.at, "have": flight.nosing.value,
	"figure": "min", "limit": figures.min,
	"outside": flight.nosing.value < figures.min,
} if {
	some flight in input.flights
	flight.risers_closed.value == false
}

readings contains {
	"at": flight.nosing.at, "have": flight.nosing.value,
	"figure": "max", "limit": figures.max,
	"outside": flight.nosing.value > figures.max,
} if {
	some flight in input.flights
	flight.risers_closed.value == false
}

exempt contains {"at": flight.risers_closed.at, "because": "closed"} if {
	some flight in input.flights
	flight.risers_closed.value == true
}

unknown contains {"at": flight.at, "needs": "stairs[].riser_opening"} if {
	some flight in input.flights
	not flight.risers_closed
}

unknown contains {"at": flight.at, "needs": "stairs[].nosing"} if {
	some flight in input.flights
	flight.risers_closed.value == false
	not flight.nosing
}
