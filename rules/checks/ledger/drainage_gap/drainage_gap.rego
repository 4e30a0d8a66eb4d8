# METADATA
# title: Drainage gap behind the ledger
# description: The gap kept between each ledger and the wall, against the least that lets water run out.
# custom:
#   id: ledger/drainage-gap
#   aliases: []
#   consequence: durability
#   why: Water that is held between ledger and cladding rots both.
#   applies_when: a platform hangs on a ledger
#   figures:
#     min: {type: length, relation: at least, about: least gap between ledger and wall}
#   messages:
#     outside: "the gap behind the ledger is {have}, the limit is {limit}"
#   mend: ["packers or washers that keep the ledger off the wall"]
#   tries: [sixteenths]
package checks.ledger.drainage_gap

import data.figures.ledger.drainage_gap as figures

applies if count(input.ledgers) > 0

readings contains {
	"at": gap.at, "have": gap.value,
	"figure": "min", "limit": figures.min, "outside": gap.value < figures.min,
} if {
	gap := input.ledgers[_].gap_to_house
}

unknown contains {"at": ledger.at, "needs": "platforms[].ledger.gap_to_house"} if {
	some ledger in input.ledgers
	not ledger.gap_to_house
}
