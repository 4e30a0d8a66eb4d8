package text

import (
	"strconv"

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
	table, width := p.cells.Columns(rows)
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
