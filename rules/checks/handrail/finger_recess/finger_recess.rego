# METADATA
# title: Finger recess of a handrail
# description: The groove in a profile that is too large to be grasped without one, by where it starts and how deep it is, and the width of the profile above it.
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
#     width_min: {type: length, relation: at least, about: least width of the profile above the recess}
#     width_max: {type: length, relation: at most, about: greatest width of the profile above the recess}
#   values: {perimeter: length, perimeter_max: length, risers: count, from: count}
#   messages:
#     outside: "the finger recess measures {have}, the limit is {limit}"
#     width_above_recess: "the handrail is {have} wide above the finger recess, the limit is {limit}"
#     recess_start: "the finger recess starts {have} below the top of the handrail, the limit is {limit}"
#     recess_depth: "the finger recess is {have} deep, the limit is {limit}"
#   exempt:
#     few: "no flight has more than {risers} risers, a handrail is asked for from {from}"
#     none: "no handrail is shown; see handrail/required"
#     plain: "no finger recess is shown; see handrail/grip"
#     small: "a perimeter of {perimeter} needs no finger recess, one is asked for over {perimeter_max}"
#   mend:
#     - "a round rail, or a profile that is listed as graspable"
package checks.handrail.finger_recess

import data.figures.handrail.finger_recess as figures
import data.figures.handrail.grip
import data.figures.handrail.required
import data.lib.handrail as lib

applies if count(input.handrails) > 0

_recessed contains rail if {
	some rail in input.handrails
	not lib.spared(rail, required.from)
	lib.recessed(rail)
}

_rails contains rail if {
	some rail in _recessed
	not lib.class(rail, grip.perimeter_max) == "small"
}

_least := {"recess_depth": "depth_min", "width_above_recess": "width_min"}

_most := {"recess_start": "start_max", "width_above_recess": "width_max"}

_fields := {
	"recess_depth": "finger_recess.depth",
	"recess_start": "finger_recess.start_below_top",
	"width_above_recess": "width_above_recess",
}

readings contains {
	"at": rail[fact].at, "have": rail[fact].value,
	"figure": figure, "limit": figures[figure],
	"outside": rail[fact].value < figures[figure],
	"say": fact,
} if {
	some rail in _rails
	some fact, figure in _least
}

readings contains {
	"at": rail[fact].at, "have": rail[fact].value,
	"figure": figure, "limit": figures[figure],
	"outside": rail[fact].value > figures[figure],
	"say": fact,
} if {
	some rail in _rails
	some fact, figure in _most
}

unknown contains {"at": rail.at, "needs": concat(".", ["stairs[].handrail.profile", field])} if {
	some rail in _rails
	some fact, field in _fields
	not rail[fact]
}

exempt contains row if {
	some rail in input.handrails
	row := lib.spared(rail, required.from)
}

exempt contains {"at": rail.at, "because": "plain"} if {
	some rail in input.handrails
	not lib.spared(rail, required.from)
	not lib.recessed(rail)
}

exempt contains {
	"at": rail.perimeter.at, "because": "small",
	"perimeter": rail.perimeter.value, "perimeter_max": grip.perimeter_max,
} if {
	some rail in _recessed
	lib.class(rail, grip.perimeter_max) == "small"
}
