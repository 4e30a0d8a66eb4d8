package checks.lumber.treatment_test

import data.checks.lumber.treatment

_figures := {"accepted": ["preservative-treated", "naturally durable"], "durable": ["redwood"]}

_under(figures, kinds) := result if {
	result := {"readings": treatment.readings, "unknown": treatment.unknown} with input as {"outdoor_lumber": kinds}
		with data.figures as {"lumber": {"treatment": figures}}
}

_said(kinds) := _under(_figures, kinds)

_fact(field, value) := {field: {"value": value, "at": [concat("/", ["/lumber/framing", field])]}}

_kind(facts) := object.union_n(array.concat([{"at": ["/lumber/framing"], "name": "framing"}], facts))

_kept(field, have, outside) := {
	"at": [concat("/", ["/lumber/framing", field])], "have": have, "figure": "accepted",
	"limit": ["preservative-treated", "naturally durable"], "outside": outside, "name": "framing",
}

_neither(species) := {
	"at": ["/lumber/framing/treated", "/lumber/framing/species"], "figure": "durable",
	"outside": true, "say": "neither", "name": "framing", "species": species,
}

_asked(field) := {{"at": ["/lumber/framing"], "needs": field}}

test_kept_from_decay[name] if {
	some name, case in {
		"treated": [[_fact("treated", true)], _kept("treated", "preservative-treated", false)],
		"treated heartwood": [[_fact("treated", true), _fact("naturally_durable", true)], _kept("treated", "preservative-treated", false)],
		"heartwood": [[_fact("treated", false), _fact("naturally_durable", true)], _kept("naturally_durable", "naturally durable", false)],
		"heartwood alone": [[_fact("naturally_durable", true)], _kept("naturally_durable", "naturally durable", false)],
	}
	_said([_kind(case[0])]) == {"readings": {case[1]}, "unknown": set()}
}

test_set_that_accepts_treated_alone if {
	said := _under(object.union(_figures, {"accepted": ["preservative-treated"]}), [_kind([_fact("naturally_durable", true)])])
	{row.outside | some row in said.readings} == {true}
}

test_neither[name] if {
	some name, case in {
		"said so": [
			[_fact("treated", false), _fact("naturally_durable", false), _fact("species", "redwood")],
			{"at": ["/lumber/framing/treated", "/lumber/framing/naturally_durable"], "figure": "accepted", "outside": true, "say": "bare", "name": "framing"},
		],
		"by its species": [[_fact("treated", false), _fact("species", "Southern Pine")], _neither("Southern Pine")],
	}
	_said([_kind(case[0])]) == {"readings": {case[1]}, "unknown": set()}
}

test_not_shown[name] if {
	some name, case in {
		"treated": [[_fact("species", "southern pine")], "lumber.<framing>.treated"],
		"treated sapwood": [[_fact("naturally_durable", false)], "lumber.<framing>.treated"],
		"durable": [[_fact("treated", false), _fact("species", "Redwood")], "lumber.<framing>.naturally_durable"],
		"species": [[_fact("treated", false)], "lumber.<framing>.naturally_durable"],
	}
	_said([_kind(case[0])]) == {"readings": set(), "unknown": _asked(case[1])}
}

test_one_bad_of_two if {
	posts := object.union(_kind([_fact("treated", false), _fact("species", "oak")]), {"name": "posts"})
	{row.outside | some row in _said([_kind([_fact("treated", true)]), posts]).readings} == {true, false}
}

test_none_named if {
	not treatment.applies with input as {"outdoor_lumber": []}
	treatment.applies with input as {"outdoor_lumber": [_kind([])]}
	_said([]) == {"readings": set(), "unknown": set()}
}
