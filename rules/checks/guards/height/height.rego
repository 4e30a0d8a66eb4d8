# METADATA
# title: Guard height
# description: The height of a guard above the walking surface, and above a fixed seat where the set measures from there, against the set's least height, which may hang on the drop.
# custom:
#   id: guards/height
#   aliases: []
#   consequence: life safety
#   why: A guard that ends below a person's center of gravity tips them over instead of holding them.
#   applies_when: a guard is described
#   reads: [guards/required]
#   figures:
#     min: {type: length, relation: at least, about: least height of a guard}
#     low_up_to: {type: length, optional: true, relation: at most, about: greatest drop for which that least height is enough}
#     min_high: {type: length, optional: true, relation: at least, about: least height of a guard above a greater drop}
#     from_seat: {type: flag, optional: true, about: true where the height is measured from a fixed seat along the guard}
#     min_seat: {type: length, optional: true, relation: at least, about: "least height above a fixed seat, beside the height above the floor"}
#   values: {drop: length, trigger: length, upto: length}
#   messages:
#     outside: "guard height is {have}, the limit is {limit}"
#     high: "guard height is {have}, the limit is {limit} where the drop is above {upto}"
#     seat: "guard height above the fixed seat is {have}, the limit is {limit}"
#   exempt:
#     low: "the drop is {drop}, a guard is asked for above {trigger}"
#     low_from: "the drop is {drop}, a guard is asked for from {trigger} on"
#   mend: ["a taller guard: longer posts, or another rail above"]
#   tries: [halves]
package checks.guards.height

import data.figures.guards.height as figures
import data.figures.guards.required
import data.lib.guards

applies if count(input.guards) > 0

_low[i] := guards.low(required, guard) if some i, guard in input.guards

_from_seat contains i if {
	some i, guard in input.guards
	guard.height_above_seat
	figures.from_seat == true
}

_measured[i] := guard.height if {
	some i, guard in input.guards
	not _low[i]
	not i in _from_seat
}

# The least height hangs on the drop where the set says so.
_figure[i] := "min" if {
	some i, _ in _measured
	not figures.low_up_to
}

_figure[i] := "min_high" if {
	some i, _ in _measured
	i in _deep
}

_figure[i] := "min" if {
	some i, _ in _measured
	i in _shallow
}

# What the drop is does not matter below the lesser height and above the greater one.
_figure[i] := "min" if {
	some i, height in _undecided
	height.value < figures.min
}

_figure[i] := "min_high" if {
	some i, height in _undecided
	height.value >= figures.min_high
}

_deep contains i if {
	some i, guard in input.guards
	guards.worst(required, guard.drops).value > figures.low_up_to
}

_shallow contains i if {
	some i, guard in input.guards
	guards.upto(required, guard, figures.low_up_to)
}

_undecided[i] := height if {
	some i, height in _measured
	figures.low_up_to
	not i in _deep
	not i in _shallow
}

readings contains object.union(
	{
		"at": _measured[i].at, "have": _measured[i].value,
		"figure": figure, "limit": figures[figure],
		"outside": _measured[i].value < figures[figure],
	},
	_more(figure),
) if {
	some i, figure in _figure
}

_more("min") := {}

_more("min_high") := {"say": "high", "upto": figures.low_up_to}

readings contains {
	"at": guard.height_above_seat.at, "have": guard.height_above_seat.value,
	"figure": "min", "limit": figures.min,
	"outside": guard.height_above_seat.value < figures.min,
	"say": "seat",
} if {
	some i, guard in input.guards
	not _low[i]
	i in _from_seat
}

readings contains {
	"at": guard.height_above_seat.at, "have": guard.height_above_seat.value,
	"figure": "min_seat", "limit": figures.min_seat,
	"outside": guard.height_above_seat.value < figures.min_seat,
	"say": "seat",
} if {
	some i, guard in input.guards
	not _low[i]
}

unknown contains {"at": guard.at, "needs": "guards[].height"} if {
	some i, guard in input.guards
	not _low[i]
	not i in _from_seat
	not guard.height
}

unknown contains {"at": input.guards[i].at, "needs": "platforms[].edges.<edge>.drop"} if {
	some i, _ in _undecided
	not _figure[i]
}

exempt contains guards.exempt(required, input.guards[i], drop) if some i, drop in _low
