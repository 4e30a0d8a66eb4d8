# METADATA
# description: >-
#   How a table of wood boards is read for the boards of one platform, what lies
#   beyond the table, and which listing speaks of boards that are not wood.
package lib.decking

# table is the figure that holds the table: by how boards lie, or by their wood.
table(figures) := "spacing" if figures.spacing

else := "by_wood"

# lay is the column for how boards lie, undefined further round than the table goes.
lay(_, boards) := "perpendicular" if boards.board_angle.value == 0

lay(figures, boards) := "diagonal" if {
	boards.board_angle.value != 0
	abs(boards.board_angle.value) <= figures.max_angle
}

# row is the row for the thickness of the boards: the next worse one is that of
# the next thinner board. Undefined for boards thinner than any of the table.
row(figures, boards) := max([k | some k, b in figures[table(figures)].breaks.thickness; b <= boards.thickness.value])

# group is the wood of the boards as the table has it.
group(figures, boards) := min([name |
	some name, list in figures.woods
	lower(boards.lumber.species.value) in list
])

# joists is the number of joists that a board rests on; all of them, where no
# lesser number is shown.
joists(boards) := boards.joists_per_board.value

joists(boards) := boards.joist_count.value if not boards.joists_per_board

# reach is the column for the number of joists that a board rests on.
reach(figures, _) := "any" if not figures.multiple_from

reach(figures, boards) := "multiple" if joists(boards) >= figures.multiple_from

reach(figures, boards) := "single" if joists(boards) < figures.multiple_from

# How many joists a board rests on does not matter where both columns say the same.
reach(figures, boards) := "multiple" if {
	figures.multiple_from
	not joists(boards)
	boards.joist_spacing.value > figures.spacing.cells[row(figures, boards)][lay(figures, boards)].multiple
}

reach(figures, boards) := "single" if {
	figures.multiple_from
	not joists(boards)
	boards.joist_spacing.value <= figures.spacing.cells[row(figures, boards)][lay(figures, boards)].single
}

# cell is the path to the limit, undefined where the table has none for the boards.
cell(figures, boards) := [row(figures, boards), lay(figures, boards), reach(figures, boards)] if figures.spacing

cell(figures, boards) := [group(figures, boards), row(figures, boards)] if {
	figures.by_wood
	lay(figures, boards)
}

# limit is what stands in that cell: a spacing, or null where nothing is permitted.
limit(figures, boards) := figures.spacing.cells[thickness][laid][reached] if {
	[thickness, laid, reached] := cell(figures, boards)
}

limit(figures, boards) := figures.by_wood.cells[wood][thickness] if {
	[wood, thickness] := cell(figures, boards)
}

# apart holds of boards where the set holds an excerpt of the table: the printed
# one may well have rows for their wood.
apart(figures, boards) if {
	figures.excerpt
	count(_wood(figures, boards)) > 0
}

# thicker holds of boards past the limit of a row of an excerpt that is for
# thinner ones: the printed table may well have a row for theirs.
thicker(figures, boards) if {
	figures.excerpt
	boards.thickness.value > figures[table(figures)].breaks.thickness[row(figures, boards)]
	far := limit(figures, boards)
	is_number(far)
	boards.joist_spacing.value > far
}

# beyond are the readings of wood boards that the table does not reach.
beyond(figures, boards) := (_wood(figures, boards) | _thickness(figures, boards)) | _angle(figures, boards)

_wood(figures, boards) := {reading |
	figures.woods
	species := boards.lumber.species
	not group(figures, boards)
	reading := {"at": species.at, "figure": "woods", "outside": true, "say": "beyond_wood", "species": species.value}
}

_thickness(figures, boards) := {reading |
	thickness := boards.thickness
	not row(figures, boards)
	reading := {"at": thickness.at, "figure": table(figures), "outside": true, "say": "beyond_thickness", "thickness": thickness.value}
}

_angle(figures, boards) := {reading |
	angle := boards.board_angle
	not lay(figures, boards)
	reading := object.union(
		{"at": angle.at, "outside": true, "say": "beyond_angle", "angle": angle.value},
		_turned(figures, angle.value),
	)
}

_turned(figures, angle) := {"figure": "max_angle", "have": abs(angle), "limit": figures.max_angle} if figures.max_angle

else := {"figure": table(figures)}

# missing are the fields of the design that the table waits for.
missing(figures, boards) := {need |
	some need, shown in {
		"platforms[].decking.board_angle": [1 | boards.board_angle],
		"platforms[].decking.thickness": [1 | boards.thickness],
		"platforms[].decking.joists_per_board": [1 | not _between(figures, boards)],
	}
	shown == []
} | (spacing(boards) | _species(figures, boards))

# _between holds where the column hangs on a number of joists that is not shown.
_between(figures, boards) if {
	boards.joist_spacing
	not reach(figures, boards)
}

_species(figures, boards) := {need |
	figures.woods
	not boards.lumber.species
	some need in boards.lumber.missing
	not endswith(need, ".grade")
}

# spacing is the field that would give the spacing of the joists, where it is not shown.
spacing(boards) := {need |
	not boards.joist_spacing
	need := boards.spacing_field
}

# listing is what the listing says of boards laid as they are.
listing(boards) := boards.listed_straight if boards.board_angle.value == 0

listing(boards) := boards.listed_diagonal if boards.board_angle.value != 0

# unlisted is the field that would show it.
unlisted(boards) := {need |
	angle := boards.board_angle.value
	not listing(boards)
	need := {true: "platforms[].decking.listed_max_spacing", false: "platforms[].decking.listed_max_spacing_diagonal"}[angle == 0]
}
