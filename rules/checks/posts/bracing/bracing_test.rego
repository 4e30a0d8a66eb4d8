package checks.posts.bracing_test

import data.checks.posts.bracing

_above := 609600000 # 2 ft

_right := 45000000

_figures := {"above": _above, "corners_only": true, "along": true, "across": true, "diagonal_decking": _right}

_decked(figures, angle, members) := result if {
	result := {"readings": bracing.readings, "unknown": bracing.unknown, "exempt": bracing.exempt} with input as {
		"posts": members,
		"decking": [{"platform": "A", "board_angle": _shown("/angle", angle)}],
	}
		with data.figures as {"posts": {"bracing": figures}}
}

_said(members) := _decked(_figures, 0, members)

_shown(path, value) := {"value": value, "at": [path]}

_at := ["/platforms/0/beams/0/posts_at/0"]

_bare(height) := {"at": _at, "platform": "A", "corner": true, "freestanding": false, "height_above_grade": _shown("/drop", height)}

_braced(along, across) := object.union(_bare(_above + 1), {"braces_along": _shown("/braces", along), "braces_across": _shown("/braces", across)})

_free(post) := object.union(post, {"freestanding": true})

_row(way, have, outside, say) := {
	"at": ["/braces"], "have": have, "figure": way, "limit": true, "outside": outside, "say": say,
	"height": _above + 1, "above": _above,
}

_reading(rows) := {"readings": rows, "unknown": set(), "exempt": set()}

_spared(row) := {"readings": set(), "unknown": set(), "exempt": {object.union(row, {"at": _at})}}

_asked(needs) := {"readings": set(), "exempt": set(), "unknown": {{"at": ["/platforms/0"], "needs": needs}}}

test_height_from_which_on_posts_are_braced if {
	every low in [_above, _above - 10000, _above - 396875, 0] {
		_said([_bare(low)]) == _spared({"because": "low", "height": low, "above": _above})
	}
	every high in [_above + 1, _above + 10000, _above + 396875] {
		_said([_bare(high)]) == _asked("platforms[].posts.braces.directions")
	}
}

test_deck_tied_to_a_house_is_braced_along_the_beam if {
	_said([_braced(true, false)]) == _reading({_row("along", true, false, "braced")})
	_said([_braced(false, true)]) == _reading({_row("along", false, true, "outside")})
}

test_freestanding_deck_is_braced_across_as_well if {
	_said([_free(_braced(true, true))]) == _reading({_row("along", true, false, "braced"), _row("across", true, false, "braced")})
	_said([_free(_braced(true, false))]) == _reading({_row("along", true, false, "braced"), _row("across", false, true, "across")})
}

test_posts_between_the_ends if {
	middle := object.union(_bare(_above + 1), {"corner": false})
	_said([middle]) == _spared({"because": "middle"})
	_decked(object.union(_figures, {"corners_only": false}), 0, [middle]) == _asked("platforms[].posts.braces.directions")
}

test_boards_on_the_diagonal_brace_a_deck_tied_to_a_house if {
	_decked(_figures, _right, [_bare(_above + 1)]) == _spared({"because": "decking", "angle": _right})
	_decked(_figures, _right - 1, [_bare(_above + 1)]) == _asked("platforms[].posts.braces.directions")
	_decked(_figures, _right, [_free(_bare(_above + 1))]) == _asked("platforms[].posts.braces.directions")
	_decked(object.remove(_figures, ["diagonal_decking"]), _right, [_bare(_above + 1)]) == _asked("platforms[].posts.braces.directions")
	_decked(_figures, _right, [object.union(_bare(_above + 1), {"platform": "B"})]) == _asked("platforms[].posts.braces.directions")
}

test_set_that_does_not_ask_for_them if {
	figures := object.union(_figures, {"along": false})
	_decked(figures, 0, [_braced(false, true)]).readings == {object.union(_row("along", false, false, "outside"), {"limit": false})}
}

test_height_not_shown if {
	_said([object.remove(_bare(1), ["height_above_grade"])]) == _asked("platforms[].surface_above_grade")
}

test_one_bad_of_two if {
	_said([_braced(true, true), _braced(false, true)]).readings == {_row("along", true, false, "braced"), _row("along", false, true, "outside")}
}

test_no_subject_no_check if {
	not bracing.applies with input as {"posts": []}
	bracing.applies with input as {"posts": [_bare(1)]}
	_said([]) == _reading(set())
}
