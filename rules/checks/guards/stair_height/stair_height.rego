# METADATA
# title: Height of a stair guard
# description: The height of the guard above the line of the tread edges, against the set's least height, which may hang on how high the stair is above the ground.
# custom:
#   id: guards/stair-height
#   aliases: []
#   consequence: life safety
#   why: On a stair people pitch forward, and the rail beside them has to catch them above the hip.
#   applies_when: a stair is described
#   reads: [guards/stair-required]
#   figures:
#     min: {type: length, relation: at least, about: least height of a guard on a stair}
#     low_up_to: {type: length, optional: true, relation: at most, about: greatest height of a stair for which that least height is enough}
#     min_high: {type: length, optional: true, relation: at least, about: least height of a guard on a higher stair}
#   values: {drop: length, trigger: length, upto: length}
#   messages:
#     outside: "stair guard height is {have}, the limit is {limit}"
#     high: "stair guard height is {have}, the limit is {limit} where the stair is more than {upto} above the ground"
#   exempt:
#     low: "the stair is {drop} above the ground, a guard is asked for above {trigger}"
#     low_from: "the stair is {drop} above the ground, a guard is asked for from {trigger} on"
#     none: "no guard is drawn on the stair"
#   mend: ["a taller guard, measured plumb from the line of the tread edges"]
#   tries: [halves]
package checks.guards.stair_height

import data.figures.guards.stair_height as figures
import data.figures.guards.stair_required as required
import data.lib.guards

applies if count(input.stair_guards) > 0

_low[i] := guards.low_stair(required, guard) if some i, guard in input.stair_guards

_measured[i] := guard if {
	some i, guard in input.stair_guards
	guard.present
	guard.height
	not _low[i]
}

readings contains object.union(
	{
		"at": guard.height.at, "have": guard.height.value,
		"figure": figure, "limit": figures[figure],
		"outside": guard.height.value < figures[figure],
	},
	_more(figure),
) if {
	some guard in _measured
	figure := _figure(guard)
}

_more("min") := {}

_more("min_high") := {"say": "high", "upto": figures.low_up_to}

# The least height hangs on the height of the stair where the set says so.
_figure(_) := "min" if not figures.low_up_to

_figure(guard) := "min" if guard.drop.value <= figures.low_up_to

_figure(guard) := "min_high" if guard.drop.value > figures.low_up_to

# How high the stair is does not matter below the lesser height and above the
# greater one.
_figure(guard) := "min" if {
	figures.low_up_to
	not guard.drop
	guard.height.value < figures.min
}

_figure(guard) := "min_high" if {
	not guard.drop
	guard.height.value >= figures.min_high
}

unknown contains {"at": guard.at, "needs": guards.stair_drop_field(input.stairs[i])} if {
	some i, guard in _measured
	not _figure(guard)
}

unknown contains {"at": guard.at, "needs": "stairs[].guard.height"} if {
	some i, guard in input.stair_guards
	guard.present
	not _low[i]
	not guard.height
}

exempt contains {"at": guard.at, "because": "none"} if {
	some guard in input.stair_guards
	not guard.present
}

exempt contains guards.exempt(required, input.stair_guards[i], drop) if some i, drop in _low
