# METADATA
# title: Way out under the deck from an escape window
# description: The least clear height of the way out from an escape window under a deck, against the set's least height.
# custom:
#   id: egress/window-clear-height
#   aliases: []
#   consequence: life safety
#   why: A deck built over a bedroom window can shut the only way out of a burning room.
#   applies_when: a window lies under or beside a platform
#   figures:
#     min: {type: length, relation: at least, about: least clear height of the way out under a deck}
#   messages:
#     outside: "clear height of the way out under the deck is {have}, the limit is {limit}"
#   exempt:
#     plain: "the window is no escape and rescue opening"
#   mend:
#     - "joists run so that nothing hangs into the way out"
#     - "a deck that stops short of the window"
#   tries: []
package checks.egress.window_clear_height

import data.figures.egress.window_clear_height as figures

applies if count(input.windows) > 0

readings contains {
	"at": window.path_height.at, "have": window.path_height.value,
	"figure": "min", "limit": figures.min,
	"outside": window.path_height.value < figures.min,
} if {
	some window in input.windows
	window.egress.value
}

unknown contains {"at": window.at, "needs": "house.openings[].egress"} if {
	some window in input.windows
	not window.egress
}

unknown contains {"at": window.at, "needs": "house.openings[].clear_path_height"} if {
	some window in input.windows
	window.egress.value
	not window.path_height
}

exempt contains {"at": window.egress.at, "because": "plain"} if {
	some window in input.windows
	window.egress.value == false
}
