# METADATA
# title: Handrail
# description: Whether a stair that has as many risers or rises as much as the set names has a handrail, and on how many sides.
# custom:
#   id: handrail/required
#   aliases: []
#   consequence: life safety
#   why: Who stumbles on a stair is caught by the hand that holds a rail, or not at all.
#   applies_when: a stair is described
#   figures:
#     from: {type: count, unit: [riser, risers], relation: at least, optional: true, about: risers of a flight from which a handrail is asked for}
#     rise_from: {type: length, relation: at least, optional: true, about: rise of a stair from which a handrail is asked for}
#     sides: {type: count, unit: [handrail, handrails], relation: at least, about: sides of the stair that need a handrail}
#   values: {risers: count, from: count, rise: length, rise_from: length}
#   messages:
#     outside: "a flight of {risers} risers and no handrail is shown, one is asked for from {from}"
#     rise: "the stair rises {rise} and no handrail is shown, one is asked for from {rise_from}"
#     none: "no handrail is shown"
#     sides: "sides of the stair that have a handrail: {have}, the limit is {limit}"
#   exempt:
#     few: "no flight has more than {risers} risers, a handrail is asked for from {from}"
#     low: "the stair rises {rise}, a handrail is asked for from {rise_from}"
#   mend:
#     - "a handrail that can be grasped along the whole flight"
#   tries: [handrail-sides, handrail]
package checks.handrail.required

import data.figures.handrail.required as figures
import data.lib.handrail as lib

applies if count(input.handrails) > 0

# Why a handrail is asked for, and the words for one that is missing.
_asked(rail) := {"say": "outside", "risers": rail.risers.value, "from": figures.from} if {
	rail.risers.value >= figures.from
} else := {"say": "rise", "rise": rail.rise.value, "rise_from": figures.rise_from} if {
	rail.rise.value >= figures.rise_from
} else := {"say": "none"} if {
	not figures.from
	not figures.rise_from
}

_sides(rail) := 0 if not rail.present

_sides(rail) := rail.sides.value if rail.present

# A handrail whose sides are not told stands on one of them at the least.
_sides(rail) := 1 if {
	rail.present
	not rail.sides
	figures.sides == 1
}

readings contains object.union(asked, {
	"at": rail.at, "have": sides,
	"figure": "sides", "limit": figures.sides,
	"outside": sides < figures.sides,
	"say": say,
}) if {
	some rail in input.handrails
	asked := _asked(rail)
	sides := _sides(rail)
	say := {true: "sides", false: asked.say}[rail.present]
}

exempt contains row if {
	some rail in input.handrails
	row := lib.spared(rail, figures)
	row.because != "none"
}

unknown contains {"at": rail.at, "needs": "stairs[].risers"} if {
	figures.from
	some rail in input.handrails
	not rail.risers
}

unknown contains {"at": rail.at, "needs": "stairs[].total_rise"} if {
	figures.rise_from
	some rail in input.handrails
	not rail.rise
}

unknown contains {"at": rail.at, "needs": "stairs[].handrail.sides"} if {
	some rail in input.handrails
	_asked(rail)
	not _sides(rail)
}
