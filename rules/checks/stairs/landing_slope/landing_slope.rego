# METADATA
# title: Slope of a landing
# description: The slope of every landing, along the house and out from it, against the set's limit. A framed landing that shows none is left alone, one on the ground must show it.
# custom:
#   id: stairs/landing-slope
#   aliases: []
#   consequence: life safety
#   why: The step from a stair to a landing that slopes is not the step that the foot expects, and worse when it is wet or icy.
#   applies_when: a stair is described
#   figures:
#     max: {type: slope, relation: at most, about: greatest slope in any direction}
#   values: {where: words}
#   messages:
#     outside: "the landing ({where}) slopes {have}, the limit is {limit}"
#   exempt:
#     framed: "no slope is described for the landing ({where}), and it does not lie on the ground"
#   mend:
#     - "a flatter landing, with a drain or a gap where water must go"
#   tries: [landing-slope]
package checks.stairs.landing_slope

import data.figures.stairs.landing_slope as figures

applies if count(input.landings) > 0

_slopes contains [landing.where, landing.slope_along] if some landing in input.landings

_slopes contains [landing.where, landing.slope_out] if some landing in input.landings

# Slopes are compared multiplied out, so that equal ones stay equal.
readings contains {
	"at": slope.at, "have": slope.value,
	"figure": "max", "limit": figures.max,
	"outside": (abs(slope.value.rise) * figures.max.run) > (figures.max.rise * slope.value.run),
	"where": where,
} if {
	some [where, slope] in _slopes
}

exempt contains {"at": landing.at, "because": "framed", "where": landing.where} if {
	some landing in input.landings
	landing.where != "bottom"
	not landing.slope_along
	not landing.slope_out
}

unknown contains {"at": landing.at, "needs": "stairs[].landing_bottom.slope_along"} if {
	some landing in input.landings
	landing.where == "bottom"
	not landing.slope_along
}

unknown contains {"at": landing.at, "needs": "stairs[].landing_bottom.slope_out"} if {
	some landing in input.landings
	landing.where == "bottom"
	not landing.slope_out
}
