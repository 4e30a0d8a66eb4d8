package lib.handrail_test

import data.lib.handrail

_at := ["/stairs/0"]

_rail(present, risers) := {"at": _at, "present": present, "risers": {"value": risers, "at": ["/stairs/0/risers"]}}

_few := {"at": _at, "because": "few", "risers": 3, "from": 4}

_none := {"at": _at, "because": "none"}

test_few_risers if handrail.spared(_rail(true, 3), {"from": 4}) == _few

test_few_risers_and_none_shown if handrail.spared(_rail(false, 3), {"from": 4}) == _few

test_none_shown if handrail.spared(_rail(false, 4), {"from": 4}) == _none

test_none_shown_and_risers_unknown if handrail.spared({"at": _at, "present": false}, {"from": 4}) == _none

test_low_rise[rise] if {
	some rise, spared in {"999": true, "1000": false}
	rail := object.union(_rail(true, 9), {"rise": {"value": to_number(rise), "at": ["/stairs/0/total_rise"]}})
	low := {"at": _at, "because": "low", "rise": to_number(rise), "rise_from": 1000}
	{low | spared} == {row | row := handrail.spared(rail, {"rise_from": 1000})}
}

test_asked_for_always if {
	not handrail.spared(_rail(true, 1), {"sides": 1})
	handrail.spared(_rail(false, 1), {"sides": 1}) == _none
}

test_looked_at if not handrail.spared(_rail(true, 4), {"from": 4})

test_looked_at_with_risers_unknown if not handrail.spared({"at": _at, "present": true}, {"from": 4})

test_recessed_by_its_start if handrail.recessed({"recess_start": {"value": 19050000, "at": _at}})

test_recessed_by_its_depth if handrail.recessed({"recess_depth": {"value": 7937500, "at": _at}})

test_not_recessed if not handrail.recessed({"at": _at})

_profile(word) := {"profile": {"value": word, "at": _at}}

_shaped(perimeter) := object.union(_profile("shaped"), {"perimeter": {"value": perimeter, "at": _at}})

test_class_round if handrail.class(_profile("round"), 158750000) == "round"

test_class_small_at_the_most if handrail.class(_shaped(158750000), 158750000) == "small"

test_class_large if handrail.class(_shaped(158750001), 158750000) == "large"

test_no_class_without_perimeter if not handrail.class(_profile("shaped"), 158750000)

test_no_class_of_a_board if not handrail.class(_profile("flat board"), 158750000)

test_class_lacks_profile if handrail.class_field({"at": _at}) == "type"

test_class_lacks_perimeter if handrail.class_field(_profile("shaped")) == "perimeter"

test_class_lacks_nothing if not handrail.class_field(_shaped(158750000))
