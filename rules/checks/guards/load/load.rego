# METADATA
# title: Loads that a guard is made for
# description: The single load along the top and the load on the infill that the guard is listed or designed for, against what the set asks.
# custom:
#   id: guards/load
#   aliases: []
#   consequence: life safety
#   why: Several people lean on a guard at once, at its weakest place.
#   applies_when: a guard is described
#   reads: [guards/required]
#   figures:
#     single: {type: force, relation: at least, about: single load along the top}
#     infill: {type: force, relation: at least, about: load on one square foot of infill}
#   values: {drop: length, trigger: length}
#   messages:
#     outside: "guard is made for {have} along its top, the limit is {limit}"
#     infill: "infill is made for {have}, the limit is {limit}"
#   exempt:
#     low: "the drop is {drop}, a guard is asked for above {trigger}"
#   mend: ["a listed guard system, or a design with the loads stated on the drawing"]
package checks.guards.load

import data.figures.guards.load as figures
import data.figures.guards.required

applies if count(input.guards) > 0

_low contains i if {
	some i, guard in input.guards
	guard.drop.value <= required.trigger
	not guard.drop_partial
}

_due[i] := guard if {
	some i, guard in input.guards
	not i in _low
}

readings contains {
	"at": guard.listed_load.at, "have": guard.listed_load.value,
	"figure": "single", "limit": figures.single,
	"outside": guard.listed_load.value < figures.single,
} if {
	some guard in _due
}

readings contains {
	"at": guard.infill_load.at, "have": guard.infill_load.value,
	"figure": "infill", "limit": figures.infill,
	"outside": guard.infill_load.value < figures.infill,
	"say": "infill",
} if {
	some guard in _due
}

unknown contains {"at": guard.at, "needs": "guards[].listed_load"} if {
	some guard in _due
	not guard.listed_load
}

unknown contains {"at": guard.at, "needs": "guards[].infill_load"} if {
	some guard in _due
	not guard.infill_load
}

exempt contains {
	"at": guard.at, "because": "low",
	"drop": guard.drop.value, "trigger": required.trigger,
} if {
	some i, guard in input.guards
	i in _low
}
