# METADATA
# title: Joist hangers
# description: Whether hangers carry the joists where they end at the face of a ledger or of a flush beam.
# custom:
#   id: joists/hangers
#   aliases: []
#   consequence: structure
#   why: Nails through the ledger into end grain pull out, and the joist drops at the house.
#   applies_when: joists end at a ledger or a flush beam
#   figures:
#     required: {type: flag, relation: exactly, about: true where joists hang in hangers at a face}
#   values: {where: part}
#   messages:
#     outside: "joists end at the {where} without hangers"
#     within: "joists hang in hangers at the {where}"
#   exempt:
#     bearing: "joists rest at the {where} instead"
#   mend: ["hangers of the size of the joists, with every hole filled"]
#   tries: [yes-no]
package checks.joists.hangers

import data.figures.joists.hangers as figures

applies if count(_faces) > 0

_fact := {"ledger": "hangers_at_ledger", "flush beam": "hangers_at_flush"}

_field := {"ledger": "platforms[].joists.hangers.at_ledger", "flush beam": "platforms[].joists.hangers.at_flush_beams"}

_faces contains [i, "ledger"] if {
	some i, joined in input.joined
	joined.on_ledger
}

_faces contains [i, "flush beam"] if {
	some i, joined in input.joined
	joined.on_flush
}

# A strip or a notch that the joists rest on stands for the hangers.
_resting contains i if {
	some i, joined in input.joined
	joined.on_ledger
	joined.bearing_at_ledger
	not joined.hangers_at_ledger.value
}

_due contains [i, where] if {
	some [i, where] in _faces
	not [i, where] in {[k, "ledger"] | some k in _resting}
}

_wanting(hung) := false if hung

_wanting(hung) := figures.required if hung == false

readings contains {
	"at": hung.at, "have": hung.value,
	"figure": "required", "limit": figures.required,
	"outside": _wanting(hung.value), "where": where,
} if {
	some [i, where] in _due
	hung := input.joined[i][_fact[where]]
}

exempt contains {"at": input.joined[i].bearing_at_ledger.at, "because": "bearing", "where": "ledger"} if some i in _resting

unknown contains {"at": input.joined[i].at, "needs": _field[where]} if {
	some [i, where] in _due
	not input.joined[i][_fact[where]]
}
