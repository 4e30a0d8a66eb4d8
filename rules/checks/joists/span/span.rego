# METADATA
# title: Joist span
# description: The span of the joists, measured as the table measures it, against the table for their species, size, spacing and load.
# custom:
#   id: joists/span
#   aliases: []
#   consequence: structure
#   why: Joists over their span bounce, sag and crack the finish, and under a crowd or snow they break.
#   applies_when: joists lie between two supports that the plan shows
#   figures:
#     basis: {type: words, about: "how the table measures: clear span or span to center"}
#     groups: {type: groups, about: species that share the rows of the table}
#     grades: {type: list, about: grades that the table was made for}
#     live_steps: {type: steps, about: load column under which a live load is read}
#     without_snow: {type: flag, optional: true, about: true where the table is not read by snow}
#     excerpt: {type: flag, optional: true, about: "true where the set holds a few cells of the printed table only, and leaves alone what they do not reach"}
#     spans: {type: table, value: length, gaps: true, keys: [group, size, spacing, load], relation: at most, about: greatest span of the joists}
#   values: {from: part, to: part, species: words, grade: words, size: words, spacing: length, load: pressure}
#   messages:
#     outside: "joists span {have} from {from} to {to}, the limit is {limit}"
#     within: "joists span {have} from {from} to {to}, the limit is {limit}"
#     not_permitted: "joists of this size are not permitted at this spacing and load"
#     left_out: "this set does not hold the cell of the table for joists of {size} at {spacing}: the printed table or an engineer is needed"
#     beyond_species: "species {species} is outside this table: an engineer is needed"
#     beyond_grade: "grade {grade} is outside this table: an engineer is needed"
#     beyond_size: "joists of {size} are outside this table: an engineer is needed"
#     beyond_spacing: "joists at {spacing} are outside this table: an engineer is needed"
#     beyond_load: "a load of {load} is outside this table: an engineer is needed"
#   exempt:
#     left_out: "the set does not hold the cell of the table for joists of {size} at {spacing}; the printed table decides"
#     beyond_species: "the set does not hold what the table says of species {species}; the printed table decides"
#     beyond_grade: "the set does not hold what the table says of grade {grade}; the printed table decides"
#     beyond_size: "the set does not hold what the table says of joists of {size}; the printed table decides"
#     beyond_spacing: "the set does not hold what the table says of joists at {spacing}; the printed table decides"
#   unmended: [beyond_species, beyond_grade, beyond_load]
#   mend:
#     - "joists closer together"
#     - "deeper joists"
#     - "a beam closer to the house, or one more beam"
#   tries: [joist-spacing, joist-size, beam-place, lumber-grade]
package checks.joists.span

import data.figures.joists.span as figures
import data.lib.spans

applies if count(input.joist_spans) > 0

_measured[i] := span.clear_span if {
	some i, span in input.joist_spans
	figures.basis == "clear span"
}

_measured[i] := span.span_to_center if {
	some i, span in input.joist_spans
	figures.basis == "span to center"
}

_beyond[i] := rows if {
	some i, span in input.joist_spans
	rows := spans.beyond(figures, "spans", span)
	count(rows) > 0
}

_cell[i] := [group, span.size.value, row, column] if {
	some i, span in input.joist_spans
	not _beyond[i]
	group := spans.group(figures, span)
	row := spans.column(figures.spans.breaks.spacing, span.spacing.value)
	column := spans.column(figures.spans.breaks.load, max(spans.loads(figures, span)))
}

_limit[i] := figures.spans.cells[group][size][row][column] if some i, [group, size, row, column] in _cell

_row[i] := {
	"at": _measured[i].at, "have": _measured[i].value,
	"figure": "spans", "limit": limit, "cell": _cell[i],
	"outside": _measured[i].value > limit,
	"from": input.joist_spans[i].from, "to": input.joist_spans[i].to,
} if {
	some i, limit in _limit
	is_number(limit)
}

_row[i] := {"at": span.at, "figure": "spans", "cell": _cell[i], "outside": true, "say": "not_permitted"} if {
	some i, span in input.joist_spans
	is_null(_limit[i])
}

_gap[i] := {"size": span.size.value, "spacing": span.spacing.value} if {
	some i, span in input.joist_spans
	is_string(_limit[i])
}

_row[i] := object.union(gap, {
	"at": input.joist_spans[i].at, "figure": "spans", "cell": _cell[i],
	"outside": true, "say": "left_out",
}) if {
	some i, gap in _gap
	not figures.excerpt
}

# What is not shown matters only where more of it could still bring the span outside.
_open contains i if {
	some i, span in input.joist_spans
	not _row[i].outside
	not spans.complete(figures, span)
}

_open contains i if {
	some i, _ in input.joist_spans
	not _row[i]
	not _gap[i]
}

readings contains spans.beside(row, input.joist_spans[i]) if {
	some i, row in _row
	not i in _open
}

readings contains row if {
	some rows in _beyond
	some row in spans.told(figures, rows)
}

exempt contains spans.exempt(input.joist_spans[i], row) if {
	some i, rows in _beyond
	some row in rows
	spans.apart(figures, row)
}

exempt contains object.union(gap, {"at": input.joist_spans[i].at, "because": "left_out"}) if {
	some i, gap in _gap
	figures.excerpt
}

_needs[i] contains need if {
	some i, span in input.joist_spans
	i in _open
	not _beyond[i]
	some need in spans.missing(span)
	not need in _idle
}

# A table that is not read by snow does not ask for it.
_idle contains "site.ground_snow_load" if figures.without_snow

_needs[i] contains need if {
	some i, span in input.joist_spans
	not _beyond[i]
	not _measured[i]
	some need in span.missing
}

unknown contains {"at": input.joist_spans[i].joists, "needs": need} if {
	some i, needs in _needs
	some need in needs
	not startswith(need, "site.")
}

unknown contains {"at": input.site.at, "needs": need} if {
	some need in _needs[_]
	startswith(need, "site.")
}
