# METADATA
# title: Two risers and a tread
# description: Twice the riser and once the tread depth, against the band in which a stair is found easy to walk.
# custom:
#   id: stairs/comfort
#   aliases: []
#   consequence: workmanship
#   why: The sum is about the length of a stride. A stair far from it is tiring or trips people, even where riser and tread are each inside their limits.
#   applies_when: a flight of stairs is described
#   figures:
#     min: {type: length, relation: at least, about: least sum of two risers and a tread}
#     max: {type: length, relation: at most, about: greatest sum of two risers and a tread}
#   messages:
#     outside: "two risers and a tread come to {have}, the limit is {limit}"
#   exempt: {}
#   mend:
#     - "another number of risers, or another tread depth"
#   tries: [treads, risers]
package checks.stairs.comfort

import data.figures.stairs.comfort as figures
import data.lib.stairs as lib

applies if count(input.flights) > 0

readings contains {
	"at": flight.comfort_sum.at, "have": flight.comfort_sum.value,
	"figure": "min", "limit": figures.min,
	"outside": flight.comfort_sum.value < figures.min,
} if {
	some flight in input.flights
}

readings contains {
	"at": flight.comfort_sum.at, "have": flight.comfort_sum.value,
	"figure": "max", "limit": figures.max,
	"outside": flight.comfort_sum.value > figures.max,
} if {
	some flight in input.flights
}

unknown contains {"at": flight.at, "needs": lib.step_field(flight)} if {
	some flight in input.flights
	not flight.comfort_sum
}
