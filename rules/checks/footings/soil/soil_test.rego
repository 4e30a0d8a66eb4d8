package checks.footings.soil_test

import data.checks.footings.soil

_figures := {"refused": ["frozen"], "loose": ["loose fill"]}

_under(figures, members) := result if {
	result := {"readings": soil.readings, "unknown": soil.unknown} with input as {"footings": members}
		with data.figures as {"footings": {"soil": figures}}
}

_footing(ground) := {"at": ["/footings"], "soil": {"value": ground, "at": ["/soil"]}}

_row(figure, have, outside) := {"at": ["/soil"], "have": have, "figure": figure, "outside": outside}

_reading(row) := {"readings": {row}, "unknown": set()}

test_ground_refused_or_not if {
	_under(_figures, [_footing("frozen")]) == _reading(_row("refused", "frozen", true))
	_under(_figures, [_footing("loose fill")]) == _reading(_row("loose", "loose fill", true))
	every ground in ["undisturbed", "compacted fill", "rock"] {
		_under(_figures, [_footing(ground)]) == _reading(_row("refused", ground, false))
	}
}

test_set_without_further_ground if {
	_under({"refused": ["frozen"]}, [_footing("loose fill")]) == _reading(_row("refused", "loose fill", false))
}

test_ground_not_shown if {
	every footing in [{"at": ["/footings"]}, _footing("unknown")] {
		_under(_figures, [footing]) == {"readings": set(), "unknown": {{"at": ["/footings"], "needs": "platforms[].footings.soil"}}}
	}
}

test_one_bad_of_two if {
	_under(_figures, [_footing("rock"), _footing("frozen")]).readings == {_row("refused", "rock", false), _row("refused", "frozen", true)}
}

test_no_subject_no_check if {
	not soil.applies with input as {"footings": []}
	soil.applies with input as {"footings": [_footing("rock")]}
	_under(_figures, []) == {"readings": set(), "unknown": set()}
}
