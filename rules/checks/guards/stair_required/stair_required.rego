# METADATA
# title: Guard on a stair
# description: The height of a stair above the ground below it, against the height above which its open side needs a guard.
# custom:
#   id: guards/stair-required
#   aliases: []
#   consequence: life safety
#   why: The open side of a stair is an edge like any other, and people use it in the dark and with their hands full.
#   applies_when: a stair is described
#   figures:
#     trigger: {type: length, relation: at most, about: greatest height of a stair without a guard}
#   messages:
#     outside: "the stair is {have} above the ground and no guard on it is shown, one is asked for above {limit}"
#     within: "the stair is {have} above the ground, a guard is asked for above {limit}"
#     guarded: "the stair has a guard"
#   mend: ["a guard on every open side of the stair"]
package checks.guards.stair_required

import data.figures.guards.stair_required as figures

applies if count(input.stair_guards) > 0

readings contains {"at": guard.at, "figure": "trigger", "outside": false, "say": "guarded"} if {
	some guard in input.stair_guards
	guard.present
}

readings contains {
	"at": guard.drop.at, "have": guard.drop.value,
	"figure": "trigger", "limit": figures.trigger,
	"outside": guard.drop.value > figures.trigger,
} if {
	some guard in input.stair_guards
	not guard.present
}

_unmeasured[i] := guard if {
	some i, guard in input.stair_guards
	not guard.present
	not guard.drop
}

unknown contains {"at": guard.at, "needs": "stairs[].total_rise"} if {
	some i, guard in _unmeasured
	not input.stairs[i].total_rise
}

unknown contains {"at": guard.at, "needs": "stairs[].risers"} if {
	some i, guard in _unmeasured
	input.stairs[i].total_rise
}
