package pdfpages

import (
	"strings"
	"unicode"

	"codeberg.org/go-pdf/fpdf"
	"golang.org/x/image/font/sfnt"
)

// Hairline is the weight of the thinnest lines in points. They only lead the eye
// and are gray.
const Hairline = 0.3

// baseline is how far above the foot of a line letters stand, in parts of its
// height.
const baseline = 0.2

// Flow fills columns from the top down, and pages from the left to the right.
// All lengths are points from the upper left corner of the page.
type Flow struct {
	PDF *fpdf.Fpdf
	// Top and Bottom bound the columns of this page.
	Top, Bottom float64
	// Left and Width are those of this column, Whole is the width of all.
	Left, Width, Whole float64
	// Y is where the next line starts.
	Y float64

	setup   Setup
	column  int
	letters *sfnt.Font
	buffer  sfnt.Buffer
}

// Page starts a page.
func (f *Flow) Page() {
	f.PDF.AddPage()
	f.Top, f.Y, f.Left, f.column = f.setup.Margin, f.setup.Margin, f.setup.Margin, 0
}

// StartColumns starts the columns at Y, below what was written across the page.
func (f *Flow) StartColumns() { f.Top = f.Y }

// Need makes room for what has to stand together, in the next column if need be.
func (f *Flow) Need(height float64) {
	if f.Y+height > f.Bottom && f.Y > f.Top {
		f.Next()
	}
}

// Next goes on in the next column, or on the next page.
func (f *Flow) Next() {
	if f.column+1 < f.setup.Columns {
		f.column++
		f.Left += f.Width + f.setup.Gutter
		f.Y = f.Top
		return
	}
	f.Page()
}

// Use chooses the letters of a style.
func (f *Flow) Use(s Style) { f.PDF.SetFont(Family, s.Face, s.Size) }

// Measure is the width of words in the style in use.
func (f *Flow) Measure(s string) float64 { return f.PDF.GetStringWidth(f.known(s)) }

// Text writes at a baseline.
func (f *Flow) Text(x, baseline float64, s string) {
	if s != "" {
		f.PDF.Text(x, baseline, f.known(s))
	}
}

// Line writes one line of a style from x on, the first of a paragraph being 0.
// It does not move Y.
func (f *Flow) Line(x float64, n int, style Style, s string) {
	f.Use(style)
	f.Text(x, f.Y+float64(n+1)*style.Leading-style.Leading*baseline, s)
}

// Rule draws a level line.
func (f *Flow) Rule(x, width, y, weight float64) {
	gray := 0
	if weight <= Hairline {
		gray = 140
	}
	f.PDF.SetDrawColor(gray, gray, gray)
	f.PDF.SetLineWidth(weight)
	f.PDF.Line(x, y, x+width, y)
}

// Wrap breaks text at its blanks into lines of at most some width. A word that
// is longer is broken where it has to be.
func (f *Flow) Wrap(s string, style Style, width float64) []string {
	f.Use(style)
	var lines []string
	line := ""
	for _, word := range strings.FieldsFunc(s, blank) {
		longer := word
		if line != "" {
			longer = line + " " + word
		}
		if line != "" && f.Measure(longer) > width {
			lines = append(lines, line)
			longer = word
		}
		for n := f.fitting(longer, width); n < len(longer); n = f.fitting(longer, width) {
			lines = append(lines, longer[:n])
			longer = longer[n:]
		}
		line = longer
	}
	return append(lines, line)
}

// blank tells where lines may end: not at a blank that is to hold words together.
func blank(r rune) bool { return r != noBreak && unicode.IsSpace(r) }

const noBreak = '\u00a0'

// fitting is how many bytes of a word fit, at least one letter and all of them
// where they do: up to a joint in the word where there is one in the second half
// of what fits.
func (f *Flow) fitting(word string, width float64) int {
	fits := f.reach(word, width)
	if fits == len(word) {
		return fits
	}
	if joint := strings.LastIndexAny(word[:fits], "./_-[]") + 1; joint > fits/2 {
		return joint
	}
	return fits
}

// reach is how many bytes of a word are no wider than a line, at least one
// letter. Widths of letters add up, so each is measured once.
func (f *Flow) reach(word string, width float64) int {
	const units = 1000 // in the height of the letters
	_, size := f.PDF.GetFontSize()
	sum := 0
	for i, r := range word {
		sum += f.PDF.GetStringSymbolWidth(f.known(string(r)))
		if i > 0 && float64(sum)*size/units > width {
			return i
		}
	}
	return len(word)
}

// Height is the room that paragraphs take in a column.
func (f *Flow) Height(paragraphs []string, style Style) float64 {
	n := 0
	for _, p := range paragraphs {
		n += len(f.Wrap(p, style, f.Width))
	}
	return float64(n) * style.Leading
}

// Wide writes across the page, before the columns start.
func (f *Flow) Wide(s string, style Style) {
	for _, line := range f.Wrap(s, style, f.Whole) {
		f.Line(f.setup.Margin, 0, style, line)
		f.Y += style.Leading
	}
}

// Paragraph writes into the columns, a line in the next one where need be.
func (f *Flow) Paragraph(s string, style Style) { f.Indented(0, s, style) }

// Indented is Paragraph, set in from the left.
func (f *Flow) Indented(indent float64, s string, style Style) {
	for _, line := range f.Wrap(s, style, f.Width-indent) {
		f.Need(style.Leading)
		f.Line(f.Left+indent, 0, style, line)
		f.Y += style.Leading
	}
}

// Item writes one entry of a list, which is not parted.
func (f *Flow) Item(s string, style Style, indent float64) {
	lines := f.Wrap(s, style, f.Width-indent)
	f.Need(float64(len(lines)) * style.Leading)
	f.Line(f.Left, 0, style, "–")
	for i, line := range lines {
		f.Line(f.Left+indent, i, style, line)
	}
	f.Y += float64(len(lines)) * style.Leading
}

// Bookmark names the place where the next line starts, in the list of contents
// that a reader shows beside the pages.
func (f *Flow) Bookmark(s string, level int) { f.PDF.Bookmark(f.known(s), level, f.Y) }
