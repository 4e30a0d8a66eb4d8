# METADATA
# title: Clear space behind a handrail
# description: The clear space between a handrail and the wall or guard beside it, against the set's least.
# custom:
#   id: handrail/clearance
#   aliases: []
#   consequence: life safety
#   why: A hand that does not fit behind the rail cannot close round it.
#   applies_when: a stair is described
#   reads: [handrail/required]
#   figures:
#     min: {type: length, relation: at least, about: least clear space behind the rail}
#   values: {risers: count, from: count, rise: length, rise_from: length}
#   messages:
#     outside: "the clear space behind the handrail is {have}, the limit is {limit}"
#   exempt:
#     few: "no flight has more than {risers} risers, a handrail is asked for from {from}"
#     low: "the stair rises {rise}, a handrail is asked for from {rise_from}"
#     none: "no handrail is shown; see handrail/required"
#   mend:
#     - "longer brackets: look at the projection again"
#   tries: [quarters]
package checks.handrail.clearance

import data.figures.handrail.clearance as figures
import data.figures.handrail.required
import data.lib.handrail as lib

applies if count(input.handrails) > 0

readings contains {
	"at": rail.clearance.at, "have": rail.clearance.value,
	"figure": "min", "limit": figures.min,
	"outside": rail.clearance.value < figures.min,
} if {
	some rail in input.handrails
	not lib.spared(rail, required)
}

unknown contains {"at": rail.at, "needs": "stairs[].handrail.clearance"} if {
	some rail in input.handrails
	not lib.spared(rail, required)
	not rail.clearance
}

exempt contains row if {
	some rail in input.handrails
	row := lib.spared(rail, required)
}
