# METADATA
# title: Roof over the deck
# description: A roof that stands on the deck, which no table of spans was made for.
# custom:
#   id: scope/roof
#   aliases: []
#   consequence: structure
#   why: A roof brings its own weight, snow and wind down through a few posts, and lifts them as well.
#   applies_when: something that stands on the framing is described
#   figures:
#     covered: {type: flag, relation: exactly, about: true where the set's tables hold for it}
#   values: {what: words, weight: force}
#   messages:
#     outside: "a {what} stands on the deck: outside the prescriptive tables, a licensed engineer is needed"
#     weighed: "a {what} of {weight} stands on the deck: outside the prescriptive tables, a licensed engineer is needed"
#     other: "what stands there is {what}"
#   mend: ["a design by a licensed engineer for what stands there"]
#   tries: []
package checks.scope.roof

import data.figures.scope.roof as figures

applies if count(input.specials) > 0

_found[i] := special if {
	some i, special in input.specials
	special.kind in {"roof"}
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
