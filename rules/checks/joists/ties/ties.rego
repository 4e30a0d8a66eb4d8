# METADATA
# title: Joists tied to beams
# description: Whether the joists are tied down to the beams that they lie on.
# custom:
#   id: joists/ties
#   aliases: []
#   consequence: structure
#   why: A crowd on the cantilever, or wind below the deck, lifts joists that only rest on their beam.
#   applies_when: joists lie on a dropped beam
#   figures:
#     required: {type: flag, relation: exactly, about: true where joists are tied to the beams below}
#   messages:
#     outside: "joists are not tied to the beam that they lie on"
#     within: "joists are tied to the beams that they lie on"
#   exempt:
#     none: "no joist lies on a beam"
#   mend: ["a listed tie at every joist and beam"]
#   tries: [yes-no]
package checks.joists.ties

import data.figures.joists.ties as figures

applies if {
	some joined in input.joined
	joined.on_dropped
}

_due[i] := joined if {
	some i, joined in input.joined
	joined.on_dropped
}

_wanting(tied) := false if tied

_wanting(tied) := figures.required if tied == false

readings contains {
	"at": tied.at, "have": tied.value,
	"figure": "required", "limit": figures.required, "outside": _wanting(tied.value),
} if {
	tied := _due[_].beam_ties
}

exempt contains {"at": joined.at, "because": "none"} if {
	some joined in input.joined
	not joined.on_dropped
}

unknown contains {"at": joined.at, "needs": "platforms[].joists.beam_ties"} if {
	some joined in _due
	not joined.beam_ties
}
