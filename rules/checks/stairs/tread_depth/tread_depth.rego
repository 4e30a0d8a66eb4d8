# METADATA
# title: Tread depth
# description: The smallest tread of a flight, from the front edge of one tread to that of the next, against the set's limit.
# custom:
#   id: stairs/tread-depth
#   aliases: []
#   consequence: life safety
#   why: On a shallow tread the heel or the ball of the foot hangs over the edge, and the foot slips off it on the way down.
#   applies_when: a flight of stairs is described
#   figures:
#     min: {type: length, relation: at least, about: "least tread depth, front edge to front edge"}
#   values: {n: count}
#   messages:
#     outside: "treads are {have} deep, the limit is {limit}"
#     one: "tread {n} is {have} deep, the limit is {limit}"
#   exempt: {}
#   mend:
#     - "deeper treads: the stair becomes longer by as much on every tread"
package checks.stairs.tread_depth

import data.figures.stairs.tread_depth as figures
import data.lib.stairs as lib

applies if count(input.flights) > 0

readings contains {
	"at": flight.tread_min.at, "have": flight.tread_min.value,
	"figure": "min", "limit": figures.min,
	"outside": flight.tread_min.value < figures.min,
	"say": lib.say(flight.tread_min_n), "n": flight.tread_min_n,
} if {
	some flight in input.flights
}

unknown contains {"at": flight.at, "needs": lib.field(flight, "tread_depth")} if {
	some flight in input.flights
	not flight.tread_min
}
