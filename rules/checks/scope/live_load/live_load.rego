# METADATA
# title: Live load
# description: The live load that the design counts on, against the least that the set asks for and the greatest that its tables cover.
# custom:
#   id: scope/live-load
#   aliases: []
#   consequence: structure
#   why: A deck that is too weak for the people or the snow on it is so everywhere at once, and a table holds for no more than the load it was made for.
#   applies_when: a platform is described
#   figures:
#     min: {type: pressure, optional: true, relation: at least, about: least live load of a deck}
#     max: {type: pressure, optional: true, relation: at most, about: greatest live load of the tables}
#     roof_snow: {type: flag, optional: true, about: true where the snow specified for roofs is the least wherever it is greater}
#   messages:
#     outside: "live load is {have}, at least {limit} is asked for"
#     within: "live load is {have}, at least {limit} is asked for"
#     snow: "live load is {have}, at least the {limit} of snow specified for roofs is asked for"
#     beyond: "live load is {have}, the tables end at {limit}: a licensed engineer is needed"
#     covered: "live load is {have}, the tables end at {limit}"
#   unmended: [beyond]
#   mend: ["the live load of the adopted code"]
#   tries: [load]
package checks.scope.live_load

import data.figures.scope.live_load as figures

applies if count(input.platforms) > 0

# The snow of roofs raises the least load where the set says so.
_snow := input.site.roof_snow_load.value if {
	figures.roof_snow
	input.site.roof_snow_load.value > figures.min
}

# A live load under the least is outside whatever the snow.
_decided if not figures.roof_snow

_decided if input.site.roof_snow_load

_decided if input.site.live_load.value < figures.min

readings contains {
	"at": live.at, "have": live.value,
	"figure": "min", "limit": figures.min, "outside": live.value < figures.min,
} if {
	live := input.site.live_load
	_decided
	not _snow
}

readings contains {
	"at": live.at, "have": live.value,
	"figure": "min", "limit": _snow, "outside": live.value < _snow, "say": "snow",
} if {
	live := input.site.live_load
}

_say := {true: "beyond", false: "covered"}

readings contains {
	"at": live.at, "have": live.value,
	"figure": "max", "limit": figures.max, "outside": beyond, "say": _say[beyond],
} if {
	live := input.site.live_load
	beyond := live.value > figures.max
}

unknown contains {"at": input.site.at, "needs": "site.live_load"} if not input.site.live_load

unknown contains {"at": input.site.at, "needs": "site.roof_snow_load"} if {
	input.site.live_load
	not _decided
}
