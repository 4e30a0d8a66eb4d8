# METADATA
# title: House rim behind the ledger
# description: Material, thickness and condition of the house rim that each ledger is fastened to.
# custom:
#   id: ledger/rim
#   aliases: []
#   consequence: structure
#   why: The fasteners hold in the rim alone, and a thin or rotten one lets them turn.
#   applies_when: a ledger is fastened to the house rim
#   figures:
#     materials: {type: list, relation: one of, about: materials accepted}
#     engineered: {type: list, about: those of them with a thickness of their own}
#     min_thickness: {type: length, relation: at least, about: least thickness of a sawn rim}
#     min_engineered: {type: length, relation: at least, about: least thickness of an engineered rim}
#     refused: {type: list, about: conditions in which a rim may not be used}
#   values: {wall: words}
#   messages:
#     outside: "the house rim is {have}, accepted are {limit}: its maker's listing or an engineer is needed"
#     within: "the house rim is {have}"
#     thickness: "the house rim is {have} thick, the limit is {limit}"
#     condition: "the house rim is {have}"
#   exempt:
#     wall: "the ledger is fastened to {wall}"
#   mend: ["the rim repaired or doubled before the ledger goes on", "a freestanding deck with its own beam and posts along the house"]
#   tries: []
package checks.ledger.rim

import data.figures.ledger.rim as figures

applies if count(_due) > 0

_elsewhere contains i if {
	some i, ledger in input.ledgers
	not ledger.attached_to.value in {"house_rim", "unknown"}
	ledger.attached_to
}

_due[i] := ledger if {
	some i, ledger in input.ledgers
	not i in _elsewhere
}

_material[i] := ledger.rim_material.value in figures.materials if {
	some i, ledger in _due
	ledger.rim_material.value != "unknown"
}

_least[i] := "min_engineered" if {
	some i, _ in _material
	_due[i].rim_material.value in figures.engineered
}

_least[i] := "min_thickness" if {
	some i, _ in _material
	not _due[i].rim_material.value in figures.engineered
}

_condition[i] := ledger.rim_condition.value in figures.refused if {
	some i, ledger in _due
	ledger.rim_condition.value != "unknown"
}

readings contains {
	"at": _due[i].rim_material.at, "have": _due[i].rim_material.value,
	"figure": "materials", "limit": figures.materials, "outside": accepted == false,
} if {
	some i, accepted in _material
}

readings contains {
	"at": thickness.at, "have": thickness.value,
	"figure": figure, "limit": figures[figure],
	"outside": thickness.value < figures[figure], "say": "thickness",
} if {
	some i, figure in _least
	_material[i]
	thickness := _due[i].rim_thickness
}

readings contains {
	"at": _due[i].rim_condition.at, "have": _due[i].rim_condition.value,
	"figure": "refused", "outside": refused, "say": "condition",
} if {
	some i, refused in _condition
}

exempt contains {"at": input.ledgers[i].at, "because": "wall", "wall": input.ledgers[i].attached_to.value} if some i in _elsewhere

unknown contains {"at": input.house.at, "needs": "house.house_rim.material"} if {
	some i, _ in _due
	not i in object.keys(_material)
}

unknown contains {"at": input.house.at, "needs": "house.house_rim.thickness"} if {
	some i, accepted in _material
	accepted
	not _due[i].rim_thickness
}

unknown contains {"at": input.house.at, "needs": "house.house_rim.condition"} if {
	some i, _ in _due
	not i in object.keys(_condition)
}
