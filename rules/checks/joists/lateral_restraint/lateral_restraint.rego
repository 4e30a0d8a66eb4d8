# METADATA
# title: Joists kept from rolling over
# description: What holds the joists upright at their ends and on the beams, against the ways that the set accepts, and the depth of blocking that is not full.
# custom:
#   id: joists/lateral-restraint
#   aliases: []
#   consequence: structure
#   why: A deep narrow joist rolls over sideways under load unless something holds it upright where it bears.
#   applies_when: joists are described
#   figures:
#     ends: {type: list, relation: one of, about: accepted ways to restrain the ends}
#     at_beams: {type: list, relation: one of, about: accepted ways to restrain joists on a beam}
#     min_share: {type: ratio, unit: of the depth of the joist, relation: at least, about: least depth of blocking as a share of the joist}
#   values: {depth: length, joist: length}
#   messages:
#     outside: "restraint of the joist ends is {have}, accepted are {limit}"
#     within: "restraint of the joist ends is {have}"
#     beams: "restraint of the joists on the beams is {have}, accepted are {limit}"
#     shallow: "blocking on the beams is {depth} deep, at least {limit} of the {joist} joist is asked for"
#   mend: ["full-depth blocking between the joists on every beam, a rim joist nailed to every end"]
#   tries: [accepted-word]
package checks.joists.lateral_restraint

import data.figures.joists.lateral_restraint as figures

applies if count(input.joists) > 0

_carried[i] := joists if {
	some i, joists in input.joists
	not joists.beams_crossed.value == 0
}

_partial[i] := joists if {
	some i, joists in _carried
	joists.restraint_at_beams.value == "partial-depth blocking"
}

_free contains i if {
	some i, joists in input.joists
	not joists.restraint_at_ends.value in figures.ends
}

_rolling contains i if {
	some i, joists in _carried
	not joists.restraint_at_beams.value in figures.at_beams
}

readings contains {
	"at": joists.restraint_at_ends.at, "have": joists.restraint_at_ends.value,
	"figure": "ends", "limit": figures.ends,
	"outside": i in _free,
} if {
	some i, joists in input.joists
}

readings contains {
	"at": joists.restraint_at_beams.at, "have": joists.restraint_at_beams.value,
	"figure": "at_beams", "limit": figures.at_beams,
	"outside": i in _rolling,
	"say": "beams",
} if {
	some i, joists in _carried
	not _partial[i]
}

readings contains {
	"at": joists.restraint_depth.at,
	"have": {"rise": joists.restraint_depth.value, "run": joists.depth.value},
	"figure": "min_share", "limit": figures.min_share,
	"outside": (joists.restraint_depth.value * figures.min_share.run) < (joists.depth.value * figures.min_share.rise),
	"say": "shallow", "depth": joists.restraint_depth.value, "joist": joists.depth.value,
} if {
	some joists in _partial
}

unknown contains {"at": joists.at, "needs": "platforms[].joists.lateral_restraint.ends"} if {
	some joists in input.joists
	not joists.restraint_at_ends
}

unknown contains {"at": joists.at, "needs": "platforms[].joists.lateral_restraint.at_beams"} if {
	some joists in _carried
	not joists.restraint_at_beams
}

unknown contains {"at": joists.at, "needs": "platforms[].joists.lateral_restraint.depth"} if {
	some joists in _partial
	not joists.restraint_depth
}

unknown contains {"at": joists.at, "needs": "platforms[].joists.size"} if {
	some joists in _partial
	not joists.depth
}
