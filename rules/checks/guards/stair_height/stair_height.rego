# METADATA
# title: Height of a stair guard
# description: The height of the guard above the line of the tread edges, against the set's least height.
# custom:
#   id: guards/stair-height
#   aliases: []
#   consequence: life safety
#   why: On a stair people pitch forward, and the rail beside them has to catch them above the hip.
#   applies_when: a stair is described
#   reads: [guards/stair-required]
#   figures:
#     min: {type: length, relation: at least, about: least height of a guard on a stair}
#   values: {drop: length, trigger: length}
#   messages:
#     outside: "stair guard height is {have}, the limit is {limit}"
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

readings contains {
	"at": guard.height.at, "have": guard.height.value,
	"figure": "min", "limit": figures.min,
	"outside": guard.height.value < figures.min,
} if {
	some i, guard in input.stair_guards
	guard.present
	not _low[i]
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
