# METADATA
# title: Soil below a footing
# description: What each footing stands on, against the ground that the set refuses.
# custom:
#   id: footings/soil
#   aliases: []
#   consequence: structure
#   why: Loose fill settles under load, and frozen soil turns soft when it thaws.
#   applies_when: footings are described under posts
#   figures:
#     refused: {type: list, about: ground on which no footing may stand}
#     loose: {type: list, optional: true, about: further ground on which no footing may stand}
#   messages:
#     outside: "the footing stands on {have}"
#     within: "the footing stands on {have}"
#   mend: ["the footing deeper, down to undisturbed soil", "fill that an engineer has had compacted and tested"]
#   tries: [footing-soil]
package checks.footings.soil

import data.figures.footings.soil as figures

applies if count(input.footings) > 0

_known[i] := footing if {
	some i, footing in input.footings
	footing.soil.value != "unknown"
}

_figure[i] := "refused" if {
	some i, footing in _known
	footing.soil.value in figures.refused
}

_figure[i] := "loose" if {
	some i, footing in _known
	footing.soil.value in figures.loose
	not footing.soil.value in figures.refused
}

readings contains {
	"at": _known[i].soil.at, "have": _known[i].soil.value,
	"figure": figure, "outside": true,
} if {
	some i, figure in _figure
}

readings contains {
	"at": footing.soil.at, "have": footing.soil.value,
	"figure": "refused", "outside": false,
} if {
	some i, footing in _known
	not _figure[i]
}

unknown contains {"at": footing.at, "needs": "platforms[].footings.soil"} if {
	some i, footing in input.footings
	not _known[i]
}
