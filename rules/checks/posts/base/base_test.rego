package checks.posts.base_test

import data.checks.posts.base

_min := 304800000 # 12 in

_figures := {"hardware": ["standoff"], "embedded": ["embedded in soil"], "min_embedment": _min, "held": true}

_under(figures, members) := result if {
	result := {"readings": base.readings, "unknown": base.unknown} with input as {"posts": members}
		with data.figures as {"posts": {"base": figures}}
}

_said(members) := _under(_figures, members)

_shown(path, value) := {"value": value, "at": [path]}

_bare := {"at": ["/platforms/0/beams/0/posts_at/0"]}

_on(kind, more) := object.union_n([_bare, {"base_kind": _shown("/kind", kind)}, more])

_held(path, have, outside, say) := {"at": [path], "have": have, "figure": "held", "limit": true, "outside": outside, "say": say}

_reading(row) := {"readings": {row}, "unknown": set()}

_asked(field) := {"readings": set(), "unknown": {{"at": ["/platforms/0"], "needs": concat(".", ["platforms[].posts.base", field])}}}

test_hardware_that_holds_or_not if {
	_said([_on("standoff", {"base_holds": _shown("/holds", true)})]) == _reading(_held("/holds", true, false, "held"))
	_said([_on("standoff", {"base_holds": _shown("/holds", false)})]) == _reading(_held("/holds", false, true, "loose"))
}

test_foot_said_to_be_held if {
	held := {"restrained": _shown("/restrained", true)}
	_said([_on("standoff", held)]) == _reading(_held("/restrained", true, false, "held"))
	_said([_on("unknown", held)]) == _reading(_held("/restrained", true, false, "held"))
	_said([object.union(_bare, held)]) == _reading(_held("/restrained", true, false, "held"))
	_said([object.union(_bare, {"restrained": _shown("/restrained", false)})]) == _reading(_held("/restrained", false, true, "loose"))
}

test_set_that_does_not_ask if {
	free := object.union(_figures, {"held": false})
	_under(free, [_on("standoff", {"base_holds": _shown("/holds", false)})]).readings == {object.union(_held("/holds", false, false, "loose"), {"limit": false})}
}

test_embedment_under_at_and_over_the_limit if {
	every case in [[-396875, true], [-10000, true], [0, false], [10000, false], [396875, false]] {
		have := _min + case[0]
		_said([_on("embedded in soil", {"embedment": _shown("/deep", have)})]) == _reading({
			"at": ["/deep"], "have": have, "figure": "min_embedment", "limit": _min,
			"outside": case[1], "say": "embedment",
		})
	}
}

test_other_bases_do_not_hold if {
	_said([_on("on footing without hardware", {"restrained": _shown("/restrained", true)})]) == _reading({
		"at": ["/kind"], "have": "on footing without hardware",
		"figure": "hardware", "limit": ["standoff"], "outside": true,
	})
}

test_missing_values_are_not_shown if {
	_said([_bare]) == _asked("kind")
	_said([_on("unknown", {})]) == _asked("kind")
	_said([_on("standoff", {})]) == _asked("uplift_and_lateral")
	_said([_on("embedded in soil", {})]) == _asked("embedment")
}

test_one_bad_of_two if {
	_said([_on("standoff", {"base_holds": _shown("/a", true)}), _on("standoff", {"base_holds": _shown("/b", false)})]).readings == {
		_held("/a", true, false, "held"),
		_held("/b", false, true, "loose"),
	}
}

test_no_subject_no_check if {
	not base.applies with input as {"posts": []}
	base.applies with input as {"posts": [_bare]}
	_said([]) == {"readings": set(), "unknown": set()}
}
