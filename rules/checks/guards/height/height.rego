# METADATA
# title: Guard height
# description: The height of a guard above the walking surface, or above a fixed seat where the set measures from there, against the set's least height.
# custom:
#   id: guards/height
#   aliases: []
#   consequence: life safety
#   why: A guard that ends below a person's center of gravity tips them over instead of holding them.
#   applies_when: a guard is described
#   reads: [guards/required]
#   figures:
#     min: {type: length, relation: at least, about: least height of a guard}
#     from_seat: {type: flag, optional: true, about: true where the height is measured from a fixed seat along the guard}
#   values: {drop: length, trigger: length}
#   messages:
#     outside: "guard height is {have}, the limit is {limit}"
#     seat: "guard height above the fixed seat is {have}, the limit is {limit}"
#   exempt:
#     low: "the drop is {drop}, a guard is asked for above {trigger}"
#   mend: ["a taller guard: longer posts, or another rail above"]
package checks.guards.height

import data.figures.guards.height as figures
import data.figures.guards.required

applies if count(input.guards) > 0

_low contains i if {
	some i, guard in input.guards
	guard.drop.value <= required.trigger
	not guard.drop_partial
}

_from_seat contains i if {
	some i, guard in input.guards
	guard.height_above_seat
	figures.from_seat == true
}

readings contains {
	"at": guard.height.at, "have": guard.height.value,
	"figure": "min", "limit": figures.min,
	"outside": guard.height.value < figures.min,
} if {
	some i, guard in input.guards
	not i in _low
	not i in _from_seat
}

readings contains {
	"at": guard.height_above_seat.at, "have": guard.height_above_seat.value,
	"figure": "min", "limit": figures.min,
	"outside": guard.height_above_seat.value < figures.min,
	"say": "seat",
} if {
	some i, guard in input.guards
	not i in _low
	i in _from_seat
}

unknown contains {"at": guard.at, "needs": "guards[].height"} if {
	some i, guard in input.guards
	not i in _low
	not i in _from_seat
	not guard.height
}

exempt contains {
	"at": guard.at, "because": "low",
	"drop": guard.drop.value, "trigger": required.trigger,
} if {
	some i, guard in input.guards
	i in _low
}
