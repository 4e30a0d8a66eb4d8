# METADATA
# title: Number of treads
# description: The treads counted in the description against the treads that the number of risers asks for.
# custom:
#   id: stairs/tread-count
#   aliases: []
#   consequence: workmanship
#   why: A flight has one tread less than it has risers, or as many where the top tread lies flush with the deck. Other numbers mean a drawing that contradicts itself.
#   applies_when: a flight of stairs is described
#   figures:
#     tolerance: {type: count, unit: [tread, treads], relation: exactly, about: treads that may be missing or too many}
#   values: {risers: count}
#   messages:
#     outside: "{have} treads are described, {risers} risers ask for {limit}"
#   exempt:
#     not_counted: "treads are not counted in the description"
#   mend:
#     - "count again, and say whether the top tread lies flush with the deck"
#   tries: [tread-count]
package checks.stairs.tread_count

import data.figures.stairs.tread_count as figures
import data.lib.stairs as lib

applies if count(input.flights) > 0

readings contains {
	"at": flight.treads.at, "have": flight.treads.value,
	"figure": "tolerance", "limit": flight.treads_expected.value,
	"outside": abs(flight.treads.value - flight.treads_expected.value) > figures.tolerance,
	"risers": flight.risers.value,
} if {
	some flight in input.flights
}

exempt contains {"at": flight.at, "because": "not_counted"} if {
	some flight in input.flights
	not flight.treads
}

unknown contains {"at": flight.at, "needs": lib.field(flight, "risers")} if {
	some flight in input.flights
	flight.treads
	not flight.treads_expected
}
