package checks.posts.cap_test

import data.checks.posts.cap

_half := 12700000

_figures := {"accepted": ["post cap", "bolted notch"], "bolted": ["bolted notch"], "min_bolts": 2, "min_diameter": _half}

_said(members) := result if {
	result := {"readings": cap.readings, "unknown": cap.unknown} with input as {"posts": members}
		with data.figures as {"posts": {"cap": _figures}}
}

_shown(path, value) := {"value": value, "at": [path]}

_bare := {"at": ["/platforms/0/beams/0/posts_at/0"]}

_by(kind) := object.union(_bare, {"cap_kind": _shown("/kind", kind)})

_notched(bolts, diameter) := object.union(_by("bolted notch"), {"cap_bolts": _shown("/bolts", bolts), "cap_bolt_diameter": _shown("/thick", diameter)})

_kind(have, outside) := {"at": ["/kind"], "have": have, "figure": "accepted", "limit": _figures.accepted, "outside": outside}

_bolts(have, outside) := {"at": ["/bolts"], "have": have, "figure": "min_bolts", "limit": 2, "outside": outside, "say": "bolts"}

_thick(have, outside) := {"at": ["/thick"], "have": have, "figure": "min_diameter", "limit": _half, "outside": outside, "say": "diameter"}

_asked(fields) := {{"at": ["/platforms/0"], "needs": concat(".", ["platforms[].posts.cap", field])} | some field in fields}

test_accepted_and_other_connections if {
	_said([_by("post cap")]) == {"readings": {_kind("post cap", false)}, "unknown": set()}
	every kind in ["toenails", "none", "straps"] {
		_said([_by(kind)]) == {"readings": {_kind(kind, true)}, "unknown": set()}
	}
}

test_bolts_of_a_notch if {
	every case in [[1, true], [2, false], [3, false]] {
		_said([_notched(case[0], _half)]).readings == {_kind("bolted notch", false), _bolts(case[0], case[1]), _thick(_half, false)}
	}
	every case in [[-396875, true], [-10000, true], [0, false], [10000, false]] {
		have := _half + case[0]
		_said([_notched(2, have)]).readings == {_kind("bolted notch", false), _bolts(2, false), _thick(have, case[1])}
	}
}

test_missing_values_are_not_shown if {
	every post in [_bare, _by("unknown")] {
		_said([post]) == {"readings": set(), "unknown": _asked({"kind"})}
	}
	_said([_by("bolted notch")]) == {"readings": {_kind("bolted notch", false)}, "unknown": _asked({"bolts", "bolt_diameter"})}
}

test_one_bad_of_two if _said([_by("post cap"), _by("none")]).readings == {_kind("post cap", false), _kind("none", true)}

test_no_subject_no_check if {
	not cap.applies with input as {"posts": []}
	cap.applies with input as {"posts": [_bare]}
	_said([]) == {"readings": set(), "unknown": set()}
}
