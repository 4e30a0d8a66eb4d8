# METADATA
# title: Last gap of a row of balusters
# description: The gap left at the far post when balusters are set out at the drawn opening, as a share of that opening.
# custom:
#   id: guards/baluster-gap
#   aliases: []
#   consequence: workmanship
#   why: Set out at the drawn opening from one post, the row ends in whatever is left, and it shows.
#   applies_when: a guard has balusters
#   figures:
#     min_share: {type: ratio, unit: of the drawn opening, relation: at least, about: least share of the drawn opening that the last gap keeps}
#   values: {gap: length, opening: length}
#   messages:
#     outside: "set out at {opening} the last gap is {gap}, at least {limit} of the opening is usual"
#     within: "set out at {opening} the last gap is {gap}"
#   mend: ["the bay divided evenly: the gap of the even division, marked from the exact value"]
#   tries: [baluster-gap]
package checks.guards.baluster_gap

import data.figures.guards.baluster_gap as figures

applies if count(_rows) > 0

_rows[i] := guard if {
	some i, guard in input.guards
	guard.infill_kind.value == "balusters"
}

readings contains {
	"at": guard.last_gap.at,
	"have": {"rise": guard.last_gap.value, "run": guard.opening.value},
	"figure": "min_share", "limit": figures.min_share,
	"outside": (guard.last_gap.value * figures.min_share.run) < (guard.opening.value * figures.min_share.rise),
	"gap": guard.last_gap.value, "opening": guard.opening.value,
} if {
	some guard in _rows
}

unknown contains {"at": guard.at, "needs": "guards[].infill.opening"} if {
	some guard in _rows
	not guard.opening
}

unknown contains {"at": guard.at, "needs": "guards[].infill.baluster_width"} if {
	some guard in _rows
	guard.opening
	not guard.baluster_width
}

unknown contains {"at": guard.at, "needs": "guards[].posts.max_spacing"} if {
	some guard in _rows
	guard.opening
	guard.baluster_width
	not guard.last_gap
}
