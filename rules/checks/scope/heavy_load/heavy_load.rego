# METADATA
# title: Heavy things on the deck
# description: Kitchens, fireplaces, privacy walls and other heavy things that stand on a platform, which no table of spans was made for.
# custom:
#   id: scope/heavy-load
#   aliases: []
#   consequence: structure
#   why: The tables count on people spread over the deck, not on a weight that stands on three joists.
#   applies_when: something that stands on the framing is described
#   figures:
#     covered: {type: flag, relation: exactly, about: true where the set's tables hold for it}
#   values: {what: words, weight: force}
#   messages:
#     outside: "a heavy thing ({what}) stands on the deck: outside the prescriptive tables, a licensed engineer is needed"
#     weighed: "a heavy thing ({what}) of {weight} stands on the deck: outside the prescriptive tables, a licensed engineer is needed"
#     other: "what stands there is {what}"
#   mend: ["a design by a licensed engineer for what stands there"]
#   tries: []
package checks.scope.heavy_load

import data.figures.scope.heavy_load as figures

applies if count(input.specials) > 0

_found[i] := special if {
	some i, special in input.specials
	special.kind in {"outdoor kitchen", "fireplace", "privacy wall", "other"}
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
