# METADATA
# title: Finger recess of a handrail
# description: The groove in a profile that is too large to be grasped without one, by where it starts, how deep it is and where it is so deep, and the width of the profile above it.
# custom:
#   id: handrail/finger-recess
#   aliases: []
#   consequence: life safety
#   why: On a large profile the fingers hold on to nothing but the groove.
#   applies_when: a stair is described
#   reads: [handrail/required, handrail/grip]
#   figures:
#     start_max: {type: length, relation: at most, about: greatest distance from the top of the profile down to the recess}
#     depth_min: {type: length, relation: at least, about: least depth of the recess}
#     reach_max: {type: length, relation: at most, about: greatest distance from the widest part down to where the recess has its depth}
#     width_min: {type: length, relation: at least, about: least width of the profile above the recess}
#     width_max: {type: length, relation: at most, about: greatest width of the profile above the recess}
#   values: {perimeter: length, perimeter_max: length, risers: count, from: count, rise: length, rise_from: length}
#   messages:
#     outside: "the finger recess starts {have} below the top of the handrail, the limit is {limit}"
#     depth: "the finger recess is {have} deep, the limit is {limit}"
#     reach: "the finger recess has its depth {have} below the widest part of the handrail, the limit is {limit}"
#     width: "the handrail is {have} wide above the finger recess, the limit is {limit}"
#   exempt:
#     few: "no flight has more than {risers} risers, a handrail is asked for from {from}"
#     low: "the stair rises {rise}, a handrail is asked for from {rise_from}"
#     none: "no handrail is shown; see handrail/required"
#     plain: "no finger recess is shown; see handrail/grip"
#     small: "a perimeter of {perimeter} needs no finger recess, one is asked for over {perimeter_max}"
#   mend:
#     - "a round rail, or a profile that is listed as graspable"
#   tries: [sixteenths]
package checks.handrail.finger_recess

import data.figures.handrail.finger_recess as figures
import data.figures.handrail.grip
import data.figures.handrail.required
import data.lib.handrail as lib

applies if count(input.handrails) > 0

_recessed contains rail if {
	some rail in input.handrails
	not lib.spared(rail, required)
	lib.recessed(rail)
}

_small(rail) if lib.class(rail, grip.perimeter_max) == "small"

_rails contains rail if {
	some rail in _recessed
	not _small(rail)
}

_least contains ["depth", rail.recess_depth, "depth_min"] if some rail in _rails

_least contains ["width", rail.width_above_recess, "width_min"] if some rail in _rails

readings contains {
	"at": fact.at, "have": fact.value,
	"figure": figure, "limit": figures[figure],
	"outside": fact.value < figures[figure],
	"say": say,
} if {
	some [say, fact, figure] in _least
}

_most contains ["outside", rail.recess_start, "start_max"] if some rail in _rails

_most contains ["reach", rail.recess_reach, "reach_max"] if some rail in _rails

_most contains ["width", rail.width_above_recess, "width_max"] if some rail in _rails

readings contains {
	"at": fact.at, "have": fact.value,
	"figure": figure, "limit": figures[figure],
	"outside": fact.value > figures[figure],
	"say": say,
} if {
	some [say, fact, figure] in _most
}

unknown contains {"at": rail.at, "needs": "stairs[].handrail.profile.finger_recess.start_below_top"} if {
	some rail in _rails
	not rail.recess_start
}

unknown contains {"at": rail.at, "needs": "stairs[].handrail.profile.finger_recess.depth"} if {
	some rail in _rails
	not rail.recess_depth
}

unknown contains {"at": rail.at, "needs": "stairs[].handrail.profile.finger_recess.depth_reached_below_widest"} if {
	some rail in _rails
	not rail.recess_reach
}

unknown contains {"at": rail.at, "needs": "stairs[].handrail.profile.width_above_recess"} if {
	some rail in _rails
	not rail.width_above_recess
}

exempt contains row if {
	some rail in input.handrails
	row := lib.spared(rail, required)
}

exempt contains {"at": rail.at, "because": "plain"} if {
	some rail in input.handrails
	not lib.spared(rail, required)
	not lib.recessed(rail)
}

exempt contains {
	"at": rail.perimeter.at, "because": "small",
	"perimeter": rail.perimeter.value, "perimeter_max": grip.perimeter_max,
} if {
	some rail in _recessed
	_small(rail)
}
