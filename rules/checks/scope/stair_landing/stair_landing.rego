# METADATA
# title: Stair that lands on the framing
# description: A stair or its landing that sets its foot on the framing of a platform.
# custom:
#   id: scope/stair-landing
#   aliases: []
#   consequence: structure
#   why: The foot of a stair sets half its load down on one joist, where the tables count on an even load.
#   applies_when: something that stands on the framing is described
#   figures:
#     covered: {type: flag, relation: exactly, about: true where the set's tables hold for it}
#   values: {what: words, weight: force}
#   messages:
#     outside: "a stair lands on the framing: outside the prescriptive tables, a licensed engineer is needed"
#     weighed: "a stair landing of {weight} stands on the framing: outside the prescriptive tables, a licensed engineer is needed"
#     other: "what stands there is {what}"
#   mend: ["a design by a licensed engineer for what stands there"]
#   tries: []
package checks.scope.stair_landing

import data.figures.scope.stair_landing as figures

applies if count(input.specials) > 0

_found[i] := special if {
	some i, special in input.specials
	special.kind in {"stair landing", "stair on a platform"}
}

_weight(special) := {"say": "weighed", "weight": special.weight.value} if special.weight

_weight(special) := {"say": "outside"} if not special.weight

readings contains object.union(
	{
		"at": special.at, "have": true,
		"figure": "covered", "limit": figures.covered,
		"outside": figures.covered == false, "what": special.kind,
	},
	_weight(special),
) if {
	some special in _found
}

readings contains {
	"at": special.at, "have": false,
	"figure": "covered", "limit": figures.covered,
	"outside": false, "say": "other", "what": special.kind,
} if {
	some i, special in input.specials
	special.kind != ""
	not _found[i]
}

unknown contains {"at": special.at, "needs": "platforms[].loads[].kind"} if {
	some special in input.specials
	special.kind == ""
}
