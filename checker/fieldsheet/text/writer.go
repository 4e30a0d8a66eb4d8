package text

import (
	"fmt"
	"io"
	"strings"

	"plumbrule/checker/fieldsheet"
)

// width is the number of columns that everything fits into. It is fixed, so that
// a sheet is the same wherever it is printed.
const width = 80

// Write writes the sheet. The error is that of the underlying writer.
func Write(to io.Writer, sheet *fieldsheet.Sheet) error {
	p := printer{cells: newCells()}
	p.head(sheet)
	for i := range sheet.Sections {
		s := &sheet.Sections[i]
		p.heading(s.Title)
		p.notes(s.Notes)
		for k := range s.Tables {
			p.table(&s.Tables[k], sheet)
		}
	}
	p.notShown(sheet.NotShown)
	p.heading("Before relying on this sheet")
	for _, line := range sheet.Cautions {
		p.item(line)
	}
	if _, err := io.WriteString(to, p.b.String()); err != nil {
		return fmt.Errorf("write the field sheet: %w", err)
	}
	return nil
}

// printer gathers lines.
type printer struct {
	cells cells
	b     strings.Builder
}

func (p *printer) line(s string) {
	p.b.WriteString(strings.TrimRight(s, " "))
	p.b.WriteByte('\n')
}

func (p *printer) head(sheet *fieldsheet.Sheet) {
	title := "Field sheet"
	if sheet.Title != "" {
		title += ": " + sheet.Title
	}
	p.wrapped(title, "")
	about := sheet.File
	if sheet.Revision != "" {
		about = "Revision " + sheet.Revision + ", from " + about
	}
	p.wrapped(about, "")
	p.notes(sheet.Basis)
}

func (p *printer) heading(title string) {
	p.line("")
	p.wrapped(title, "")
	p.line(strings.Repeat("=", min(width, p.cells.StringWidth(title))))
}

// notes prints remarks, each a paragraph.
func (p *printer) notes(notes []string) {
	for _, n := range notes {
		p.wrapped(n, "")
	}
}

func (p *printer) item(s string) {
	for i, line := range p.cells.wrap(s, width-2) {
		lead := "  "
		if i == 0 {
			lead = "- "
		}
		p.line(lead + line)
	}
}

func (p *printer) wrapped(s, indent string) {
	for _, line := range p.cells.wrap(s, width-len(indent)) {
		p.line(indent + line)
	}
}

func (p *printer) notShown(list []fieldsheet.Missing) {
	if len(list) == 0 {
		return
	}
	p.heading("Not shown")
	p.wrapped("These are missing above because the design does not say enough. The words behind the arrow are the field that would give them.", "")
	for _, m := range list {
		p.item(m.What + " -> " + m.Needs)
	}
}
