# METADATA
# title: Openings in a guard
# description: The widest opening of the infill and the gap below it, against the sphere that must not go through.
# custom:
#   id: guards/opening
#   aliases: []
#   consequence: life safety
#   why: A small child goes through any opening that lets the head follow the body.
#   applies_when: a guard is described
#   reads: [guards/required]
#   figures:
#     sphere: {type: length, relation: less than, about: sphere that must not pass through a guard}
#   values: {drop: length, trigger: length}
#   messages:
#     outside: "opening in the infill is {have}, a sphere of {limit} must not pass"
#     below: "gap below the infill is {have}, a sphere of {limit} must not pass"
#     none: "the guard has no infill, a sphere of {limit} must not pass"
#   exempt:
#     low: "the drop is {drop}, a guard is asked for above {trigger}"
#   mend:
#     - "balusters or cables closer together"
#     - "a lower bottom rail"
package checks.guards.opening

import data.figures.guards.opening as figures
import data.figures.guards.required

applies if count(input.guards) > 0

_low contains i if {
	some i, guard in input.guards
	guard.drop.value <= required.trigger
	not guard.drop_partial
}

_filled[i] := guard if {
	some i, guard in input.guards
	not i in _low
	not guard.infill_kind.value == "none"
}

readings contains {
	"at": guard.opening.at, "have": guard.opening.value,
	"figure": "sphere", "limit": figures.sphere,
	"outside": guard.opening.value >= figures.sphere,
} if {
	some guard in _filled
}

readings contains {
	"at": guard.bottom_gap.at, "have": guard.bottom_gap.value,
	"figure": "sphere", "limit": figures.sphere,
	"outside": guard.bottom_gap.value >= figures.sphere,
	"say": "below",
} if {
	some guard in _filled
}

readings contains {
	"at": guard.infill_kind.at,
	"figure": "sphere", "limit": figures.sphere,
	"outside": true, "say": "none",
} if {
	some i, guard in input.guards
	not i in _low
	guard.infill_kind.value == "none"
}

unknown contains {"at": guard.at, "needs": "guards[].infill.opening"} if {
	some guard in _filled
	not guard.opening
}

unknown contains {"at": guard.at, "needs": "guards[].infill.bottom_gap"} if {
	some guard in _filled
	not guard.bottom_gap
}

exempt contains {
	"at": guard.at, "because": "low",
	"drop": guard.drop.value, "trigger": required.trigger,
} if {
	some i, guard in input.guards
	i in _low
}
