package html

import (
	"bytes"
	_ "embed"
	"fmt"
	"html/template"
	"io"
	"strings"

	"plumbrule/checker/draw/svg"
	"plumbrule/checker/packet"
)

//go:embed packet.tmpl
var layout string

//go:embed packet.css
var style string

// Write writes the packet as a page. The error is that of the underlying writer,
// or says what of it cannot be laid out.
func Write(to io.Writer, p *packet.Packet) error {
	t, err := template.New("packet").Funcs(template.FuncMap{"broken": broken}).Parse(layout)
	if err != nil {
		return fmt.Errorf("read the page's template: %w", err)
	}
	view, err := viewOf(p)
	if err != nil {
		return err
	}
	var out bytes.Buffer
	if err := t.Execute(&out, view); err != nil {
		return fmt.Errorf("lay out the packet: %w", err)
	}
	if _, err := out.WriteTo(to); err != nil {
		return fmt.Errorf("write the packet: %w", err)
	}
	return nil
}

// page is what the template prints. Where a name is that of a field of the
// packet, it stands in its place.
type page struct {
	*packet.Packet
	Style    template.CSS
	Sections []section
}

type section struct {
	ID, Title string
	Notes     []string
	Parts     []part
}

type part struct {
	packet.Part
	Table   *table
	Items   []item
	Drawing *drawing
}

type table struct {
	*packet.Table
	Kind string // its classes
	Hint string // where a narrow screen cuts it off; "" for one that always fits
}

type item struct {
	packet.Item
	Kind  string // the class of its outcome
	Terms []term
}

// term is what there is to say on one thing, several times maybe.
type term struct {
	Term  string
	Texts []string
}

type drawing struct {
	*packet.Drawing
	SVG template.HTML
}

func viewOf(p *packet.Packet) (page, error) {
	view := page{Packet: p, Style: template.CSS(style + paper(p))}
	for i := range p.Sections {
		s := &p.Sections[i]
		out := section{ID: s.ID, Title: s.Title, Notes: s.Notes}
		for k := range s.Parts {
			one, err := partOf(&s.Parts[k])
			if err != nil {
				return page{}, err
			}
			out.Parts = append(out.Parts, one)
		}
		view.Sections = append(view.Sections, out)
	}
	return view, nil
}

func partOf(p *packet.Part) (part, error) {
	out := part{Part: *p}
	if p.Table != nil {
		out.Table = &table{p.Table, tableKind(p), hint(p.Table)}
	}
	for i := range p.Items {
		out.Items = append(out.Items, itemOf(&p.Items[i]))
	}
	if p.Drawing != nil {
		// The description inside the picture is the long one of the packet.
		sheet := *p.Drawing.Sheet
		sheet.About = p.Drawing.Alt
		var picture bytes.Buffer
		if err := svg.Write(&picture, &sheet); err != nil {
			return part{}, err
		}
		out.Drawing = &drawing{p.Drawing, template.HTML(picture.String())}
	}
	return out, nil
}

// The most columns of a table that becomes as narrow as the screen, and of one
// that needs no wide one.
const (
	mostNarrow = 3
	mostMid    = 5
)

// hint names the columns that wait beyond the edge of a narrow screen.
func hint(t *packet.Table) string {
	if len(t.Columns) <= mostNarrow {
		return ""
	}
	var heads []string
	for _, c := range t.Columns[1:] {
		heads = append(heads, strings.ToLower(c.Head))
	}
	return "Scroll sideways for " + strings.Join(heads, ", ") + "."
}

// tableKind is the classes of a table: how narrow it can become, whether it fits
// on a page, and whether a heading above says what its caption does.
func tableKind(p *packet.Part) string {
	const few = 12
	kind := ""
	switch n := len(p.Table.Columns); {
	case n > mostMid:
		kind = " wide"
	case n > mostNarrow:
		kind = " mid"
	}
	if len(p.Table.Rows) <= few {
		kind += " short"
	}
	if p.Title != "" {
		kind += " headed"
	}
	return kind
}

func itemOf(i *packet.Item) item {
	out := item{Item: *i, Kind: strings.ReplaceAll(string(i.Outcome), " ", "-")}
	for _, l := range i.Lines {
		last := len(out.Terms) - 1
		if last < 0 || out.Terms[last].Term != l.Term {
			out.Terms = append(out.Terms, term{Term: l.Term})
			last++
		}
		out.Terms[last].Texts = append(out.Terms[last].Texts, l.Text)
	}
	return out
}
