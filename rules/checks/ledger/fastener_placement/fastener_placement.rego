# METADATA
# title: Place of ledger fasteners
# description: How far the fasteners of each ledger lie from its edges and ends, from the edges of the house rim and from each other.
# custom:
#   id: ledger/fastener-placement
#   aliases: [ledger/edge-distances]
#   consequence: structure
#   why: A bolt near an edge or an end splits the wood along its grain, and then holds nothing.
#   applies_when: a platform hangs on a ledger
#   figures:
#     top_min: {type: length, relation: at least, about: top edge of the ledger to the upper row}
#     bottom_min: {type: length, relation: at least, about: bottom edge of the ledger to the lower row}
#     end_min: {type: length, relation: at least, about: end of the ledger to the first fastener}
#     end_max: {type: length, relation: at most, about: end of the ledger to the first fastener}
#     row_min: {type: length, relation: at least, about: distance between two rows}
#     row_max: {type: length, relation: at most, about: distance between two rows}
#     rim_min: {type: length, relation: at least, about: edge of the house rim to the nearest row}
#     staggered: {type: flag, relation: exactly, about: true where fasteners alternate between the rows}
#     row_to_top: {type: table, optional: true, value: length, keys: [size, fastener], relation: at least, about: top edge of the ledger to the lower row}
#   values: {size: words}
#   messages:
#     outside: "the upper row of ledger fasteners lies {have} from the top edge, the limit is {limit}"
#     bottom: "the lower row of ledger fasteners lies {have} from the bottom edge, the limit is {limit}"
#     end: "the first ledger fastener lies {have} from the end, the limit is {limit}"
#     row: "the rows of ledger fasteners lie {have} apart, the limit is {limit}"
#     rim: "a row of ledger fasteners lies {have} from the edge of the house rim, the limit is {limit}"
#     staggered: "ledger fasteners alternate between the rows"
#     aligned: "ledger fasteners stand one above the other instead of alternating"
#     row_to_top: "the lower row lies {have} below the top edge of a {size} ledger, the limit is {limit}"
#   exempt:
#     single: "the fasteners stand in one row"
#   mend: ["rows moved to the distances that the set gives", "a deeper ledger, so that both rows fit"]
#   tries: [yes-no, quarters]
package checks.ledger.fastener_placement

import data.figures.ledger.fastener_placement as figures

applies if count(input.ledgers) > 0

_shown[i] := ledger if {
	some i, ledger in input.ledgers
	ledger.fasteners_shown
}

_rowed[i] := ledger if {
	some i, ledger in _shown
	not ledger.fastener_rows.value == 1
}

_least := {
	"top_min": {"fact": "edge_top", "say": "outside"}, "bottom_min": {"fact": "edge_bottom", "say": "bottom"},
	"end_min": {"fact": "end_distance", "say": "end"}, "rim_min": {"fact": "rim_edge", "say": "rim"},
}

readings contains {
	"at": value.at, "have": value.value,
	"figure": figure, "limit": figures[figure],
	"outside": value.value < figures[figure], "say": of.say,
} if {
	some ledger in _shown
	some figure, of in _least
	value := ledger[of.fact]
}

readings contains {
	"at": value.at, "have": value.value,
	"figure": "end_max", "limit": figures.end_max,
	"outside": value.value > figures.end_max, "say": "end",
} if {
	value := _shown[_].end_distance
}

readings contains {
	"at": value.at, "have": value.value,
	"figure": "row_min", "limit": figures.row_min,
	"outside": value.value < figures.row_min, "say": "row",
} if {
	value := _rowed[_].row_spacing
}

readings contains {
	"at": value.at, "have": value.value,
	"figure": "row_max", "limit": figures.row_max,
	"outside": value.value > figures.row_max, "say": "row",
} if {
	value := _rowed[_].row_spacing
}

_staggered_say := {true: "staggered", false: "aligned"}

readings contains {
	"at": value.at, "have": value.value,
	"figure": "staggered", "limit": figures.staggered,
	"outside": _wanting(value.value), "say": _staggered_say[value.value],
} if {
	value := _rowed[_].staggered
}

_wanting(staggered) := false if staggered

_wanting(staggered) := figures.staggered if staggered == false

readings contains {
	"at": ledger.bottom_row_to_top.at, "have": ledger.bottom_row_to_top.value,
	"figure": "row_to_top", "limit": limit, "cell": [size, kind],
	"outside": ledger.bottom_row_to_top.value < limit, "say": "row_to_top", "size": size,
} if {
	some ledger in _shown
	size := ledger.size.value
	kind := ledger.fastener_type.value
	limit := figures.row_to_top.cells[size][kind]
}

exempt contains {"at": ledger.fastener_rows.at, "because": "single"} if {
	some i, ledger in _shown
	not _rowed[i]
}

_field := {
	"edge_top": "edge_distance_top", "edge_bottom": "edge_distance_bottom",
	"end_distance": "end_distance", "rim_edge": "house_rim_edge_distance",
}

_row_field := {"row_spacing": "row_spacing", "staggered": "staggered"}

unknown contains {"at": ledger.at, "needs": concat(".", ["platforms[].ledger.fasteners", field])} if {
	some ledger in _shown
	some fact, field in _field
	not ledger[fact]
}

unknown contains {"at": ledger.at, "needs": concat(".", ["platforms[].ledger.fasteners", field])} if {
	some ledger in _rowed
	some fact, field in _row_field
	not ledger[fact]
}

unknown contains {"at": ledger.at, "needs": "platforms[].ledger.fasteners"} if {
	some i, ledger in input.ledgers
	not _shown[i]
}
