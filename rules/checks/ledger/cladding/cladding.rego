# METADATA
# title: Cladding behind the ledger
# description: Whether the cladding of the house is taken off behind each ledger.
# custom:
#   id: ledger/cladding
#   aliases: []
#   consequence: structure
#   why: Cladding crushes behind a bolted ledger, the bolts loosen, and water that gets behind it stays there.
#   applies_when: a platform hangs on a ledger
#   figures:
#     removed: {type: flag, relation: exactly, about: true where the ledger lies on the wall itself}
#     bare: {type: list, about: walls that have no cladding to take off}
#   values: {wall: words}
#   messages:
#     outside: "the cladding stays on behind the ledger"
#     within: "the cladding is taken off behind the ledger"
#   exempt:
#     bare: "the ledger is fastened to a {wall}"
#   mend: ["the cladding cut out behind the ledger, and flashing over the cut"]
#   tries: [yes-no]
package checks.ledger.cladding

import data.figures.ledger.cladding as figures

applies if count(input.ledgers) > 0

_bare contains i if {
	some i, ledger in input.ledgers
	ledger.attached_to.value in figures.bare
}

_clad[i] := ledger if {
	some i, ledger in input.ledgers
	not i in _bare
}

_wanting(removed) := false if removed

_wanting(removed) := figures.removed if removed == false

readings contains {
	"at": removed.at, "have": removed.value,
	"figure": "removed", "limit": figures.removed, "outside": _wanting(removed.value),
} if {
	removed := _clad[_].cladding_removed
}

exempt contains {"at": input.ledgers[i].at, "because": "bare", "wall": input.ledgers[i].attached_to.value} if some i in _bare

unknown contains {"at": input.house.at, "needs": "house.cladding_removed_at_ledger"} if {
	some ledger in _clad
	not ledger.cladding_removed
}
