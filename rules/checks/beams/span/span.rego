# METADATA
# title: Beam span
# description: The span of each bay of a beam, measured as the table measures it, against the table for its species, size, plies, load and the joists on it.
# custom:
#   id: beams/span
#   aliases: []
#   consequence: structure
#   why: One beam carries half of the deck, and when it breaks all joists on it come down together.
#   applies_when: beams are described
#   figures:
#     basis: {type: words, about: "how the table measures beams: clear span or span to center"}
#     joist_basis: {type: words, about: "how the table measures the joists on them: clear span, span to center, or span and cantilever"}
#     both_sides: {type: flag, relation: exactly, about: true where the table holds for joists that reach the beam from both sides}
#     groups: {type: groups, about: species that share the rows of the table}
#     grades: {type: list, about: grades that the table was made for}
#     live_steps: {type: steps, about: load column under which a live load is read}
#     factors: {type: table, optional: true, value: length, keys: [cantilever], relation: at most, about: "effective span of joists that span the length factor_of, by their cantilever past the beam"}
#     factor_of: {type: length, optional: true, about: joist span for which the factors are given}
#     without_snow: {type: flag, optional: true, about: true where the table is not read by snow}
#     excerpt: {type: flag, optional: true, about: "true where the set holds a few cells of the printed table only, and leaves alone what they do not reach"}
#     spans: {type: table, value: length, gaps: true, keys: [group, size, load, joist_span], relation: at most, about: "greatest span of the beam; a size names plies and stock"}
#   values: {beam: part, bay: count, joists: length, past: length, species: words, grade: words, size: words, load: pressure}
#   messages:
#     outside: "beam {beam} spans {have} in bay {bay} below joists that span {joists}, the limit is {limit}"
#     effective: "beam {beam} spans {have} in bay {bay} below joists with an effective span of {joists}, the limit is {limit}"
#     not_permitted: "the table gives no span for a beam of {size} of this species: an engineer is needed"
#     left_out: "this set does not hold the cell of the table for a beam of {size} below joists that span {joists}: the printed table or an engineer is needed"
#     beyond_species: "species {species} is outside this table: an engineer is needed"
#     beyond_grade: "grade {grade} is outside this table: an engineer is needed"
#     beyond_size: "a beam of {size} is outside this table: an engineer is needed"
#     beyond_load: "this set holds no beam span for a load of {load}: the printed table or an engineer is needed"
#     beyond_joists: "beam {beam} below joists that span {joists} is outside this table: an engineer is needed"
#     beyond_sides: "joists reach beam {beam} from both sides, which is outside this table: an engineer is needed"
#     beyond_cantilever: "joists reach past beam {beam} by {past} on a span of {joists}, which is outside this table: an engineer is needed"
#   exempt:
#     left_out: "the set does not hold the cell of the table for a beam of {size} below joists that span {joists}; the printed table decides"
#     beyond_species: "the set does not hold what the table says of species {species}; the printed table decides"
#     beyond_grade: "the set does not hold what the table says of grade {grade}; the printed table decides"
#     beyond_size: "the set does not hold what the table says of a beam of {size}; the printed table decides"
#     beyond_joists: "the set does not hold what the table says of beam {beam} below joists that span {joists}; the printed table decides"
#   unmended: [beyond_species, beyond_grade, beyond_load, beyond_sides]
#   mend:
#     - "posts closer together, or one more post"
#     - "a deeper beam, or one more ply"
#   tries: [another-post, beam-size, beam-plies, lumber-grade, beam-place]
package checks.beams.span

import data.figures.beams.span as figures
import data.lib.beams
import data.lib.members
import data.lib.spans

applies if count(input.beam_spans) > 0

_owners := {"site": input.site.at, "house": input.house.at}

_measured[i] := members.span(figures.basis, bay) if some i, bay in input.beam_spans

_beyond[i] := rows if {
	some i, bay in input.beam_spans
	rows := beams.beyond(figures, bay)
	count(rows) > 0
}

_cell[i] := [spans.group(figures, bay), beams.named(bay).size.value, load, row] if {
	some i, bay in input.beam_spans
	not _beyond[i]
	load := spans.column(figures.spans.breaks.load, max(spans.loads(figures, bay)))
	row := spans.column(figures.spans.breaks.joist_span, beams.effective(figures, bay))
}

_limit[i] := figures.spans.cells[group][size][load][row] if some i, [group, size, load, row] in _cell

_say := "effective" if figures.factors

else := "outside"

_row[i] := {
	"at": _measured[i].at, "have": _measured[i].value,
	"figure": "spans", "limit": limit, "cell": _cell[i],
	"outside": _measured[i].value > limit, "say": _say,
	"beam": bay.beam, "bay": bay.bay, "joists": beams.effective(figures, bay),
} if {
	some i, limit in _limit
	is_number(limit)
	bay := input.beam_spans[i]
}

_row[i] := {
	"at": input.beam_spans[i].at, "figure": "spans", "cell": _cell[i],
	"outside": true, "say": "not_permitted", "size": _cell[i][1],
} if {
	some i, limit in _limit
	is_null(limit)
}

_gap[i] := {"size": _cell[i][1], "joists": beams.effective(figures, bay)} if {
	some i, bay in input.beam_spans
	is_string(_limit[i])
}

_row[i] := object.union(gap, {
	"at": input.beam_spans[i].at, "figure": "spans", "cell": _cell[i],
	"outside": true, "say": "left_out",
}) if {
	some i, gap in _gap
	not figures.excerpt
}

# What is not shown matters only where more of it could still bring the span outside.
_open contains i if {
	some i, bay in input.beam_spans
	not _row[i].outside
	not spans.complete(figures, bay)
}

_open contains i if {
	some i, _ in input.beam_spans
	not _row[i]
	not _gap[i]
}

readings contains spans.beside(row, input.beam_spans[i]) if {
	some i, row in _row
	not i in _open
}

readings contains row if {
	some row in _beyond[_]
	not spans.apart(figures, row)
}

exempt contains spans.exempt(input.beam_spans[i], row) if {
	some i, rows in _beyond
	some row in rows
	spans.apart(figures, row)
}

exempt contains object.union(gap, {"at": input.beam_spans[i].at, "because": "left_out"}) if {
	some i, gap in _gap
	figures.excerpt
}

unknown contains {"at": members.place(_owners, bay.at, need), "needs": need} if {
	some i, bay in input.beam_spans
	i in _open
	not _beyond[i]
	some need in beams.needs(figures, bay)
	not need in _idle
}

# A table that is not read by snow does not ask for it.
_idle contains "site.ground_snow_load" if figures.without_snow
