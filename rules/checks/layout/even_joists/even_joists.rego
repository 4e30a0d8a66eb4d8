# METADATA
# title: Last bay of the joists
# description: The bay left over at the far end of a fixed spacing, as a share of that spacing.
# custom:
#   id: layout/even-joists
#   aliases: []
#   consequence: workmanship
#   why: A very short last bay has no room for a hanger, and shows that the layout started at the wrong end.
#   applies_when: joists are described
#   figures:
#     min_share: {type: ratio, unit: of the spacing, relation: at least, about: least share of the spacing that the last bay keeps}
#   values: {bay: length, spacing: length}
#   messages:
#     outside: "last bay is {bay} beside a spacing of {spacing}, at least {limit} of it is usual"
#     within: "last bay is {bay} beside a spacing of {spacing}"
#   exempt:
#     even: "the bays are equal"
#     listed: "every joist is listed by its place"
#     few: "two joists have no bay left over"
#   mend: ["equal bays", "the layout started at the other end, or from the middle"]
#   tries: [equal-bays, joist-spacing]
package checks.layout.even_joists

import data.figures.layout.even_joists as figures

applies if count(input.joists) > 0

_because := {"equal": "even", "listed": "listed"}

_fixed[i] := joists if {
	some i, joists in input.joists
	joists.layout.value == "on_center"
}

readings contains {
	"at": joists.last_bay.at, "have": {"rise": joists.last_bay.value, "run": joists.spacing.value},
	"figure": "min_share", "limit": figures.min_share,
	"outside": (joists.last_bay.value * figures.min_share.run) < (joists.spacing.value * figures.min_share.rise),
	"bay": joists.last_bay.value, "spacing": joists.spacing.value,
} if {
	some joists in _fixed
}

unknown contains {"at": joists.at, "needs": "platforms[].joists.layout"} if {
	some joists in input.joists
	not joists.layout
}

unknown contains {"at": joists.at, "needs": "platforms[].joists.spacing"} if {
	some joists in _fixed
	not joists.spacing
}

_unplaced[i] := joists if {
	some i, joists in _fixed
	joists.spacing
	not joists.last_bay
}

unknown contains {"at": joists.at, "needs": need} if {
	some joists in _unplaced
	some need in joists.missing
}

exempt contains {"at": joists.at, "because": "few"} if {
	some joists in _unplaced
	count(joists.missing) == 0
}

exempt contains {"at": joists.layout.at, "because": _because[joists.layout.value]} if {
	some joists in input.joists
}
