package lines

import (
	"strings"

	"github.com/mattn/go-runewidth"
)

// Cells measures text in the cells of a terminal. It does not ask the locale,
// as the library's own default would, so that the same report has the same
// bytes everywhere.
type Cells struct{ *runewidth.Condition }

// NewCells gives a measure of cells.
func NewCells() Cells {
	return Cells{&runewidth.Condition{StrictEmojiNeutral: true}}
}

// Columns sets rows in columns, each begun by a gap of two cells, and gives the
// width of the widest line. The rows are of one length.
func (c Cells) Columns(rows [][]string) (lines []string, width int) {
	const gap = "  "
	widths := make([]int, len(rows[0]))
	for _, row := range rows {
		for i, cell := range row {
			widths[i] = max(widths[i], c.StringWidth(cell))
		}
	}
	for _, row := range rows {
		var b strings.Builder
		for i, cell := range row {
			b.WriteString(gap)
			b.WriteString(c.FillRight(cell, widths[i]))
		}
		line := strings.TrimRight(b.String(), " ")
		lines = append(lines, line)
		width = max(width, c.StringWidth(line))
	}
	return lines, width
}
