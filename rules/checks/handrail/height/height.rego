# METADATA
# title: Handrail height
# description: The height of a handrail above the line of the nosings, against the least and the greatest that the set gives.
# custom:
#   id: handrail/height
#   aliases: []
#   consequence: life safety
#   why: A rail that is too low or too high is not in reach when the body already falls.
#   applies_when: a stair is described
#   reads: [handrail/required]
#   figures:
#     min: {type: length, relation: at least, about: least height above the line of the nosings}
#     max: {type: length, relation: at most, optional: true, about: greatest height above the line of the nosings}
#   values: {risers: count, from: count, rise: length, rise_from: length}
#   messages:
#     outside: "the handrail is {have} above the nosings, the limit is {limit}"
#   exempt:
#     few: "no flight has more than {risers} risers, a handrail is asked for from {from}"
#     low: "the stair rises {rise}, a handrail is asked for from {rise_from}"
#     none: "no handrail is shown; see handrail/required"
#   mend:
#     - "set the rail again, measured plumb from the line of the nosings"
#   tries: [halves]
package checks.handrail.height

import data.figures.handrail.height as figures
import data.figures.handrail.required
import data.lib.handrail as lib

applies if count(input.handrails) > 0

readings contains {
	"at": rail.height.at, "have": rail.height.value,
	"figure": "min", "limit": figures.min,
	"outside": rail.height.value < figures.min,
} if {
	some rail in input.handrails
	not lib.spared(rail, required)
}

readings contains {
	"at": _top[i].at, "have": _top[i].value,
	"figure": "max", "limit": figures.max,
	"outside": _top[i].value > figures.max,
} if {
	some i, rail in input.handrails
	not lib.spared(rail, required)
}

_top[i] := rail.height_max if some i, rail in input.handrails

_top[i] := rail.height if {
	some i, rail in input.handrails
	not rail.height_max
}

unknown contains {"at": rail.at, "needs": "stairs[].handrail.height"} if {
	some rail in input.handrails
	not lib.spared(rail, required)
	not rail.height
}

exempt contains row if {
	some rail in input.handrails
	row := lib.spared(rail, required)
}
