# METADATA
# title: Footing size
# description: The diameter or side of each footing, against the table for the load, the soil and the deck that it carries.
# custom:
#   id: footings/area
#   aliases: [footings/size]
#   consequence: structure
#   why: A footing that is too small presses itself into the soil, and one that sinks more than its neighbors tears the frame.
#   applies_when: footings are described under posts
#   figures:
#     live_steps: {type: steps, about: load column under which a live load is read}
#     tributary: {type: words, optional: true, about: "how the area that a footing carries is figured: statics or builder"}
#     area_unit: {type: length, optional: true, about: side of the square in which the tables count areas}
#     kinds: {type: list, relation: one of, about: kinds of footing that the tables are for}
#     diameters: {type: table, optional: true, value: length, keys: [load, soil, area], relation: at least, about: least diameter of a round footing}
#     sides: {type: table, optional: true, value: length, keys: [load, soil, area], relation: at least, about: least side of a square footing}
#     diameters_by_spans: {type: table, optional: true, value: length, keys: [load, soil, beam_span, joist_span], relation: at least, about: least diameter by the spans that meet there}
#     sides_by_spans: {type: table, optional: true, value: length, keys: [load, soil, beam_span, joist_span], relation: at least, about: least side by the spans that meet there}
#     corner_share: {type: ratio, unit: of the size, optional: true, about: part of the size that does at the ends of a beam}
#   values: {beam: part, n: count, load: pressure, soil: pressure, span: length}
#   messages:
#     outside: "footing {n} below beam {beam} is {have} wide, the limit is {limit}"
#     within: "footing {n} below beam {beam} is {have} wide, the limit is {limit}"
#     not_permitted: "no footing of this kind is permitted for what footing {n} below beam {beam} carries"
#     beyond_kind: "a footing made as {have} is outside this table: an engineer is needed"
#     beyond_load: "a load of {load} is outside this table: an engineer is needed"
#     beyond_soil: "soil that bears {soil} is outside this table: an engineer is needed"
#     beyond_area: "the footing carries more deck than this table lists: an engineer is needed"
#     beyond_beam_span: "a footing below a beam that spans {span} is outside this table: an engineer is needed"
#     beyond_joist_span: "a footing below joists that span {span} is outside this table: an engineer is needed"
#   mend: ["larger footings", "posts closer together, so that each footing carries less"]
#   tries: [footing-width, another-post]
package checks.footings.area

import data.figures.footings.area as figures
import data.lib.footings
import data.lib.members
import data.lib.spans

applies if count(input.footings) > 0

_owners := {"site": input.site.at, "house": input.house.at}

_measure := {"round": "diameters", "square": "sides", "rectangular": "sides"}

_fact := {"diameters": "diameter", "sides": "side"}

_field := {"round": ["platforms[].footings.diameter"], "square": ["platforms[].footings.side"], "rectangular": ["platforms[].footings.along", "platforms[].footings.out"]}

_measured[i] := footing[_fact[_measure[footing.shape.value]]] if some i, footing in input.footings

_beyond[i] contains row if {
	some i, footing in input.footings
	some row in footings.beyond(figures, _measure[footing.shape.value], footing)
}

_beyond[i] contains {
	"at": footing.kind.at, "have": footing.kind.value,
	"figure": "kinds", "limit": figures.kinds, "outside": true, "say": "beyond_kind",
} if {
	some i, footing in input.footings
	footing.kind
	not footing.kind.value in figures.kinds
}

_cell[i] := footings.limit(figures, _measure[footing.shape.value], footing) if {
	some i, footing in input.footings
	not _beyond[i]
}

_limit[i] := cell.limit if {
	some i, cell in _cell
	not _eased(input.footings[i])
}

_limit[i] := ceil((cell.limit * figures.corner_share.rise) / figures.corner_share.run) if {
	some i, cell in _cell
	_eased(input.footings[i])
}

_eased(footing) if {
	footing.corner
	figures.corner_share
}

_row[i] := {
	"at": measured.at, "have": measured.value,
	"figure": _cell[i].figure, "limit": _limit[i], "cell": _cell[i].cell,
	"outside": measured.value < _limit[i],
	"beam": input.footings[i].beam, "n": input.footings[i].n,
} if {
	some i, measured in _measured
	is_number(_limit[i])
}

_row[i] := {
	"at": input.footings[i].at, "figure": cell.figure, "cell": cell.cell,
	"outside": true, "say": "not_permitted", "beam": input.footings[i].beam, "n": input.footings[i].n,
} if {
	some i, cell in _cell
	is_null(cell.limit)
}

# What is not shown matters only where more of it could still bring the footing outside.
_open contains i if {
	some i, footing in input.footings
	not _row[i].outside
	not footings.complete(footing)
}

_open contains i if {
	some i, _ in input.footings
	not _row[i]
}

readings contains spans.beside(row, input.footings[i]) if {
	some i, row in _row
	not i in _open
}

readings contains row if some row in _beyond[_]

_needs[i] contains need if {
	some i, footing in input.footings
	some need in footings.needs(figures, _measure[footing.shape.value], footing)
}

_needs[i] contains "platforms[].footings.shape" if {
	some i, footing in input.footings
	not footing.shape
}

_needs[i] contains need if {
	some i, footing in input.footings
	not _measured[i]
	some need in _field[footing.shape.value]
}

unknown contains {"at": members.place(_owners, input.footings[i].at, need), "needs": need} if {
	some i in _open
	not _beyond[i]
	some need in _needs[i]
}
