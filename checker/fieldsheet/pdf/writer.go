package pdf

import (
	"fmt"
	"io"

	"plumbrule/checker/fieldsheet"
	"plumbrule/checker/measure"
)

// Write writes the sheet. The error is that of the underlying writer or says
// what the page could not take.
func Write(to io.Writer, sheet *fieldsheet.Sheet) error {
	f, err := newFlow(sheet)
	if err != nil {
		return err
	}
	f.title(sheet)
	for i := range sheet.Sections {
		f.section(&sheet.Sections[i], sheet.System)
	}
	f.notShown(sheet.NotShown)
	f.cautions(sheet.Cautions)
	if err := f.Output(to); err != nil {
		return fmt.Errorf("write the field sheet: %w", err)
	}
	return nil
}

func heading(sheet *fieldsheet.Sheet) string {
	if sheet.Title == "" {
		return "Field sheet"
	}
	return "Field sheet: " + sheet.Title
}

func (f flow) title(sheet *fieldsheet.Sheet) {
	from := "from " + sheet.File
	if sheet.Revision != "" {
		from = "Revision " + sheet.Revision + ", " + from
	}
	f.Wide(heading(sheet), titleFont)
	f.Wide(from, headFont)
	for _, line := range sheet.Basis {
		f.Wide(line, noteFont)
	}
	f.columns()
}

func (f flow) section(s *fieldsheet.Section, sys measure.System) {
	// A heading stays with its notes and the first rows below it.
	f.Need(f.Height(s.Notes, noteFont) + 6*rowFont.Leading)
	f.heading(s.Title)
	for _, n := range s.Notes {
		f.Paragraph(n, noteFont)
	}
	for i := range s.Tables {
		f.table(&s.Tables[i], sys)
	}
}

func (f flow) notShown(list []fieldsheet.Missing) {
	if len(list) == 0 {
		return
	}
	f.Need(5 * rowFont.Leading)
	f.heading("Not shown")
	f.Paragraph("These are missing above because the design does not say enough. Behind each stands the field that would give it.", noteFont)
	for _, m := range list {
		f.item(m.What + ": " + m.Needs)
	}
}

func (f flow) cautions(list []string) {
	f.Need(3 * rowFont.Leading)
	f.heading("Before relying on this sheet")
	for _, line := range list {
		f.item(line)
	}
}
