# METADATA
# description: >-
#   How the three forms of post height table are read: by_size for the size
#   alone, by_area for the area that the post carries, by_spans for the spans of
#   beam and joists that meet on it. A set gives one of them.
package lib.posts

import data.lib.areas
import data.lib.spans

# place is where what a post lacks is missing: its own entry, or the platform
# where it is one of many that are described together.
place(post) := [split(post.at[0], "/beams/")[0]]

# form is the name of the figure that holds the set's table.
form(figures) := name if {
	some name in ["by_area", "by_size", "by_spans"]
	figures[name]
}

_load(figures, post) := spans.column(figures[form(figures)].breaks.load, max(spans.loads(figures, post)))

# area is what the post carries, figured as the set says.
area(figures, post) := post.tributary_area.value[figures.tributary]

# limit is the cell that holds for a post, with the path to it. A cell that is
# null permits nothing.
limit(figures, post) := {"cell": [post.size.value, load, k], "limit": figures.by_size.cells[post.size.value][load][k]} if {
	load := _load(figures, post)
	k := spans.column(figures.by_size.breaks.plies, post.beam_plies.value)
}

limit(figures, post) := {"cell": [group, post.size.value, load, k], "limit": figures.by_area.cells[group][post.size.value][load][k]} if {
	group := spans.group(figures, post)
	load := _load(figures, post)
	k := areas.column(figures.by_area.breaks.area, figures.area_unit, area(figures, post))
}

limit(figures, post) := {"cell": [group, post.size.value, load, i, k], "limit": figures.by_spans.cells[group][post.size.value][load][i][k]} if {
	group := spans.group(figures, post)
	load := _load(figures, post)
	i := spans.column(figures.by_spans.breaks.beam_span, post.beam_span.value)
	k := spans.column(figures.by_spans.breaks.joist_span, post.joist_span.value)
}

# beyond are the readings of a post that the table does not reach.
beyond(figures, post) := (((({row |
	figures.by_size
	some row in spans.beyond(figures, "by_size", object.filter(post, ["live_load", "ground_snow_load"]))
} | {row |
	some name in ["by_area", "by_spans"]
	figures[name]
	some row in spans.beyond(figures, name, post)
}) | {row |
	size := post.size
	figures.by_size
	not figures.by_size.cells[size.value]
	row := {"at": size.at, "figure": "by_size", "outside": true, "say": "beyond_size", "size": size.value}
}) | {row |
	plies := post.beam_plies
	figures.by_size
	not spans.column(figures.by_size.breaks.plies, plies.value)
	row := {"at": plies.at, "figure": "by_size", "outside": true, "say": "beyond_plies", "plies": plies.value}
}) | {row |
	figures.by_area
	carried := area(figures, post)
	not areas.column(figures.by_area.breaks.area, figures.area_unit, carried)
	row := {"at": post.at, "figure": "by_area", "outside": true, "say": "beyond_area"}
}) | {row |
	figures.by_spans
	some name, say in {"beam_span": "beyond_beam_span", "joist_span": "beyond_joist_span"}
	value := post[name].value
	not spans.column(figures.by_spans.breaks[name], value)
	row := {"at": post.at, "figure": "by_spans", "outside": true, "say": say, "span": value}
}

# chosen are the facts that choose the cell, by name, with the field that shows each.
chosen(figures) := {"size": "platforms[].posts.size", "beam_plies": "platforms[].beams[].plies"} if figures.by_size

chosen(figures) := {"size": "platforms[].posts.size"} if not figures.by_size

# placed holds where the area or the spans that choose the cell are known.
placed(figures, _) if figures.by_size

placed(figures, post) if area(figures, post)

placed(figures, post) if {
	figures.by_spans
	post.beam_span
	post.joist_span
}

# unplaced are the fields without which the spans that meet on a post are not
# known, where the table asks for them: joists that bear on nothing else are
# short of a beam.
unplaced(figures, post) := {field |
	figures.by_spans
	some name, field in {"beam_span": "platforms[].beams[].posts_at", "joist_span": "platforms[].beams"}
	not post[name]
}

# complete holds where everything is shown that chooses the cell.
complete(figures, post) if {
	post.live_load
	post.ground_snow_load
	_graded(figures, post)
}

_graded(figures, _) if figures.by_size

_graded(figures, post) if {
	not figures.by_size
	spans.graded(figures, post)
}
