# METADATA
# title: Metal of the flashing
# description: What the flashing of each ledger is made of, against what the preservative of treated lumber eats.
# custom:
#   id: ledger/flashing-metal
#   aliases: []
#   consequence: durability
#   why: The copper in treated lumber eats bare aluminum and plain steel within a few wet seasons, and the flashing leaks.
#   applies_when: flashing at a ledger is shown
#   figures:
#     refused: {type: list, about: materials that may not touch treated lumber}
#   messages:
#     outside: "flashing of {have} touches treated lumber"
#     within: "flashing at the ledger is {have}"
#   exempt:
#     untreated: "the ledger is not treated"
#   mend: ["copper, stainless steel or a plastic made for treated lumber", "a membrane between flashing and lumber"]
#   tries: [flashing-metal]
package checks.ledger.flashing_metal

import data.figures.ledger.flashing_metal as figures

applies if count(_flashed) > 0

_flashed[i] := ledger if {
	some i, ledger in input.ledgers
	ledger.flashing_present.value
}

_untreated contains i if {
	some i, ledger in _flashed
	ledger.treated_lumber.value == false
}

_corroding[i] := lower(ledger.flashing_material.value) in figures.refused if {
	some i, ledger in _flashed
	not i in _untreated
}

# Whether a metal is eaten hangs on the treatment, which must be shown then.
_open contains i if {
	some i, corroding in _corroding
	corroding
	not _flashed[i].treated_lumber
}

readings contains {
	"at": _flashed[i].flashing_material.at, "have": _flashed[i].flashing_material.value,
	"figure": "refused", "outside": corroding,
} if {
	some i, corroding in _corroding
	not i in _open
}

exempt contains {"at": _flashed[i].at, "because": "untreated"} if some i in _untreated

unknown contains {"at": ledger.at, "needs": "platforms[].ledger.flashing.material"} if {
	some i, ledger in _flashed
	not ledger.flashing_material
	not i in _untreated
}

unknown contains {"at": _flashed[i].at, "needs": "lumber.<name>.treated"} if some i in _open
