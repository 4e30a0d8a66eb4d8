# METADATA
# title: Change of direction
# description: The risers of all flights of a stair that goes straight on, against the number after which the set asks for a turn between flights.
# custom:
#   id: stairs/change-of-direction
#   aliases: []
#   consequence: life safety
#   why: A fall that a landing does not stop is stopped by the wall or guard of a turn.
#   applies_when: a stair is described
#   figures:
#     max: {type: count, unit: [riser, risers], relation: at most, about: greatest number of risers in flights without a turn between them}
#     turn: {type: angle, relation: at least, about: least change of direction that counts as a turn}
#   values: {turn: angle}
#   messages:
#     outside: "the stair goes straight on over {have} risers, the limit is {limit}"
#   exempt:
#     turns: "the stair turns between its flights, by {turn} where it turns most"
#   mend:
#     - "a landing on which the stair turns"
#   tries: []
package checks.stairs.change_of_direction

import data.figures.stairs.change_of_direction as figures

applies if count(input.stairs) > 0

# Stairs by the greatest turn on a landing between their flights.
_turns[at] contains landing.turn.value if {
	some landing in input.landings
	landing.where == "between"
	some at in input.stairs[_].at
	_on(landing, at)
}

# The place of a landing lies in that of its stair.
_on(landing, at) if startswith(landing.at[0], concat("", [at, "/"]))

_turned(stair) := turn if {
	turn := max(_turns[stair.at[0]])
	turn >= figures.turn
}

# Whether a stair turns matters only where it has more risers than it may have without.
_hangs(stair) if {
	stair.flights > 1
	stair.risers.value > figures.max
	not _turned(stair)
	not _straight(stair)
}

# Straight throughout: as many turns are shown as there are landings between flights, and none counts.
_straight(stair) if {
	shown := [landing |
		some landing in input.landings
		landing.where == "between"
		landing.turn
		_on(landing, stair.at[0])
	]
	count(shown) == stair.flights - 1
}

readings contains {
	"at": stair.risers.at, "have": stair.risers.value,
	"figure": "max", "limit": figures.max,
	"outside": stair.risers.value > figures.max,
} if {
	some stair in input.stairs
	not _turned(stair)
	not _hangs(stair)
}

exempt contains {"at": stair.at, "because": "turns", "turn": _turned(stair)} if some stair in input.stairs

unknown contains {"at": stair.at, "needs": "stairs[].landing_between.turn"} if {
	some stair in input.stairs
	_hangs(stair)
}

unknown contains {"at": stair.at, "needs": "stairs[].risers"} if {
	some stair in input.stairs
	not stair.risers
	not _turned(stair)
}
