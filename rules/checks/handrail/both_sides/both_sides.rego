# METADATA
# title: Handrails on both sides
# description: The width of a stair with a handrail on one side, against the width from which the set asks for one on both.
# custom:
#   id: handrail/both-sides
#   aliases: []
#   consequence: life safety
#   why: Across a wide stair the one rail is out of reach of whoever walks on the other side.
#   applies_when: a stair is described
#   reads: [handrail/required]
#   figures:
#     from: {type: length, relation: less than, about: width of a stair from which both sides need a handrail}
#   values: {risers: count, from: count, rise: length, rise_from: length}
#   messages:
#     outside: "the stair is {have} wide and has a handrail on one side, from {limit} both sides need one"
#     within: "the stair is {have} wide, from {limit} both sides need a handrail"
#     both: "both sides have a handrail"
#   exempt:
#     few: "no flight has more than {risers} risers, a handrail is asked for from {from}"
#     low: "the stair rises {rise}, a handrail is asked for from {rise_from}"
#     none: "no handrail is shown; see handrail/required"
#   mend:
#     - "a handrail on the other side as well"
#   tries: [handrail-sides, handrail]
package checks.handrail.both_sides

import data.figures.handrail.both_sides as figures
import data.figures.handrail.required
import data.lib.handrail as lib

applies if count(input.handrails) > 0

_rails contains rail if {
	some rail in input.handrails
	not lib.spared(rail, required)
	not _both(rail)
}

_both(rail) if rail.sides.value == 2

readings contains {
	"at": array.concat(rail.at, rail.width.at), "have": rail.width.value,
	"figure": "from", "limit": figures.from,
	"outside": rail.width.value >= figures.from,
} if {
	some rail in _rails
	not _hangs(rail)
}

readings contains {"at": array.concat(rail.at, rail.sides.at), "figure": "from", "outside": false, "say": "both"} if {
	some rail in input.handrails
	not lib.spared(rail, required)
	_both(rail)
}

# On how many sides a handrail stands matters only to a wide stair.
_hangs(rail) if {
	not rail.sides
	rail.width.value >= figures.from
}

exempt contains row if {
	some rail in input.handrails
	row := lib.spared(rail, required)
}

unknown contains {"at": rail.at, "needs": "stairs[].width"} if {
	some rail in _rails
	not rail.width
}

unknown contains {"at": rail.at, "needs": "stairs[].handrail.sides"} if {
	some rail in _rails
	_hangs(rail)
}
