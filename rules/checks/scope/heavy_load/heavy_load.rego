# METADATA
# title: Heavy things on the deck
# description: Kitchens, fireplaces, privacy walls and other heavy things that stand on a platform, which no table of spans was made for.
# custom:
#   id: scope/heavy-load
#   aliases: []
#   consequence: structure
#   why: The tables count on people spread over the deck, not on a weight that stands on three joists.
#   applies_when: something heavy stands on the deck
#   figures:
#     covered: {type: flag, relation: exactly, about: true where the set's tables hold for it}
#   values: {what: words, weight: force}
#   messages:
#     outside: "a heavy thing ({what}) stands on the deck: outside the prescriptive tables, a licensed engineer is needed"
#     weighed: "a heavy thing ({what}) of {weight} stands on the deck: outside the prescriptive tables, a licensed engineer is needed"
#   mend: ["a design by a licensed engineer for what stands there"]
package checks.scope.heavy_load

import data.figures.scope.heavy_load as figures

applies if count(_found) > 0

_found contains special if {
	some special in input.specials
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
