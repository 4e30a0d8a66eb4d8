# METADATA
# title: Openings in a guard
# description: The widest opening of the infill and the gap below it, against the sphere that must not go through or the widest that the set allows.
# custom:
#   id: guards/opening
#   aliases: []
#   consequence: life safety
#   why: A small child goes through any opening that lets the head follow the body.
#   applies_when: a guard is described
#   reads: [guards/required]
#   figures:
#     sphere: {type: length, optional: true, relation: less than, about: "sphere that must not pass through a guard, nor below it"}
#     widest: {type: length, optional: true, relation: at most, about: "widest opening in the infill, given instead of the sphere"}
#     widest_below: {type: length, optional: true, relation: at most, about: "greatest gap below the infill, given with the widest opening"}
#   values: {drop: length, trigger: length}
#   messages:
#     outside: "opening in the infill is {have}, a sphere of {limit} must not pass"
#     below: "gap below the infill is {have}, a sphere of {limit} must not pass"
#     widest: "opening in the infill is {have}, the limit is {limit}"
#     widest_below: "gap below the infill is {have}, the limit is {limit}"
#     none: "the guard has no infill, a sphere of {limit} must not pass"
#     none_widest: "the guard has no infill, openings may be {limit} at most"
#   exempt:
#     low: "the drop is {drop}, a guard is asked for above {trigger}"
#     low_from: "the drop is {drop}, a guard is asked for from {trigger} on"
#   mend:
#     - "balusters or cables closer together"
#     - "a lower bottom rail"
#   tries: [eighths]
package checks.guards.opening

import data.figures.guards.opening as figures
import data.figures.guards.required
import data.lib.guards

applies if count(input.guards) > 0

_low[i] := guards.low(required, guard) if some i, guard in input.guards

_filled[i] := guard if {
	some i, guard in input.guards
	not _low[i]
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
	"at": guard.opening.at, "have": guard.opening.value,
	"figure": "widest", "limit": figures.widest,
	"outside": guard.opening.value > figures.widest,
	"say": "widest",
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
	"at": guard.bottom_gap.at, "have": guard.bottom_gap.value,
	"figure": "widest_below", "limit": figures.widest_below,
	"outside": guard.bottom_gap.value > figures.widest_below,
	"say": "widest_below",
} if {
	some guard in _filled
}

_none := {"sphere": "none", "widest": "none_widest"}

readings contains {
	"at": guard.infill_kind.at,
	"figure": figure, "limit": figures[figure],
	"outside": true, "say": say,
} if {
	some i, guard in input.guards
	not _low[i]
	guard.infill_kind.value == "none"
	some figure, say in _none
}

unknown contains {"at": guard.at, "needs": "guards[].infill.opening"} if {
	some guard in _filled
	not guard.opening
}

# Some sets say nothing of the gap below.
_below if figures.sphere

_below if figures.widest_below

unknown contains {"at": guard.at, "needs": "guards[].infill.bottom_gap"} if {
	_below
	some guard in _filled
	not guard.bottom_gap
}

exempt contains guards.exempt(required, input.guards[i], drop) if some i, drop in _low
