# METADATA
# title: Bottom riser
# description: The lowest riser of a flight against the riser as planned, or against those above it, where a set lets it differ by more than the others.
# custom:
#   id: stairs/bottom-riser
#   aliases: []
#   consequence: life safety
#   why: Paving and floors laid after the stair change its lowest riser, and it is the first one on the way up and the last on the way down.
#   applies_when: a flight of stairs is described
#   figures:
#     off: {type: length, relation: at most, optional: true, about: "greatest difference of the lowest riser from the riser as planned, the rise divided by the risers"}
#     lower: {type: length, relation: at most, optional: true, about: "how much lower than all above it the lowest riser may be"}
#   messages:
#     outside: "the lowest riser differs by {have} from the riser as planned, the limit is {limit}"
#     lower: "the lowest riser is {have} lower than those above it, the limit is {limit}"
#   exempt:
#     only: "the flight has one riser, there is nothing to compare it with"
#   mend:
#     - "take finishes that are still to come into account at the bottom cut"
#   tries: []
package checks.stairs.bottom_riser

import data.figures.stairs.bottom_riser as figures
import data.lib.stairs as lib

applies if count(input.flights) > 0

readings contains {
	"at": flight.bottom_riser_off.at, "have": flight.bottom_riser_off.value,
	"figure": "off", "limit": figures.off,
	"outside": flight.bottom_riser_off.value > figures.off,
} if {
	some flight in input.flights
}

readings contains {
	"at": flight.bottom_riser_lower.at, "have": flight.bottom_riser_lower.value,
	"figure": "lower", "limit": figures.lower,
	"outside": flight.bottom_riser_lower.value > figures.lower,
	"say": "lower",
} if {
	some flight in input.flights
}

exempt contains {"at": flight.at, "because": "only"} if {
	figures.lower
	some flight in input.flights
	flight.riser_spread
	not flight.bottom_riser_lower
}

unknown contains {"at": flight.at, "needs": lib.rise_field(flight)} if {
	some flight in input.flights
	not flight.riser_spread
}

# Risers that were measured need the rise that they were planned for.
unknown contains {"at": flight.at, "needs": "stairs[].total_rise"} if {
	figures.off
	some flight in input.flights
	flight.riser_spread
	not flight.bottom_riser_off
}
