# METADATA
# title: Difference between risers
# description: The greatest riser of a flight less its smallest, and the difference of the bottom riser from one side of the stair to the other where it lands on ground that slopes across it.
# custom:
#   id: stairs/riser-variation
#   aliases: []
#   consequence: life safety
#   why: After two or three steps the foot expects the next one to be alike. A riser that differs is the commonest cause of a fall on a new stair.
#   applies_when: a flight of stairs is described
#   figures:
#     max: {type: length, relation: at most, about: greatest difference between the risers of a flight}
#   messages:
#     outside: "risers of the flight differ by {have}, the limit is {limit}"
#     cross_fall: "the bottom riser differs by {have} from one side of the stair to the other, the limit is {limit}"
#   exempt: {}
#   mend:
#     - "divide the total rise by the number of risers again, with tread thickness and finish to come taken off the bottom cut"
#     - "level the landing across the stair, or set a level pad in it"
package checks.stairs.riser_variation

import data.figures.stairs.riser_variation as figures
import data.lib.stairs as lib

applies if count(input.flights) > 0

readings contains {
	"at": flight.riser_spread.at, "have": flight.riser_spread.value,
	"figure": "max", "limit": figures.max,
	"outside": flight.riser_spread.value > figures.max,
} if {
	some flight in input.flights
}

readings contains {
	"at": flight.cross_fall.at, "have": flight.cross_fall.value,
	"figure": "max", "limit": figures.max,
	"outside": flight.cross_fall.value > figures.max,
	"say": "cross_fall",
} if {
	some flight in input.flights
}

unknown contains {"at": flight.at, "needs": lib.rise_field(flight)} if {
	some flight in input.flights
	not flight.riser_spread
}
