# METADATA
# title: Guard at an open edge
# description: The greatest drop at an edge or within reach of it, or below an opening framed in the platform, against the drop above which or from which it needs a guard, and the slope of the ground beside an edge where the set judges that.
# custom:
#   id: guards/required
#   aliases: []
#   consequence: life safety
#   why: People fall off edges, and a slope that drops away a step from the edge counts as part of the fall.
#   applies_when: a platform has edges other than those at the house
#   figures:
#     trigger: {type: length, optional: true, relation: at most, about: greatest drop without a guard}
#     from: {type: length, optional: true, relation: less than, about: "drop from which on a guard is asked for, given instead of the greatest without one"}
#     reach: {type: length, optional: true, about: "distance out from the edge within which the ground counts, straight below it alone where none is given"}
#     slope: {type: slope, optional: true, relation: at most, about: steepest ground beside an edge without a guard}
#     gap: {type: length, optional: true, about: "least side of an opening in the platform from which on it is taken for an edge; openings are left alone where none is given"}
#   values: {edge: words, open: length, hole: words, gap: length}
#   messages:
#     outside: "the {edge} edge drops {have} and no guard is shown, one is asked for above {limit}"
#     outside_from: "the {edge} edge drops {have} and no guard is shown, one is asked for from {limit} on"
#     outside_level: "the {edge} edge drops {have}, the height stated for the whole surface, and no guard is shown, one is asked for above {limit}"
#     outside_level_from: "the {edge} edge drops {have}, the height stated for the whole surface, and no guard is shown, one is asked for from {limit} on"
#     partial: "the {edge} edge drops {have} and {open} of it has no guard, one is asked for above {limit}"
#     partial_from: "the {edge} edge drops {have} and {open} of it has no guard, one is asked for from {limit} on"
#     partial_level: "the {edge} edge drops {have}, the height stated for the whole surface, and {open} of it has no guard, one is asked for above {limit}"
#     partial_level_from: "the {edge} edge drops {have}, the height stated for the whole surface, and {open} of it has no guard, one is asked for from {limit} on"
#     within: "the {edge} edge drops {have}, a guard is asked for above {limit}"
#     within_from: "the {edge} edge drops {have}, a guard is asked for from {limit} on"
#     within_level: "the {edge} edge drops {have}, the height stated for the whole surface, a guard is asked for above {limit}"
#     within_level_from: "the {edge} edge drops {have}, the height stated for the whole surface, a guard is asked for from {limit} on"
#     steep: "the ground beside the {edge} edge falls {have} and no guard is shown, one is asked for where it is steeper than {limit}"
#     hole: "the {hole} in the platform is {gap} across and drops {have}, and it is said to have no guard, one is asked for above {limit}"
#     hole_from: "the {hole} in the platform is {gap} across and drops {have}, and it is said to have no guard, one is asked for from {limit} on"
#     hole_within: "the {hole} in the platform drops {have}, a guard is asked for above {limit}"
#     hole_within_from: "the {hole} in the platform drops {have}, a guard is asked for from {limit} on"
#     closed: "the {hole} in the platform has a guard or a cover"
#     guarded: "the {edge} edge has a guard"
#   mend:
#     - "a guard along the whole edge"
#     - "ground raised so that the drop, there and within the distance that counts, stays under the limit"
#   tries: [edge-guard]
#   asks: true
package checks.guards.required

import data.figures.guards.required as figures
import data.lib.guards

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

# A set says above which drop, or from which on.
_figure := "trigger" if figures.trigger

else := "from"

_say(key, edge, drop) := concat("", [key, _taken(edge, drop), guards.manner(figures)])

# _taken is what the keys of messages say of a drop that is the height of the
# whole surface.
_taken(edge, drop) := "_level" if {
	some entry in edge.drops
	entry.level
	entry.drop == drop
}

else := ""

_high[i] := drop if {
	some i, edge in _bare
	drop := guards.worst(figures, edge.drops)
	guards.calls(figures, drop.value)
}

_low[i] := guards.low(figures, edge) if some i, edge in _bare

readings contains {"at": edge.at, "figure": _figure, "outside": false, "say": "guarded", "edge": edge.name} if {
	some edge in _open
	edge.guarded
}

readings contains {
	"at": drop.at, "have": drop.value,
	"figure": _figure, "limit": figures[_figure],
	"outside": true, "say": _say("outside", _bare[i], drop),
	"edge": _bare[i].name,
} if {
	some i, drop in _high
	not _bare[i].unguarded
}

readings contains {
	"at": drop.at, "have": drop.value,
	"figure": _figure, "limit": figures[_figure],
	"outside": true, "say": _say("partial", _bare[i], drop),
	"edge": _bare[i].name, "open": _bare[i].unguarded.value,
} if {
	some i, drop in _high
}

readings contains {
	"at": edge.ground_slope.at, "have": edge.ground_slope.value,
	"figure": "slope", "limit": figures.slope,
	"outside": true, "say": "steep",
	"edge": edge.name,
} if {
	some i, edge in _bare
	not _high[i]
	guards.steep(figures, edge)
}

readings contains {
	"at": drop.at, "have": drop.value,
	"figure": _figure, "limit": figures[_figure],
	"outside": false, "say": _say("within", _bare[i], drop),
	"edge": _bare[i].name,
} if {
	some i, drop in _low
}

unknown contains {"at": edge.at, "needs": replace(concat("", ["platforms[].edges.<edge>.", field]), "edge>", concat("", [edge.name, ">"]))} if {
	some i, edge in _bare
	not _high[i]
	not guards.steep(figures, edge)
	some field in guards.missing(figures, edge)
}

# An opening that people may step or fall through, or of which that is not known.
_holes[i] := hole if {
	some i, hole in input.platform_openings
	figures.gap
	not _narrow(hole)
}

_narrow(hole) if hole.gap.value < figures.gap

_closed(hole) if hole.guarded

_closed(hole) if hole.covered

_shallow(hole) if {
	hole.drop
	not guards.calls(figures, hole.drop.value)
}

# An opening that is told to have no guard, where one may be asked for.
_gaping[i] := hole if {
	some i, hole in _holes
	hole.told
	not _closed(hole)
	not _shallow(hole)
}

readings contains {"at": hole.at, "figure": _figure, "outside": false, "say": "closed", "hole": hole.name} if {
	some hole in _holes
	_closed(hole)
}

readings contains {
	"at": array.concat(hole.at, hole.drop.at), "have": hole.drop.value,
	"figure": _figure, "limit": figures[_figure],
	"outside": false, "say": concat("", ["hole_within", guards.manner(figures)]),
	"hole": hole.name,
} if {
	some hole in _holes
	not _closed(hole)
	_shallow(hole)
}

readings contains {
	"at": array.concat(hole.at, hole.drop.at), "have": hole.drop.value,
	"figure": _figure, "limit": figures[_figure],
	"outside": true, "say": concat("", ["hole", guards.manner(figures)]),
	"hole": hole.name, "gap": hole.gap.value,
} if {
	some hole in _gaping
}

unknown contains {"at": hole.at, "needs": "platforms[].joists.openings[].guard"} if {
	some hole in _holes
	not hole.told
	not _closed(hole)
	not _shallow(hole)
}

unknown contains {"at": hole.at, "needs": concat("", ["platforms[].joists.openings[].", {"gap": "corners", "drop": "drop"}[member]])} if {
	some hole in _gaping
	some member in ["gap", "drop"]
	not hole[member]
}

unknown contains {"at": at, "needs": "platforms[].outline"} if some at in _undrawn
