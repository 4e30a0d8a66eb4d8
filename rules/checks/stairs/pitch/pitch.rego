# METADATA
# title: Pitch of a flight
# description: The angle of the line of nosings against the greatest and, where the set gives one, the least angle.
# custom:
#   id: stairs/pitch
#   aliases: []
#   consequence: life safety
#   why: A steep stair is climbed like a ladder and fallen down like one.
#   applies_when: a flight of stairs is described
#   figures:
#     max: {type: angle, relation: at most, about: greatest angle of the line of nosings}
#     max_secondary: {type: angle, relation: at most, optional: true, about: "greatest angle of a secondary stair, where the set tells uses apart"}
#     max_service: {type: angle, relation: at most, optional: true, about: "greatest angle of a service stair, where the set tells uses apart"}
#     max_accessible: {type: angle, relation: at most, optional: true, about: "greatest angle of a stair that is said to be accessible, where the set tells uses apart"}
#     min: {type: angle, relation: at least, about: least angle of the line of nosings, optional: true}
#   messages:
#     outside: "the flight has a pitch of {have}, the limit is {limit}"
#   exempt: {}
#   mend:
#     - "deeper treads or lower risers"
#   tries: [treads, risers]
package checks.stairs.pitch

import data.figures.stairs.pitch as figures
import data.lib.stairs as lib

applies if count(input.flights) > 0

readings contains {
	"at": flight.pitch.at, "have": flight.pitch.value,
	"figure": figure, "limit": figures[figure],
	"outside": flight.pitch.value > figures[figure],
} if {
	some flight in input.flights
	figure := lib.at_most(figures, "max", flight, flight.pitch.value)
}

readings contains {
	"at": flight.pitch.at, "have": flight.pitch.value,
	"figure": "min", "limit": figures.min,
	"outside": flight.pitch.value < figures.min,
} if {
	some flight in input.flights
}

unknown contains {"at": lib.stair(flight), "needs": "stairs[].use"} if {
	some flight in input.flights
	value := flight.pitch.value
	not lib.at_most(figures, "max", flight, value)
}

unknown contains {"at": flight.at, "needs": lib.step_field(flight)} if {
	some flight in input.flights
	not flight.pitch
}
