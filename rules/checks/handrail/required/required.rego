# METADATA
# title: Handrail
# description: Whether a stair whose longest flight has as many risers as the set names has a handrail, and on how many sides.
# custom:
#   id: handrail/required
#   aliases: []
#   consequence: life safety
#   why: Who stumbles on a stair is caught by the hand that holds a rail, or not at all.
#   applies_when: a stair is described
#   figures:
#     from: {type: count, relation: at least, about: risers of a flight from which a handrail is asked for}
#     sides: {type: count, relation: at least, about: sides of the stair that need a handrail}
#   values: {risers: count, from: count}
#   messages:
#     outside: "a flight of {risers} risers and no handrail is shown, one is asked for from {from}"
#     sides: "sides of the stair that have a handrail: {have}, the limit is {limit}"
#   exempt:
#     few: "no flight has more than {risers} risers, a handrail is asked for from {from}"
#   mend:
#     - "a handrail that can be grasped along the whole flight"
package checks.handrail.required

import data.figures.handrail.required as figures

applies if count(input.handrails) > 0

_sides(rail) := 0 if not rail.present

_sides(rail) := rail.sides.value if rail.present

# A handrail whose sides are not told stands on one of them at the least.
_sides(rail) := 1 if {
	rail.present
	not rail.sides
	figures.sides == 1
}

_say := {true: "sides", false: "outside"}

readings contains {
	"at": rail.at, "have": sides,
	"figure": "sides", "limit": figures.sides,
	"outside": sides < figures.sides,
	"say": _say[rail.present],
	"risers": rail.risers.value, "from": figures.from,
} if {
	some rail in input.handrails
	rail.risers.value >= figures.from
	sides := _sides(rail)
}

exempt contains {
	"at": rail.at, "because": "few",
	"risers": rail.risers.value, "from": figures.from,
} if {
	some rail in input.handrails
	rail.risers.value < figures.from
}

unknown contains {"at": rail.at, "needs": "stairs[].risers"} if {
	some rail in input.handrails
	not rail.risers
}

unknown contains {"at": rail.at, "needs": "stairs[].handrail.sides"} if {
	some rail in input.handrails
	rail.risers.value >= figures.from
	not _sides(rail)
}
