package text

import (
	"strings"

	"plumbrule/checker/fieldsheet"
)

// gap is the space between parts of a table; between columns it is wider.
const (
	gap       = 1
	columnGap = 2
)

// columns are the widths of a grid's parts, and which of them starts a column.
type columns struct {
	width []int
	first []bool
}

func (p *printer) table(t *fieldsheet.Table, sheet *fieldsheet.Sheet) {
	g := t.Grid(sheet.System)
	p.line("")
	if t.Title != "" {
		p.wrapped(t.Title, "")
	}
	c := p.measure(&g)
	if headed(&g) {
		p.row(&g, c, g.Heads, true)
	}
	var parts []fieldsheet.Field
	for _, name := range g.Parts {
		parts = append(parts, fieldsheet.Field{Text: name, Span: 1})
	}
	if strings.Join(g.Parts, "") != "" {
		p.row(&g, c, parts, false)
	}
	for _, row := range g.Rows {
		p.row(&g, c, row, false)
	}
	for _, n := range t.Notes {
		p.wrapped(n, "  ")
	}
}

func headed(g *fieldsheet.Grid) bool {
	for _, h := range g.Heads {
		if h.Text != "" {
			return true
		}
	}
	return false
}

// measure gives every part the width of its widest text, and then takes from
// the widest words whatever does not fit; those are wrapped.
func (p *printer) measure(g *fieldsheet.Grid) columns {
	c := columns{width: make([]int, len(g.Parts)), first: make([]bool, len(g.Parts))}
	at := 0
	for _, h := range g.Heads {
		c.first[at] = true
		at += h.Span
	}
	for i, name := range g.Parts {
		c.width[i] = p.cells.StringWidth(name)
	}
	rows := append([][]fieldsheet.Field{g.Heads}, g.Rows...)
	for _, span := range []bool{false, true} {
		for _, row := range rows {
			at := 0
			for _, f := range row {
				switch {
				case f.Span == 1 && !span:
					c.width[at] = max(c.width[at], p.cells.StringWidth(f.Text))
				case f.Span > 1 && span:
					// What stands over several parts widens the last of them.
					short := p.cells.StringWidth(f.Text) - c.over(at, f.Span)
					c.width[at+f.Span-1] += max(short, 0)
				}
				at += f.Span
			}
		}
	}
	for over := c.total() - width; over > 0; over = c.total() - width {
		widest := -1
		for i := range c.width {
			if !g.Right[i] && (widest < 0 || c.width[i] > c.width[widest]) {
				widest = i
			}
		}
		const least = 8
		if widest < 0 || c.width[widest] <= least {
			break
		}
		c.width[widest] = max(c.width[widest]-over, least)
	}
	return c
}

// lead is the space before a part.
func (c columns) lead(i int) int {
	switch {
	case i == 0:
		return 0
	case c.first[i]:
		return columnGap
	}
	return gap
}

// over is the width of some parts with the space between them.
func (c columns) over(at, span int) int {
	sum := 0
	for i := at; i < at+span; i++ {
		sum += c.width[i]
		if i > at {
			sum += c.lead(i)
		}
	}
	return sum
}

func (c columns) total() int {
	sum := c.over(0, len(c.width))
	return sum
}

// row prints one row, over several lines where words are wrapped.
func (p *printer) row(g *fieldsheet.Grid, c columns, fields []fieldsheet.Field, head bool) {
	var blocks [][]string
	lines, at := 1, 0
	for _, f := range fields {
		block := p.cells.wrap(f.Text, c.over(at, f.Span))
		blocks = append(blocks, block)
		lines = max(lines, len(block))
		at += f.Span
	}
	for i := range lines {
		line, at := "", 0
		for k, f := range fields {
			piece := ""
			// Heads stand at the bottom of their row, words at the top.
			if n := i - (lines - len(blocks[k])); head && n >= 0 {
				piece = blocks[k][n]
			} else if !head && i < len(blocks[k]) {
				piece = blocks[k][i]
			}
			right := g.Right[at] && f.Span == 1
			line += strings.Repeat(" ", c.lead(at)) + p.cells.pad(piece, c.over(at, f.Span), right)
			at += f.Span
		}
		p.line(line)
	}
}
