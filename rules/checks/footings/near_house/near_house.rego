# METADATA
# title: Footing close to the house
# description: The depth of a footing that stands close to the house, against the depth of the house footing.
# custom:
#   id: footings/near-house
#   aliases: []
#   consequence: structure
#   why: The soil beside a house was dug out and filled in again, down to the house footing, and a footing on that fill sinks.
#   applies_when: footings are described beside a house
#   figures:
#     near: {type: length, about: distance from the house within which the soil counts as disturbed}
#     below_house: {type: length, relation: at least, about: how far below the underside of the house footing such a footing reaches}
#   values: {beam: part, n: count, distance: length, near: length}
#   messages:
#     outside: "footing {n} below beam {beam} stands {distance} from the house and is {have} deep, the house footing asks for {limit}"
#     within: "footing {n} below beam {beam} stands {distance} from the house and is {have} deep, the house footing asks for {limit}"
#   exempt:
#     far: "footing {n} below beam {beam} stands {distance} from the house, which is not within {near} of it"
#   mend: ["the footing as deep as the house footing", "the beam further out, with the footings on undisturbed soil"]
#   tries: [whole-inches]
package checks.footings.near_house

import data.figures.footings.near_house as figures

applies if {
	count(input.footings) > 0
	count(input.house.at) > 0
}

_near[i] := footing if {
	some i, footing in input.footings
	footing.to_house.value < figures.near
}

_depth[i] := footing.near_house_depth if some i, footing in _near

_depth[i] := footing.depth if {
	some i, footing in _near
	not footing.near_house_depth
}

readings contains {
	"at": depth.at, "have": depth.value,
	"figure": "below_house", "limit": _near[i].foundation_depth.value + figures.below_house,
	"outside": depth.value < (_near[i].foundation_depth.value + figures.below_house),
	"beam": _near[i].beam, "n": _near[i].n, "distance": _near[i].to_house.value,
} if {
	some i, depth in _depth
}

exempt contains {
	"at": footing.at, "because": "far", "beam": footing.beam, "n": footing.n,
	"distance": footing.to_house.value, "near": figures.near,
} if {
	some footing in input.footings
	footing.to_house.value >= figures.near
}

unknown contains {"at": footing.at, "needs": "platforms[].footings.distance_from_house"} if {
	some footing in input.footings
	not footing.to_house
}

unknown contains {"at": _near[i].at, "needs": "platforms[].footings.near_house_depth"} if {
	some i, _ in _near
	not _depth[i]
}

unknown contains {"at": input.house.at, "needs": "house.foundation_depth"} if {
	some footing in _near
	not footing.foundation_depth
}
