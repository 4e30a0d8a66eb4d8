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
#     joist_basis: {type: words, about: "how the table measures the joists on them: clear span or span to center"}
#     both_sides: {type: flag, relation: exactly, about: true where the table holds for joists that reach the beam from both sides}
#     groups: {type: groups, about: species that share the rows of the table}
#     grades: {type: list, about: grades that the table was made for}
#     live_steps: {type: steps, about: load column under which a live load is read}
#     factors: {type: table, optional: true, value: length, keys: [cantilever], relation: at most, about: "effective span of joists that span the length factor_of, by their cantilever past the beam"}
#     factor_of: {type: length, optional: true, about: joist span for which the factors are given}
#     spans: {type: table, value: length, keys: [group, size, load, joist_span], relation: at most, about: "greatest span of the beam; a size names plies and stock, as 2-2x10 or 4x10"}
#   values: {beam: words, bay: count, joists: length, past: length, species: words, grade: words, size: words, load: pressure}
#   messages:
#     outside: "beam {beam} spans {have} in bay {bay} below joists that span {joists}, the limit is {limit}"
#     effective: "beam {beam} spans {have} in bay {bay} below joists with an effective span of {joists}, the limit is {limit}"
#     not_permitted: "the table gives no span for a beam of {size} of this species: an engineer is needed"
#     beyond_species: "species {species} is outside this table: an engineer is needed"
#     beyond_grade: "grade {grade} is outside this table: an engineer is needed"
#     beyond_size: "a beam of {size} is outside this table: an engineer is needed"
#     beyond_load: "a load of {load} is outside this table: an engineer is needed"
#     beyond_joists: "beam {beam} below joists that span {joists} is outside this table: an engineer is needed"
#     beyond_sides: "joists reach beam {beam} from both sides, which is outside this table: an engineer is needed"
#     beyond_cantilever: "joists pass beam {beam} by {past} on a span of {joists}, which is outside this table: an engineer is needed"
#   mend:
#     - "posts closer together, or one more post"
#     - "a deeper beam, or one more ply"
package checks.beams.span

import data.figures.beams.span as figures
import data.lib.beams
import data.lib.members
import data.lib.spans

applies if count(input.beam_spans) > 0

_owners := {"site": input.site.at, "house": input.house.at}

_member[i] := beams.named(bay) if some i, bay in input.beam_spans

_measured[i] := members.span(figures.basis, bay) if some i, bay in input.beam_spans

_carried[i] := members.joists(figures.joist_basis, bay) if some i, bay in input.beam_spans

_effective[i] := carried.value if {
	some i, carried in _carried
	not figures.factors
}

_factor[i] := min([k |
	some k, cantilever in figures.factors.breaks.cantilever
	input.beam_spans[i].joist_cantilever.value * figures.factor_of <= carried.value * cantilever
]) if {
	some i, carried in _carried
}

# Part of a nanometre counts as a whole one, which keeps the effective span on its side of every break.
_effective[i] := ceil((_carried[i].value * figures.factors.cells[k]) / figures.factor_of) if some i, k in _factor

_beyond[i] contains row if {
	some i, member in _member
	some row in spans.beyond(figures, "spans", member)
}

_beyond[i] contains {
	"at": bay.at, "have": true, "figure": "both_sides", "limit": figures.both_sides,
	"outside": true, "say": "beyond_sides", "beam": bay.beam,
} if {
	some i, bay in input.beam_spans
	bay.both_sides
	figures.both_sides == false
}

_beyond[i] contains {
	"at": _carried[i].at, "figure": "spans",
	"outside": true, "say": "beyond_joists", "beam": input.beam_spans[i].beam, "joists": joists,
} if {
	some i, joists in _effective
	not spans.column(figures.spans.breaks.joist_span, joists)
}

_beyond[i] contains {
	"at": bay.joist_cantilever.at, "figure": "factors", "outside": true, "say": "beyond_cantilever",
	"beam": bay.beam, "past": bay.joist_cantilever.value, "joists": _carried[i].value,
} if {
	some i, bay in input.beam_spans
	figures.factors
	not _factor[i]
}

_cell[i] := [group, member.size.value, load, row] if {
	some i, member in _member
	not _beyond[i]
	group := spans.group(figures, member)
	load := spans.column(figures.spans.breaks.load, max(spans.loads(figures, member)))
	row := spans.column(figures.spans.breaks.joist_span, _effective[i])
}

_limit[i] := figures.spans.cells[group][size][load][row] if some i, [group, size, load, row] in _cell

_say := "effective" if figures.factors

else := "outside"

_row[i] := {
	"at": _measured[i].at, "have": _measured[i].value,
	"figure": "spans", "limit": limit, "cell": _cell[i],
	"outside": _measured[i].value > limit, "say": _say,
	"beam": input.beam_spans[i].beam, "bay": input.beam_spans[i].bay, "joists": _effective[i],
} if {
	some i, limit in _limit
	is_number(limit)
}

_row[i] := {
	"at": input.beam_spans[i].at, "figure": "spans", "cell": _cell[i],
	"outside": true, "say": "not_permitted", "size": _member[i].size.value,
} if {
	some i, limit in _limit
	is_null(limit)
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
}

readings contains spans.beside(row, input.beam_spans[i]) if {
	some i, row in _row
	not i in _open
}

readings contains row if some row in _beyond[_]

_needs[i] contains need if {
	some i, bay in input.beam_spans
	some need in ((members.missing(bay, {"size": "platforms[].beams[].size"}) | members.lumber(bay)) | members.loads(bay))
}

_needs[i] contains "platforms[].beams[].plies" if {
	some i, member in _member
	not member.size
	input.beam_spans[i].size
}

_needs[i] contains need if {
	some i, bay in input.beam_spans
	not _placed(i)
	some need in bay.missing
}

# Joists that bear on nothing else are short of a beam.
_needs[i] contains "platforms[].beams" if {
	some i, bay in input.beam_spans
	count(bay.missing) == 0
	not _effective[i]
}

_placed(i) if {
	_measured[i]
	_effective[i]
}

unknown contains {"at": members.place(_owners, bay.at, need), "needs": need} if {
	some i, bay in input.beam_spans
	i in _open
	not _beyond[i]
	some need in _needs[i]
}
