# METADATA
# title: Joists without support
# description: Joists that fewer supports carry than the set asks for, where the plan shows beams; they lie past the end of a beam, or the beams run along them.
# custom:
#   id: joists/support
#   aliases: []
#   consequence: structure
#   why: A joist that only one support carries is held by its fasteners alone.
#   applies_when: joists and beams are described
#   figures:
#     min: {type: count, relation: at least, about: supports below every joist}
#   values: {count: count, first: length}
#   messages:
#     outside: "{count} joists, the first at {first}, have {have} supports or fewer, the limit is {limit}"
#     within: "every joist has the supports that the set asks for"
#   mend:
#     - "a beam that reaches below every joist, or runs across them"
package checks.joists.support

import data.figures.joists.support as figures

applies if count(_framed) > 0

_framed[joists.platform] := joists if {
	some joists in input.joists
	some beam in input.beams
	beam.platform == joists.platform
}

_lost[lost.platform] := lost if some lost in input.unsupported

readings contains {
	"at": lost.at, "have": lost.supports, "figure": "min", "limit": figures.min,
	"outside": lost.supports < figures.min,
	"count": lost.count, "first": lost.first.value,
} if {
	some platform, lost in _lost
	_framed[platform]
}

readings contains {"at": joists.at, "figure": "min", "outside": false} if {
	some platform, joists in _framed
	not _lost[platform]
	joists.count
}

unknown contains {"at": joists.at, "needs": need} if {
	some platform, joists in _framed
	not _lost[platform]
	not joists.count
	some need in joists.missing
}
