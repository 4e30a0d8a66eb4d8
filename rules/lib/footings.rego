# METADATA
# description: >-
#   How tables of footings are read, of which a set gives one of two forms: by
#   the area carried, or by the spans of beam and joists under the same name with
#   _by_spans behind it.
package lib.footings

import data.lib.areas
import data.lib.members
import data.lib.spans

# form is the name of the figure that holds the set's table for a measure, as
# diameters or diameters_by_spans.
form(figures, measure) := name if {
	some name in [measure, concat("", [measure, "_by_spans"])]
	figures[name]
}

# area is what the footing carries, figured as the set says.
area(figures, footing) := footing.tributary_area.value[figures.tributary]

# soil is the place of the last break that the soil reaches, which makes it the
# next worse one. It is undefined below the first break.
soil(breaks, bearing) := max([k | some k, b in breaks; b <= bearing])

# limit is the cell that holds for a footing, with the figure and the path to it.
limit(figures, measure, footing) := {"figure": measure, "cell": [i, j, k], "limit": table.cells[i][j][k]} if {
	table := figures[measure]
	i := spans.column(table.breaks.load, max(spans.loads(figures, footing)))
	j := soil(table.breaks.soil, footing.soil_bearing.value)
	k := areas.column(table.breaks.area, figures.area_unit, area(figures, footing))
} else := {"figure": name, "cell": [i, j, k, l], "limit": table.cells[i][j][k][l]} if {
	name := concat("", [measure, "_by_spans"])
	table := figures[name]
	i := spans.column(table.breaks.load, max(spans.loads(figures, footing)))
	j := soil(table.breaks.soil, footing.soil_bearing.value)
	k := spans.column(table.breaks.beam_span, footing.beam_span.value)
	l := spans.column(table.breaks.joist_span, footing.joist_span.value)
}

# beyond are the readings of a footing that the table does not reach.
beyond(figures, measure, footing) := (({row |
	name := form(figures, measure)
	some row in spans.beyond(figures, name, object.filter(footing, ["live_load", "ground_snow_load"]))
} | {row |
	name := form(figures, measure)
	bearing := footing.soil_bearing
	not soil(figures[name].breaks.soil, bearing.value)
	row := {"at": bearing.at, "figure": name, "outside": true, "say": "beyond_soil", "soil": bearing.value}
}) | {row |
	carried := area(figures, footing)
	not areas.column(figures[measure].breaks.area, figures.area_unit, carried)
	figures[measure]
	row := {"at": footing.at, "figure": measure, "outside": true, "say": "beyond_area"}
}) | {row |
	name := form(figures, measure)
	name != measure
	some span, say in {"beam_span": "beyond_beam_span", "joist_span": "beyond_joist_span"}
	value := footing[span].value
	not spans.column(figures[name].breaks[span], value)
	row := {"at": footing.at, "figure": name, "outside": true, "say": say, "span": value}
}

# complete holds where everything is shown that chooses the cell.
complete(footing) if {
	footing.live_load
	footing.ground_snow_load
}

# needs are the fields that the table waits for.
needs(figures, measure, footing) := ((members.loads(footing) | members.missing(footing, {"soil_bearing": "site.soil_bearing"})) | {need |
	not _placed(figures, measure, footing)
	some need in footing.missing
}) | {need |
	not figures[measure]
	count(footing.missing) == 0
	some name, need in {"beam_span": "platforms[].beams[].posts_at", "joist_span": "platforms[].beams"}
	not footing[name]
}

_placed(figures, measure, footing) if {
	figures[measure]
	area(figures, footing)
}

_placed(figures, measure, footing) if {
	not figures[measure]
	footing.beam_span
	footing.joist_span
}
