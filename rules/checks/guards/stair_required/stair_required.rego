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
#     trigger: {type: length, optional: true, relation: at most, about: greatest height of a stair without a guard}
#     from: {type: length, optional: true, relation: less than, about: "height from which on a guard is asked for, given instead of the greatest without one"}
#   messages:
#     outside: "the stair is {have} above the ground and no guard on it is shown, one is asked for above {limit}"
#     outside_from: "the stair is {have} above the ground and no guard on it is shown, one is asked for from {limit} on"
#     within: "the stair is {have} above the ground, a guard is asked for above {limit}"
#     within_from: "the stair is {have} above the ground, a guard is asked for from {limit} on"
#     guarded: "the stair has a guard"
#   mend: ["a guard on every open side of the stair"]
#   tries: [stair-guard]
#   asks: true
package checks.guards.stair_required

import data.figures.guards.stair_required as figures
import data.lib.guards

applies if count(input.stair_guards) > 0

# A set says above which height, or from which on.
_figure := "trigger" if figures.trigger

else := "from"

_say := {true: "outside", false: "within"}

readings contains {"at": guard.at, "figure": _figure, "outside": false, "say": "guarded"} if {
	some guard in input.stair_guards
	guard.present
}

readings contains {
	"at": array.concat(guard.at, guard.drop.at), "have": guard.drop.value,
	"figure": _figure, "limit": figures[_figure],
	"outside": high, "say": concat("", [_say[high], guards.manner(figures)]),
} if {
	some guard in input.stair_guards
	not guard.present
	high := count([1 | guards.calls(figures, guard.drop.value)]) > 0
}

_unmeasured[i] := guard if {
	some i, guard in input.stair_guards
	not guard.present
	not guard.drop
}

unknown contains {"at": guard.at, "needs": guards.stair_drop_field(input.stairs[i])} if {
	some i, guard in _unmeasured
}
