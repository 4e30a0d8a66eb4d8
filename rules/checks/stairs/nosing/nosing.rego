# METADATA
# title: Nosing
# description: How far treads reach out over closed risers, against the least and the greatest that the set gives. Deep treads and open risers are left alone.
# custom:
#   id: stairs/nosing
#   aliases: []
#   consequence: life safety
#   why: A nosing gives the foot room on the way up. Without it the heel has no place on a shallow tread, and one that reaches too far catches the toe.
#   applies_when: a flight of stairs is described
#   figures:
#     min: {type: length, relation: at least, about: least projection of a nosing}
#     max: {type: length, relation: at most, about: greatest projection of a nosing}
#     not_from: {type: length, relation: at least, optional: true, about: tread depth from which no nosing is asked for}
#   values: {tread: length, not_from: length}
#   messages:
#     outside: "the nosing reaches out {have}, the limit is {limit}"
#   exempt:
#     open: "risers are open, a nosing is asked for with closed ones"
#     deep: "tread depth is {tread}, from {not_from} no nosing is asked for"
#   mend:
#     - "treads of another width on the same stringers"
#   tries: [nosing]
package checks.stairs.nosing

import data.figures.stairs.nosing as figures
import data.lib.stairs as lib

applies if count(input.flights) > 0

_deep(flight) if flight.tread_min.value >= figures.not_from

_weighed(flight) if {
	flight.risers_closed.value == true
	_shallow(flight)
}

_shallow(_) if not figures.not_from

_shallow(flight) if flight.tread_min.value < figures.not_from

readings contains {
	"at": flight.nosing.at, "have": flight.nosing.value,
	"figure": "min", "limit": figures.min,
	"outside": flight.nosing.value < figures.min,
} if {
	some flight in input.flights
	_weighed(flight)
}

readings contains {
	"at": flight.nosing.at, "have": flight.nosing.value,
	"figure": "max", "limit": figures.max,
	"outside": flight.nosing.value > figures.max,
} if {
	some flight in input.flights
	_weighed(flight)
}

exempt contains {"at": flight.risers_closed.at, "because": "open"} if {
	some flight in input.flights
	flight.risers_closed.value == false
}

exempt contains {
	"at": flight.tread_min.at, "because": "deep",
	"tread": flight.tread_min.value, "not_from": figures.not_from,
} if {
	some flight in input.flights
	not flight.risers_closed.value == false
	_deep(flight)
}

unknown contains {"at": flight.at, "needs": "stairs[].riser_opening"} if {
	some flight in input.flights
	not flight.risers_closed
	not _deep(flight)
}

unknown contains {"at": flight.at, "needs": lib.field(flight, "tread_depth")} if {
	some flight in input.flights
	figures.not_from
	flight.risers_closed.value == true
	not flight.tread_min
}

unknown contains {"at": flight.at, "needs": "stairs[].nosing"} if {
	some flight in input.flights
	_weighed(flight)
	not flight.nosing
}
