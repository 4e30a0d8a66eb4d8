# METADATA
# title: Planter on the deck
# description: A planter that stands on a platform, which no table of spans was made for.
# custom:
#   id: scope/planter
#   aliases: []
#   consequence: structure
#   why: Wet soil weighs as much as stone, and it stays there the year round.
#   applies_when: a planter stands on the deck
#   figures:
#     covered: {type: flag, relation: exactly, about: true where the set's tables hold for it}
#   values: {what: words, weight: force}
#   messages:
#     outside: "a {what} stands on the deck: outside the prescriptive tables, a licensed engineer is needed"
#     weighed: "a {what} of {weight} stands on the deck: outside the prescriptive tables, a licensed engineer is needed"
#   mend: ["a design by a licensed engineer for what stands there"]
package checks.scope.planter

import data.figures.scope.planter as figures

applies if count(_found) > 0

_found contains special if {
	some special in input.specials
	special.kind == "planter"
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
