# METADATA
# title: Drainage gap behind the ledger
# description: The gap kept between each ledger and the cladding behind it, against the least that lets water run out.
# custom:
#   id: ledger/drainage-gap
#   aliases: []
#   consequence: durability
#   why: Water that is held between ledger and cladding rots both.
#   applies_when: a platform hangs on a ledger
#   figures:
#     min: {type: length, relation: at least, about: least gap between ledger and cladding}
#   messages:
#     outside: "the gap behind the ledger is {have}, the limit is {limit}"
#   exempt:
#     bare: "the cladding is taken off behind the ledger, so that none is there to keep clear of"
#   mend: ["packers or washers that keep the ledger off the wall"]
#   tries: [sixteenths]
package checks.ledger.drainage_gap

import data.figures.ledger.drainage_gap as figures

applies if count(input.ledgers) > 0

# Where the cladding is off, no gap is asked for.
_bare contains i if {
	some i, ledger in input.ledgers
	ledger.cladding_removed.value
}

readings contains {
	"at": gap.at, "have": gap.value,
	"figure": "min", "limit": figures.min, "outside": gap.value < figures.min,
} if {
	some i, ledger in input.ledgers
	not i in _bare
	gap := ledger.gap_to_house
}

exempt contains {"at": input.ledgers[i].at, "because": "bare"} if some i in _bare

unknown contains {"at": ledger.at, "needs": "platforms[].ledger.gap_to_house"} if {
	some i, ledger in input.ledgers
	not i in _bare
	not ledger.gap_to_house
}
