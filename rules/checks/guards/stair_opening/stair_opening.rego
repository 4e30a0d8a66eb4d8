# METADATA
# title: Openings in a stair guard
# description: The widest opening in the guard of a stair, against the sphere that must not go through.
# custom:
#   id: guards/stair-opening
#   aliases: []
#   consequence: life safety
#   why: Small children climb stairs on all fours, with their heads at the height of the openings.
#   applies_when: a stair is described
#   reads: [guards/stair-required]
#   figures:
#     sphere: {type: length, optional: true, relation: less than, about: sphere that must not pass through a guard on a stair}
#     widest: {type: length, optional: true, relation: at most, about: "widest opening in a guard on a stair, given instead of the sphere"}
#   values: {drop: length, trigger: length}
#   messages:
#     outside: "opening in the stair guard is {have}, a sphere of {limit} must not pass"
#     widest: "opening in the stair guard is {have}, the limit is {limit}"
#   exempt:
#     low: "the stair is {drop} above the ground, a guard is asked for above {trigger}"
#     low_from: "the stair is {drop} above the ground, a guard is asked for from {trigger} on"
#     none: "no guard is drawn on the stair"
#   mend: ["balusters closer together"]
#   tries: [eighths]
package checks.guards.stair_opening

import data.figures.guards.stair_opening as figures
import data.figures.guards.stair_required as required
import data.lib.guards

applies if count(input.stair_guards) > 0

_low[i] := guards.low_stair(required, guard) if some i, guard in input.stair_guards

readings contains {
	"at": guard.opening.at, "have": guard.opening.value,
	"figure": "sphere", "limit": figures.sphere,
	"outside": guard.opening.value >= figures.sphere,
} if {
	some i, guard in input.stair_guards
	guard.present
	not _low[i]
}

readings contains {
	"at": guard.opening.at, "have": guard.opening.value,
	"figure": "widest", "limit": figures.widest,
	"outside": guard.opening.value > figures.widest,
	"say": "widest",
} if {
	some i, guard in input.stair_guards
	guard.present
	not _low[i]
}

unknown contains {"at": guard.at, "needs": "stairs[].guard.opening"} if {
	some i, guard in input.stair_guards
	guard.present
	not _low[i]
	not guard.opening
}

exempt contains {"at": guard.at, "because": "none"} if {
	some guard in input.stair_guards
	not guard.present
}

exempt contains guards.exempt(required, input.stair_guards[i], drop) if some i, drop in _low
