# METADATA
# title: Framing above a window well
# description: The height from the top of an escape window's well up to the underside of the framing, against the set's least height.
# custom:
#   id: egress/window-well
#   aliases: []
#   consequence: life safety
#   why: Whoever climbs out of the well has to get past the framing above it.
#   applies_when: a window lies under or beside a platform
#   figures:
#     min: {type: length, relation: at least, about: least height from the top of the well to the framing}
#   messages:
#     outside: "framing is {have} above the window well, the limit is {limit}"
#   exempt:
#     plain: "the window is no escape and rescue opening"
#     no_well: "the way out is shown and no window well is"
#   mend: ["framing kept clear of the well"]
#   tries: []
package checks.egress.window_well

import data.figures.egress.window_well as figures

applies if count(input.windows) > 0

readings contains {
	"at": window.well_to_frame.at, "have": window.well_to_frame.value,
	"figure": "min", "limit": figures.min,
	"outside": window.well_to_frame.value < figures.min,
} if {
	some window in input.windows
	window.egress.value
}

unknown contains {"at": window.at, "needs": "house.openings[].egress"} if {
	some window in input.windows
	not window.egress
}

unknown contains {"at": window.at, "needs": "house.openings[].well_top_below_framing"} if {
	some window in input.windows
	window.egress.value
	not window.well_to_frame
	not window.path_height
}

exempt contains {"at": window.at, "because": "no_well"} if {
	some window in input.windows
	window.egress.value
	not window.well_to_frame
	window.path_height
}

exempt contains {"at": window.egress.at, "because": "plain"} if {
	some window in input.windows
	window.egress.value == false
}
