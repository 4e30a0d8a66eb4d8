# METADATA
# title: Point load on the ledger
# description: Beams, stairs, posts and trimmers that set a single load down on a ledger, against those that the set refuses there.
# custom:
#   id: ledger/point-load
#   aliases: []
#   consequence: structure
#   why: The spacing of ledger fasteners counts on joists side by side, and the few bolts below a beam get the load of many.
#   applies_when: something sets a single load down on a ledger
#   figures:
#     refused: {type: list, about: what may not rest on a ledger}
#   messages:
#     outside: "a {have} rests on the ledger: an engineer is needed"
#     within: "a {have} rests on the ledger"
#   mend: ["a post of its own below the load"]
#   tries: []
package checks.ledger.point_load

import data.figures.ledger.point_load as figures

applies if count(_loads) > 0

_loads contains load if some load in input.ledgers[_].point_loads

_known contains load if {
	some load in _loads
	load.what != ""
}

_refused[load] := load.what in figures.refused if some load in _known

readings contains {"at": load.at, "have": load.what, "figure": "refused", "outside": refused} if some load, refused in _refused

unknown contains {"at": load.at, "needs": "platforms[].ledger.point_loads[].what"} if some load in (_loads - _known)
