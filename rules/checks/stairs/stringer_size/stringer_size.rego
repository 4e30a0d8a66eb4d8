# METADATA
# title: Size of the stringers
# description: The depth and the thickness of the stock of wood stringers, against the set's least. Stringers carried along their length may be thinner.
# custom:
#   id: stairs/stringer-size
#   aliases: []
#   consequence: structure
#   why: What the notches leave of a stringer carries the stair, and a thin one splits where treads are nailed to it.
#   applies_when: a stair is described
#   figures:
#     depth: {type: length, relation: at least, about: least depth of the stock}
#     thickness: {type: length, relation: at least, about: least thickness of the stock}
#     thickness_supported: {type: length, relation: at least, about: least thickness of stringers that are carried along their whole length}
#   values: {kind: words}
#   messages:
#     outside: "stringers are {have} deep, the limit is {limit}"
#     thickness: "stringers are {have} thick, the limit is {limit}"
#   exempt:
#     other: "stringers are {kind}, the set gives a size for wood"
#   mend:
#     - "stock of a larger size"
#   tries: [stringer-size]
package checks.stairs.stringer_size

import data.figures.stairs.stringer_size as figures

applies if count(input.stairs) > 0

_steel(stair) if stair.stringer_kind.value == "steel"

_wood contains stair if {
	some stair in input.stairs
	not _steel(stair)
}

readings contains {
	"at": stair.stringer_depth.at, "have": stair.stringer_depth.value,
	"figure": "depth", "limit": figures.depth,
	"outside": stair.stringer_depth.value < figures.depth,
} if {
	some stair in _wood
}

readings contains {
	"at": stair.stringer_thickness.at, "have": stair.stringer_thickness.value,
	"figure": figure, "limit": figures[figure],
	"outside": stair.stringer_thickness.value < figures[figure],
	"say": "thickness",
} if {
	some stair in _wood
	figure := _figure(stair)
}

_figure(stair) := "thickness_supported" if {
	stair.stringers_supported_along.value
} else := "thickness" if {
	stair.stringers_supported_along.value == false
} else := "thickness" if {
	stair.stringer_thickness.value >= figures.thickness
} else := "thickness_supported" if {
	stair.stringer_thickness.value < figures.thickness_supported
}

exempt contains {"at": stair.stringer_kind.at, "because": "other", "kind": stair.stringer_kind.value} if {
	some stair in input.stairs
	_steel(stair)
}

unknown contains {"at": stair.at, "needs": "stairs[].stringers.size"} if {
	some stair in _wood
	not stair.stringer_depth
}

unknown contains {"at": stair.at, "needs": "stairs[].stringers.supported_along"} if {
	some stair in _wood
	stair.stringer_thickness
	not _figure(stair)
}
