# METADATA
# title: Closure of a walked outline
# description: How far a walked outline misses the place where it started, against what tapes and cuts leave.
# custom:
#   id: layout/closure
#   aliases: []
#   consequence: workmanship
#   why: An outline that does not close holds a wrong length or turn, and every quantity taken from it is wrong too.
#   applies_when: an outline is described as a walk
#   figures:
#     short: {type: length, relation: at most, about: greatest miss of a short walk}
#     short_under: {type: length, about: length below which a walk is short}
#     long: {type: length, relation: at most, about: greatest miss of a longer walk}
#   values: {walked: length}
#   messages:
#     outside: "the walk of {walked} misses its start by {have}, the limit is {limit}"
#     within: "the walk of {walked} misses its start by {have}"
#   mend: ["the legs measured again, the one cut at an angle first"]
#   tries: []
package checks.layout.closure

import data.figures.layout.closure as figures

applies if count(_walks) > 0

_walks[i] := platform if {
	some i, platform in input.platforms
	platform.outline == "walk"
}

_walks[i] := platform if {
	some i, platform in input.platforms
	platform.closure
}

_band[i] := ["short", figures.short] if {
	some i, walk in _walks
	walk.walk_length.value < figures.short_under
}

_band[i] := ["long", figures.long] if {
	some i, walk in _walks
	walk.walk_length.value >= figures.short_under
}

readings contains {
	"at": walk.closure.at, "have": walk.closure.value,
	"figure": figure, "limit": limit,
	"outside": walk.closure.value > limit,
	"walked": walk.walk_length.value,
} if {
	some i, walk in _walks
	[figure, limit] := _band[i]
}

unknown contains {"at": walk.at, "needs": "platforms[].outline.walk[].go"} if {
	some walk in _walks
	not walk.closure
}
