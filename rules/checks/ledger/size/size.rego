# METADATA
# title: Ledger size
# description: The nominal size of each ledger, against the sizes that the set accepts.
# custom:
#   id: ledger/size
#   aliases: []
#   consequence: structure
#   why: A shallow ledger leaves the bolts too close to its edges, and splits along them.
#   applies_when: a platform hangs on a ledger
#   figures:
#     accepted: {type: list, relation: one of, about: nominal sizes accepted}
#   messages:
#     outside: "ledger is {have}, accepted are {limit}"
#     within: "ledger is {have}"
#   mend: ["a deeper ledger, usually as deep as the joists"]
#   tries: [ledger-size]
package checks.ledger.size

import data.figures.ledger.size as figures

applies if count(input.ledgers) > 0

_accepted[i] := ledger.size.value in figures.accepted if some i, ledger in input.ledgers

readings contains {
	"at": input.ledgers[i].size.at, "have": input.ledgers[i].size.value,
	"figure": "accepted", "limit": figures.accepted,
	"outside": accepted == false,
} if {
	some i, accepted in _accepted
}

unknown contains {"at": ledger.at, "needs": "platforms[].ledger.size"} if {
	some ledger in input.ledgers
	not ledger.size
}
