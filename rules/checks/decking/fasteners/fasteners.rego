# METADATA
# title: Fasteners of deck boards
# description: The fasteners where a wood board crosses a joist, against the set's least number.
# custom:
#   id: decking/fasteners
#   aliases: []
#   consequence: durability
#   why: A board held by one fastener cups and works itself loose.
#   applies_when: decking is described
#   figures:
#     min: {type: count, unit: [fastener, fasteners], relation: at least, about: least number of fasteners in each board at each joist}
#   messages:
#     outside: "fasteners in each board at each joist are {have}, the limit is {limit}"
#   exempt:
#     listed: "boards other than wood are fastened as their listing says"
#   mend: ["more fasteners where each board crosses a joist"]
#   tries: [fasteners-per-joist]
package checks.decking.fasteners

import data.figures.decking.fasteners as figures

applies if count(input.decking) > 0

readings contains {
	"at": boards.fasteners_per_joist.at, "have": boards.fasteners_per_joist.value,
	"figure": "min", "limit": figures.min,
	"outside": boards.fasteners_per_joist.value < figures.min,
} if {
	some boards in input.decking
	boards.material.value == "wood"
}

unknown contains {"at": boards.at, "needs": "platforms[].decking.material"} if {
	some boards in input.decking
	not boards.material
}

unknown contains {"at": boards.at, "needs": "platforms[].decking.fasteners_per_joist"} if {
	some boards in input.decking
	boards.material.value == "wood"
	not boards.fasteners_per_joist
}

exempt contains {"at": boards.material.at, "because": "listed"} if {
	some boards in input.decking
	boards.material.value != "wood"
}
