# METADATA
# title: Step at the exit door
# description: The step from the threshold of the required exit door down to the deck, however the door opens, against the set's limit.
# custom:
#   id: egress/exit-step
#   aliases: []
#   consequence: life safety
#   why: A step at the door keeps it free of snow, and is walked into by everyone who leaves the house in a hurry.
#   applies_when: a door opens on a platform
#   figures:
#     max: {type: length, relation: at most, about: greatest step down at the required exit door}
#   messages:
#     outside: "step down at the required exit door is {have}, the limit is {limit}"
#   exempt:
#     other: "this is not the required exit door"
#   mend:
#     - "a deck surface closer to the threshold"
#   tries: []
package checks.egress.exit_step

import data.figures.egress.exit_step as figures

applies if count(input.doors) > 0

readings contains {
	"at": door.step_down.at, "have": door.step_down.value,
	"figure": "max", "limit": figures.max,
	"outside": door.step_down.value > figures.max,
} if {
	some door in input.doors
	_weighed(door)
}

_weighed(door) if door.required_exit.value == true

# A step that is low enough is so at any door.
_weighed(door) if {
	not door.required_exit
	door.step_down.value <= figures.max
}

_other(door) if door.required_exit.value == false

exempt contains {"at": door.required_exit.at, "because": "other"} if {
	some door in input.doors
	_other(door)
}

unknown contains {"at": door.at, "needs": "house.openings[].required_egress_door"} if {
	some door in input.doors
	not door.required_exit
	door.step_down.value > figures.max
}

unknown contains {"at": door.at, "needs": "house.openings[].threshold_above_decking"} if {
	some door in input.doors
	not door.step_down
	not _other(door)
}
