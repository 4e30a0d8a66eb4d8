package pdfpages

import (
	"fmt"
	"io"
	"strings"
	"time"

	"codeberg.org/go-pdf/fpdf"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goitalic"
	"golang.org/x/image/font/gofont/goregular"
	"golang.org/x/image/font/sfnt"
)

// Setup says what a document is like. All lengths are points.
type Setup struct {
	// Title is that of the file; Foot stands at the foot of every page, beside
	// the number of the page.
	Title, Foot string
	// Metric chooses A4 instead of letter paper.
	Metric bool
	Margin float64
	// FootRoom is kept free for the foot above the lower margin, and FootLine is
	// how far above the edge of the paper the foot stands.
	FootRoom, FootLine float64
	// Columns is the number of columns, and Gutter the space between them.
	Columns int
	Gutter  float64
	// FootStyle is that of the foot.
	FootStyle Style
}

// Style is a style of letters and the height of their lines, in points. Face is
// "" for the plain letters, "B" for bold, "I" for slanted ones.
type Style struct {
	Face          string
	Size, Leading float64
}

// Family is the name under which a document knows the letters. The Go fonts
// (Bigelow & Holmes) have Latin, Greek and Cyrillic; only the glyphs that are
// used go into the file.
const Family = "go"

// allPages stands for the number of pages until that is known.
const allPages = "{pages}"

// New starts a document without a page. The error says that the letters cannot
// be read.
func New(s Setup) (*Flow, error) {
	letters, err := sfnt.Parse(goregular.TTF)
	if err != nil {
		return nil, fmt.Errorf("read the letters: %w", err)
	}
	size := "Letter"
	if s.Metric {
		size = "A4"
	}
	doc := fpdf.New("P", "pt", size, "")
	// The clock is no part of what is printed.
	fixed := time.Date(2000, time.January, 1, 0, 0, 0, 0, time.UTC)
	doc.SetCreationDate(fixed)
	doc.SetModificationDate(fixed)
	doc.SetCatalogSort(true)
	doc.SetProducer("plumbrule", true)
	doc.SetTitle(s.Title, true)
	doc.SetLang("en")
	doc.SetAutoPageBreak(false, 0)
	doc.SetMargins(s.Margin, s.Margin, s.Margin)
	doc.AddUTF8FontFromBytes(Family, "", goregular.TTF)
	doc.AddUTF8FontFromBytes(Family, "B", gobold.TTF)
	doc.AddUTF8FontFromBytes(Family, "I", goitalic.TTF)
	doc.AliasNbPages(allPages)
	f := &Flow{PDF: doc, setup: s, letters: letters}
	f.Whole, f.Bottom = s.extent(doc)
	f.Width = (f.Whole - float64(s.Columns-1)*s.Gutter) / float64(s.Columns)
	doc.SetFooterFunc(f.foot)
	return f, nil
}

// extent gives the room between the margins and the last line of a page.
func (s *Setup) extent(doc *fpdf.Fpdf) (width, bottom float64) {
	w, h := doc.GetPageSize()
	return w - 2*s.Margin, h - s.Margin - s.FootRoom
}

// foot prints the foot of a page, also on pages of another size.
func (f *Flow) foot() {
	w, h := f.PDF.GetPageSize()
	f.PDF.SetTextColor(0, 0, 0)
	f.Use(f.setup.FootStyle)
	number := fmt.Sprintf("page %d of %s", f.PDF.PageNo(), allPages)
	right := w - f.setup.Margin - f.PDF.GetStringWidth(fmt.Sprintf("page %d of 000", f.PDF.PageNo()))
	line := f.setup.Foot
	if lines := f.Wrap(line, f.setup.FootStyle, right-f.setup.Margin-f.setup.FootStyle.Size); len(lines) > 1 {
		line = lines[0] + " ..."
	}
	f.Text(f.setup.Margin, h-f.setup.FootLine, line)
	f.PDF.Text(right, h-f.setup.FootLine, number)
}

// Output writes the document. The error is the writer's or says what the pages
// could not take.
func (f *Flow) Output(to io.Writer) error {
	if err := f.PDF.Output(to); err != nil {
		return fmt.Errorf("write the PDF: %w", err)
	}
	return nil
}

// known puts a box in the place of letters that the fonts lack.
func (f *Flow) known(s string) string {
	return strings.Map(func(r rune) rune {
		if r == noBreak {
			return ' '
		}
		if i, err := f.letters.GlyphIndex(&f.buffer, r); err != nil || i == 0 {
			return '\u25a1'
		}
		return r
	}, s)
}
