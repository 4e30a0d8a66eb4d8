# METADATA
# title: Joist bearing
# description: The length on which joists rest, on beams as stated or over the whole beam, and at the ledger as stated where no hangers carry them.
# custom:
#   id: joists/bearing
#   aliases: []
#   consequence: structure
#   why: Joist ends that rest on too little crush, and slip off when the frame moves.
#   applies_when: joists rest on a beam or a ledger
#   figures:
#     min_wood: {type: length, relation: at least, about: least length of bearing on wood or metal}
#     min_concrete: {type: length, relation: at least, about: least length of bearing on concrete or masonry}
#     hard: {type: list, about: what counts as concrete or masonry}
#   messages:
#     outside: "joists rest on {have}, the limit is {limit}"
#     within: "joists rest on {have}, the limit is {limit}"
#   exempt:
#     hangers: "hangers carry the joists at the ledger"
#     open: "whether hangers carry the joists at the ledger is not shown, which the check of hangers asks for"
#   mend: ["joists that run over the whole beam", "hangers where joists end at a face"]
#   tries: [halves]
package checks.joists.bearing

import data.figures.joists.bearing as figures

applies if {
	some joined in input.joined
	joined.on_dropped
}

applies if {
	some joined in input.joined
	joined.on_ledger
}

# Beams and ledgers are of wood or metal unless something else is shown.
_hard contains i if {
	some i, joined in input.joined
	joined.bearing_on.value in figures.hard
}

_figure[i] := "min_concrete" if some i in _hard

_figure[i] := "min_wood" if {
	some i, _ in input.joined
	not i in _hard
}

_bearing[i] contains joined.bearing_at_beams if {
	some i, joined in input.joined
	joined.on_dropped
}

_bearing[i] contains joined.beam_width if {
	some i, joined in input.joined
	joined.on_dropped
	not joined.bearing_at_beams
}

_bearing[i] contains joined.bearing_at_ledger if {
	some i, joined in input.joined
	joined.on_ledger
}

readings contains {
	"at": bearing.at, "have": bearing.value,
	"figure": _figure[i], "limit": figures[_figure[i]],
	"outside": bearing.value < figures[_figure[i]],
} if {
	some i, bearings in _bearing
	some bearing in bearings
}

exempt contains {"at": joined.at, "because": "hangers"} if {
	some joined in input.joined
	joined.on_ledger
	not joined.bearing_at_ledger
	joined.hangers_at_ledger.value
}

exempt contains {"at": joined.at, "because": "open"} if {
	some joined in input.joined
	joined.on_ledger
	not joined.bearing_at_ledger
	not joined.hangers_at_ledger
}

unknown contains {"at": joined.at, "needs": "platforms[].joists.bearing_at_beams"} if {
	some joined in input.joined
	joined.on_dropped
	not joined.bearing_at_beams
	not joined.beam_width
}

unknown contains {"at": joined.at, "needs": "platforms[].joists.bearing_at_ledger"} if {
	some joined in input.joined
	joined.on_ledger
	not joined.bearing_at_ledger
	joined.hangers_at_ledger.value == false
}
