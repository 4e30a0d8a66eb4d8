package checks.egress.exit_step_test

import data.checks.egress.exit_step as check

_said := {"readings": check.readings, "unknown": check.unknown, "exempt": check.exempt}

_figures := {"egress": {"exit_step": {"max": 150}}}

_door(facts) := object.union_n(array.concat([{"at": ["/house/openings/0"]}], facts))

_step(value) := {"step_down": {"value": value, "at": ["/house/openings/0/threshold_above_decking"]}}

_exit(is) := {"required_exit": {"value": is, "at": ["/house/openings/0/required_egress_door"]}}

_reading(value, outside) := {{
	"at": ["/house/openings/0/threshold_above_decking"], "have": value,
	"figure": "max", "limit": 150, "outside": outside,
}}

_asks(field) := {{"at": ["/house/openings/0"], "needs": concat(".", ["house.openings[]", field])}}

_other := {{"at": ["/house/openings/0/required_egress_door"], "because": "other"}}

test_step[name] if {
	some name, case in {
		"at": [[_step(150), _exit(true)], _reading(150, false), set(), set()],
		"over": [[_step(151), _exit(true)], _reading(151, true), set(), set()],
		"another door": [[_step(151), _exit(false)], set(), set(), _other],
		"another door, step not shown": [[_exit(false)], set(), set(), _other],
		"duty not shown, low": [[_step(150)], _reading(150, false), set(), set()],
		"duty not shown, high": [[_step(151)], set(), _asks("required_egress_door"), set()],
		"step not shown": [[_exit(true)], set(), _asks("threshold_above_decking"), set()],
	}
	_said == {"readings": case[1], "unknown": case[2], "exempt": case[3]} with input.doors as [_door(case[0])]
		with data.figures as _figures
}

test_no_door if {
	not check.applies with input.doors as []
	check.applies with input.doors as [_door([])]
}
