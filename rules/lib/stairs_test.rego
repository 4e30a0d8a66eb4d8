package lib.stairs_test

import data.lib.stairs

_of_stair := {"at": ["/stairs/0"]}

_of_list := {"at": ["/stairs/0/flights/1"]}

_risers := {"risers": {"value": 4, "at": ["/stairs/0/risers"]}}

_treads := {"tread_depth": {"value": 254000000, "at": ["/stairs/0/tread_depth"]}}

test_field_with_the_stair if stairs.field(_of_stair, "nosing") == "stairs[].nosing"

test_field_with_the_flight if stairs.field(_of_list, "risers") == "stairs[].flights[].risers"

test_rise_lacks_risers if stairs.rise_field(_of_list) == "stairs[].flights[].risers"

test_rise_lacks_the_total if {
	stairs.rise_field(object.union(_of_list, _risers)) == "stairs[].total_rise"
}

test_step_lacks_treads if {
	stairs.step_field(object.union(_of_stair, _risers)) == "stairs[].tread_depth"
}

test_step_lacks_risers if {
	stairs.step_field(object.union(_of_stair, _treads)) == "stairs[].risers"
}

test_say_all_alike if stairs.say(0) == "outside"

test_say_one_of_them if stairs.say(3) == "one"

test_landing_fields if {
	stairs.landing_fields == {
		"top": "stairs[].landing_top",
		"between": "stairs[].landing_between",
		"bottom": "stairs[].landing_bottom",
	}
}
