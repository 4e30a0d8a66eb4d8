# METADATA
# title: Flashing of the ledger
# description: Whether flashing keeps water from getting behind each ledger.
# custom:
#   id: ledger/flashing
#   aliases: []
#   consequence: structure
#   why: Water that runs behind the ledger rots the rim out of sight, and the bolts then hold in nothing.
#   applies_when: a platform hangs on a ledger
#   figures:
#     required: {type: flag, relation: exactly, about: true where every ledger is flashed}
#   messages:
#     outside: "the ledger has no flashing"
#     within: "the ledger has flashing"
#   mend: ["flashing that laps over the ledger and runs up behind the cladding"]
#   tries: [yes-no]
package checks.ledger.flashing

import data.figures.ledger.flashing as figures

applies if count(input.ledgers) > 0

_wanting(present) := false if present

_wanting(present) := figures.required if present == false

readings contains {
	"at": present.at, "have": present.value,
	"figure": "required", "limit": figures.required, "outside": _wanting(present.value),
} if {
	present := input.ledgers[_].flashing_present
}

unknown contains {"at": ledger.at, "needs": "platforms[].ledger.flashing.present"} if {
	some ledger in input.ledgers
	not ledger.flashing_present
}
