# METADATA
# title: Blocking below a picture frame
# description: Whether blocking carries a border of boards and the ends of the boards that meet it.
# custom:
#   id: decking/frame-blocking
#   aliases: []
#   consequence: workmanship
#   why: A border without blocking leaves board ends in the air, and they curl, sag and come loose.
#   applies_when: decking with a border is described
#   figures:
#     blocking: {type: flag, relation: exactly, about: true where a border needs blocking below it}
#   messages:
#     outside: "no blocking carries the border and the board ends"
#     within: "blocking carries the border and the board ends"
#   mend: ["blocking below the border and below the ends of the boards that meet it"]
#   tries: [yes-no]
package checks.decking.frame_blocking

import data.figures.decking.frame_blocking as figures

applies if count(_bordered) > 0

_bordered[i] := boards if {
	some i, boards in input.decking
	boards.picture_frame
}

readings contains {
	"at": boards.frame_blocking.at, "have": boards.frame_blocking.value,
	"figure": "blocking", "limit": figures.blocking,
	"outside": boards.frame_blocking.value != figures.blocking,
} if {
	some boards in _bordered
}

unknown contains {"at": boards.at, "needs": "platforms[].decking.picture_frame.blocking"} if {
	some boards in _bordered
	not boards.frame_blocking
}
