# METADATA
# title: Nosing
# description: How far treads reach out over closed risers or, with open ones, over the tread below, against the least and the greatest that the set gives for either. Deep treads are left alone.
# custom:
#   id: stairs/nosing
#   aliases: []
#   consequence: life safety
#   why: A nosing gives the foot room on the way up. Without it the heel has no place on a shallow tread, and one that reaches too far catches the toe.
#   applies_when: a flight of stairs is described
#   figures:
#     min: {type: length, relation: at least, optional: true, about: least projection of a nosing over a closed riser}
#     max: {type: length, relation: at most, optional: true, about: greatest projection of a nosing over a closed riser}
#     not_from: {type: length, relation: at least, optional: true, about: tread depth from which no nosing is asked for}
#     open_min: {type: length, relation: at least, optional: true, about: least overlap of treads with open risers}
#     open_max: {type: length, relation: at most, optional: true, about: greatest overlap of treads with open risers}
#   values: {tread: length, not_from: length}
#   messages:
#     outside: "the nosing reaches out {have}, the limit is {limit}"
#     open: "treads with open risers overlap by {have}, the limit is {limit}"
#   exempt:
#     open: "risers are open, a nosing is asked for with closed ones"
#     closed: "risers are closed, an overlap is asked for with open ones"
#     deep: "tread depth is {tread}, from {not_from} no nosing is asked for"
#   mend:
#     - "treads of another width on the same stringers"
package checks.stairs.nosing

import data.figures.stairs.nosing as figures
import data.lib.stairs as lib

applies if count(input.flights) > 0

_deep(flight) if flight.tread_min.value >= figures.not_from

_shallow(_) if not figures.not_from

_shallow(flight) if flight.tread_min.value < figures.not_from

# How the nosing of a flight is weighed: by its least and greatest figure, and in words of its own.
_weighed(flight) := ["min", "max", {}] if {
	flight.risers_closed.value == true
	_limited(["min", "max"])
	_shallow(flight)
}

_weighed(flight) := ["open_min", "open_max", {"say": "open"}] if {
	flight.risers_closed.value == false
	_limited(["open_min", "open_max"])
}

_limited(names) if {
	some name in names
	figures[name] >= 0
}

readings contains object.union(words, {
	"at": flight.nosing.at, "have": flight.nosing.value,
	"figure": least, "limit": figures[least],
	"outside": flight.nosing.value < figures[least],
}) if {
	some flight in input.flights
	[least, _, words] := _weighed(flight)
}

readings contains object.union(words, {
	"at": flight.nosing.at, "have": flight.nosing.value,
	"figure": greatest, "limit": figures[greatest],
	"outside": flight.nosing.value > figures[greatest],
}) if {
	some flight in input.flights
	[_, greatest, words] := _weighed(flight)
}

exempt contains {"at": flight.risers_closed.at, "because": "open"} if {
	some flight in input.flights
	flight.risers_closed.value == false
	not _limited(["open_min", "open_max"])
}

exempt contains {"at": flight.risers_closed.at, "because": "closed"} if {
	some flight in input.flights
	flight.risers_closed.value == true
	not _limited(["min", "max"])
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
	flight.risers_closed.value == true
	figures.not_from
	not flight.tread_min
}

unknown contains {"at": flight.at, "needs": "stairs[].nosing"} if {
	some flight in input.flights
	_weighed(flight)
	not flight.nosing
}
