# METADATA
# title: Slip class of treads
# description: The slip class of the treads when wet, against those that the set accepts.
# custom:
#   id: stairs/slip-class
#   aliases: []
#   consequence: life safety
#   why: A stair outdoors is walked on wet, and a smooth tread is slippery where the foot turns down.
#   applies_when: a stair is described
#   figures:
#     accepted: {type: list, relation: one of, about: slip classes for treads that get wet}
#   messages:
#     outside: "the slip class of the treads is {have}, accepted for wet ones: {limit}"
#   exempt: {}
#   mend:
#     - "treads or nosing strips of a listed class"
#   tries: [accepted-word]
package checks.stairs.slip_class

import data.figures.stairs.slip_class as figures

applies if count(input.stairs) > 0

_accepted contains upper(class) if some class in figures.accepted

readings contains {
	"at": stair.slip_class.at, "have": stair.slip_class.value,
	"figure": "accepted", "limit": figures.accepted,
	"outside": count({upper(stair.slip_class.value)} - _accepted) > 0,
} if {
	some stair in input.stairs
}

unknown contains {"at": stair.at, "needs": "stairs[].tread.slip_class"} if {
	some stair in input.stairs
	not stair.slip_class
}
