# METADATA
# title: Span of the stringers
# description: The horizontal length that the stringers of a flight span between supports, against the limit for cut or for solid ones.
# custom:
#   id: stairs/stringer-span
#   aliases: []
#   consequence: structure
#   why: A cut stringer is only as deep as the wood under its notches. One that spans too far bends, then splits at a notch.
#   applies_when: a flight of stairs is described
#   figures:
#     cut: {type: length, relation: at most, about: greatest horizontal span of cut stringers}
#     solid: {type: length, relation: at most, about: greatest horizontal span of solid stringers}
#   values: {kind: words}
#   messages:
#     outside: "{kind} stringers span {have} horizontally, the limit is {limit}"
#   exempt:
#     other: "the set has no span for {kind} stringers"
#   mend:
#     - "a support under the stringers between their ends"
#     - "solid stringers instead of cut ones"
#   tries: [stringer-kind, stringer-support, stringer-size]
package checks.stairs.stringer_span

import data.figures.stairs.stringer_span as figures
import data.lib.stairs as lib

applies if count(input.flights) > 0

readings contains {
	"at": flight.stringer_run.at, "have": flight.stringer_run.value,
	"figure": kind, "limit": figures[kind],
	"outside": flight.stringer_run.value > figures[kind],
	"kind": kind,
} if {
	some flight in input.flights
	kind := flight.stringer_kind.value
}

exempt contains {"at": flight.stringer_kind.at, "because": "other", "kind": kind} if {
	some flight in input.flights
	kind := flight.stringer_kind.value
	not figures[kind]
}

unknown contains {"at": flight.at, "needs": "stairs[].stringers.kind"} if {
	some flight in input.flights
	not flight.stringer_kind
}

unknown contains {"at": flight.at, "needs": lib.step_field(flight)} if {
	some flight in input.flights
	figures[flight.stringer_kind.value]
	not flight.stringer_run
}
