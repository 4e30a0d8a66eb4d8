package html

import (
	"bytes"
	_ "embed"
	"fmt"
	"html/template"
	"io"
	"strings"

	"plumbrule/checker/fieldsheet"
	"plumbrule/checker/measure"
)

//go:embed sheet.tmpl
var layout string

//go:embed sheet.css
var style string

// Write writes the sheet as a page. The error is that of the underlying writer.
func Write(to io.Writer, sheet *fieldsheet.Sheet) error {
	t, err := template.New("sheet").Parse(layout)
	if err != nil {
		return fmt.Errorf("read the page's template: %w", err)
	}
	var page bytes.Buffer
	if err := t.Execute(&page, view(sheet)); err != nil {
		return fmt.Errorf("lay out the field sheet: %w", err)
	}
	if _, err := page.WriteTo(to); err != nil {
		return fmt.Errorf("write the field sheet: %w", err)
	}
	return nil
}

// page is what the template prints.
type page struct {
	*fieldsheet.Sheet
	Metric   bool // millimetres stand first
	Style    template.CSS
	Sections []section
}

type section struct {
	ID, Title string
	Notes     []string
	Tables    []table
}

type table struct {
	Title string
	Heads []head
	// Headed is false where no column says more than its rows do.
	Headed bool
	Rows   []row
	Notes  []string
}

// head is a column; Parts are the spellings below it.
type head struct {
	Text  string
	Parts []string
	Right bool
}

type row struct {
	Head  string
	Cells []cell
}

// cell is a value in one or several spellings.
type cell struct {
	Parts []string
	Right bool
	Muted bool // not shown
	Alone bool // one text where others of its column stand in several spellings
}

func view(sheet *fieldsheet.Sheet) page {
	p := page{Sheet: sheet, Metric: sheet.System == measure.Metric, Style: template.CSS(style + paper(sheet.System))}
	for i := range sheet.Sections {
		s := &sheet.Sections[i]
		out := section{ID: fmt.Sprintf("s%d", i+1), Title: s.Title, Notes: s.Notes}
		for k := range s.Tables {
			out.Tables = append(out.Tables, tableView(&s.Tables[k], sheet.System))
		}
		p.Sections = append(p.Sections, out)
	}
	return p
}

// paper is the size that printers have where the design's units are used.
func paper(sys measure.System) string {
	size := "letter"
	if sys == measure.Metric {
		size = "A4"
	}
	return "@page { size: " + size + "; margin: 7.5mm; }\n"
}

// tableView gathers the parts of a grid under their columns again, so that a
// narrow screen can stack them.
func tableView(t *fieldsheet.Table, sys measure.System) table {
	g := t.Grid(sys)
	out := table{Title: t.Title, Notes: t.Notes}
	at := 0
	for _, h := range g.Heads {
		column := head{Text: h.Text, Right: g.Right[at]}
		if h.Span > 1 {
			column.Parts = g.Parts[at : at+h.Span]
		}
		out.Headed = out.Headed || h.Text != "" || h.Span > 1
		out.Heads = append(out.Heads, column)
		at += h.Span
	}
	for _, fields := range g.Rows {
		out.Rows = append(out.Rows, rowView(fields, &g))
	}
	return out
}

func rowView(fields []fieldsheet.Field, g *fieldsheet.Grid) row {
	var cells []cell
	next, part := 0, 0
	for _, h := range g.Heads {
		c := cell{Right: g.Right[part]}
		for covered := 0; covered < h.Span; next++ {
			f := fields[next]
			c.Parts = append(c.Parts, f.Text)
			c.Muted = c.Muted || f.Kind == fieldsheet.Unknown
			covered += f.Span
		}
		c.Alone = h.Span > 1 && len(c.Parts) == 1
		cells = append(cells, c)
		part += h.Span
	}
	return row{Head: strings.Join(cells[0].Parts, " "), Cells: cells[1:]}
}
