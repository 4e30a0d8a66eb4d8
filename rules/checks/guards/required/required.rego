# METADATA
# title: Guard at an open edge
# description: The greatest drop at an edge or within reach of it, against the drop above which the edge needs a guard.
# custom:
#   id: guards/required
#   aliases: []
#   consequence: life safety
#   why: People fall off edges, and a slope that drops away a step from the edge counts as part of the fall.
#   applies_when: a platform has edges other than those at the house
#   figures:
#     trigger: {type: length, relation: at most, about: greatest drop without a guard}
#   values: {edge: words, open: length}
#   messages:
#     outside: "the {edge} edge drops {have} and no guard is shown, one is asked for above {limit}"
#     partial: "the {edge} edge drops {have} and {open} of it has no guard, one is asked for above {limit}"
#     within: "the {edge} edge drops {have}, a guard is asked for above {limit}"
#     guarded: "the {edge} edge has a guard"
#   mend:
#     - "a guard along the whole edge"
#     - "ground raised so that the drop, there and within 36 in of the edge, stays under the limit"
package checks.guards.required

import data.figures.guards.required as figures

applies if count(_open) > 0

applies if count(_undrawn) > 0

_open[i] := edge if {
	some i, edge in input.edges
	edge.house == false
}

_bare[i] := edge if {
	some i, edge in _open
	not edge.guarded
}

_undrawn contains platform.at if {
	some platform in input.platforms
	not platform.outline
	not platform.area
}

_worst[i] := edge.drop if {
	some i, edge in _bare
	not edge.drop_within_36
}

_worst[i] := edge.drop_within_36 if {
	some i, edge in _bare
	not edge.drop
}

_worst[i] := edge.drop if {
	some i, edge in _bare
	edge.drop.value >= edge.drop_within_36.value
}

_worst[i] := edge.drop_within_36 if {
	some i, edge in _bare
	edge.drop_within_36.value > edge.drop.value
}

readings contains {"at": edge.at, "figure": "trigger", "outside": false, "say": "guarded", "edge": edge.name} if {
	some edge in _open
	edge.guarded
}

readings contains {
	"at": worst.at, "have": worst.value,
	"figure": "trigger", "limit": figures.trigger,
	"outside": true,
	"edge": _bare[i].name,
} if {
	some i, worst in _worst
	worst.value > figures.trigger
	not _bare[i].unguarded
}

readings contains {
	"at": worst.at, "have": worst.value,
	"figure": "trigger", "limit": figures.trigger,
	"outside": true, "say": "partial",
	"edge": _bare[i].name, "open": _bare[i].unguarded.value,
} if {
	some i, worst in _worst
	worst.value > figures.trigger
}

readings contains {
	"at": worst.at, "have": worst.value,
	"figure": "trigger", "limit": figures.trigger,
	"outside": false,
	"edge": _bare[i].name,
} if {
	some i, worst in _worst
	worst.value <= figures.trigger
	_bare[i].drop_within_36
}

unknown contains {"at": edge.at, "needs": replace("platforms[].edges.<edge>.drop_within_36_in", "edge>", concat("", [edge.name, ">"]))} if {
	some i, edge in _bare
	_worst[i].value <= figures.trigger
	not edge.drop_within_36
}

unknown contains {"at": edge.at, "needs": replace("platforms[].edges.<edge>.drop", "edge>", concat("", [edge.name, ">"]))} if {
	some i, edge in _bare
	not _worst[i]
}

unknown contains {"at": at, "needs": "platforms[].outline"} if some at in _undrawn
