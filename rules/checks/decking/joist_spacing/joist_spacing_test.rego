package checks.decking.joist_spacing_test

import data.checks.decking.joist_spacing

_inch := 25400000

_degree := 1000000

_figures := {
	"max_angle": 45 * _degree,
	"multiple_from": 3,
	"cap": 24 * _inch,
	"spacing": {
		"breaks": {"thickness": [_inch, 38100000]},
		"cells": [
			{
				"perpendicular": {"single": 12 * _inch, "multiple": 16 * _inch},
				"diagonal": {"single": 8 * _inch, "multiple": 12 * _inch},
			},
			{
				"perpendicular": {"single": 24 * _inch, "multiple": 24 * _inch},
				"diagonal": {"single": null, "multiple": 16 * _inch},
			},
		],
	},
}

_under(figures, boards) := result if {
	result := {"readings": joist_spacing.readings, "unknown": joist_spacing.unknown} with input as {"decking": boards}
		with data.figures as {"decking": {"joist_spacing": figures}}
}

_said(boards) := _under(_figures, boards)

_boards := "/platforms/0/decking"

_shown(field, value) := {"value": value, "at": [concat("/", [_boards, field])]}

_spacing(value) := {"value": value, "at": ["/platforms/0/joists/spacing"]}

_wood := {
	"at": [_boards], "platform": "A", "picture_frame": false,
	"material": _shown("material", "wood"),
	"thickness": _shown("thickness", _inch),
	"board_angle": _shown("board_angle", 0),
	"joist_spacing": _spacing(16 * _inch),
	"joist_count": {"value": 13, "at": ["/platforms/0/joists"]},
}

_with(changes) := object.union(_wood, changes)

_composite(angle, spacing) := object.union(object.remove(_wood, ["thickness", "joist_count"]), {
	"material": _shown("material", "composite"),
	"board_angle": _shown("board_angle", angle),
	"joist_spacing": _spacing(spacing),
	"listed_straight": _shown("listed_max_spacing", 16 * _inch),
	"listed_diagonal": _shown("listed_max_spacing_diagonal", 12 * _inch),
	"listed_angle": _shown("listed_max_spacing_diagonal", 45 * _degree),
})

_row(have, limit, cell, outside) := {
	"at": ["/platforms/0/joists/spacing"], "have": have,
	"figure": "spacing", "limit": limit, "cell": cell, "outside": outside,
}

_listing(have, listed, field, outside) := {
	"at": ["/platforms/0/joists/spacing", concat("/", [_boards, field])], "have": have,
	"figure": "cap", "limit": listed, "stated_at": [concat("/", [_boards, field])], "outside": outside,
	"say": "listed", "listed": listed,
}

_capped(have, cap, outside) := {
	"at": ["/platforms/0/joists/spacing"], "have": have,
	"figure": "cap", "limit": cap, "outside": outside, "say": "cap",
}

_asked(needs) := {{"at": [_boards], "needs": need} | some need in needs}

test_spacing_over_at_and_under_the_limit if {
	limit := 16 * _inch # 406.4 mm
	every case in [[396875, true], [10000, true], [0, false], [-396875, false], [-10000, false]] {
		have := limit + case[0]
		_said([_with({"joist_spacing": _spacing(have)})]) == {
			"readings": {_row(have, limit, [0, "perpendicular", "multiple"], case[1])},
			"unknown": set(),
		}
	}
}

test_row_by_thickness_lay_and_reach if {
	every case in [
		[{"joist_count": {"value": 2, "at": ["/j"]}}, 12, [0, "perpendicular", "single"]],
		[{"joists_per_board": {"value": 2, "at": ["/j"]}}, 12, [0, "perpendicular", "single"]],
		[{"joist_count": {"value": 3, "at": ["/j"]}}, 16, [0, "perpendicular", "multiple"]],
		[{"board_angle": _shown("board_angle", 1)}, 12, [0, "diagonal", "multiple"]],
		[{"board_angle": _shown("board_angle", -45 * _degree)}, 12, [0, "diagonal", "multiple"]],
		[{"board_angle": _shown("board_angle", 45 * _degree)}, 12, [0, "diagonal", "multiple"]],
		[{"thickness": _shown("thickness", 32000000)}, 16, [0, "perpendicular", "multiple"]],
		[{"thickness": _shown("thickness", 38100000)}, 24, [1, "perpendicular", "multiple"]],
	] {
		[changes, limit, cell] := case
		_said([_with(object.union(changes, {"joist_spacing": _spacing(1)}))]) == {
			"readings": {_row(1, limit * _inch, cell, false)},
			"unknown": set(),
		}
	}
}

test_cell_that_permits_nothing_is_outside if {
	boards := _with({"thickness": _shown("thickness", 38100000), "board_angle": _shown("board_angle", _degree), "joist_count": {"value": 2, "at": ["/j"]}})
	_said([boards]) == {
		"readings": {{
			"at": ["/platforms/0/decking/thickness"], "figure": "spacing", "cell": [1, "diagonal", "single"],
			"outside": true, "say": "not_permitted", "thickness": 38100000,
		}},
		"unknown": set(),
	}
}

test_set_without_the_single_span_column if {
	any := {
		"max_angle": 45 * _degree, "cap": 24 * _inch,
		"spacing": {"breaks": {"thickness": [_inch]}, "cells": [{"perpendicular": {"any": 16 * _inch}}]},
	}
	_under(any, [object.remove(_wood, ["joist_count"])]) == {
		"readings": {_row(16 * _inch, 16 * _inch, [0, "perpendicular", "any"], false)},
		"unknown": set(),
	}
}

test_thinner_board_than_the_table_is_outside if {
	_said([_with({"thickness": _shown("thickness", _inch - 1)})]) == {
		"readings": {{
			"at": ["/platforms/0/decking/thickness"], "figure": "spacing",
			"outside": true, "say": "beyond_thickness", "thickness": _inch - 1,
		}},
		"unknown": set(),
	}
}

test_boards_further_round_than_the_table_are_outside if {
	every angle in [(45 * _degree) + 1, (-45 * _degree) - 1, 90 * _degree] {
		_said([_with({"board_angle": _shown("board_angle", angle)})]) == {
			"readings": {{
				"at": ["/platforms/0/decking/board_angle"], "have": abs(angle),
				"figure": "max_angle", "limit": 45 * _degree,
				"outside": true, "say": "beyond_angle", "angle": angle,
			}},
			"unknown": set(),
		}
	}
}

test_listed_boards_against_their_listing if {
	every case in [[396875, true], [10000, true], [0, false], [-396875, false], [-10000, false]] {
		straight := (16 * _inch) + case[0]
		_said([_composite(0, straight)]) == {
			"readings": {_listing(straight, 16 * _inch, "listed_max_spacing", case[1])},
			"unknown": set(),
		}
		askew := (12 * _inch) + case[0]
		_said([_composite(30 * _degree, askew)]) == {
			"readings": {_listing(askew, 12 * _inch, "listed_max_spacing_diagonal", case[1])},
			"unknown": set(),
		}
	}
}

_far(have) := object.union(_composite(0, have), {"listed_straight": _shown("listed_max_spacing", 30 * _inch)})

test_listing_does_not_lift_the_cap if {
	every case in [[-1, false], [0, false], [1, true]] {
		have := (24 * _inch) + case[0]
		_said([_far(have)]) == {"readings": {_capped(have, 24 * _inch, case[1])}, "unknown": set()}
	}
}

test_listing_at_the_cap_counts_as_the_listing if {
	at := object.union(_composite(0, _inch), {"listed_straight": _shown("listed_max_spacing", 24 * _inch)})
	_said([at]).readings == {_listing(_inch, 24 * _inch, "listed_max_spacing", false)}
}

test_over_the_cap_no_listing_is_asked_for if {
	bare := object.remove(_composite(_degree, (24 * _inch) + 1), ["listed_diagonal", "listed_angle"])
	every boards in [bare, object.remove(bare, ["board_angle"])] {
		_said([boards]) == {"readings": {_capped((24 * _inch) + 1, 24 * _inch, true)}, "unknown": set()}
	}
}

# Neither the angle nor the rows of a table of wood are for other boards.
test_other_boards_are_not_held_against_a_table_of_wood if {
	bare := object.remove(_figures, ["max_angle", "cap"])
	every figures in [bare, _woody_without_cap] {
		every case in [[-1, false], [0, false], [1, true]] {
			have := (12 * _inch) + case[0]
			_under(figures, [_composite(45 * _degree, have)]) == {
				"readings": {_listing(have, 12 * _inch, "listed_max_spacing_diagonal", case[1])},
				"unknown": set(),
			}
		}
		_under(figures, [object.remove(_composite(30 * _degree, 1), ["listed_diagonal", "listed_angle"])]) == {
			"readings": set(),
			"unknown": _asked({"platforms[].decking.listed_max_spacing_diagonal"}),
		}
	}
}

test_further_round_than_the_listing if {
	every angle in [(45 * _degree) + 1, (-45 * _degree) - 1] {
		_said([_composite(angle, 24 * _inch)]) == {
			"readings": {{
				"at": ["/platforms/0/decking/board_angle", "/platforms/0/decking/listed_max_spacing_diagonal"],
				"figure": "cap", "stated_at": ["/platforms/0/decking/listed_max_spacing_diagonal"],
				"outside": true, "say": "beyond_listing", "angle": angle, "listed": 12 * _inch,
			}},
			"unknown": set(),
		}
	}
}

test_what_decides_which_listing_is_asked_for if {
	_said([object.remove(_composite(0, 1), ["board_angle", "joist_spacing"])]).unknown == _asked({"platforms[].decking.board_angle"})
	odd := object.union(object.remove(_composite(0, 1), ["joist_spacing"]), {"spacing_field": "platforms[].measured_to"})
	_said([odd]) == {"readings": set(), "unknown": _asked({"platforms[].measured_to"})}
	nothing := {"at": [_boards], "spacing_field": "platforms[].joists.spacing"}
	_said([nothing]) == {"readings": set(), "unknown": _asked({
		"platforms[].decking.material", "platforms[].decking.board_angle", "platforms[].joists.spacing",
	})}
}

test_uncounted_joists_matter_only_between_the_columns if {
	uncounted := object.remove(_wood, ["joist_count"])
	every case in [
		[12 * _inch, 12 * _inch, "single", false],
		[(16 * _inch) + 1, 16 * _inch, "multiple", true],
	] {
		[have, limit, reach, outside] := case
		_said([object.union(uncounted, {"joist_spacing": _spacing(have)})]) == {
			"readings": {_row(have, limit, [0, "perpendicular", reach], outside)},
			"unknown": set(),
		}
	}
	every have in [(12 * _inch) + 1, 16 * _inch] {
		_said([object.union(uncounted, {"joist_spacing": _spacing(have)})]) == {
			"readings": set(),
			"unknown": _asked({"platforms[].decking.joists_per_board"}),
		}
	}
}

test_missing_listing_is_not_shown if {
	_said([object.remove(_composite(0, 1), ["listed_straight"])]) == {"readings": set(), "unknown": _asked({"platforms[].decking.listed_max_spacing"})}
	_said([object.remove(_composite(_degree, 1), ["listed_diagonal"])]) == {
		"readings": set(),
		"unknown": _asked({"platforms[].decking.listed_max_spacing_diagonal"}),
	}
}

test_missing_values_are_not_shown if {
	every case in [
		[["material"], "platforms[].decking.material"],
		[["board_angle"], "platforms[].decking.board_angle"],
		[["thickness"], "platforms[].decking.thickness"],
		[["joist_spacing"], "platforms[].joists.spacing"],
		[["joist_count"], "platforms[].decking.joists_per_board"],
		[["joist_count", "joist_spacing"], "platforms[].joists.spacing"],
	] {
		boards := object.union(object.remove(_wood, case[0]), {"spacing_field": "platforms[].joists.spacing"})
		_said([boards]) == {"readings": set(), "unknown": _asked({case[1]})}
	}
}

test_one_bad_of_two if {
	_said([_wood, _with({"joist_spacing": _spacing(17 * _inch)})]) == {
		"readings": {
			_row(16 * _inch, 16 * _inch, [0, "perpendicular", "multiple"], false),
			_row(17 * _inch, 16 * _inch, [0, "perpendicular", "multiple"], true),
		},
		"unknown": set(),
	}
}

test_no_subject_no_check if {
	not joist_spacing.applies with input as {"decking": []}
	joist_spacing.applies with input as {"decking": [_wood]}
	_said([]) == {"readings": set(), "unknown": set()}
}

test_beyond_the_table_nothing_more_is_asked_for if {
	every boards in [
		object.remove(_with({"board_angle": _shown("board_angle", 90 * _degree)}), ["joist_spacing"]),
		object.remove(_with({"thickness": _shown("thickness", _inch - 1)}), ["joist_spacing"]),
	] {
		said := _said([boards])
		count(said.readings) == 1
		said.unknown == set()
	}
}

_woody_without_cap := object.remove(_woody, ["cap"])

_woody := {
	"cap": 600000000,
	"woods": {"hardwood": ["spotted gum"], "cypress": ["cypress"]},
	"by_wood": {"breaks": {"thickness": [19000000]}, "cells": {"hardwood": [500000000], "cypress": [null]}},
}

_of(species) := _with({"lumber": {"species": _shown("lumber", species)}, "thickness": _shown("thickness", 19000000)})

test_spacing_by_the_wood_of_the_boards if {
	every have, outside in {500000000: false, 500010000: true} {
		_under(_woody, [object.union(_of("Spotted Gum"), {"joist_spacing": _spacing(have)})]) == {
			"readings": {object.union(_row(have, 500000000, ["hardwood", 0], outside), {"figure": "by_wood"})}, "unknown": set(),
		}
	}
}

test_boards_at_an_angle_where_the_set_has_none if {
	_under(_woody, [object.union(_of("spotted gum"), {"board_angle": _shown("board_angle", _degree)})]) == {
		"readings": {{"at": [concat("/", [_boards, "board_angle"])], "figure": "by_wood", "outside": true, "say": "beyond_angle", "angle": _degree}},
		"unknown": set(),
	}
}

test_woods_that_the_table_does_not_hold if {
	_under(_woody, [_of("teak")]) == {
		"readings": {{"at": [concat("/", [_boards, "lumber"])], "figure": "woods", "outside": true, "say": "beyond_wood", "species": "teak"}},
		"unknown": set(),
	}
	{row.say | some row in _under(_woody, [_of("cypress")]).readings} == {"not_permitted"}
	_under(_woody, [_with({"lumber": {"missing": ["lumber.<deck>.species", "lumber.<deck>.grade"]}})]) == {"readings": set(), "unknown": _asked({"lumber.<deck>.species"})}
}

test_wood_beyond_the_table_asks_for_nothing_more if {
	_under(_woody, [object.remove(_of("teak"), ["joist_spacing"])]).unknown == set()
}

_excerpt := object.union(_woody, {"excerpt": true})

_all(figures, boards) := result if {
	result := {"readings": joist_spacing.readings, "unknown": joist_spacing.unknown, "exempt": joist_spacing.exempt} with input as {"decking": [boards]}
		with data.figures as {"decking": {"joist_spacing": figures}}
}

_left_alone(why) := {"readings": set(), "unknown": set(), "exempt": {object.union({"at": [_boards]}, why)}}

# Neither the angle of such boards nor their thickness says anything then.
test_excerpt_leaves_other_woods_alone if {
	pine := object.union(_of("radiata pine"), {"joist_spacing": _spacing(900000000)})
	every boards in [
		pine,
		object.remove(pine, ["joist_spacing"]),
		object.union(pine, {"board_angle": _shown("board_angle", 45 * _degree)}),
		object.union(pine, {"thickness": _shown("thickness", 1)}),
	] {
		_all(_excerpt, boards) == _left_alone({"because": "beyond_wood", "species": "radiata pine"})
	}
}

_thick(thickness, spacing) := object.union(_of("spotted gum"), {"thickness": _shown("thickness", thickness), "joist_spacing": _spacing(spacing)})

test_excerpt_judges_the_thickness_that_it_holds if {
	every have, outside in {499990000: false, 500000000: false, 500010000: true} {
		_all(_excerpt, _thick(19000000, have)) == {
			"readings": {object.union(_row(have, 500000000, ["hardwood", 0], outside), {"figure": "by_wood"})},
			"unknown": set(), "exempt": set(),
		}
	}
	{row.say | some row in _all(_excerpt, _thick(18990000, 1)).readings} == {"beyond_thickness"}
}

# Thicker boards reach at least as far as those of the row; how much further is
# not known.
test_excerpt_leaves_thicker_boards_alone_past_the_limit_of_the_row if {
	every thickness in [19010000, 19050000, 32000000] { # 3/4 in is 19.05 mm
		every have in [499990000, 500000000] {
			_all(_excerpt, _thick(thickness, have)) == {
				"readings": {object.union(_row(have, 500000000, ["hardwood", 0], false), {"figure": "by_wood"})},
				"unknown": set(), "exempt": set(),
			}
		}
		_all(_excerpt, _thick(thickness, 500010000)) == _left_alone({"because": "thicker", "thickness": thickness})
		count(_all(_woody, _thick(thickness, 500010000)).exempt) == 0
	}
	cypress := object.union(_of("cypress"), {"thickness": _shown("thickness", 32000000)})
	{row.say | some row in _all(_excerpt, cypress).readings} == {"not_permitted"}
	_all(_excerpt, cypress).exempt == set()
}

# A listing above the cap leaves the spacing to be asked for, and a board laid too
# far round is told the cap as well.
test_cap_where_the_spacing_or_the_angle_is_the_matter if {
	bare := object.union(object.remove(_far(1), ["joist_spacing"]), {"spacing_field": "platforms[].joists.spacing"})
	_said([bare]) == {"readings": set(), "unknown": _asked({"platforms[].joists.spacing"})}
	past := _said([_composite(46 * _degree, (24 * _inch) + 1)])
	past.unknown == set()
	count(past.readings) == 2
	past.readings[_] == _capped((24 * _inch) + 1, 24 * _inch, true)
}
