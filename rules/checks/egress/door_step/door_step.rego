# METADATA
# title: Step down at a door
# description: The step from the top of a threshold down to the deck, against the set's limit, which is smaller where the required exit door swings over the deck.
# custom:
#   id: egress/door-step
#   aliases: []
#   consequence: life safety
#   why: People step out of a door without looking down, and a door leaf that swings over the step leaves nowhere to stand.
#   applies_when: a door opens on a platform
#   figures:
#     max: {type: length, relation: at most, about: greatest step down at a door}
#     max_swing: {type: length, relation: at most, about: greatest step down where the required exit door swings over it}
#   messages:
#     outside: "step down at the door is {have}, the limit is {limit}"
#     swing: "step down at the required exit door, which swings over it, is {have}, the limit is {limit}"
#   mend:
#     - "a deck surface closer to the threshold"
#     - "a door that swings in or slides"
#   tries: []
package checks.egress.door_step

import data.figures.egress.door_step as figures

applies if count(input.doors) > 0

_free contains i if {
	some i, door in input.doors
	door.swings_over.value == false
}

_free contains i if {
	some i, door in input.doors
	door.required_exit.value == false
}

_strict contains i if {
	some i, door in input.doors
	door.swings_over.value
	door.required_exit.value
}

# With the swing or the duty of the door not shown, only a step between the two limits stays open.
_hangs contains i if {
	some i, door in input.doors
	not i in _free
	not i in _strict
	door.step_down.value > figures.max_swing
	door.step_down.value <= figures.max
}

readings contains {
	"at": door.step_down.at, "have": door.step_down.value,
	"figure": "max", "limit": figures.max,
	"outside": door.step_down.value > figures.max,
} if {
	some i, door in input.doors
	not i in _strict
	not i in _hangs
}

readings contains {
	"at": door.step_down.at, "have": door.step_down.value,
	"figure": "max_swing", "limit": figures.max_swing,
	"outside": door.step_down.value > figures.max_swing,
	"say": "swing",
} if {
	some i, door in input.doors
	i in _strict
}

unknown contains {"at": door.at, "needs": "house.openings[].threshold_above_decking"} if {
	some door in input.doors
	not door.step_down
}

unknown contains {"at": door.at, "needs": "house.openings[].swings_over_deck"} if {
	some i, door in input.doors
	i in _hangs
	not door.swings_over
}

unknown contains {"at": door.at, "needs": "house.openings[].required_egress_door"} if {
	some i, door in input.doors
	i in _hangs
	not door.required_exit
}
