# METADATA
# description: How the table of ledger fasteners is read.
package lib.ledgers

import data.lib.members
import data.lib.spans

# rim is the group of materials under which the table lists a house rim,
# undefined where it is in none.
rim(figures, ledger) := min([name |
	some name, materials in figures.rims
	ledger.rim_material.value in materials
])

# thickness is the place of the last break that a rim reaches, which makes it
# the next worse one. It is undefined below the first break.
thickness(breaks, value) := max([k | some k, b in breaks; b <= value])

# width is what lies between ledger and rim: sheathing, foam, and the washers
# that hold the ledger off. It is undefined where the sheathing is not shown.
width(figures, ledger) := (ledger.sheathing.value + _foam(ledger)) + _washers(figures, ledger)

_foam(ledger) := ledger.foam.value

_foam(ledger) := 0 if not ledger.foam

_washers(figures, ledger) := figures.washer_gap if ledger.washers_between.value

_washers(_, ledger) := 0 if not _washed(ledger)

_washed(ledger) if ledger.washers_between.value

# gap is the place of the gap in the table. Foam gives way, so that any of it is
# read with the widest gap.
gap(figures, ledger) := spans.column(figures.spacings.breaks.gap, width(figures, ledger)) if _foam(ledger) == 0

gap(figures, ledger) := widest if {
	_foam(ledger) > 0
	spans.column(figures.spacings.breaks.gap, width(figures, ledger))
	widest := count(figures.spacings.breaks.gap) - 1
}

# joists is the span of the joists on the ledger as the table measures it.
joists(figures, ledger) := members.joists(figures.joist_basis, ledger)

# beyond are the readings of a ledger that the table does not reach.
beyond(figures, ledger) := ((({row |
	some row in spans.beyond(figures, "spacings", object.filter(ledger, ["live_load", "ground_snow_load"]))
} | {row |
	material := ledger.rim_material
	material.value != "unknown"
	not rim(figures, ledger)
	row := {"at": material.at, "figure": "spacings", "outside": true, "say": "beyond_rim", "rim": material.value}
}) | {row |
	value := ledger.rim_thickness
	not thickness(figures.spacings.breaks.rim_thickness, value.value)
	row := {"at": value.at, "figure": "spacings", "outside": true, "say": "beyond_thickness", "thickness": value.value}
}) | {row |
	value := width(figures, ledger)
	not spans.column(figures.spacings.breaks.gap, value)
	row := {"at": ledger.sheathing.at, "figure": "spacings", "outside": true, "say": "beyond_gap", "gap": value}
}) | {row |
	value := joists(figures, ledger)
	not spans.column(figures.spacings.breaks.joist_span, value.value)
	row := {"at": value.at, "figure": "spacings", "outside": true, "say": "beyond_joists", "joists": value.value}
}

_fields := {
	"rim_thickness": "house.house_rim.thickness", "fastener_spacing": "platforms[].ledger.fasteners.spacing",
	"sheathing": "platforms[].ledger.sheathing_thickness",
}

# missing are the fields that the table waits for.
missing(figures, ledger) := ((members.missing(ledger, _fields) | members.loads(ledger)) | {"house.house_rim.material" |
	not rim(figures, ledger)
}) | ({"platforms[].ledger.fasteners.type" | not _kind(ledger)} | {need |
	not joists(figures, ledger)
	some need in ledger.missing
})

_kind(ledger) if ledger.fastener_type.value != "unknown"
