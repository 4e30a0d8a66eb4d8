# METADATA
# title: Opening between treads
# description: The opening of open risers against the sphere that must not go through it, at any height or where the opening lies higher above grade than the set's trigger.
# custom:
#   id: stairs/open-riser
#   aliases: []
#   consequence: life safety
#   why: A small child goes through an opening that its body fits, and hangs by the head.
#   applies_when: a flight of stairs is described
#   figures:
#     sphere: {type: length, relation: less than, about: diameter of the sphere that must not go through}
#     trigger: {type: length, relation: more than, optional: true, about: height above grade over which an opening is limited}
#   values: {above: length, trigger: length}
#   messages:
#     outside: "the opening between treads is {have}, a sphere of {limit} must not go through"
#   exempt:
#     closed: "risers are closed"
#     low: "the highest opening is {above} above grade, openings are limited above {trigger}"
#   mend:
#     - "riser boards, or a strip below each tread that narrows the opening"
#   tries: [eighths, closed-risers]
package checks.stairs.open_riser

import data.figures.stairs.open_riser as figures
import data.lib.stairs as lib

applies if count(input.flights) > 0

_weighed(flight) if flight.opening_above.value > figures.trigger

_weighed(_) if not figures.trigger

# An opening that is small enough is so at any height.
_weighed(flight) if {
	not flight.opening_above
	flight.riser_opening.value < figures.sphere
}

readings contains {
	"at": flight.riser_opening.at, "have": flight.riser_opening.value,
	"figure": "sphere", "limit": figures.sphere,
	"outside": flight.riser_opening.value >= figures.sphere,
} if {
	some flight in input.flights
	_weighed(flight)
}

exempt contains {"at": flight.at, "because": "closed"} if {
	some flight in input.flights
	flight.risers_closed.value == true
}

exempt contains {
	"at": flight.riser_opening.at, "because": "low",
	"above": flight.opening_above.value, "trigger": figures.trigger,
} if {
	some flight in input.flights
	flight.opening_above.value <= figures.trigger
}

unknown contains {"at": flight.at, "needs": "stairs[].riser_opening"} if {
	some flight in input.flights
	not flight.risers_closed.value
	not flight.riser_opening
}

unknown contains {"at": flight.at, "needs": lib.rise_field(flight)} if {
	some flight in input.flights
	figures.trigger
	flight.riser_opening.value >= figures.sphere
	not flight.opening_above
}
