# METADATA
# title: Deck above the deck
# description: An upper deck or platform that stands on the framing of a lower one.
# custom:
#   id: scope/stacked-platform
#   aliases: []
#   consequence: structure
#   why: The lower frame gets the people of both decks, through posts that stand where no beam was meant to be.
#   applies_when: something that stands on the framing is described
#   figures:
#     covered: {type: flag, relation: exactly, about: true where the set's tables hold for it}
#   values: {what: words, weight: force}
#   messages:
#     outside: "the framing carries another deck ({what}): outside the prescriptive tables, a licensed engineer is needed"
#     weighed: "the framing carries another deck ({what}) of {weight}: outside the prescriptive tables, a licensed engineer is needed"
#     other: "what stands there is {what}"
#   mend: ["a design by a licensed engineer for what stands there"]
#   tries: []
package checks.scope.stacked_platform

import data.figures.scope.stacked_platform as figures

applies if count(input.specials) > 0

_found[i] := special if {
	some i, special in input.specials
	special.kind in {"upper deck", "stacked platform"}
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
