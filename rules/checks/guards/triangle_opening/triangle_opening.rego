# METADATA
# title: Triangle below a stair guard
# description: The opening between tread, riser and bottom rail of a stair guard, against the sphere that must not go through.
# custom:
#   id: guards/triangle-opening
#   aliases: []
#   consequence: life safety
#   why: Each step leaves a triangle below the sloping rail, wide enough for a child when the rail is high.
#   applies_when: a stair is described
#   reads: [guards/stair-required]
#   figures:
#     sphere: {type: length, relation: less than, about: "sphere that must not pass through the triangle of tread, riser and bottom rail"}
#   values: {drop: length, trigger: length}
#   messages:
#     outside: "opening between tread, riser and bottom rail takes {have}, a sphere of {limit} must not pass"
#   exempt:
#     low: "the stair is {drop} above the ground, a guard is asked for above {trigger}"
#     low_from: "the stair is {drop} above the ground, a guard is asked for from {trigger} on"
#     none: "no guard is drawn on the stair"
#   mend: ["a bottom rail closer to the tread edges"]
#   tries: [eighths]
package checks.guards.triangle_opening

import data.figures.guards.stair_required as required
import data.figures.guards.triangle_opening as figures
import data.lib.guards

applies if count(input.stair_guards) > 0

_low[i] := guards.low_stair(required, guard) if some i, guard in input.stair_guards

readings contains {
	"at": guard.triangle_opening.at, "have": guard.triangle_opening.value,
	"figure": "sphere", "limit": figures.sphere,
	"outside": guard.triangle_opening.value >= figures.sphere,
} if {
	some i, guard in input.stair_guards
	guard.present
	not _low[i]
}

unknown contains {"at": guard.at, "needs": "stairs[].guard.triangle_opening"} if {
	some i, guard in input.stair_guards
	guard.present
	not _low[i]
	not guard.triangle_opening
}

exempt contains {"at": guard.at, "because": "none"} if {
	some guard in input.stair_guards
	not guard.present
}

exempt contains guards.exempt(required, input.stair_guards[i], drop) if some i, drop in _low
