# METADATA
# title: Thickness of treads
# description: The thickness of wood treads, against the set's least, which is greater where risers are open and stringers far apart.
# custom:
#   id: stairs/tread-thickness
#   aliases: []
#   consequence: structure
#   why: A thin tread bends under a step taken in the middle, and where no riser carries its front it breaks.
#   applies_when: a stair is described
#   figures:
#     min: {type: length, relation: at least, about: least thickness of a tread}
#     open: {type: length, relation: at least, about: least thickness of a tread where risers are open and stringers are further apart than the next figure}
#     open_from: {type: length, relation: more than, about: spacing of stringers over which treads with open risers must be thicker}
#   values: {material: words, spacing: length}
#   messages:
#     outside: "treads are {have} thick, the limit is {limit}"
#     open: "treads are {have} thick, with open risers and stringers {spacing} apart the limit is {limit}"
#   exempt:
#     other: "treads are of {material}, the set gives a thickness for wood"
#   mend:
#     - "thicker treads, more stringers, or riser boards"
#   tries: [sixteenths]
package checks.stairs.tread_thickness

import data.figures.stairs.tread_thickness as figures

applies if count(input.stairs) > 0

_wood contains stair if {
	some stair in input.stairs
	not _other(stair)
}

_other(stair) if stair.tread_material.value != "wood"

_thick(stair) if stair.tread_thickness.value >= figures.open

_near(stair) if stair.risers_closed.value == true

_near(stair) if stair.stringer_spacing.value <= figures.open_from

_far(stair) if {
	stair.risers_closed.value == false
	stair.stringer_spacing.value > figures.open_from
}

readings contains {
	"at": stair.tread_thickness.at, "have": stair.tread_thickness.value,
	"figure": "min", "limit": figures.min,
	"outside": stair.tread_thickness.value < figures.min,
} if {
	some stair in _wood
	not _far(stair)
	not _hangs(stair)
}

readings contains {
	"at": stair.tread_thickness.at, "have": stair.tread_thickness.value,
	"figure": "open", "limit": figures.open,
	"outside": stair.tread_thickness.value < figures.open,
	"say": "open", "spacing": stair.stringer_spacing.value,
} if {
	some stair in _wood
	_far(stair)
}

# What is not shown of risers and stringers matters only between the two limits.
_hangs(stair) if {
	not _near(stair)
	not _far(stair)
	not _thick(stair)
	stair.tread_thickness.value >= figures.min
}

exempt contains {"at": stair.tread_material.at, "because": "other", "material": stair.tread_material.value} if {
	some stair in input.stairs
	_other(stair)
}

unknown contains {"at": stair.at, "needs": "stairs[].tread.thickness"} if {
	some stair in _wood
	not stair.tread_thickness
}

unknown contains {"at": stair.at, "needs": "stairs[].riser_opening"} if {
	some stair in _wood
	_hangs(stair)
	not stair.risers_closed
}

unknown contains {"at": stair.at, "needs": "stairs[].stringers.spacing"} if {
	some stair in _wood
	_hangs(stair)
	not stair.stringer_spacing
}
