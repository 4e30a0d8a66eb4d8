# METADATA
# title: Hot tub on the deck
# description: A hot tub that stands on a platform, which no table of spans was made for.
# custom:
#   id: scope/hot-tub
#   aliases: []
#   consequence: structure
#   why: Water, tub and bathers weigh more than twice what a deck is made for, on a small part of it.
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
package checks.scope.hot_tub

import data.figures.scope.hot_tub as figures

applies if count(input.specials) > 0

_found[i] := special if {
	some i, special in input.specials
	special.kind in {"hot tub"}
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
