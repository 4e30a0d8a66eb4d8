# METADATA
# title: Grip of a handrail
# description: The profile of a handrail, a round one by its diameter, another by its perimeter and width. One that is larger must show a finger recess. A flat board is no handrail.
# custom:
#   id: handrail/grip
#   aliases: []
#   consequence: life safety
#   why: A hand holds a falling body only where the fingers close round the rail or into a groove.
#   applies_when: a stair is described
#   reads: [handrail/required]
#   figures:
#     kinds: {type: list, relation: one of, about: profiles that a hand can close round}
#     diameter_min: {type: length, relation: at least, about: least diameter of a round profile}
#     diameter_max: {type: length, relation: at most, about: greatest diameter of a round profile}
#     perimeter_min: {type: length, relation: at least, about: least perimeter of a shaped profile}
#     perimeter_max: {type: length, relation: at most, about: greatest perimeter of a shaped profile without a finger recess}
#     recess: {type: flag, relation: exactly, optional: true, about: "whether a finger recess lets a profile be larger; without it one does"}
#     width_max: {type: length, relation: at most, about: greatest width of a shaped profile without a finger recess}
#   values: {perimeter: length, perimeter_max: length, risers: count, from: count, rise: length, rise_from: length}
#   messages:
#     outside: "the profile of the handrail is a {have}, which a hand cannot close round"
#     diameter: "the round handrail has a diameter of {have}, the limit is {limit}"
#     perimeter: "the shaped handrail has a perimeter of {have}, the limit is {limit}"
#     width: "the shaped handrail is {have} wide, the limit is {limit}"
#   exempt:
#     few: "no flight has more than {risers} risers, a handrail is asked for from {from}"
#     low: "the stair rises {rise}, a handrail is asked for from {rise_from}"
#     none: "no handrail is shown; see handrail/required"
#     large: "a perimeter of {perimeter} is over {perimeter_max}, the finger recess decides; see handrail/finger-recess"
#   mend:
#     - "a round rail, or a profile that is listed as graspable"
#   tries: [eighths, round-rail]
package checks.handrail.grip

import data.figures.handrail.grip as figures
import data.figures.handrail.required
import data.lib.handrail as lib

applies if count(input.handrails) > 0

_rails contains rail if {
	some rail in input.handrails
	not lib.spared(rail, required)
}

# Handrails by how their profile is judged.
_of[class] contains rail if {
	some rail in _rails
	class := lib.class(rail, figures.perimeter_max)
}

# Large profiles are held to their size too where no recess lets them be larger.
_sized contains rail if some rail in _of.small

_sized contains rail if {
	figures.recess == false
	some rail in _of.large
}

_grooved contains rail if {
	not figures.recess == false
	some rail in _of.large
}

readings contains {
	"at": rail.profile.at, "have": rail.profile.value,
	"figure": "kinds", "limit": figures.kinds,
	"outside": true,
} if {
	some rail in _rails
	not rail.profile.value in figures.kinds
}

_least contains ["diameter", rail.diameter, "diameter_min"] if some rail in _of.round

_least contains ["perimeter", rail.perimeter, "perimeter_min"] if some rail in _sized

readings contains {
	"at": fact.at, "have": fact.value,
	"figure": figure, "limit": figures[figure],
	"outside": fact.value < figures[figure],
	"say": say,
} if {
	some [say, fact, figure] in _least
}

_most contains ["diameter", rail.diameter, "diameter_max"] if some rail in _of.round

_most contains ["perimeter", rail.perimeter, "perimeter_max"] if some rail in _sized

_most contains ["width", rail.section_width, "width_max"] if some rail in _sized

readings contains {
	"at": fact.at, "have": fact.value,
	"figure": figure, "limit": figures[figure],
	"outside": fact.value > figures[figure],
	"say": say,
} if {
	some [say, fact, figure] in _most
}

unknown contains {"at": rail.at, "needs": concat(".", ["stairs[].handrail.profile", field])} if {
	some rail in _rails
	field := lib.class_field(rail)
}

unknown contains {"at": rail.at, "needs": "stairs[].handrail.profile.diameter"} if {
	some rail in _of.round
	not rail.diameter
}

unknown contains {"at": rail.at, "needs": "stairs[].handrail.profile.width"} if {
	some rail in _sized
	not rail.section_width
}

unknown contains {"at": rail.at, "needs": "stairs[].handrail.profile.finger_recess"} if {
	some rail in _grooved
	not lib.recessed(rail)
}

exempt contains {
	"at": rail.perimeter.at, "because": "large",
	"perimeter": rail.perimeter.value, "perimeter_max": figures.perimeter_max,
} if {
	some rail in _grooved
	lib.recessed(rail)
}

exempt contains row if {
	some rail in input.handrails
	row := lib.spared(rail, required)
}
