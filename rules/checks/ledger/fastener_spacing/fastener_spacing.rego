# METADATA
# title: Spacing of ledger fasteners
# description: The distance along the ledger from one fastener to the next, against the table for the rim, the fastener, the gap to the rim, the load and the joists.
# custom:
#   id: ledger/fastener-spacing
#   aliases: []
#   consequence: life safety
#   why: Every fastener carries the joists on either side of it, and one that gives way hands its share to the next.
#   applies_when: a platform hangs on a ledger
#   figures:
#     rims: {type: groups, about: materials of the house rim that share the rows of the table}
#     joist_basis: {type: words, about: "how the table measures joists: clear span or span to center"}
#     washer_gap: {type: length, about: gap that stacked washers behind the ledger count for}
#     live_steps: {type: steps, about: load column under which a live load is read}
#     spacings: {type: table, value: length, keys: [rim, rim_thickness, fastener, gap, load, joist_span], relation: at most, about: "greatest spacing; the gap is sheathing and washers between ledger and rim, and foam counts as the widest"}
#   values: {fastener: words, joists: length, rim: words, thickness: length, gap: length, load: pressure}
#   messages:
#     outside: "{fastener}s are {have} apart along the ledger, below joists that span {joists} the limit is {limit}"
#     within: "{fastener}s are {have} apart along the ledger, below joists that span {joists} the limit is {limit}"
#     not_permitted: "the table permits no {fastener} with this rim and gap: an engineer is needed"
#     beyond_rim: "a house rim of {rim} is outside this table: its maker's listing or an engineer is needed"
#     beyond_thickness: "a house rim {thickness} thick is outside this table: an engineer is needed"
#     beyond_gap: "a gap of {gap} between ledger and rim is outside this table: an engineer is needed"
#     beyond_load: "a load of {load} is outside this table: an engineer is needed"
#     beyond_joists: "joists that span {joists} are outside this table: an engineer is needed"
#   exempt:
#     fastener: "the table is not for a {fastener}"
#   mend: ["fasteners closer together", "through-bolts instead of lag screws", "a beam closer to the house, so that the ledger carries less"]
#   tries: [fastener-spacing]
package checks.ledger.fastener_spacing

import data.figures.ledger.fastener_spacing as figures
import data.lib.ledgers
import data.lib.members
import data.lib.spans

applies if count(input.ledgers) > 0

_owners := {"site": input.site.at, "house": input.house.at}

# The kinds of fastener that the table has.
_listed contains kind if some kind, _ in figures.spacings.cells[_][_]

_other[i] := ledger.fastener_type.value if {
	some i, ledger in input.ledgers
	ledger.fastener_type.value != "unknown"
	not ledger.fastener_type.value in _listed
}

_due[i] := ledger if {
	some i, ledger in input.ledgers
	not _other[i]
}

_beyond[i] := rows if {
	some i, ledger in _due
	rows := ledgers.beyond(figures, ledger)
	count(rows) > 0
}

_cell[i] := [ledgers.rim(figures, ledger), thickness, ledger.fastener_type.value, gap, load, joists] if {
	some i, ledger in _due
	not _beyond[i]
	breaks := figures.spacings.breaks
	thickness := ledgers.thickness(breaks.rim_thickness, ledger.rim_thickness.value)
	gap := ledgers.gap(figures, ledger)
	load := spans.column(breaks.load, max(spans.loads(figures, ledger)))
	joists := spans.column(breaks.joist_span, ledgers.joists(figures, ledger).value)
}

_limit[i] := figures.spacings.cells[rim][thickness][kind][gap][load][joists] if some i, [rim, thickness, kind, gap, load, joists] in _cell

_row[i] := {
	"at": ledger.fastener_spacing.at, "have": ledger.fastener_spacing.value,
	"figure": "spacings", "limit": limit, "cell": _cell[i],
	"outside": ledger.fastener_spacing.value > limit,
	"fastener": ledger.fastener_type.value, "joists": ledgers.joists(figures, ledger).value,
} if {
	some i, limit in _limit
	is_number(limit)
	ledger := _due[i]
}

_row[i] := {
	"at": _due[i].fastener_type.at, "figure": "spacings", "cell": _cell[i],
	"outside": true, "say": "not_permitted", "fastener": _due[i].fastener_type.value,
} if {
	some i, limit in _limit
	is_null(limit)
}

# What is not shown matters only where more of it could still bring the spacing outside.
_open contains i if {
	some i, ledger in _due
	not _row[i].outside
	count(ledgers.missing(figures, ledger)) > 0
}

_open contains i if {
	some i, _ in _due
	not _row[i]
}

readings contains spans.beside(row, input.ledgers[i]) if {
	some i, row in _row
	not i in _open
}

readings contains row if some row in _beyond[_]

exempt contains {"at": input.ledgers[i].fastener_type.at, "because": "fastener", "fastener": kind} if some i, kind in _other

unknown contains {"at": members.place(_owners, _due[i].at, need), "needs": need} if {
	some i in _open
	not _beyond[i]
	some need in ledgers.missing(figures, _due[i])
}
