# METADATA
# title: Footholds in a guard
# description: What in a guard a child could climb on, against what the set keeps free of footholds and the drop from which it does so.
# custom:
#   id: guards/climbable
#   aliases: []
#   consequence: life safety
#   why: Rails that lie level are a ladder to a small child, and the guard then only makes the fall higher.
#   applies_when: a guard is described
#   reads: [guards/required]
#   figures:
#     above: {type: length, optional: true, relation: at most, about: greatest drop for which footholds are left alone}
#     any_drop: {type: flag, optional: true, relation: exactly, about: "true where footholds count wherever a guard is asked for, whatever the drop"}
#     band_from: {type: length, optional: true, relation: less than, about: height above the floor from which on there may be no foothold}
#     band_to: {type: length, optional: true, relation: more than, about: height above the floor up to which there may be no foothold}
#     kinds: {type: list, about: infill that is climbed on its rails}
#     toehold: {type: length, optional: true, relation: less than, about: gap between such rails that gives a toehold}
#   values: {drop: length, trigger: length, kind: words, from: length, to: length}
#   messages:
#     outside: "the infill can be climbed"
#     none: "the infill gives no foothold"
#     kind: "infill of {kind} can be climbed"
#     other: "infill of {kind} is not climbed on its rails"
#     foothold: "a foothold lies {have} above the floor, none may lie from {from} to {to}"
#     toehold: "gap between the rails is {have}, one of {limit} or more gives a toehold"
#   exempt:
#     low: "the drop is {drop}, a guard is asked for above {trigger}"
#     low_from: "the drop is {drop}, a guard is asked for from {trigger} on"
#     bare: "the guard has no infill"
#     modest: "the drop is {drop}, footholds are judged above {trigger}"
#   mend:
#     - "balusters that stand upright in place of rails that lie level"
#     - "panels or glass with no ledge on the side of the deck"
#   tries: [balusters]
package checks.guards.climbable

import data.figures.guards.climbable as figures
import data.figures.guards.required
import data.lib.guards

applies if count(input.guards) > 0

_low[i] := guards.low(required, guard) if some i, guard in input.guards

_modest[i] := guards.worst(required, guard.drops) if {
	some i, guard in input.guards
	not _low[i]
	not figures.any_drop
	guards.upto(required, guard, figures.above)
}

# Without a drop in which footholds are left alone they count in every guard.
_high contains i if {
	some i, _ in input.guards
	not figures.above
}

_high contains i if {
	some i, _ in input.guards
	figures.any_drop
}

_high contains i if {
	some i, guard in input.guards
	guards.worst(required, guard.drops).value > figures.above
}

_judged[i] := guard if {
	some i, guard in input.guards
	not _low[i]
	not _modest[i]
	not guard.infill_kind.value == "none"
}

_level[i] := guard if {
	some i, guard in _judged
	guard.infill_kind.value in figures.kinds
	not _placed[i]
}

# Where footholds are is shown, and the set says where they may be.
_placed[i] := guard if {
	some i, guard in _judged
	count(guard.footholds) > 0
	figures.band_from
}

_flagged[i] := guard if {
	some i, guard in _judged
	not _placed[i]
	not _level[i]
}

_end(foothold) := "band_to" if foothold - figures.band_from > figures.band_to - foothold

_end(foothold) := "band_from" if foothold - figures.band_from <= figures.band_to - foothold

_row[i] contains {
	"at": foothold.at, "have": foothold.value,
	"figure": _end(foothold.value), "limit": figures[_end(foothold.value)],
	"outside": within_band, "say": "foothold",
	"from": figures.band_from, "to": figures.band_to,
} if {
	some i, guard in _placed
	some foothold in guard.footholds
	within_band := count([1 |
		foothold.value >= figures.band_from
		foothold.value <= figures.band_to
	]) > 0
}

_row[i] contains {
	"at": guard.infill_kind.at, "figure": "kinds",
	"outside": true, "say": "kind", "kind": guard.infill_kind.value,
} if {
	some i, guard in _level
	not figures.toehold
}

_row[i] contains {
	"at": guard.opening.at, "have": guard.opening.value,
	"figure": "toehold", "limit": figures.toehold,
	"outside": guard.opening.value >= figures.toehold, "say": "toehold",
} if {
	some i, guard in _level
}

_row[i] contains {"at": guard.climbable.at, "figure": "kinds", "outside": true} if {
	some i, guard in _flagged
	guard.climbable.value
}

_row[i] contains {"at": guard.climbable.at, "figure": "kinds", "outside": false, "say": "none"} if {
	some i, guard in _flagged
	guard.climbable.value == false
}

_row[i] contains {
	"at": guard.infill_kind.at, "figure": "kinds",
	"outside": false, "say": "other", "kind": guard.infill_kind.value,
} if {
	some i, guard in _flagged
	not guard.climbable
}

# What could be climbed is outside only where the drop is known to be great enough.
readings contains row if {
	some i, rows in _row
	some row in rows
	row.outside == false
}

readings contains row if {
	some i, rows in _row
	some row in rows
	i in _high
}

unknown contains {"at": input.guards[i].at, "needs": "platforms[].edges.<edge>.drop"} if {
	some i, rows in _row
	some row in rows
	row.outside
	not i in _high
}

unknown contains {"at": guard.at, "needs": "guards[].infill.opening"} if {
	some guard in _level
	figures.toehold
	not guard.opening
}

unknown contains {"at": guard.at, "needs": "guards[].infill.kind"} if {
	some guard in _flagged
	not guard.climbable
	not guard.infill_kind
}

exempt contains guards.exempt(required, input.guards[i], drop) if some i, drop in _low

exempt contains {"at": input.guards[i].at, "because": "modest", "drop": drop.value, "trigger": figures.above} if some i, drop in _modest

exempt contains {"at": guard.at, "because": "bare"} if {
	some i, guard in input.guards
	guard.infill_kind.value == "none"
	not _low[i]
	not _modest[i]
}
