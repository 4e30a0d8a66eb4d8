package pdf

import (
	"fmt"

	"plumbrule/checker/packet"
	"plumbrule/checker/pdfpages"
)

// above is the room between the line over a row and its words, in points.
const above = 1.5

// line is one line of a cell.
type line struct {
	words string
	style pdfpages.Style
	link  int
}

// grid is a table with the places of its columns.
type grid struct {
	*packet.Table
	x, width []float64
}

func (w *writer) grid(t *packet.Table) *grid {
	g := &grid{Table: t}
	sum := 0.0
	for _, c := range t.Columns {
		sum += c.Share
	}
	x := w.Left
	for _, c := range t.Columns {
		width := w.Width * c.Share / sum
		g.x, g.width = append(g.x, x), append(g.width, width)
		x += width
	}
	return g
}

// table writes a table, with its headings again on every page.
// Below a heading that says as much, the caption waits for the next page.
func (w *writer) table(t *packet.Table, headed bool) {
	g := w.grid(t)
	w.Need(w.tableStart(g))
	w.Y += 2
	if !headed {
		w.Paragraph(g.Caption, strongStyle)
	}
	w.head(g)
	for i := range g.Rows {
		w.row(g, &g.Rows[i])
	}
	w.Y += 6
}

// together is the height of the rows that stay with the headings: all of them
// where they are few, else the first.
func (w *writer) together(g *grid) float64 {
	const few = 160 // points
	first, sum := 0.0, 0.0
	for i := range g.Rows {
		_, lines := w.cells(g, &g.Rows[i])
		sum += float64(lines)*rowStyle.Leading + above + pad
		if i == 0 {
			first = sum
		}
		if sum > few {
			return first
		}
	}
	return sum
}

func (w *writer) headHeight(g *grid) float64 {
	lines := 1
	for i, c := range g.Columns {
		lines = max(lines, len(w.Wrap(c.Head, headStyle, g.width[i]-2*pad)))
	}
	return float64(lines)*headStyle.Leading + pad
}

// head writes the headings of the columns.
func (w *writer) head(g *grid) {
	height := w.headHeight(g)
	w.PDF.SetFillColor(tint, tint, tint)
	w.PDF.Rect(w.Left, w.Y, w.Width, height, "F")
	for i, c := range g.Columns {
		for k, words := range w.Wrap(c.Head, headStyle, g.width[i]-2*pad) {
			w.Line(g.x[i]+pad, k, headStyle, words)
		}
	}
	w.Y += height
	w.Rule(w.Left, w.Width, w.Y, 0.8)
}

// row writes a row, on one page where a page can hold it.
func (w *writer) row(g *grid, r *packet.Row) {
	cells, lines := w.cells(g, r)
	room := func() int { return int((w.Bottom - w.Y - above - pad) / rowStyle.Leading) }
	for from := 0; from < lines; {
		if n := room(); n < lines-from && (from == 0 || n < 1) && w.Y > w.Top+w.headHeight(g)+strongStyle.Leading+1 {
			w.Next()
			w.Paragraph(g.Caption+", continued", strongStyle)
			w.head(g)
		}
		to := min(lines, from+max(room(), 1))
		if from == 0 && r.Item > 0 {
			w.PDF.SetLink(w.items[r.Item], w.Y, -1)
		}
		w.stretch(g, r, cells, from, to)
		from = to
	}
	w.Rule(w.Left, w.Width, w.Y, pdfpages.Hairline)
}

// stretch writes some lines of a row.
func (w *writer) stretch(g *grid, r *packet.Row, cells [][]line, from, to int) {
	w.Y += above
	column := 0
	for i := range cells {
		for k := from; k < min(to, len(cells[i])); k++ {
			l := cells[i][k]
			x := g.x[column] + pad
			w.Line(x, k-from, l.style, l.words)
			if l.link > 0 {
				w.PDF.Link(x, w.Y+float64(k-from)*rowStyle.Leading, w.Measure(l.words), rowStyle.Leading, l.link)
			}
		}
		column += r.Cells[i].Columns()
	}
	w.Y += float64(to-from)*rowStyle.Leading + pad
}

// cells breaks the cells of a row into lines, and gives the number of lines of
// the tallest.
func (w *writer) cells(g *grid, r *packet.Row) (cells [][]line, lines int) {
	column := 0
	for i := range r.Cells {
		c := &r.Cells[i]
		width := -2.0 * pad
		for k := range c.Columns() {
			width += g.width[column+k]
		}
		column += c.Columns()
		style := rowStyle
		if i == 0 || c.Strong {
			style = rowHeadStyle
		}
		words, link := c.Text, 0
		if c.Item > 0 {
			words, link = fmt.Sprintf("%s, item %d", c.Text, c.Item), w.items[c.Item]
		}
		var list []line
		for _, s := range w.Wrap(words, style, width) {
			list = append(list, line{s, style, link})
		}
		if c.More != "" {
			for _, s := range w.Wrap(c.More, moreStyle, width) {
				list = append(list, line{s, moreStyle, 0})
			}
		}
		cells, lines = append(cells, list), max(lines, len(list))
	}
	return cells, lines
}
