# METADATA
# description: >-
#   How a span table is read for one member: which row and column stand for it,
#   what lies beyond the table, and what is not shown.
package lib.spans

# column is the place of the first break that covers a value, which makes it
# the next worse one. It is undefined beyond the last break.
column(breaks, value) := min([k | some k, b in breaks; b >= value])

# live is the load under which a live load is read, undefined beyond the steps.
live(steps, load) := min([step.read | some step in steps; step.upto >= load])

# loads are the loads to read under, one for each that is shown; the greater one governs.
loads(figures, member) := {read | read := live(figures.live_steps, member.live_load.value)} | {snow |
	snow := member.ground_snow_load.value
	not figures.without_snow
}

# group is the species group of a member, undefined where it is in none.
group(figures, member) := min([name |
	some name, list in figures.groups
	lower(member.lumber.species.value) in list
])

# graded holds where the member's grade is one that the table was made for.
graded(figures, member) if {
	some grade in figures.grades
	lower(grade) == lower(member.lumber.grade.value)
}

# complete holds where everything is shown that chooses the row and the column.
complete(figures, member) if {
	graded(figures, member)
	member.live_load
	member.ground_snow_load
}

complete(figures, member) if {
	graded(figures, member)
	member.live_load
	figures.without_snow
}

# beyond are the readings of a member that the table does not reach. The name is
# the figure that holds the table.
beyond(figures, name, member) := (((_species(figures, member) | _grade(figures, member)) | _size(figures, name, member)) | _spacing(figures, name, member)) | _load(figures, name, member)

_row(at, figure, say, values) := object.union({"at": at, "figure": figure, "outside": true, "say": say}, values)

_species(figures, member) := {row |
	species := member.lumber.species
	not group(figures, member)
	row := _row(species.at, "groups", "beyond_species", {"species": species.value})
}

# A grade says nothing more where the species itself is in no group.
_grade(figures, member) := {row |
	grade := member.lumber.grade
	not graded(figures, member)
	count(_species(figures, member)) == 0
	row := _row(grade.at, "grades", "beyond_grade", {"grade": grade.value})
}

_size(figures, name, member) := {row |
	size := member.size
	not figures[name].cells[group(figures, member)][size.value]
	group(figures, member)
	row := _row(size.at, name, "beyond_size", {"size": size.value})
}

_spacing(figures, name, member) := {row |
	spacing := member.spacing
	figures[name].breaks.spacing
	not column(figures[name].breaks.spacing, spacing.value)
	row := _row(spacing.at, name, "beyond_spacing", {"spacing": spacing.value})
}

_load(figures, name, member) := {row |
	live_load := member.live_load
	not _covered(figures, name, live_load.value)
	row := _row(live_load.at, name, "beyond_load", {"load": live_load.value})
} | {row |
	snow := member.ground_snow_load
	not figures.without_snow
	not column(figures[name].breaks.load, snow.value)
	row := _row(snow.at, name, "beyond_load", {"load": snow.value})
}

# A live load is covered where it is read in a column that the table has.
_covered(figures, name, load) if column(figures[name].breaks.load, live(figures.live_steps, load)) >= 0

# apart holds of a row beyond the table where the set holds an excerpt of it:
# the printed table may well reach that wood, size, spacing or those joists. A
# load beyond the one that the cells were made for stays beyond it.
apart(figures, row) if {
	figures.excerpt
	row.say in {"beyond_species", "beyond_grade", "beyond_size", "beyond_spacing", "beyond_joists"}
}

# told are the rows beyond the table that a member is outside by. Where it is
# left alone for another reason, its load says nothing of it.
told(figures, rows) := {row |
	some row in rows
	not apart(figures, row)
	not _idle(figures, rows, row)
}

_idle(figures, rows, row) if {
	row.say == "beyond_load"
	some other in rows
	apart(figures, other)
}

# exempt is such a row as one of a member that is left alone.
exempt(member, row) := object.union(
	{"at": member.at, "because": row.say},
	object.remove(row, ["at", "figure", "outside", "say"]),
)

# missing are the fields of the design that the table waits for.
missing(member) := {need |
	some need, shown in {
		"platforms[].joists.size": [1 | member.size],
		"site.live_load": [1 | member.live_load],
		"site.ground_snow_load": [1 | member.ground_snow_load],
	}
	shown == []
} | ({need | some need in member.lumber.missing} | spacing(member))

# spacing is the field that would give the spacing of the joists, where it is not shown.
spacing(member) := {need |
	not member.spacing
	need := member.spacing_field
}

# beside puts what wood engineering allows beside what the table says, where it
# was worked out.
beside(row, member) := object.union(row, {"engineered": member.engineered})

beside(row, member) := row if not member.engineered
