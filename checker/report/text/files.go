package text

import (
	"strconv"
	"strings"

	"plumbrule/checker/report/content"
	"plumbrule/checker/result"
)

// files prints one row for each design: a table, or a list where a table would
// be wider than the line.
func (p *printer) files(designs []result.Design) {
	p.heading("files")
	rows := [][]string{{"outside", "not shown", "could not run", "within", "disposition", "file"}}
	for i := range designs {
		d := &designs[i]
		c := d.Counts
		row := []string{strconv.Itoa(c.Outside), strconv.Itoa(c.NotShown), strconv.Itoa(c.CouldNotRun), strconv.Itoa(c.Within)}
		if len(d.Problems) > 0 {
			row = []string{"-", "-", "-", "-"}
		}
		rows = append(rows, append(row, string(d.Disposition), printable(d.File)))
	}
	table, width := p.table(rows)
	if p.opts.Width == 0 || width <= p.opts.Width {
		for _, line := range table {
			p.line(line)
		}
		return
	}
	for i := range designs {
		d := &designs[i]
		p.paragraph(2, printable(d.File)+":", bars(content.Disposition(d), p.outside(d)))
	}
}

// outside says how many results are outside their limits, where any were read.
func (p *printer) outside(d *result.Design) string {
	if len(d.Problems) > 0 {
		return ""
	}
	return p.cells.keep("outside " + strconv.Itoa(d.Counts.Outside))
}

// table sets rows in columns, and gives the width of the widest line.
func (p *printer) table(rows [][]string) (lines []string, width int) {
	const gap = "  "
	widths := make([]int, len(rows[0]))
	for _, row := range rows {
		for i, cell := range row {
			widths[i] = max(widths[i], p.cells.StringWidth(cell))
		}
	}
	for _, row := range rows {
		var b strings.Builder
		for i, cell := range row {
			b.WriteString(gap)
			b.WriteString(p.cells.FillRight(cell, widths[i]))
		}
		line := strings.TrimRight(b.String(), " ")
		lines = append(lines, line)
		width = max(width, p.cells.StringWidth(line))
	}
	return lines, width
}
