package lib.beams_test

import data.lib.beams

_shown(value) := {"value": value, "at": ["/platforms/0/beams/0/size"]}

test_named_by_plies_and_stock if {
	every case in [
		[{"size": _shown("2x10"), "plies": _shown(3)}, "3-2x10"],
		[{"size": _shown("2x10"), "plies": _shown(1)}, "1-2x10"],
		[{"size": _shown("4x10")}, "4x10"],
		[{"size": _shown("4x10"), "plies": _shown(1)}, "4x10"],
		[{"size": _shown("4x10"), "plies": _shown(2)}, "2-4x10"],
	] {
		[bay, name] := case
		beams.named(bay) == object.union(bay, {"size": _shown(name)})
	}
}

test_no_size_where_plies_decide_and_are_not_shown if {
	beams.named({"size": _shown("2x10"), "bay": 1}) == {"bay": 1}
	beams.named({"plies": _shown(2)}) == {"plies": _shown(2)}
}
