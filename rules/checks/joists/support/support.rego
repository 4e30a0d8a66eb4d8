# METADATA
# title: Joists without support
# description: Joists that fewer than two supports carry, where the plan shows beams; they lie past the end of a beam, or the beams run along them.
# custom:
#   id: joists/support
#   aliases: []
#   consequence: structure
#   why: A joist that only one support carries is held by its fasteners alone.
#   applies_when: joists and beams are described
#   figures:
#     single: {type: flag, relation: exactly, about: whether joists with fewer than two supports are accepted}
#   values: {count: count, first: length, supports: count}
#   messages:
#     outside: "{count} joists, the first at {first}, have fewer than two supports, the least has {supports}"
#     within: "joists with fewer than two supports: {have}"
#   mend:
#     - "a beam that reaches below every joist, or runs across them"
#   tries: []
package checks.joists.support

import data.figures.joists.support as figures

applies if count(_framed) > 0

_framed contains joists if {
	some joists in input.joists
	some beam in input.beams
	beam.platform == joists.platform
}

_lost contains lost.at if some lost in input.unsupported

_open(joists) if not joists.beams_crossed

# A joist might end short of a beam that lies between the outline and the frame.
_open(joists) if joists.support_open

readings contains {
	"at": lost.at, "have": true, "figure": "single", "limit": figures.single,
	"outside": figures.single == false,
	"count": lost.count, "first": lost.first.value, "supports": lost.supports,
} if {
	some lost in input.unsupported
}

readings contains {"at": joists.at, "have": false, "figure": "single", "limit": false, "outside": false} if {
	some joists in _framed
	not joists.at in _lost
	not _open(joists)
}

unknown contains {"at": joists.at, "needs": need} if {
	some joists in _framed
	not joists.at in _lost
	_open(joists)
	some need in joists.missing
}
