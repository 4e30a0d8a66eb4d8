# METADATA
# title: Joist spacing under the decking
# description: The spacing of the joists, against what boards of this thickness, laid this way, reach across; boards other than wood against their own listing.
# custom:
#   id: decking/joist-spacing
#   aliases: []
#   consequence: structure
#   why: A board that is too thin for the gap between joists sags or breaks under a foot, and laid at an angle it has further to reach.
#   applies_when: decking is described
#   figures:
#     spacing: {type: table, optional: true, value: length, keys: [thickness, lay, reach], relation: at most, about: greatest joist spacing under wood boards}
#     by_wood: {type: table, optional: true, value: length, keys: [wood, thickness], relation: at most, about: "greatest joist spacing by the wood of the boards, given instead"}
#     woods: {type: groups, optional: true, about: species that share the rows of that table}
#     max_angle: {type: angle, optional: true, relation: at most, about: "greatest angle of the boards away from square; where none is given, boards lie square"}
#     multiple_from: {type: count, unit: [joist, joists], optional: true, about: joists on which a board must rest for the multiple-span column}
#     excerpt: {type: flag, optional: true, about: "true where the set holds a few rows of the printed table only, and leaves alone what they do not reach"}
#     cap: {type: length, relation: at most, optional: true, about: "greatest joist spacing under boards other than wood, whatever their listing allows"}
#   values: {angle: angle, thickness: length, listed: length, species: words}
#   messages:
#     outside: "joist spacing is {have}, these boards reach across {limit}"
#     within: "joist spacing is {have}, these boards reach across {limit}"
#     listed: "joist spacing is {have}, the boards are listed for {listed}"
#     cap: "joist spacing is {have}, the limit under any decking is {limit}, whatever its listing allows"
#     beyond_wood: "boards of {species} are outside this table"
#     beyond_angle: "boards lie at {angle} from square, further round than the table goes"
#     beyond_listing: "boards lie at {angle} from square, further round than the {listed} of their listing is for"
#     beyond_thickness: "boards are {thickness} thick, thinner than the table goes"
#     not_permitted: "boards of {thickness} are not permitted this way"
#   exempt:
#     beyond_wood: "the set does not hold what the table says of boards of {species}; the printed table decides"
#     thicker: "the set does not hold what the table says of boards {thickness} thick; the printed table decides"
#   unmended: [beyond_wood]
#   mend:
#     - "joists closer together"
#     - "boards square across the joists, or thicker ones"
#   tries: [joist-spacing, board-angle]
package checks.decking.joist_spacing

import data.figures.decking.joist_spacing as figures
import data.lib.decking

applies if count(input.decking) > 0

_wood contains boards if {
	some boards in input.decking
	boards.material.value == "wood"
}

_other contains boards if {
	some boards in input.decking
	boards.material.value != "wood"
}

readings contains {
	"at": boards.joist_spacing.at, "have": boards.joist_spacing.value,
	"figure": decking.table(figures), "limit": limit, "cell": decking.cell(figures, boards),
	"outside": boards.joist_spacing.value > limit,
} if {
	some boards in _wood
	limit := decking.limit(figures, boards)
	is_number(limit)
	not decking.thicker(figures, boards)
}

readings contains {
	"at": boards.thickness.at, "figure": decking.table(figures), "cell": decking.cell(figures, boards),
	"outside": true, "say": "not_permitted", "thickness": boards.thickness.value,
} if {
	some boards in _wood
	is_null(decking.limit(figures, boards))
}

readings contains row if {
	some boards in _wood
	not decking.apart(figures, boards)
	some row in decking.beyond(figures, boards)
}

exempt contains {"at": boards.at, "because": "beyond_wood", "species": boards.lumber.species.value} if {
	some boards in _wood
	decking.apart(figures, boards)
}

exempt contains {"at": boards.at, "because": "thicker", "thickness": boards.thickness.value} if {
	some boards in _wood
	decking.thicker(figures, boards)
}

unknown contains {"at": boards.at, "needs": need} if {
	some boards in _wood
	count(decking.beyond(figures, boards)) == 0
	some need in decking.missing(figures, boards)
}

# Boards of anything else are no matter of a table of wood: their listing says
# how far they reach, and how far round it goes.
_round contains boards if {
	some boards in _other
	abs(boards.board_angle.value) > boards.listed_angle.value
}

_capped contains boards if {
	some boards in _other
	decking.listing(boards).value > figures.cap
}

# Beyond the cap no listing helps.
_capped contains boards if {
	some boards in _other
	not decking.listing(boards)
	boards.joist_spacing.value > figures.cap
}

readings contains {
	"at": array.concat(boards.joist_spacing.at, listed.at), "have": boards.joist_spacing.value,
	"figure": "cap", "limit": listed.value, "stated_at": listed.at,
	"outside": boards.joist_spacing.value > listed.value,
	"say": "listed", "listed": listed.value,
} if {
	some boards in (_other - (_capped | _round))
	listed := decking.listing(boards)
}

readings contains {
	"at": boards.joist_spacing.at, "have": boards.joist_spacing.value,
	"figure": "cap", "limit": figures.cap,
	"outside": boards.joist_spacing.value > figures.cap, "say": "cap",
} if {
	some boards in ((_capped - _round) | _past)
}

# Whatever a listing says of boards laid so far round, the cap holds.
_past contains boards if {
	some boards in _round
	boards.joist_spacing.value > figures.cap
}

readings contains {
	"at": array.concat(boards.board_angle.at, boards.listed_diagonal.at),
	"figure": "cap", "stated_at": boards.listed_diagonal.at,
	"outside": true, "say": "beyond_listing", "angle": boards.board_angle.value, "listed": boards.listed_diagonal.value,
} if {
	some boards in _round
}

unknown contains {"at": boards.at, "needs": need} if {
	some boards in (_other - (_capped | _round))
	some need in decking.unlisted(boards)
}

unknown contains {"at": boards.at, "needs": need} if {
	some boards in (_other - _round)
	some need in decking.spacing(boards)
}

unknown contains {"at": boards.at, "needs": "platforms[].decking.board_angle"} if {
	some boards in (_other - _capped)
	not boards.board_angle
}

unknown contains {"at": boards.at, "needs": need} if {
	some boards in input.decking
	not boards.material
	some need in (decking.spacing(boards) | {"platforms[].decking.material"})
}

unknown contains {"at": boards.at, "needs": "platforms[].decking.board_angle"} if {
	some boards in input.decking
	not boards.material
	not boards.board_angle
}
