# METADATA
# title: Footing depth
# description: The depth of each footing, against the least depth and, where frost reaches the deck, against the frost depth of the place.
# custom:
#   id: footings/depth
#   aliases: [footings/frost-depth]
#   consequence: structure
#   why: Frost lifts a shallow footing in winter and lets it down elsewhere in spring, with the deck and its ledger.
#   applies_when: footings are described under posts
#   figures:
#     min: {type: length, relation: at least, about: least depth of any footing}
#     below_frost: {type: length, optional: true, relation: at least, about: how far below the frost depth a footing reaches}
#     frost: {type: length, optional: true, relation: at least, about: "frost depth of the place, given instead of that of the site"}
#     freestanding: {type: flag, optional: true, about: true where a freestanding deck reaches below frost as well}
#     solid: {type: list, optional: true, about: ground on which a footing may stand above the frost depth}
#   values: {beam: part, n: count, ground: words}
#   messages:
#     outside: "footing {n} below beam {beam} is {have} deep, the limit is {limit}"
#     within: "footing {n} below beam {beam} is {have} deep, the limit is {limit}"
#     frost: "footing {n} below beam {beam} is {have} deep, frost asks for {limit}"
#   exempt:
#     protected: "footing {n} below beam {beam} is protected from frost in another way"
#     freestanding: "a freestanding deck may stand above the frost depth"
#     solid: "footing {n} below beam {beam} stands on {ground}"
#   mend: ["footings deeper, on undisturbed soil"]
#   tries: [whole-inches]
package checks.footings.depth

import data.figures.footings.depth as figures

applies if count(input.footings) > 0

# The least depth is measured in undisturbed soil where that is shown.
_depth[i] := footing.depth_in_soil if some i, footing in input.footings

_depth[i] := footing.depth if {
	some i, footing in input.footings
	not footing.depth_in_soil
}

_solid contains i if {
	some i, footing in input.footings
	footing.soil.value in figures.solid
}

_free[i] contains "solid" if some i in _solid

_free[i] contains "protected" if {
	some i, footing in input.footings
	footing.frost_protected.value
}

_free[i] contains "freestanding" if {
	some i, footing in input.footings
	footing.freestanding
	figures.freestanding == false
}

_frozen[i] := footing if {
	some i, footing in input.footings
	figures.below_frost
	not _free[i]
}

_due[i] := footing if {
	some i, footing in input.footings
	not i in _solid
}

readings contains {
	"at": _depth[i].at, "have": _depth[i].value,
	"figure": "min", "limit": figures.min,
	"outside": _depth[i].value < figures.min,
	"beam": footing.beam, "n": footing.n,
} if {
	some i, footing in _due
}

readings contains {
	"at": footing.depth.at, "have": footing.depth.value,
	"figure": _by_frost, "limit": least,
	"outside": footing.depth.value < least, "say": "frost",
	"beam": footing.beam, "n": footing.n,
} if {
	some footing in _frozen
	least := _frost(footing) + figures.below_frost
}

_by_frost := "frost" if figures.frost

else := "below_frost"

_frost(_) := figures.frost

_frost(footing) := footing.frost_depth.value if not figures.frost

exempt contains {"at": footing.at, "because": "solid", "beam": footing.beam, "n": footing.n, "ground": footing.soil.value} if {
	some i in _solid
	footing := input.footings[i]
}

exempt contains {"at": footing.at, "because": because, "beam": footing.beam, "n": footing.n} if {
	figures.below_frost
	some i, footing in _due
	some because in _free[i]
}

unknown contains {"at": footing.at, "needs": "platforms[].footings.depth"} if {
	some i, footing in _due
	not _depth[i]
}

unknown contains {"at": footing.at, "needs": "platforms[].footings.depth"} if {
	some footing in _frozen
	not footing.depth
}

unknown contains {"at": input.site.at, "needs": "site.frost_depth"} if {
	not figures.frost
	some footing in _frozen
	not footing.frost_depth
}
