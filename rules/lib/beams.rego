# METADATA
# description: How tables of beam spans name a beam and are read.
package lib.beams

import data.lib.members
import data.lib.spans

# named is the bay of a beam with the size under which tables list it: plies
# and size, as 2-2x10, or the size alone of a solid stick, as 4x10. The size is
# left out where it hangs on plies that are not shown.
named(bay) := object.union(bay, {"size": {"value": _name(bay), "at": bay.size.at}}) if {
	_name(bay)
} else := object.remove(bay, ["size"])

_name(bay) := bay.size.value if _solid(bay)

_name(bay) := sprintf("%d-%s", [bay.plies.value, bay.size.value]) if not _solid(bay)

_solid(bay) if {
	not startswith(bay.size.value, "2x")
	not bay.plies
}

_solid(bay) if {
	not startswith(bay.size.value, "2x")
	bay.plies.value == 1
}

# effective is the span of the joists by which the table is read: the actual one,
# or what the set's factors make of it by the length that joists reach past the
# beam. Part of a nanometre counts as a whole one, which keeps the span on its
# side of every break. It is undefined where that length is beyond the factors.
effective(figures, bay) := members.joists(figures.joist_basis, bay).value if not figures.factors

effective(figures, bay) := ceil((members.joists(figures.joist_basis, bay).value * figures.factors.cells[k]) / figures.factor_of) if {
	k := _factor(figures, bay)
}

_factor(figures, bay) := min([k |
	some k, cantilever in figures.factors.breaks.cantilever
	bay.joist_cantilever.value * figures.factor_of <= members.joists(figures.joist_basis, bay).value * cantilever
])

# beyond are the readings of a bay that the table does not reach.
beyond(figures, bay) := (({row |
	some row in spans.beyond(figures, "spans", named(bay))
} | {row |
	bay.both_sides
	figures.both_sides == false
	row := {
		"at": bay.at, "have": true, "figure": "both_sides", "limit": false,
		"outside": true, "say": "beyond_sides", "beam": bay.beam,
	}
}) | {row |
	joists := effective(figures, bay)
	not spans.column(figures.spans.breaks.joist_span, joists)
	row := {
		"at": members.joists(figures.joist_basis, bay).at, "figure": "spans",
		"outside": true, "say": "beyond_joists", "beam": bay.beam, "joists": joists,
	}
}) | {row |
	figures.factors
	past := bay.joist_cantilever
	joists := members.joists(figures.joist_basis, bay)
	not _factor(figures, bay)
	row := {
		"at": past.at, "figure": "factors", "outside": true, "say": "beyond_cantilever",
		"beam": bay.beam, "past": past.value, "joists": joists.value,
	}
}

# needs are the fields that the table waits for. Joists that bear on nothing
# else are short of a beam.
needs(figures, bay) := ((members.missing(bay, {"size": "platforms[].beams[].size"}) | members.lumber(bay)) | members.loads(bay)) | ({"platforms[].beams[].plies" |
	bay.size
	not named(bay).size
} | ({need |
	not _placed(figures, bay)
	some need in bay.missing
} | {"platforms[].beams" |
	count(bay.missing) == 0
	not effective(figures, bay)
}))

_placed(figures, bay) if {
	members.span(figures.basis, bay)
	effective(figures, bay)
}
