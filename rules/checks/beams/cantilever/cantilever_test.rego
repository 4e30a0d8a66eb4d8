package checks.beams.cantilever_test

import data.checks.beams.cantilever

_inch := 25400000

_quarter := {"rise": 1, "run": 4}

_said(ends) := result if {
	result := {"readings": cantilever.readings, "unknown": cantilever.unknown} with input as {"beam_cantilevers": ends}
		with data.figures as {"beams": {"cantilever": {"max_ratio": _quarter}}}
}

_end(past, bay) := {
	"at": ["/platforms/0/beams/0"], "beam": "B1", "end": "start", "missing": ["platforms[].beams[].posts_at"],
	"cantilever": {"value": past, "at": ["/posts_at/0"]}, "back_span": {"value": bay, "at": ["/posts_at/1"]},
}

_row(past, bay, outside) := {
	"at": ["/posts_at/0"], "have": {"rise": past, "run": bay}, "figure": "max_ratio", "limit": _quarter,
	"outside": outside, "beam": "B1", "end": "start", "cantilever": past, "back_span": bay,
}

# 18 in on 6 ft and 650 mm on 2600 mm are a quarter.
test_over_at_and_under_a_quarter if {
	every case in [
		[(18 * _inch) + 396875, 72 * _inch, true], [(18 * _inch) + 10000, 72 * _inch, true],
		[18 * _inch, 72 * _inch, false], [(18 * _inch) - 396875, 72 * _inch, false],
		[650000000, 2600000000, false], [650010000, 2600000000, true],
	] {
		[past, bay, outside] := case
		_said([_end(past, bay)]) == {"readings": {_row(past, bay, outside)}, "unknown": set()}
	}
}

_bounded(past, bay) := object.union(object.remove(_end(past, bay), ["cantilever"]), {
	"cantilever_at_most": {"value": past, "at": ["/posts_at/0"]}, "missing": ["platforms[].decking.overhang"],
})

_overhang := {{"at": ["/platforms/0/beams/0"], "needs": "platforms[].decking.overhang"}}

_by(figures, ends) := result if {
	result := {"readings": cantilever.readings, "unknown": cantilever.unknown} with input as {"beam_cantilevers": ends}
		with data.figures as {"beams": {"cantilever": figures}}
}

_length(past, limit) := {
	"at": ["/posts_at/0"], "have": past, "figure": "max", "limit": limit,
	"outside": false, "say": "most_at_most", "beam": "B1", "end": "start",
}

test_inside_to_the_edge_of_the_outline if {
	share := object.union(_row(650000000, 2600000000, false), {"say": "at_most"})
	_said([_bounded(650000000, 2600000000)]) == {"readings": {share}, "unknown": set()}
	_said([_bounded(650010000, 2600000000)]) == {"readings": set(), "unknown": _overhang}
	ends := [_bounded(650000000, 2600000000)]
	_by({"max": 650000000}, ends) == {"readings": {_length(650000000, 650000000)}, "unknown": set()}
	_by({"max": 649990000}, ends) == {"readings": set(), "unknown": _overhang}
	both := {"max": 650000000, "max_ratio": _quarter}
	_by(both, ends) == {"readings": {share, _length(650000000, 650000000)}, "unknown": set()}
	_by(object.union(both, {"max": 649990000}), ends) == {"readings": set(), "unknown": _overhang}
}

test_missing_values_are_not_shown if {
	every key in ["cantilever", "back_span"] {
		_said([object.remove(_end(1, 4), [key])]) == {
			"readings": set(),
			"unknown": {{"at": ["/platforms/0/beams/0"], "needs": "platforms[].beams[].posts_at"}},
		}
	}
}

test_one_bad_of_two if {
	_said([_end(1, 4), _end(2, 4)]).readings == {_row(1, 4, false), _row(2, 4, true)}
}

test_no_subject_no_check if {
	not cantilever.applies with input as {"beam_cantilevers": []}
	cantilever.applies with input as {"beam_cantilevers": [_end(1, 4)]}
	_said([]) == {"readings": set(), "unknown": set()}
}

test_greatest_length if {
	every past, outside in {600000000: false, 600010000: true} {
		result := {"readings": cantilever.readings, "unknown": cantilever.unknown} with input as {"beam_cantilevers": [object.remove(_end(past, 1), ["back_span"])]}
			with data.figures as {"beams": {"cantilever": {"max": 600000000}}}
		result == {
			"readings": {{
				"at": ["/posts_at/0"], "have": past, "figure": "max", "limit": 600000000,
				"outside": outside, "say": "most", "beam": "B1", "end": "start",
			}},
			"unknown": set(),
		}
	}
}
