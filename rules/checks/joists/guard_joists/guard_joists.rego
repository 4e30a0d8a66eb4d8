# METADATA
# title: Joists that carry a guard
# description: The depth and spacing of the joists of a platform whose guard stands on its frame, against the set's least depth and greatest spacing.
# custom:
#   id: joists/guard-joists
#   aliases: []
#   consequence: life safety
#   why: Whoever leans on a guard pries at the joists that hold its posts, and shallow ones twist or split.
#   applies_when: joists are described on a platform with a guard
#   figures:
#     min_depth: {type: length, relation: at least, about: least depth of joists that carry a guard}
#     max_spacing: {type: length, optional: true, relation: at most, about: greatest spacing of joists that carry a guard}
#     free: {type: list, about: fixings of guard posts that load no joist}
#   messages:
#     outside: "joists that carry a guard are {have} deep, the limit is {limit}"
#     spacing: "joists that carry a guard are spaced {have}, the limit is {limit}"
#   exempt:
#     free: "the posts of the guard load no joist"
#   mend:
#     - "deeper joists where their depth is outside, closer ones where their spacing is"
#     - "guard posts that run down to footings of their own"
#   tries: [joist-spacing, joist-size]
package checks.joists.guard_joists

import data.figures.joists.guard_joists as figures

applies if count(_guards) > 0

# Guards by the layout of joists below the platform whose edges they are named for.
_guards[i] contains guard if {
	some i, joists in input.joists
	some edge in input.edges
	edge.platform == joists.platform
	some guard in input.guards
	guard.mark == edge.guard
}

_fixings[i] contains guard.post_fixing.value if {
	some i, guards in _guards
	some guard in guards
}

_carrying contains i if {
	some i, fixings in _fixings
	some fixing in fixings
	not fixing in figures.free
}

# Where a fixing is not shown, the guard may or may not stand on the joists.
_open contains i if {
	some i, guards in _guards
	not i in _carrying
	some guard in guards
	not guard.post_fixing
}

_row[i] contains {
	"at": depth.at, "have": depth.value,
	"figure": "min_depth", "limit": figures.min_depth,
	"outside": depth.value < figures.min_depth,
} if {
	some i, _ in _guards
	depth := input.joists[i].depth
}

_row[i] contains {
	"at": spacing.at, "have": spacing.value,
	"figure": "max_spacing", "limit": figures.max_spacing,
	"outside": spacing.value > figures.max_spacing, "say": "spacing",
} if {
	some i, _ in _guards
	spacing := input.joists[i].spacing
}

_due contains i if some i in _carrying

_due contains i if some i in _open

readings contains row if {
	some i in _due
	some row in _row[i]
	row.outside == false
}

readings contains row if {
	some i in _carrying
	some row in _row[i]
}

unknown contains {"at": guard.at, "needs": "guards[].posts.fixing"} if {
	some i in _open
	some row in _row[i]
	row.outside
	some guard in _guards[i]
	not guard.post_fixing
}

unknown contains {"at": input.joists[i].at, "needs": "platforms[].joists.size"} if {
	some i in _due
	not input.joists[i].depth
}

unknown contains {"at": input.joists[i].at, "needs": "platforms[].joists.spacing"} if {
	some i in _due
	figures.max_spacing
	not input.joists[i].spacing
}

exempt contains {"at": input.joists[i].at, "because": "free"} if {
	some i, _ in _guards
	not i in _due
}
