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
#     single: {type: force, optional: true, relation: at least, about: single load along the top}
#     infill: {type: force, optional: true, relation: at least, about: load on a small area of the infill}
#   values: {drop: length, trigger: length}
#   messages:
#     outside: "guard is made for {have} along its top, the limit is {limit}"
#     infill: "infill is made for {have}, the limit is {limit}"
#   exempt:
#     low: "the drop is {drop}, a guard is asked for above {trigger}"
#     low_from: "the drop is {drop}, a guard is asked for from {trigger} on"
#   mend: ["a listed guard system, or a design with the loads stated on the drawing"]
#   tries: [load]
package checks.guards.load

import data.figures.guards.load as figures
import data.figures.guards.required
import data.lib.guards

applies if count(input.guards) > 0

_low[i] := guards.low(required, guard) if some i, guard in input.guards

_due[i] := guard if {
	some i, guard in input.guards
	not _low[i]
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
	figures.single
	some guard in _due
	not guard.listed_load
}

unknown contains {"at": guard.at, "needs": "guards[].infill_load"} if {
	figures.infill
	some guard in _due
	not guard.infill_load
}

exempt contains guards.exempt(required, input.guards[i], drop) if some i, drop in _low
