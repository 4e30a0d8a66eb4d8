# METADATA
# title: Spacing of the stringers
# description: The spacing of the stringers, center to center, against the limit for wood treads, or against the tread's own listing where treads are of anything else.
# custom:
#   id: stairs/stringer-spacing
#   aliases: []
#   consequence: structure
#   why: A tread spans from stringer to stringer. Boards that are not wood are softer, and their listing asks for less than wood can span.
#   applies_when: a stair is described
#   figures:
#     wood: {type: length, relation: at most, about: greatest spacing under wood treads}
#     with_risers: {type: length, relation: at most, optional: true, about: greatest spacing under wood treads whose front is carried by riser boards}
#     cap: {type: length, relation: at most, about: "greatest spacing under other treads, whatever their listing allows"}
#   values: {material: words, listed: length}
#   messages:
#     outside: "stringers are {have} apart, the limit for wood treads is {limit}"
#     listed: "stringers are {have} apart, the {material} treads are listed for {listed}"
#     cap: "stringers are {have} apart, the limit under {material} treads is {limit}, whatever their listing allows"
#   exempt: {}
#   mend:
#     - "more stringers"
#   tries: [stringer-count, stringer-spacing]
package checks.stairs.stringer_spacing

import data.figures.stairs.stringer_spacing as figures

applies if count(input.stairs) > 0

readings contains {
	"at": stair.stringer_spacing.at, "have": stair.stringer_spacing.value,
	"figure": figure, "limit": figures[figure],
	"outside": stair.stringer_spacing.value > figures[figure],
} if {
	some stair in input.stairs
	stair.tread_material.value == "wood"
	figure := _figure(stair)
}

_figure(stair) := "with_risers" if {
	figures.with_risers
	stair.risers_carry_treads.value
} else := "wood" if {
	not _hangs(stair)
}

# Whether riser boards carry the treads matters only between the two limits.
_hangs(stair) if {
	not stair.risers_carry_treads
	not stair.risers_closed.value == false
	stair.stringer_spacing.value > figures.wood
	stair.stringer_spacing.value <= figures.with_risers
}

unknown contains {"at": stair.at, "needs": "stairs[].risers_carry_treads"} if {
	some stair in input.stairs
	stair.tread_material.value == "wood"
	_hangs(stair)
}

_other contains stair if {
	some stair in input.stairs
	stair.tread_material.value != "wood"
}

readings contains {
	"at": array.concat(stair.stringer_spacing.at, stair.tread_listed.at), "have": stair.stringer_spacing.value,
	"figure": "cap", "limit": stair.tread_listed.value, "stated_at": stair.tread_listed.at,
	"outside": stair.stringer_spacing.value > stair.tread_listed.value,
	"say": "listed", "material": stair.tread_material.value, "listed": stair.tread_listed.value,
} if {
	some stair in _other
	not _capped(stair)
}

readings contains {
	"at": stair.stringer_spacing.at, "have": stair.stringer_spacing.value,
	"figure": "cap", "limit": figures.cap,
	"outside": stair.stringer_spacing.value > figures.cap,
	"say": "cap", "material": stair.tread_material.value,
} if {
	some stair in _other
	_capped(stair)
}

_capped(stair) if stair.tread_listed.value > figures.cap

# Beyond the cap no listing helps.
_capped(stair) if {
	not stair.tread_listed
	stair.stringer_spacing.value > figures.cap
}

unknown contains {"at": stair.at, "needs": "stairs[].tread.material"} if {
	some stair in input.stairs
	not stair.tread_material
}

unknown contains {"at": stair.tread_material.at, "needs": "stairs[].tread.listed_max_stringer_spacing"} if {
	some stair in _other
	not stair.tread_listed
	not _capped(stair)
}

unknown contains {"at": stair.at, "needs": _field(stair)} if {
	some stair in input.stairs
	not stair.stringer_spacing
}

_field(stair) := "stairs[].stringers.count" if not stair.stringer_count

_field(stair) := "stairs[].width" if stair.stringer_count
