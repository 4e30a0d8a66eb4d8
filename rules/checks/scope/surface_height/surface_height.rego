# METADATA
# title: Height of the deck
# description: "The height of each walking surface above the ground, where it is greatest: as stated, or as an edge, a point or a post shows it, against the greatest for which the set was made."
# custom:
#   id: scope/surface-height
#   aliases: []
#   consequence: structure
#   why: On tall posts a deck sways, and what the set says of framing was not made for that.
#   applies_when: a platform is described
#   figures:
#     max: {type: length, relation: at most, about: greatest height of a walking surface above the ground}
#   messages:
#     outside: "the surface lies {have} above the ground, the set ends at {limit}: an engineer is needed"
#     within: "the surface lies {have} above the ground, the set ends at {limit}"
#   mend: ["a design by an engineer"]
#   tries: []
package checks.scope.surface_height

import data.figures.scope.surface_height as figures

applies if count(input.platforms) > 0

readings contains {
	"at": height.at, "have": height.value,
	"figure": "max", "limit": figures.max, "outside": height.value > figures.max,
} if {
	some platform in input.platforms
	height := platform.greatest_height
	_decided(platform)
}

unknown contains {"at": platform.at, "needs": "platforms[].surface_above_grade"} if {
	some platform in input.platforms
	not _decided(platform)
}

# Ground that is too far below at one place is so whatever the height is stated.
_decided(platform) if platform.surface_above_grade

_decided(platform) if platform.greatest_height.value > figures.max
