# METADATA
# title: Soil beyond the tables
# description: What the soil bears and what kind it is, against the poorest soil of the set's tables.
# custom:
#   id: scope/soil
#   aliases: []
#   consequence: structure
#   why: Soft, organic or swelling soil moves under footings of any size.
#   applies_when: footings are described under posts
#   figures:
#     min: {type: pressure, relation: at least, about: least bearing of the tables}
#     refused: {type: list, optional: true, about: kinds of soil that no table covers}
#   messages:
#     outside: "the soil bears {have}, the tables start at {limit}: a licensed engineer is needed"
#     within: "the soil bears {have}, the tables start at {limit}"
#     kind: "the soil is {have}: outside the prescriptive tables, a licensed engineer is needed"
#   mend: ["a report on the soil, and a design by a licensed engineer"]
#   tries: []
package checks.scope.soil

import data.figures.scope.soil as figures

applies if count(input.footings) > 0

readings contains {
	"at": soil.at, "have": soil.value,
	"figure": "min", "limit": figures.min, "outside": soil.value < figures.min,
} if {
	soil := input.site.soil_bearing
}

readings contains {"at": kind.at, "have": kind.value, "figure": "refused", "outside": true, "say": "kind"} if {
	kind := input.site.soil_class
	lower(kind.value) in figures.refused
}

unknown contains {"at": input.site.at, "needs": "site.soil_bearing"} if not input.site.soil_bearing
