# METADATA
# title: Footing thickness
# description: The thickness of each footing, against the least thickness and against the table for what it carries.
# custom:
#   id: footings/thickness
#   aliases: []
#   consequence: structure
#   why: A wide thin footing breaks around the post, and only the piece below the post is left to carry.
#   applies_when: footings are described under posts
#   figures:
#     min: {type: length, relation: at least, about: least thickness of any footing}
#     kinds: {type: list, about: kinds of footing that the thickness is asked of}
#     live_steps: {type: steps, optional: true, about: load column under which a live load is read}
#     tributary: {type: words, optional: true, about: "how the area that a footing carries is figured: statics or builder"}
#     area_unit: {type: length, optional: true, about: side of the square in which the table counts areas}
#     thicknesses: {type: table, optional: true, value: length, keys: [load, soil, area], relation: at least, about: least thickness by what the footing carries}
#     thicknesses_by_spans: {type: table, optional: true, value: length, keys: [load, soil, beam_span, joist_span], relation: at least, about: least thickness by the spans that meet there}
#   values: {beam: part, n: count, kind: words}
#   messages:
#     outside: "footing {n} below beam {beam} is {have} thick, the limit is {limit}"
#     within: "footing {n} below beam {beam} is {have} thick, the limit is {limit}"
#   exempt:
#     kind: "no thickness is asked of a footing made as {kind}"
#     beyond: "what footing {n} below beam {beam} carries is outside the table of thicknesses"
#   mend: ["thicker footings"]
#   tries: [whole-inches]
package checks.footings.thickness

import data.figures.footings.thickness as figures
import data.lib.footings
import data.lib.members

applies if count(input.footings) > 0

_owners := {"site": input.site.at, "house": input.house.at}

_other[i] := footing.kind.value if {
	some i, footing in input.footings
	not footing.kind.value in figures.kinds
	footing.kind
}

_due[i] := footing if {
	some i, footing in input.footings
	not _other[i]
}

_beyond contains i if {
	some i, footing in _due
	count(footings.beyond(figures, "thicknesses", footing)) > 0
}

_table if footings.form(figures, "thicknesses")

_cell[i] := footings.limit(figures, "thicknesses", footing) if {
	some i, footing in _due
	not i in _beyond
}

readings contains {
	"at": footing.thickness.at, "have": footing.thickness.value,
	"figure": "min", "limit": figures.min,
	"outside": footing.thickness.value < figures.min,
	"beam": footing.beam, "n": footing.n,
} if {
	some footing in _due
}

_row[i] := {
	"at": footing.thickness.at, "have": footing.thickness.value,
	"figure": cell.figure, "limit": cell.limit, "cell": cell.cell,
	"outside": footing.thickness.value < cell.limit,
	"beam": footing.beam, "n": footing.n,
} if {
	some i, cell in _cell
	footing := _due[i]
}

# What is not shown matters only where more of it could still bring the footing outside.
_open contains i if {
	some i, footing in _due
	_table
	not i in _beyond
	not _row[i].outside
	not footings.complete(footing)
}

_open contains i if {
	some i, _ in _due
	_table
	not i in _beyond
	not _cell[i]
}

readings contains row if {
	some i, row in _row
	not i in _open
}

exempt contains {"at": input.footings[i].at, "because": "kind", "kind": kind} if some i, kind in _other

exempt contains {"at": _due[i].at, "because": "beyond", "beam": _due[i].beam, "n": _due[i].n} if some i in _beyond

unknown contains {"at": footing.at, "needs": "platforms[].footings.thickness"} if {
	some footing in _due
	not footing.thickness
}

unknown contains {"at": members.place(_owners, _due[i].at, need), "needs": need} if {
	some i in _open
	some need in footings.needs(figures, "thicknesses", _due[i])
}
