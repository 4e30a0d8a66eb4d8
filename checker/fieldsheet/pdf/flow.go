package pdf

import (
	"fmt"
	"strings"

	"codeberg.org/go-pdf/fpdf"

	"plumbrule/checker/fieldsheet"
)

// Measures of the page in points.
const (
	margin    = 22
	gutter    = 13
	footer    = 10 // kept free at the foot of a page
	indent    = 7
	beforeRow = 2.2 // above a heading
	tight     = 1   // below a line or a table
	hairline  = 0.3
	baseline  = 0.2 // of a line's height, above its foot
)

// font is a style of text and the height of its lines.
type font struct {
	style   string
	size    float64
	leading float64
}

// The styles of the sheet. What is read off first is the largest and bold.
var (
	titleFont   = font{"B", 13, 15}
	headFont    = font{"B", 9, 10.4}
	captionFont = font{"B", 7.2, 8.6}
	noteFont    = font{"", 6.6, 7.6}
	rowFont     = font{"", 7, 8.05}
	firstFont   = font{"B", 7.6, 8.05} // the first spelling of a length
	otherFont   = font{"", 6.4, 8.05}
	partFont    = font{"", 5.8, 6.6}
	mutedFont   = font{"I", 6.8, 8.05}
)

// flow fills columns from the top down, and pages from the left to the right.
type flow struct {
	pdf    *fpdf.Fpdf
	top    float64 // of the columns on this page
	bottom float64
	left   float64 // of this column
	width  float64 // of a column
	whole  float64 // of both with the gutter
	y      float64
	column int
}

func newFlow(sheet *fieldsheet.Sheet) *flow {
	f := &flow{pdf: newDocument(sheet)}
	w, h := f.pdf.GetPageSize()
	f.whole = w - 2*margin
	f.width = (f.whole - gutter) / 2
	f.bottom = h - margin - footer
	name := heading(sheet) + ", " + sheet.File
	f.pdf.AliasNbPages("{pages}")
	f.pdf.SetFooterFunc(func() {
		f.use(noteFont)
		f.text(margin, h-margin, name)
		number := fmt.Sprintf("page %d of {pages}", f.pdf.PageNo())
		f.text(w-margin-60, h-margin, number)
	})
	f.page()
	return f
}

func (f *flow) page() {
	f.pdf.AddPage()
	f.top, f.y, f.left, f.column = margin, margin, margin, 0
}

// columns starts the two columns below what was written across the page.
func (f *flow) columns() {
	f.rule(margin, f.whole, f.y, 0.8)
	f.y += 3
	f.top = f.y
}

// need makes room for what has to stand together, in the next column if need be.
func (f *flow) need(height float64) {
	if f.y+height > f.bottom && f.y > f.top {
		f.next()
	}
}

func (f *flow) next() {
	if f.column == 0 {
		f.column, f.left, f.y = 1, margin+f.width+gutter, f.top
		return
	}
	f.page()
}

func (f *flow) use(s font) { f.pdf.SetFont(family, s.style, s.size) }

// text writes at a baseline.
func (f *flow) text(x, baseline float64, s string) { f.pdf.Text(x, baseline, s) }

// rule draws a level line. Thin ones only lead the eye and are grey.
func (f *flow) rule(x, width, y, weight float64) {
	grey := 0
	if weight <= hairline {
		grey = 140
	}
	f.pdf.SetDrawColor(grey, grey, grey)
	f.pdf.SetLineWidth(weight)
	f.pdf.Line(x, y, x+width, y)
}

// wrap breaks text at its blanks into lines of at most some width.
func (f *flow) wrap(s string, style font, width float64) []string {
	f.use(style)
	var lines []string
	line := ""
	for _, word := range strings.Fields(s) {
		longer := word
		if line != "" {
			longer = line + " " + word
		}
		if line != "" && f.pdf.GetStringWidth(longer) > width {
			lines = append(lines, line)
			longer = word
		}
		line = longer
	}
	return append(lines, line)
}

func (f *flow) heightOf(paragraphs []string, style font) float64 {
	n := 0
	for _, p := range paragraphs {
		n += len(f.wrap(p, style, f.width))
	}
	return float64(n) * style.leading
}

// wide writes across the page, before the columns start.
func (f *flow) wide(s string, style font) {
	for _, line := range f.wrap(s, style, f.whole) {
		f.y += style.leading
		f.text(margin, f.y-style.leading*baseline, line)
	}
}

func (f *flow) paragraph(s string, style font) {
	for _, line := range f.wrap(s, style, f.width) {
		f.need(style.leading)
		f.use(style)
		f.y += style.leading
		f.text(f.left, f.y-style.leading*baseline, line)
	}
}

// item writes one entry of a list.
func (f *flow) item(s string) {
	lines := f.wrap(s, noteFont, f.width-indent)
	f.need(float64(len(lines)) * noteFont.leading)
	for i, line := range lines {
		f.use(noteFont)
		f.y += noteFont.leading
		if i == 0 {
			f.text(f.left, f.y-noteFont.leading*baseline, "–")
		}
		f.text(f.left+indent, f.y-noteFont.leading*baseline, line)
	}
}

func (f *flow) heading(s string) {
	if f.y > f.top {
		f.y += beforeRow
	}
	f.rule(f.left, f.width, f.y, 1.1)
	f.y += tight
	f.paragraph(s, headFont)
}
