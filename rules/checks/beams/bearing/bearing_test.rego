package checks.beams.bearing_test

import data.checks.beams.bearing

_wood := 38100000 # 1-1/2 in

_concrete := 76200000 # 3 in

_figures := {"min_wood": _wood, "min_concrete": _concrete, "hard": ["concrete"], "full_width": true}

_under(figures, beams) := result if {
	result := {"readings": bearing.readings, "unknown": bearing.unknown} with input as {"beams": beams}
		with data.figures as {"beams": {"bearing": figures}}
}

_said(beams) := _under(_figures, beams)

_shown(path, value) := {"value": value, "at": [path]}

_base := {
	"at": ["/beam"], "mark": "B1", "posts": _shown("/posts_at", 3), "size": _shown("/size", "2x10"), "plies": _shown("/plies", 3),
	"beam_width": _shown("/size", 114300000), "post_width": _shown("/posts/size", 139700000),
}

_on(what, length) := object.union(_base, {"bearing_length": _shown("/length", length), "bearing_on": _shown("/on", what)})

_length(length) := object.union(_base, {"bearing_length": _shown("/length", length)})

_row(figure, limit, have, outside) := {
	"at": ["/length"], "have": have, "figure": figure, "limit": limit, "outside": outside,
	"beam": "B1",
}

_width(have, say, width, post) := {
	"at": ["/size"], "have": have, "figure": "full_width", "limit": true, "outside": have == false, "say": say,
	"beam": "B1", "width": width, "post": post,
}

_covered := _width(true, "covered", 114300000, 139700000)

test_under_at_and_over_the_limit if {
	every case in [["wood", "min_wood", _wood], ["metal", "min_wood", _wood], ["concrete", "min_concrete", _concrete]] {
		[what, figure, limit] := case
		every more in [[-396875, true], [-10000, true], [0, false], [10000, false], [396875, false]] {
			have := limit + more[0]
			_said([_on(what, have)]) == {"readings": {_covered, _row(figure, limit, have, more[1])}, "unknown": set()}
		}
	}
}

test_what_it_bears_on_is_asked_for_only_where_it_decides if {
	_said([_length(_wood - 1)]).readings == {_covered, _row("min_wood", _wood, _wood - 1, true)}
	_said([_length(_concrete)]).readings == {_covered, _row("min_concrete", _concrete, _concrete, false)}
	every length in [_wood, _concrete - 1] {
		_said([_length(length)]) == {
			"readings": {_covered},
			"unknown": {{"at": ["/beam"], "needs": "platforms[].beams[].bearing_on"}},
		}
	}
}

test_width_of_the_beam_on_the_post if {
	every case in [[114300000, true, "covered"], [139700000, true, "covered"], [139700001, false, "wide"], [165100000, false, "wide"]] {
		[width, have, say] := case
		beam := object.union(_on("wood", _concrete), {"beam_width": _shown("/size", width)})
		_said([beam]).readings == {_row("min_wood", _wood, _concrete, false), _width(have, say, width, 139700000)}
	}
}

test_set_that_does_not_ask_for_the_width if {
	figures := object.union(_figures, {"full_width": false})
	_under(figures, [object.remove(_on("wood", _wood), ["beam_width", "post_width"])]) == {
		"readings": {_row("min_wood", _wood, _wood, false)},
		"unknown": set(),
	}
}

test_missing_values_are_not_shown if {
	every case in [
		[["bearing_length"], {"platforms[].beams[].bearing_length"}],
		[["post_width"], {"platforms[].posts.size"}],
		[["beam_width", "plies"], {"platforms[].beams[].plies"}],
		[["beam_width", "size"], {"platforms[].beams[].size"}],
	] {
		_said([object.remove(_on("wood", _wood), case[0])]).unknown == {{"at": ["/beam"], "needs": need} | some need in case[1]}
	}
}

test_beam_without_posts_is_no_subject if {
	beam := object.union(_base, {"posts": _shown("/posts_at", 0)})
	_said([beam]) == {"readings": set(), "unknown": set()}
	not bearing.applies with input as {"beams": [beam]}
	not bearing.applies with input as {"beams": []}
	bearing.applies with input as {"beams": [_base]}
}

test_one_bad_of_two if {
	_said([_on("wood", _wood), _on("wood", _wood - 1)]).readings == {
		_covered,
		_row("min_wood", _wood, _wood, false), _row("min_wood", _wood, _wood - 1, true),
	}
}

test_one_length_whatever_it_bears_on if {
	every beam in [_length(89000000), _on("concrete", 89000000)] {
		_under({"min_wood": 89000000, "full_width": true}, [beam]) == {
			"readings": {_covered, _row("min_wood", 89000000, 89000000, false)}, "unknown": set(),
		}
	}
}
