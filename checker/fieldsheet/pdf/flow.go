package pdf

import (
	"plumbrule/checker/fieldsheet"
	"plumbrule/checker/measure"
	"plumbrule/checker/pdfpages"
)

// Measures of the page in points.
const (
	margin    = 22
	gutter    = 13
	footer    = 10 // kept free at the foot of a page
	indent    = 7
	beforeRow = 2.2 // above a heading
	tight     = 1   // below a line or a table
	hairline  = pdfpages.Hairline
	baseline  = 0.2 // of a line's height, above its foot
)

// font is a style of text and the height of its lines.
type font = pdfpages.Style

// The styles of the sheet. What is read off first is the largest and bold.
var (
	titleFont   = font{Face: "B", Size: 13, Leading: 15}
	headFont    = font{Face: "B", Size: 9, Leading: 10.4}
	captionFont = font{Face: "B", Size: 7.2, Leading: 8.6}
	noteFont    = font{Size: 6.6, Leading: 7.6}
	rowFont     = font{Size: 7, Leading: 8.05}
	firstFont   = font{Face: "B", Size: 7.6, Leading: 8.05} // the first spelling of a length
	otherFont   = font{Size: 6.4, Leading: 8.05}
	partFont    = font{Size: 5.8, Leading: 6.6}
	mutedFont   = font{Face: "I", Size: 6.8, Leading: 8.05}
)

// flow is the pages of a field sheet, in two columns.
type flow struct{ *pdfpages.Flow }

func newFlow(sheet *fieldsheet.Sheet) (flow, error) {
	f, err := pdfpages.New(pdfpages.Setup{
		Title: heading(sheet), Foot: heading(sheet) + ", " + sheet.File, Metric: sheet.System == measure.Metric,
		Margin: margin, FootRoom: footer, FootLine: margin, Columns: 2, Gutter: gutter, FootStyle: noteFont,
	})
	if err != nil {
		return flow{}, err
	}
	f.Page()
	return flow{f}, nil
}

// columns starts the two columns below what was written across the page.
func (f flow) columns() {
	f.Rule(margin, f.Whole, f.Y, 0.8)
	f.Y += 3
	f.StartColumns()
}

func (f flow) item(s string) { f.Item(s, noteFont, indent) }

func (f flow) heading(s string) {
	if f.Y > f.Top {
		f.Y += beforeRow
	}
	f.Rule(f.Left, f.Width, f.Y, 1.1)
	f.Y += tight
	f.Paragraph(s, headFont)
}
