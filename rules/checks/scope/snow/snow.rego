# METADATA
# title: Snow beyond the tables
# description: The ground snow load of the place, against the greatest for which the set has a column.
# custom:
#   id: scope/snow
#   aliases: []
#   consequence: structure
#   why: Snow lies on a deck for weeks, and slides onto it from the roof above.
#   applies_when: a platform is described
#   figures:
#     max: {type: pressure, relation: at most, about: greatest ground snow load of the tables}
#   messages:
#     outside: "ground snow load is {have}, the tables end at {limit}: a licensed engineer is needed"
#     within: "ground snow load is {have}, the tables end at {limit}"
#   mend: ["a design by a licensed engineer for the snow of the place"]
#   tries: []
package checks.scope.snow

import data.figures.scope.snow as figures

applies if count(input.platforms) > 0

readings contains {
	"at": snow.at, "have": snow.value,
	"figure": "max", "limit": figures.max, "outside": snow.value > figures.max,
} if {
	snow := input.site.ground_snow_load
}

unknown contains {"at": input.site.at, "needs": "site.ground_snow_load"} if not input.site.ground_snow_load
