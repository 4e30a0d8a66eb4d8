# METADATA
# title: Throat of cut stringers
# description: The wood left under the notches of a cut stringer, square to its lower edge, against the set's limit.
# custom:
#   id: stairs/throat
#   aliases: []
#   consequence: structure
#   why: The throat is all that carries. Of shallow stock the notches leave little, and it splits along the grain from one to the next.
#   applies_when: a flight of stairs is described
#   figures:
#     min: {type: length, relation: at least, about: least wood under a notch}
#   values: {kind: words}
#   messages:
#     outside: "cut stringers keep a throat of {have}, the limit is {limit}"
#   exempt:
#     uncut: "stringers are {kind}, no notch is cut into them"
#   mend:
#     - "deeper stock, or solid stringers"
#   tries: [stringer-size, treads, risers]
package checks.stairs.throat

import data.figures.stairs.throat as figures
import data.lib.stairs as lib

applies if count(input.flights) > 0

readings contains {
	"at": flight.throat.at, "have": flight.throat.value,
	"figure": "min", "limit": figures.min,
	"outside": flight.throat.value < figures.min,
} if {
	some flight in input.flights
	flight.stringer_kind.value == "cut"
}

exempt contains {"at": flight.stringer_kind.at, "because": "uncut", "kind": flight.stringer_kind.value} if {
	some flight in input.flights
	flight.stringer_kind.value != "cut"
}

unknown contains {"at": flight.at, "needs": "stairs[].stringers.kind"} if {
	some flight in input.flights
	not flight.stringer_kind
}

unknown contains {"at": flight.at, "needs": _field(flight)} if {
	some flight in input.flights
	flight.stringer_kind.value == "cut"
	not flight.throat
}

_field(flight) := "stairs[].stringers.size" if not flight.stringer_size

_field(flight) := lib.step_field(flight) if flight.stringer_size
