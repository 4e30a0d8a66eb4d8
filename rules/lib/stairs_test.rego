package lib.stairs_test

import data.lib.stairs

_of_stair := {"at": ["/stairs/0"]}

_of_list := {"at": ["/stairs/0/flights/1"]}

_risers := {"risers": {"value": 4, "at": ["/stairs/0/risers"]}}

_treads := {"tread_depth": {"value": 254000000, "at": ["/stairs/0/tread_depth"]}}

test_field_with_the_stair if stairs.field(_of_stair, "nosing") == "stairs[].nosing"

test_field_with_the_flight if stairs.field(_of_list, "risers") == "stairs[].flights[].risers"

test_stair_of_a_flight if {
	stairs.stair(_of_stair) == ["/stairs/0"]
	stairs.stair(_of_list) == ["/stairs/0"]
}

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

_lengths := {"max": 190, "max_secondary": 200, "max_service": 220, "max_accessible": 180}

_used(use) := {"use": {"value": use, "at": ["/stairs/0/use"]}}

test_figure_of_the_use[use] if {
	some use, name in {"main": "max", "secondary": "max_secondary", "service": "max_service", "accessible": "max_accessible"}
	stairs.by_use(_lengths, "max", _used(use)) == {name}
	stairs.at_most(_lengths, "max", _used(use), 1) == name
	stairs.at_most(_lengths, "max", _used(use), 300) == name
	stairs.at_least(_lengths, "max", _used(use), 1) == name
	stairs.at_least(_lengths, "max", _used(use), 300) == name
}

test_one_figure_for_all_uses if {
	stairs.by_use({"max": 190}, "max", _used("service")) == {"max"}
	stairs.by_use({"max": 190}, "max", {"at": ["/stairs/0"]}) == {"max"}
}

# Where the use is not shown, all figures but that of accessible stairs must agree.
test_use_not_shown[value] if {
	some value, names in {"181": {"max"}, "190": {"max"}, "191": set(), "220": set(), "221": {"max_service"}}
	names == {n | n := stairs.at_most(_lengths, "max", {"at": ["/stairs/0"]}, to_number(value))}
}

test_use_not_shown_for_a_least[value] if {
	some value, names in {"181": {"max"}, "189": {"max"}, "190": set(), "219": set(), "220": {"max_service"}}
	names == {n | n := stairs.at_least(_lengths, "max", {"at": ["/stairs/0"]}, to_number(value))}
}

test_equal_figures_are_one if {
	stairs.at_most({"max": 190, "max_service": 190}, "max", {"at": ["/stairs/0"]}, 191) == "max"
}

# 36 in and 48 in, 914.4 mm and 1219.2 mm
_either := {
	"lesser_side": {"value": 914400000, "at": ["/stairs/0/landing_bottom/out"]},
	"greater_side": {"value": 1219200000, "at": ["/stairs/0/landing_bottom/along"]},
}

test_side_that_decides[name] if {
	some name, case in {
		"the lesser is more": [914390000, "lesser_side"],
		"the lesser is just enough": [914400000, "lesser_side"],
		"the greater falls short": [1219210000, "greater_side"],
	}
	stairs.landing_depth(_either, case[0]) == _either[case[1]]
	stairs.landing_width(_either, case[0]) == _either[case[1]]
}

test_direction_would_decide if {
	every least in [914410000, 914796875, 1219200000] {
		not stairs.landing_depth(_either, least)
		not stairs.landing_width(_either, least)
	}
}

test_side_that_is_known if {
	known := {"depth": {"value": 1, "at": ["/d"]}, "width": {"value": 2, "at": ["/w"]}}
	every least in [0, 1, 2, 3] {
		stairs.landing_depth(known, least) == known.depth
		stairs.landing_width(known, least) == known.width
	}
	stairs.landing_say(known, true) == {}
	stairs.landing_say(_either, true) == {"say": "either"}
	stairs.landing_say(_either, false) == {"say": "either_within"}
}
