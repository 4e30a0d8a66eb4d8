package lib.posts_test

import data.lib.posts

_shown(value) := {"value": value, "at": [sprintf("/%v", [value])]}

_base := {"groups": {"southern pine": ["southern pine"]}, "grades": ["No. 2"], "live_steps": [{"upto": 40, "read": 40}, {"upto": 60, "read": 70}]}

_by_size := object.union(_base, {"by_size": {"breaks": {"load": [40], "plies": [2, 3]}, "cells": {"4x4": [[96, 81]], "6x6": [[168, null]]}}})

_by_area := object.union(_base, {
	"tributary": "statics", "area_unit": 304800000,
	"by_area": {"breaks": {"load": [40, 50], "area": [20, 40]}, "cells": {"southern pine": {"4x4": [[168, 164], [150, 140]]}}},
})

_by_spans := object.union(_base, {"by_spans": {"breaks": {"load": [40], "beam_span": [6, 8], "joist_span": [10, 14]}, "cells": {"southern pine": {"6x6": [[[1, 2], [3, 4]]]}}}})

_post := {
	"at": ["/platforms/0/beams/0/posts_at/1"], "missing": [],
	"size": _shown("4x4"), "lumber": {"species": _shown("southern pine"), "grade": _shown("No. 2")},
	"beam_plies": _shown(2), "beam_span": _shown(6), "joist_span": _shown(11),
	"tributary_area": _shown({"builder": 1858061, "statics": 1858062}),
	"live_load": _shown(40), "ground_snow_load": _shown(25),
}

_with(changes) := object.union(_post, changes)

test_place_is_the_platform_or_the_own_entry if {
	posts.place(_post) == ["/platforms/0"]
	posts.place({"at": ["/platforms/0/posts/each/2"]}) == ["/platforms/0/posts/each/2"]
}

test_form_is_the_table_given if {
	posts.form(_by_size) == "by_size"
	posts.form(_by_area) == "by_area"
	posts.form(_by_spans) == "by_spans"
	not posts.form(_base)
}

test_limit_by_size if {
	posts.limit(_by_size, _post) == {"cell": ["4x4", 0, 0], "limit": 96}
	posts.limit(_by_size, _with({"beam_plies": _shown(3)})) == {"cell": ["4x4", 0, 1], "limit": 81}
	posts.limit(_by_size, _with({"beam_plies": _shown(3), "size": _shown("6x6")})) == {"cell": ["6x6", 0, 1], "limit": null}
}

test_limit_by_area if {
	posts.limit(_by_area, _post) == {"cell": ["southern pine", "4x4", 0, 1], "limit": 164}
	builder := object.union(_by_area, {"tributary": "builder"})
	posts.limit(builder, _post) == {"cell": ["southern pine", "4x4", 0, 0], "limit": 168}
	posts.limit(_by_area, _with({"ground_snow_load": _shown(41)})) == {"cell": ["southern pine", "4x4", 1, 1], "limit": 140}
}

test_limit_by_spans if {
	posts.limit(_by_spans, _with({"size": _shown("6x6")})) == {"cell": ["southern pine", "6x6", 0, 0, 1], "limit": 2}
	posts.limit(_by_spans, _with({"size": _shown("6x6"), "beam_span": _shown(7)})) == {"cell": ["southern pine", "6x6", 0, 1, 1], "limit": 4}
}

test_nothing_beyond if {
	every figures in [_by_size, _by_area] {
		posts.beyond(figures, _post) == set()
	}
	posts.beyond(_by_spans, _with({"size": _shown("6x6")})) == set()
}

test_beyond_by_size if {
	every case in [
		[{"size": _shown("3x3")}, "beyond_size", "size", "3x3"],
		[{"beam_plies": _shown(4)}, "beyond_plies", "plies", 4],
		[{"live_load": _shown(60)}, "beyond_load", "load", 60],
		[{"ground_snow_load": _shown(41)}, "beyond_load", "load", 41],
	] {
		[changes, say, name, value] := case
		posts.beyond(_by_size, _with(changes)) == {{"at": [sprintf("/%v", [value])], "figure": "by_size", "outside": true, "say": say, name: value}}
	}
	posts.beyond(_by_size, _with({"lumber": {"species": _shown("teak"), "grade": _shown("No. 3")}})) == set()
}

test_beyond_by_area if {
	posts.beyond(_by_area, _with({"tributary_area": _shown({"builder": 1, "statics": 3716123})})) == {{
		"at": _post.at,
		"figure": "by_area", "outside": true, "say": "beyond_area",
	}}
	posts.beyond(_by_area, _with({"lumber": {"species": _shown("teak")}})) == {{
		"at": ["/teak"],
		"figure": "groups", "outside": true, "say": "beyond_species", "species": "teak",
	}}
}

test_beyond_by_spans if {
	post := _with({"size": _shown("6x6"), "beam_span": _shown(9), "joist_span": _shown(15)})
	posts.beyond(_by_spans, post) == {
		{"at": _post.at, "figure": "by_spans", "outside": true, "say": "beyond_beam_span", "span": 9},
		{"at": _post.at, "figure": "by_spans", "outside": true, "say": "beyond_joist_span", "span": 15},
	}
}

test_chosen_by_form if {
	posts.chosen(_by_size) == {"size": "platforms[].posts.size", "beam_plies": "platforms[].beams[].plies"}
	posts.chosen(_by_area) == {"size": "platforms[].posts.size"}
}

test_placed_by_form if {
	posts.placed(_by_size, {})
	posts.placed(_by_area, _post)
	not posts.placed(_by_area, {})
	posts.placed(_by_spans, _post)
	not posts.placed(_by_spans, object.remove(_post, ["beam_span"]))
}

test_complete_by_form if {
	posts.complete(_by_size, object.remove(_post, ["lumber"]))
	posts.complete(_by_area, _post)
	not posts.complete(_by_area, _with({"lumber": {"grade": _shown("No. 3")}}))
	not posts.complete(_by_area, object.remove(_post, ["live_load"]))
	not posts.complete(_by_size, object.remove(_post, ["ground_snow_load"]))
}

test_unplaced_by_spans if {
	posts.unplaced(_by_area, {}) == set()
	posts.unplaced(_by_spans, _post) == set()
	posts.unplaced(_by_spans, {}) == {"platforms[].beams[].posts_at", "platforms[].beams"}
}
