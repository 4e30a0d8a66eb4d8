# METADATA
# title: What the ledger is fastened to
# description: The wall behind each ledger, veneer that stays on it, and the floor behind that wall, against what the set does not accept.
# custom:
#   id: ledger/substrate
#   aliases: []
#   consequence: life safety
#   why: A ledger on veneer, on a floor that overhangs or on the ribbon of a truss is fastened to something that carries nothing.
#   applies_when: a platform hangs on a ledger
#   figures:
#     refused: {type: list, about: what a ledger may not be fastened to}
#     weak: {type: list, optional: true, about: further things that a ledger may not be fastened to}
#     walls: {type: list, about: "walls that carry by themselves, whatever the floor behind them"}
#     refused_floors: {type: list, about: framing of the house floor that may not carry a ledger}
#     overhanging: {type: flag, relation: exactly, about: true where a floor that overhangs its foundation may carry a ledger}
#   messages:
#     outside: "the ledger is fastened to {have}"
#     within: "the ledger is fastened to {have}"
#     floor: "the floor behind the ledger is framed with {have}: its designer or an engineer is needed"
#     framed: "the floor behind the ledger is framed with {have}"
#     overhanging: "the floor behind the ledger overhangs the foundation"
#     veneer: "the ledger lies on {have}, which stays on the wall behind it"
#     bared: "the {have} is taken off behind the ledger"
#     plain: "the wall behind the ledger has no veneer"
#     supported: "the floor behind the ledger stands on the foundation"
#   mend:
#     - "a freestanding deck with its own beam and posts along the house"
#     - "the ledger on the house rim itself, with the veneer or cladding taken off"
#   tries: []
package checks.ledger.substrate

import data.figures.ledger.substrate as figures

applies if count(input.ledgers) > 0

_known[i] := ledger if {
	some i, ledger in input.ledgers
	ledger.attached_to.value != "unknown"
}

_figure[i] := "refused" if {
	some i, ledger in _known
	ledger.attached_to.value in figures.refused
}

_figure[i] := "weak" if {
	some i, ledger in _known
	ledger.attached_to.value in figures.weak
	not ledger.attached_to.value in figures.refused
}

_walled contains i if {
	some i, ledger in input.ledgers
	ledger.attached_to.value in figures.walls
}

# Behind a wall that is refused or carries by itself the floor does not matter.
_framed[i] := ledger if {
	some i, ledger in input.ledgers
	not _figure[i]
	not i in _walled
}

# Veneer that is in the list carries no ledger, whatever lies behind it.
_veneer[i] := concat(" ", [ledger.veneer.value, "veneer"]) if {
	some i, ledger in input.ledgers
	not _figure[i]
	concat(" ", [ledger.veneer.value, "veneer"]) in figures.refused
}

_veneer_say := {true: "bared", false: "veneer"}

_floor[i] := ledger.floor.value in figures.refused_floors if {
	some i, ledger in _framed
	ledger.floor.value != "unknown"
}

_floor_say := {true: "floor", false: "framed"}

_overhang_say := {true: "overhanging", false: "supported"}

readings contains {
	"at": _known[i].attached_to.at, "have": _known[i].attached_to.value,
	"figure": figure, "outside": true,
} if {
	some i, figure in _figure
}

readings contains {
	"at": ledger.attached_to.at, "have": ledger.attached_to.value,
	"figure": "refused", "outside": false,
} if {
	some i, ledger in _known
	not _figure[i]
}

readings contains {
	"at": array.concat(ledger.veneer.at, ledger.cladding_removed.at), "have": veneer,
	"figure": "refused", "outside": ledger.cladding_removed.value == false, "say": _veneer_say[ledger.cladding_removed.value],
} if {
	some i, veneer in _veneer
	ledger := input.ledgers[i]
}

readings contains {"at": ledger.veneer.at, "have": "none", "figure": "refused", "outside": false, "say": "plain"} if {
	some i, ledger in input.ledgers
	not _figure[i]
	ledger.veneer.value == "none"
}

readings contains {
	"at": _framed[i].floor.at, "have": _framed[i].floor.value,
	"figure": "refused_floors", "outside": refused, "say": _floor_say[refused],
} if {
	some i, refused in _floor
}

readings contains {
	"at": overhang.at, "have": overhang.value,
	"figure": "overhanging", "limit": figures.overhanging,
	"outside": _wanting(overhang.value), "say": _overhang_say[overhang.value],
} if {
	overhang := _framed[_].cantilevered_floor
}

_wanting(overhangs) := figures.overhanging == false if overhangs

_wanting(overhangs) := false if overhangs == false

unknown contains {"at": ledger.at, "needs": "platforms[].ledger.attached_to"} if {
	some i, ledger in input.ledgers
	not _known[i]
}

unknown contains {"at": input.house.at, "needs": "house.cladding_removed_at_ledger"} if {
	some i, _ in _veneer
	not input.ledgers[i].cladding_removed
}

unknown contains {"at": input.house.at, "needs": "house.veneer"} if {
	some i, ledger in input.ledgers
	not _figure[i]
	ledger.veneer.value == "unknown"
}

unknown contains {"at": input.house.at, "needs": "house.floor"} if {
	some i, _ in _framed
	not i in object.keys(_floor)
}

unknown contains {"at": input.house.at, "needs": "house.cantilevered_floor"} if {
	some ledger in _framed
	not ledger.cantilevered_floor
}
