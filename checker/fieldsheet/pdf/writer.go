package pdf

import (
	"fmt"
	"io"
	"time"

	"codeberg.org/go-pdf/fpdf"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goitalic"
	"golang.org/x/image/font/gofont/goregular"

	"plumbrule/checker/fieldsheet"
	"plumbrule/checker/measure"
)

// Write writes the sheet. The error is that of the underlying writer or says
// what the page could not take.
func Write(to io.Writer, sheet *fieldsheet.Sheet) error {
	f := newFlow(sheet)
	f.title(sheet)
	for i := range sheet.Sections {
		f.section(&sheet.Sections[i], sheet.System)
	}
	f.notShown(sheet.NotShown)
	f.cautions(sheet.Cautions)
	if err := f.pdf.Output(to); err != nil {
		return fmt.Errorf("write the field sheet as PDF: %w", err)
	}
	return nil
}

// family is the name under which the fonts are known in the document. The Go
// fonts (Bigelow & Holmes) have Latin, Greek and Cyrillic; only the glyphs that
// are used go into the file.
const family = "go"

// newDocument prepares pages in points. Dates are fixed, for the same sheet is to
// have the same bytes.
func newDocument(sheet *fieldsheet.Sheet) *fpdf.Fpdf {
	size := "Letter"
	if sheet.System == measure.Metric {
		size = "A4"
	}
	doc := fpdf.New("P", "pt", size, "")
	fixed := time.Date(2000, time.January, 1, 0, 0, 0, 0, time.UTC)
	doc.SetCreationDate(fixed)
	doc.SetModificationDate(fixed)
	doc.SetCatalogSort(true)
	doc.SetProducer("plumbrule", true)
	doc.SetTitle(heading(sheet), true)
	doc.SetLang("en")
	doc.SetAutoPageBreak(false, 0)
	doc.SetMargins(margin, margin, margin)
	doc.AddUTF8FontFromBytes(family, "", goregular.TTF)
	doc.AddUTF8FontFromBytes(family, "B", gobold.TTF)
	doc.AddUTF8FontFromBytes(family, "I", goitalic.TTF)
	return doc
}

func heading(sheet *fieldsheet.Sheet) string {
	if sheet.Title == "" {
		return "Field sheet"
	}
	return "Field sheet: " + sheet.Title
}

func (f *flow) title(sheet *fieldsheet.Sheet) {
	from := "from " + sheet.File
	if sheet.Revision != "" {
		from = "Revision " + sheet.Revision + ", " + from
	}
	f.wide(heading(sheet), titleFont)
	f.wide(from, headFont)
	for _, line := range sheet.Basis {
		f.wide(line, noteFont)
	}
	f.columns()
}

func (f *flow) section(s *fieldsheet.Section, sys measure.System) {
	// A heading stays with its notes and the first rows below it.
	f.need(f.heightOf(s.Notes, noteFont) + 6*rowFont.leading)
	f.heading(s.Title)
	for _, n := range s.Notes {
		f.paragraph(n, noteFont)
	}
	for i := range s.Tables {
		f.table(&s.Tables[i], sys)
	}
}

func (f *flow) notShown(list []fieldsheet.Missing) {
	if len(list) == 0 {
		return
	}
	f.need(5 * rowFont.leading)
	f.heading("Not shown")
	f.paragraph("These are missing above because the design does not say enough. Behind each stands the field that would give it.", noteFont)
	for _, m := range list {
		f.item(m.What + ": " + m.Needs)
	}
}

func (f *flow) cautions(list []string) {
	f.need(3 * rowFont.leading)
	f.heading("Before relying on this sheet")
	for _, line := range list {
		f.item(line)
	}
}
