# METADATA
# title: Depth of a flush beam
# description: The depth of a beam between whose faces joists hang, against the depth of those joists.
# custom:
#   id: beams/depth
#   aliases: []
#   consequence: structure
#   why: A joist that is deeper than the beam hangs in it by part of its depth and splits at the hanger.
#   applies_when: joists hang on a flush beam
#   figures:
#     below_joists: {type: length, relation: at least, about: how much deeper than the joists the beam is}
#   values: {beam: part}
#   messages:
#     outside: "flush beam {beam} is {have} deep, its joists {limit}"
#     within: "flush beam {beam} is {have} deep, at least {limit} is asked for"
#   exempt:
#     dropped: "joists lie on the beam"
#   mend: ["a beam as deep as the joists", "the beam below the joists instead of between them"]
#   tries: [beam-size]
package checks.beams.depth

import data.figures.beams.depth as figures

applies if {
	some beam in input.beams
	not beam.kind.value == "dropped"
}

_flush[i] := beam if {
	some i, beam in input.beams
	beam.kind.value == "flush"
}

readings contains {
	"at": beam.depth.at, "have": beam.depth.value,
	"figure": "below_joists", "limit": beam.joist_depth.value + figures.below_joists,
	"outside": beam.depth.value < (beam.joist_depth.value + figures.below_joists),
	"beam": beam.mark,
} if {
	some beam in _flush
}

exempt contains {"at": beam.at, "because": "dropped"} if {
	some beam in input.beams
	beam.kind.value == "dropped"
}

unknown contains {"at": beam.at, "needs": "platforms[].beams[].kind"} if {
	some beam in input.beams
	not beam.kind
}

unknown contains {"at": beam.at, "needs": need} if {
	some beam in _flush
	some name, need in {"depth": "platforms[].beams[].size", "joist_depth": "platforms[].joists.size"}
	not beam[name]
}
