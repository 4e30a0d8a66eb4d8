package checks.stairs.tread_thickness_test

import data.checks.stairs.tread_thickness as check

_said := {"readings": check.readings, "unknown": check.unknown, "exempt": check.exempt}

_figures := {"stairs": {"tread_thickness": {"min": 25, "open": 38, "open_from": 750}}}

_of(facts) := object.union_n(array.concat([{"at": ["/stairs/0"]}], facts))

_thick(value) := {"tread_thickness": {"value": value, "at": ["/stairs/0/tread/thickness"]}}

_closed(is) := {"risers_closed": {"value": is, "at": ["/stairs/0/riser_opening"]}}

_spaced(value) := {"stringer_spacing": {"value": value, "at": ["/stairs/0/stringers/spacing"]}}

_plain(value, outside) := {{"at": ["/stairs/0/tread/thickness"], "have": value, "figure": "min", "limit": 25, "outside": outside}}

_open(value, outside) := {{
	"at": ["/stairs/0/tread/thickness"], "have": value, "figure": "open", "limit": 38,
	"outside": outside, "say": "open", "spacing": 751,
}}

_asks(fields) := {{"at": ["/stairs/0"], "needs": field} | some field in fields}

test_thickness[name] if {
	some name, case in {
		"closed, thin": [[_thick(24), _closed(true)], _plain(24, true), set()],
		"closed, at": [[_thick(25), _closed(true)], _plain(25, false), set()],
		"near, at": [[_thick(25), _closed(false), _spaced(750)], _plain(25, false), set()],
		"far and open, thin": [[_thick(37), _closed(false), _spaced(751)], _open(37, true), set()],
		"far and open, at": [[_thick(38), _closed(false), _spaced(751)], _open(38, false), set()],
		"far, risers not shown": [[_thick(25), _spaced(751)], set(), {"stairs[].riser_opening"}],
		"open, spacing not shown": [[_thick(37), _closed(false)], set(), {"stairs[].stringers.spacing"}],
		"neither shown": [[_thick(25)], set(), {"stairs[].riser_opening", "stairs[].stringers.spacing"}],
		"neither shown, thick": [[_thick(38)], _plain(38, false), set()],
		"neither shown, too thin": [[_thick(24)], _plain(24, true), set()],
		"thickness not shown": [[_closed(true)], set(), {"stairs[].tread.thickness"}],
	}
	_said == {"readings": case[1], "unknown": _asks(case[2]), "exempt": set()} with input.stairs as [_of(case[0])]
		with data.figures as _figures
}

_material(word) := {"tread_material": {"value": word, "at": ["/stairs/0/tread/material"]}}

test_material[name] if {
	some name, case in {
		"wood": [_plain(24, true), set()],
		"composite": [set(), {{"at": ["/stairs/0/tread/material"], "because": "other", "material": "composite"}}],
	}
	_said == {"readings": case[0], "unknown": set(), "exempt": case[1]} with input.stairs as [_of([_thick(24), _material(name)])]
		with data.figures as _figures
}

test_none_described if {
	not check.applies with input.stairs as []
	check.applies with input.stairs as [_of([])]
}
