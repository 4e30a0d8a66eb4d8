# METADATA
# title: Continuity of a handrail
# description: Whether a handrail runs the whole flight without a break, and whether its ends return or end at a newel.
# custom:
#   id: handrail/continuity
#   aliases: []
#   consequence: life safety
#   why: A hand that slides along a rail is thrown off at a gap, and a sleeve or a strap catches on an end that stands free.
#   applies_when: a stair is described
#   reads: [handrail/required]
#   figures:
#     continuous: {type: flag, relation: exactly, about: whether the rail runs the whole flight without a break}
#     ended: {type: flag, relation: exactly, optional: true, about: whether ends return or end at a newel}
#   values: {risers: count, from: count, rise: length, rise_from: length}
#   messages:
#     outside: "the handrail does not run the whole flight without a break"
#     within: "the handrail runs the whole flight without a break"
#     free: "the ends of the handrail neither return nor end at a newel"
#     ended: "the ends of the handrail return or end at a newel"
#   exempt:
#     few: "no flight has more than {risers} risers, a handrail is asked for from {from}"
#     low: "the stair rises {rise}, a handrail is asked for from {rise_from}"
#     none: "no handrail is shown; see handrail/required"
#     not_asked: "this set asks neither for a handrail without a break nor for ends that return"
#   mend:
#     - "carry the rail from above the top riser to above the lowest"
#     - "return the ends to the wall or a post"
#   tries: [yes-no]
package checks.handrail.continuity

import data.figures.handrail.continuity as figures
import data.figures.handrail.required
import data.lib.handrail as lib

applies if count(input.handrails) > 0

_ends := {true: "ended", false: "free"}

readings contains {
	"at": rail.continuous.at, "have": rail.continuous.value,
	"figure": "continuous", "limit": figures.continuous,
	"outside": rail.continuous.value == false,
} if {
	figures.continuous
	some rail in input.handrails
	not lib.spared(rail, required)
}

unknown contains {"at": rail.at, "needs": "stairs[].handrail.continuous"} if {
	figures.continuous
	some rail in input.handrails
	not lib.spared(rail, required)
	not rail.continuous
}

readings contains {
	"at": rail.returns.at, "have": rail.returns.value,
	"figure": "ended", "limit": figures.ended,
	"outside": rail.returns.value == false,
	"say": _ends[rail.returns.value],
} if {
	figures.ended
	some rail in input.handrails
	not lib.spared(rail, required)
}

unknown contains {"at": rail.at, "needs": "stairs[].handrail.returns"} if {
	figures.ended
	some rail in input.handrails
	not lib.spared(rail, required)
	not rail.returns
}

exempt contains row if {
	some rail in input.handrails
	row := lib.spared(rail, required)
}

exempt contains {"at": rail.at, "because": "not_asked"} if {
	not figures.continuous
	not figures.ended
	some rail in input.handrails
	not lib.spared(rail, required)
}
