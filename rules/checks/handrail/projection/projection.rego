# METADATA
# title: Projection of a handrail
# description: How far a handrail stands out into the width of the stair, against the set's greatest.
# custom:
#   id: handrail/projection
#   aliases: []
#   consequence: life safety
#   why: A rail that stands out too far takes away the width in which people pass, and clothes catch on it.
#   applies_when: a stair is described
#   reads: [handrail/required]
#   figures:
#     max: {type: length, relation: at most, about: greatest projection into the stair on either side}
#   values: {risers: count, from: count, rise: length, rise_from: length}
#   messages:
#     outside: "the handrail stands out {have} into the stair, the limit is {limit}"
#   exempt:
#     few: "no flight has more than {risers} risers, a handrail is asked for from {from}"
#     low: "the stair rises {rise}, a handrail is asked for from {rise_from}"
#     none: "no handrail is shown; see handrail/required"
#   mend:
#     - "brackets or a profile that stand out less: look at the clear space behind it again"
#   tries: [quarters]
package checks.handrail.projection

import data.figures.handrail.projection as figures
import data.figures.handrail.required
import data.lib.handrail as lib

applies if count(input.handrails) > 0

readings contains {
	"at": rail.projection.at, "have": rail.projection.value,
	"figure": "max", "limit": figures.max,
	"outside": rail.projection.value > figures.max,
} if {
	some rail in input.handrails
	not lib.spared(rail, required)
}

unknown contains {"at": rail.at, "needs": "stairs[].handrail.projection"} if {
	some rail in input.handrails
	not lib.spared(rail, required)
	not rail.projection
}

exempt contains row if {
	some rail in input.handrails
	row := lib.spared(rail, required)
}
