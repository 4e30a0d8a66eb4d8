# METADATA
# title: Two risers and a tread
# description: Twice the riser and once the tread depth, against the band in which a stair is found easy to walk. Where risers or treads were measured, every tread counts with the risers before and behind it.
# custom:
#   id: stairs/comfort
#   aliases: []
#   consequence: workmanship
#   why: The sum is about the length of a stride. A stair far from it is tiring or trips people, even where riser and tread are each inside their limits.
#   applies_when: a flight of stairs is described
#   figures:
#     min: {type: length, relation: at least, about: least sum of two risers and a tread}
#     max: {type: length, relation: at most, about: greatest sum of two risers and a tread}
#   values: {riser: count, tread: count}
#   messages:
#     outside: "two risers and a tread come to {have}, the limit is {limit}"
#     riser: "two risers and a tread come to {have} at riser {riser}, the limit is {limit}"
#     tread: "two risers and a tread come to {have} at tread {tread}, the limit is {limit}"
#     step: "two risers and a tread come to {have} at riser {riser} and tread {tread}, the limit is {limit}"
#   exempt: {}
#   mend:
#     - "another number of risers, or another tread depth"
#   tries: [treads, risers]
package checks.stairs.comfort

import data.figures.stairs.comfort as figures
import data.lib.stairs as lib

applies if count(input.flights) > 0

readings contains object.union(_at(flight.comfort_least_riser, flight.comfort_least_tread), {
	"at": flight.comfort_least.at, "have": flight.comfort_least.value,
	"figure": "min", "limit": figures.min,
	"outside": flight.comfort_least.value < figures.min,
}) if {
	some flight in input.flights
}

readings contains object.union(_at(flight.comfort_most_riser, flight.comfort_most_tread), {
	"at": flight.comfort_most.at, "have": flight.comfort_most.value,
	"figure": "max", "limit": figures.max,
	"outside": flight.comfort_most.value > figures.max,
}) if {
	some flight in input.flights
}

# Risers and treads are told by their number where they are not all alike.
_at(0, 0) := {}

_at(riser, 0) := {"say": "riser", "riser": riser} if riser > 0

_at(0, tread) := {"say": "tread", "tread": tread} if tread > 0

_at(riser, tread) := {"say": "step", "riser": riser, "tread": tread} if {
	riser > 0
	tread > 0
}

unknown contains {"at": flight.at, "needs": _needs(flight)} if {
	some flight in input.flights
	not flight.comfort_least
}

_needs(flight) := lib.step_field(flight) if not flight.tread_min

_needs(flight) := lib.rise_field(flight) if flight.tread_min
