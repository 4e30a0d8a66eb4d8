package html

import (
	"bytes"
	_ "embed"
	"fmt"
	"html/template"
	"io"
	"strings"
	"unicode/utf8"

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
	Width string // the class that says how narrow it can become
}

type item struct {
	packet.Item
	Kind string // the class of its outcome
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
		out.Table = &table{p.Table, width(p.Table)}
	}
	for i := range p.Items {
		out.Items = append(out.Items, item{p.Items[i], strings.ReplaceAll(string(p.Items[i].Outcome), " ", "-")})
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

// width is the class of a table by its number of columns.
func width(t *packet.Table) string {
	switch n := len(t.Columns); {
	case n > 5:
		return "wide"
	case n > 3:
		return "mid"
	}
	return ""
}

// broken says where a long word may be broken: behind the joints of the path of
// a field or the id of a check, and nowhere else.
func broken(s string) template.HTML {
	const long = 14
	words := strings.Split(s, " ")
	for i, word := range words {
		joints := ""
		if utf8.RuneCountInString(word) > long {
			joints = "./_-]"
		}
		var b strings.Builder
		for _, r := range word {
			b.WriteString(template.HTMLEscapeString(string(r)))
			if strings.ContainsRune(joints, r) {
				b.WriteString("<wbr>")
			}
		}
		words[i] = strings.TrimSuffix(b.String(), "<wbr>")
	}
	return template.HTML(strings.Join(words, " "))
}
