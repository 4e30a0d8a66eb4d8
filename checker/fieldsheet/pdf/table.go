package pdf

import (
	"strings"

	"plumbrule/checker/fieldsheet"
	"plumbrule/checker/measure"
)

// Space between the parts of a column and between columns, in points.
const (
	partGap   = 4
	columnGap = 7
)

// sheetTable is a table with the widths of its parts.
type sheetTable struct {
	fieldsheet.Grid
	title string
	first []bool // the part starts a column
	width []float64
}

// table writes a table, with its headings again where it runs into another
// column.
func (f flow) table(t *fieldsheet.Table, sys measure.System) {
	s := &sheetTable{Grid: t.Grid(sys), title: t.Title}
	f.widths(s)
	const together = 2 // rows that stay with the headings
	head := f.headHeight(s)
	f.Need(head + together*rowFont.Leading)
	f.tableHead(s, s.title)
	for i, row := range s.Rows {
		height := f.rowHeight(s, row)
		if f.Y+height > f.Bottom {
			f.Next()
			again := s.title
			if again == "" {
				again = "Table"
			}
			f.tableHead(s, again+", continued")
		}
		f.row(s, row)
		weight := hairline
		if i == len(s.Rows)-1 {
			weight = 0.6
		}
		f.Rule(f.Left, f.Width, f.Y, weight)
	}
	f.Y += tight
	for _, n := range t.Notes {
		f.Paragraph(n, noteFont)
	}
	f.Y += tight
}

// style is how the text of a part is set.
func (s *sheetTable) style(field fieldsheet.Field, part int) font {
	switch {
	case field.Kind == fieldsheet.Unknown:
		return mutedFont
	case field.Span > 1 || s.Parts[part] == "":
		return rowFont
	case s.first[part]:
		return firstFont
	}
	return otherFont
}

// widths gives numbers what they need, and words the rest.
func (f flow) widths(s *sheetTable) {
	s.width, s.first = make([]float64, len(s.Parts)), make([]bool, len(s.Parts))
	part := 0
	for _, h := range s.Heads {
		s.first[part] = true
		part += h.Span
	}
	for i, name := range s.Parts {
		f.Use(partFont)
		s.width[i] = f.Measure(name)
	}
	widen := func(fields []fieldsheet.Field, heads bool) {
		part := 0
		for _, field := range fields {
			style := s.style(field, part)
			if heads {
				style = captionFont
			}
			f.Use(style)
			width := f.Measure(field.Text)
			if heads && s.Right[part] {
				width = f.longestWord(field.Text) // the rest is wrapped
			}
			switch {
			case field.Span == 1:
				s.width[part] = max(s.width[part], width)
			case field.Span > 1 && !heads:
				s.width[part] += max(width-s.over(part, field.Span), 0)
			}
			part += field.Span
		}
	}
	widen(s.Heads, true)
	for _, row := range s.Rows {
		widen(row, false)
	}
	f.fit(s)
}

// longestWord is the width of the longest word in the style in use.
func (f flow) longestWord(s string) float64 {
	width := 0.0
	for word := range strings.FieldsSeq(s) {
		width = max(width, f.Measure(word))
	}
	return width
}

// fit takes what does not fit from the widest words, or gives what is left to
// the first of them, so that numbers stand at the right of every table.
func (f flow) fit(s *sheetTable) {
	const least = 40
	for over := s.over(0, len(s.Parts)) - f.Width; over > 0.01; over = s.over(0, len(s.Parts)) - f.Width {
		widest := 0
		for i := range s.width {
			if !s.Right[i] && (s.Right[widest] || s.width[i] > s.width[widest]) {
				widest = i
			}
		}
		if s.width[widest] <= least {
			return
		}
		s.width[widest] = max(s.width[widest]-over, least)
	}
	s.width[0] += f.Width - s.over(0, len(s.Parts))
}

// lead is the space before a part.
func (s *sheetTable) lead(part int) float64 {
	switch {
	case part == 0:
		return 0
	case s.first[part]:
		return columnGap
	}
	return partGap
}

// over is the width of some parts with the space between them.
func (s *sheetTable) over(part, span int) float64 {
	sum := 0.0
	for i := part; i < part+span; i++ {
		sum += s.width[i]
		if i > part {
			sum += s.lead(i)
		}
	}
	return sum
}

func (s *sheetTable) hasParts() bool {
	for _, name := range s.Parts {
		if name != "" {
			return true
		}
	}
	return false
}

func (s *sheetTable) hasHeads() bool {
	for _, h := range s.Heads {
		if h.Text != "" {
			return true
		}
	}
	return false
}

func (f flow) headHeight(s *sheetTable) float64 {
	height := captionFont.Leading
	if s.hasHeads() {
		height += float64(f.headLines(s)) * captionFont.Leading
	}
	return height + partFont.Leading
}

// headLines is the number of lines of the tallest column heading.
func (f flow) headLines(s *sheetTable) int {
	lines, part := 1, 0
	for _, h := range s.Heads {
		lines = max(lines, len(f.Wrap(h.Text, captionFont, s.over(part, h.Span)+0.1)))
		part += h.Span
	}
	return lines
}

// tableHead writes title, column headings and the names of the spellings. The
// names share the last line above them where there is room beside it.
func (f flow) tableHead(s *sheetTable, title string) {
	if title != "" {
		f.Paragraph(title, captionFont)
	}
	beside := title != "" && !s.hasHeads() && f.beside(s, title)
	if s.hasHeads() {
		f.heads(s)
	}
	if s.hasParts() {
		if !beside {
			f.Y += partFont.Leading
		}
		x := f.Left
		for i, name := range s.Parts {
			x += s.lead(i)
			f.Use(partFont)
			f.Text(x+s.width[i]-f.Measure(name), f.Y-partFont.Leading*baseline, name)
			x += s.width[i]
		}
	}
	f.Rule(f.Left, f.Width, f.Y, 0.6)
}

// beside reports whether the title leaves the parts behind the first free.
func (f flow) beside(s *sheetTable, title string) bool {
	f.Use(captionFont)
	return f.Measure(title) < s.width[0]
}

// heads writes the column headings, the last line of each at the same height.
func (f flow) heads(s *sheetTable) {
	lines := f.headLines(s)
	x, part := f.Left, 0
	for _, h := range s.Heads {
		x += s.lead(part)
		width := s.over(part, h.Span)
		block := f.Wrap(h.Text, captionFont, width+0.1)
		for i, line := range block {
			at := x
			if s.Right[part] {
				at += width - f.Measure(line)
			}
			f.Text(at, f.Y+float64(lines-len(block)+i+1)*captionFont.Leading-captionFont.Leading*baseline, line)
		}
		x += width
		part += h.Span
	}
	f.Y += float64(lines) * captionFont.Leading
}

func (f flow) rowHeight(s *sheetTable, row []fieldsheet.Field) float64 {
	lines, part := 1, 0
	for _, field := range row {
		lines = max(lines, len(f.Wrap(field.Text, s.style(field, part), s.over(part, field.Span)+0.1)))
		part += field.Span
	}
	return float64(lines) * rowFont.Leading
}

func (f flow) row(s *sheetTable, row []fieldsheet.Field) {
	x, part := f.Left, 0
	for _, field := range row {
		x += s.lead(part)
		style, width := s.style(field, part), s.over(part, field.Span)
		for i, line := range f.Wrap(field.Text, style, width+0.1) {
			at := x
			if s.Right[part] && field.Span == 1 {
				at += width - f.Measure(line)
			}
			f.Text(at, f.Y+float64(i+1)*rowFont.Leading-rowFont.Leading*baseline, line)
		}
		x += width
		part += field.Span
	}
	f.Y += f.rowHeight(s, row)
}
