package text

import (
	"fmt"
	"io"
	"strings"

	"plumbrule/checker/compare"
	"plumbrule/checker/compare/words"
	"plumbrule/checker/report/content"
	"plumbrule/checker/report/lines"
)

const (
	indent      = 4
	leastColumn = 18 // a column that is narrower breaks every value
	mostColumn  = 44 // one that is wider leaves the next set out of sight
	columnGap   = 2
)

// Sets writes what rule sets make of a design beside each other. The error is
// that of the underlying writer.
func Sets(to io.Writer, s *compare.Sets, opts Options) error {
	p := newPrinter(to, opts)
	p.block([][2]string{
		{"file", s.Design.File},
		{"title", s.Design.Title},
		{"revision", s.Design.Revision},
		{"sets", content.SetNames(s.Sets)},
	})
	for _, d := range words.Differences() {
		p.rows(s, d)
	}
	p.gaps(s)
	p.Gap()
	p.Paragraph(0, "subjects:", lines.Bars(words.SetSummary(s)...))
	p.closing(s.Sets, s.Waivers)
	return p.Flush()
}

func (p *printer) rows(s *compare.Sets, d compare.Difference) {
	list, left := words.Listed(s, d)
	if p.opts.Verbose {
		list, left = s.Of(d), 0
	}
	if len(list) == 0 && left == 0 {
		return
	}
	p.Heading(fmt.Sprintf("%s (%d)", words.Difference(d), s.Count(d)))
	check := ""
	for _, row := range list {
		if row.Check != check {
			check = row.Check
			p.Gap()
			p.Paragraph(0, "", fmt.Sprintf("%s [%s], %s", row.Title, row.Check, row.Consequence))
		}
		p.row(s, row)
	}
	if left > 0 {
		p.Gap()
		p.Paragraph(2, "", words.Left(left))
	}
}

// row prints a subject: sets in columns where there is room and they differ in
// what they say, else one under the other.
func (p *printer) row(s *compare.Sets, row *compare.Row) {
	p.Paragraph(2, place(s.Design.File, row.Span.Start)+":", words.Subject(row))
	aspects := words.Aspects(row)
	if width := p.column(aspects, s); width > 0 && row.Difference != compare.InCheck {
		p.columns(aspects, s, width)
		return
	}
	names, lines := words.Stacked(row, s.Sets, p.Cells.Keep)
	for i := range names {
		p.Paragraph(indent, names[i]+":", lines[i])
	}
}

// heads is the width of the column of names.
func (p *printer) heads(aspects []words.Aspect) int {
	width := 0
	for _, a := range aspects {
		width = max(width, p.Cells.StringWidth(a.Name))
	}
	return width
}

// column gives the width of a set's column, or 0 where there is no room for all.
func (p *printer) column(aspects []words.Aspect, s *compare.Sets) int {
	widest, word := 0, 0
	measure := func(text string) {
		widest = max(widest, p.Cells.StringWidth(text))
		for _, w := range strings.Fields(text) {
			word = max(word, p.Cells.StringWidth(w))
		}
	}
	for i := range s.Sets {
		measure(s.Sets[i].ID)
		for _, a := range aspects {
			measure(a.Words[i])
		}
	}
	widest = max(min(widest, mostColumn), word)
	if p.Width == 0 {
		return widest
	}
	room := (p.Width-indent-p.heads(aspects))/len(s.Sets) - columnGap
	if room < max(word, min(widest, leastColumn)) {
		return 0
	}
	return min(room, widest)
}

// columns prints a line for each aspect, wrapped within its columns.
func (p *printer) columns(aspects []words.Aspect, s *compare.Sets, width int) {
	head := p.heads(aspects)
	ids := make([]string, len(s.Sets))
	for i := range s.Sets {
		ids[i] = s.Sets[i].ID
	}
	for _, a := range append([]words.Aspect{{Words: ids}}, aspects...) {
		cells := make([][]string, len(a.Words))
		height := 1
		for i, text := range a.Words {
			cells[i] = p.Cells.Wrap(content.Printable(text), width, width)
			height = max(height, len(cells[i]))
		}
		for k := range height {
			name := ""
			if k == 0 {
				name = a.Name
			}
			line := strings.Repeat(" ", indent) + p.Cells.FillRight(name, head)
			for _, cell := range cells {
				piece := ""
				if k < len(cell) {
					piece = cell[k]
				}
				line += strings.Repeat(" ", columnGap) + p.Cells.FillRight(piece, width)
			}
			p.Line(strings.TrimRight(line, " "))
		}
	}
}

// gaps says for each set which checks only others have.
func (p *printer) gaps(s *compare.Sets) {
	p.Heading("checks that only other sets have")
	for i := range s.Sets {
		words := words.Gap(s.Gaps[i])
		if words == "" {
			words = "none"
		}
		p.Paragraph(2, fmt.Sprintf("%s (%d):", s.Sets[i].ID, len(s.Gaps[i])), words)
	}
}
