# METADATA
# title: Joist cantilever
# description: The length of joists past their last support, against a share of the span behind it and, where the set has one, against a table; the smaller governs.
# custom:
#   id: joists/cantilever
#   aliases: []
#   consequence: structure
#   why: A cantilever lifts the joists off their far support, and the longer it is, the more its tip moves.
#   applies_when: joists run past their last support
#   figures:
#     max: {type: length, optional: true, relation: at most, about: greatest cantilever whatever the span behind it}
#     max_ratio: {type: ratio, unit: of the span behind it, optional: true, relation: at most, about: greatest cantilever as a share of the span behind it}
#     groups: {type: groups, optional: true, about: species that share the rows of the table}
#     grades: {type: list, optional: true, about: grades that the table was made for}
#     live_steps: {type: steps, optional: true, about: load column under which a live load is read}
#     limits: {type: table, optional: true, value: length, keys: [group, size, back_span, load], relation: at most, about: greatest cantilever by the span behind it}
#     limits_by_spacing: {type: table, optional: true, value: length, keys: [group, size, spacing, load], relation: at most, about: greatest cantilever by the spacing of the joists}
#   values: {cantilever: length, back_span: length, spacing: length, species: words, grade: words, size: words, load: pressure}
#   messages:
#     outside: "cantilever is {cantilever} on a back-span of {back_span}, the limit is {limit} of it"
#     within: "cantilever is {cantilever} on a back-span of {back_span}, the limit is {limit} of it"
#     at_most: "cantilever is {cantilever} to the edge of the outline, or less where the frame ends behind it, on a back-span of {back_span}, the limit is {limit} of it"
#     reach: "cantilever is {have} to the edge of the outline, or less where the frame ends behind it, the limit is {limit}"
#     most: "cantilever is {have}, the limit is {limit}"
#     table: "cantilever is {have}, the table gives {limit} on a back-span of {back_span}"
#     table_by_spacing: "cantilever is {have}, the table gives {limit} for joists at {spacing}"
#     not_permitted: "cantilever is {cantilever}, the table gives none on a back-span of {back_span}"
#     beyond_species: "species {species} is outside the cantilever table: an engineer is needed"
#     beyond_grade: "grade {grade} is outside the cantilever table: an engineer is needed"
#     beyond_size: "joists of {size} are outside the cantilever table: an engineer is needed"
#     beyond_spacing: "joists at {spacing} are outside the cantilever table: an engineer is needed"
#     beyond_load: "this set holds no cantilever for a load of {load}: the printed table or an engineer is needed"
#     beyond_back_span: "a back-span of {back_span} is outside the cantilever table: an engineer is needed"
#   unmended: [beyond_species, beyond_grade, beyond_load]
#   mend:
#     - "the beam further out"
#     - "a shorter joist, with the rim closer to the beam"
#   tries: [beam-place, joist-size, joist-spacing, lumber-grade]
package checks.joists.cantilever

import data.figures.joists.cantilever as figures
import data.lib.spans

applies if count(input.joist_cantilevers) > 0

# A set gives one of two forms of table, or none.
_form := "limits" if figures.limits

_form := "limits_by_spacing" if figures.limits_by_spacing

_key := {"limits": "back_span", "limits_by_spacing": "spacing"}

# To the edge of the outline, where the frame's behind it is not shown: joists
# that are inside so far are so wherever the frame ends.
_reach[i] := joist.cantilever if some i, joist in input.joist_cantilevers

_reach[i] := joist.cantilever_at_most if {
	some i, joist in input.joist_cantilevers
	not joist.cantilever
}

_bounded contains i if {
	some i, joist in input.joist_cantilevers
	_reach[i]
	not joist.cantilever
}

_ratio[i] := {
	"at": _reach[i].at, "have": {"rise": _reach[i].value, "run": joist.back_span.value},
	"figure": "max_ratio", "limit": figures.max_ratio,
	"outside": (_reach[i].value * figures.max_ratio.run) > (joist.back_span.value * figures.max_ratio.rise),
	"cantilever": _reach[i].value, "back_span": joist.back_span.value,
} if {
	some i, joist in input.joist_cantilevers
}

_beyond[i] contains row if {
	some i, joist in input.joist_cantilevers
	some row in spans.beyond(figures, _form, joist)
}

_beyond[i] contains {
	"at": joist.back_span.at, "figure": "limits",
	"outside": true, "say": "beyond_back_span", "back_span": joist.back_span.value,
} if {
	some i, joist in input.joist_cantilevers
	joist.back_span
	not spans.column(figures.limits.breaks.back_span, joist.back_span.value)
	figures.limits
}

_cell[i] := [group, joist.size.value, row, column] if {
	some i, joist in input.joist_cantilevers
	not _beyond[i]
	group := spans.group(figures, joist)
	row := spans.column(figures[_form].breaks[_key[_form]], joist[_key[_form]].value)
	column := spans.column(figures[_form].breaks.load, max(spans.loads(figures, joist)))
}

_limit[i] := figures[_form].cells[group][size][row][column] if some i, [group, size, row, column] in _cell

_say := {"limits": "table", "limits_by_spacing": "table_by_spacing"}

_table[i] := {
	"at": _reach[i].at, "have": _reach[i].value,
	"figure": _form, "limit": _limit[i], "cell": _cell[i],
	"outside": _reach[i].value > _limit[i], "say": _say[_form], _key[_form]: joist[_key[_form]].value,
} if {
	some i, joist in input.joist_cantilevers
	is_number(_limit[i])
	_limit[i] * figures.max_ratio.run < joist.back_span.value * figures.max_ratio.rise
}

_table[i] := {
	"at": _reach[i].at, "figure": _form, "cell": _cell[i], "outside": true, "say": "not_permitted",
	"cantilever": _reach[i].value, "back_span": joist.back_span.value,
} if {
	some i, joist in input.joist_cantilevers
	is_null(_limit[i])
}

_most[i] := {
	"at": _reach[i].at, "have": _reach[i].value,
	"figure": "max", "limit": figures.max,
	"outside": _reach[i].value > figures.max, "say": "most",
} if {
	some i, joist in input.joist_cantilevers
}

_row[i] := row if some i, row in _table

_row[i] := row if {
	some i, row in _ratio
	not _table[i]
}

_row[i] := row if {
	some i, row in _most
	not figures.max_ratio
}

# A row that is inside stays open while the table, which may give less, cannot be read.
_open contains i if {
	some i, row in _row
	row.outside == false
	_form
	not spans.complete(figures, input.joist_cantilevers[i])
}

_open contains i if {
	some i, row in _row
	row.outside == false
	_form
	not _cell[i]
}

# One that is outside to the edge of the outline may yet be inside.
_open contains i if {
	some i in _bounded
	_row[i].outside
}

_open contains i if {
	some i in _bounded
	_most[i].outside
}

_worded(i, row) := row if not i in _bounded

_worded(i, row) := object.union(row, {"say": {true: "at_most", false: "reach"}[row.figure == "max_ratio"]}) if i in _bounded

readings contains spans.beside(_worded(i, row), input.joist_cantilevers[i]) if {
	some i, row in _row
	not i in _open
}

# Over the share, the table has nothing to add.
_decided[i] := row if {
	some i, row in _row
	row.outside
	not i in _bounded
}

# A limit that stands beside the share is told beside it.
readings contains _worded(i, row) if {
	some i, row in _most
	figures.max_ratio
	not i in _open
}

readings contains row if {
	some i, rows in _beyond
	not _decided[i]
	some row in rows
}

# The table by the span behind does not ask for the spacing.
_idle(joist) := spans.spacing(joist) if not figures.limits_by_spacing

else := set()

_needs[i] contains need if {
	some i, joist in input.joist_cantilevers
	i in _open
	_form
	not _beyond[i]
	some need in (spans.missing(joist) - _idle(joist))
}

_needs[i] contains need if {
	some i in _bounded
	i in _open
	not _beyond[i]
	some need in input.joist_cantilevers[i].missing
}

_needs[i] contains need if {
	some i, joist in input.joist_cantilevers
	not _row[i]
	not _beyond[i]
	some need in joist.missing
}

unknown contains {"at": input.joist_cantilevers[i].joists, "needs": need} if {
	some i, needs in _needs
	some need in needs
	not startswith(need, "site.")
}

unknown contains {"at": input.site.at, "needs": need} if {
	some need in _needs[_]
	startswith(need, "site.")
}
