package pdf

import (
	"fmt"
	"io"

	"plumbrule/checker/draw/paper"
	drawings "plumbrule/checker/draw/pdf"
	"plumbrule/checker/measure"
	"plumbrule/checker/packet"
	"plumbrule/checker/pdfpages"
)

// Write writes the packet. The error is that of the underlying writer or says
// what the pages could not take.
func Write(to io.Writer, p *packet.Packet) error {
	// The list of contents stands in front and names pages that come later. It
	// takes the same room whatever the numbers are, so the second time they hold.
	first, err := lay(p, map[string]int{})
	if err != nil {
		return err
	}
	second, err := lay(p, first.found)
	if err != nil {
		return err
	}
	if err := second.Output(to); err != nil {
		return fmt.Errorf("write the packet: %w", err)
	}
	return nil
}

// writer is the pages of one packet.
type writer struct {
	*pdfpages.Flow
	fonts *paper.Fonts
	// starts are the pages on which sections start, as far as known before;
	// found are those that came out.
	starts, found map[string]int
	links         map[string]int // of sections
	items         map[int]int    // links of findings
}

// lay lays the whole packet out.
func lay(p *packet.Packet, starts map[string]int) (*writer, error) {
	foot := p.Title
	if p.Revision != "" {
		foot += ", revision " + p.Revision
	}
	flow, err := pdfpages.New(pdfpages.Setup{
		Title: "Review packet: " + p.Title, Foot: foot, Metric: p.System == measure.Metric,
		Margin: margin, FootRoom: footRoom, FootLine: footLine, Columns: 1, FootStyle: footStyle,
	})
	if err != nil {
		return nil, err
	}
	fonts, err := paper.OpenFonts()
	if err != nil {
		return nil, err
	}
	drawings.Prepare(flow.PDF)
	w := &writer{Flow: flow, fonts: fonts, starts: starts, found: map[string]int{}, links: map[string]int{}, items: map[int]int{}}
	w.reserve(p)
	w.Page()
	w.front(p)
	for i := range p.Sections {
		w.section(&p.Sections[i])
	}
	return w, nil
}

// reserve makes a link for every section and finding, in their order.
func (w *writer) reserve(p *packet.Packet) {
	for i := range p.Sections {
		s := &p.Sections[i]
		w.links[s.ID] = w.PDF.AddLink()
		for k := range s.Parts {
			for _, item := range s.Parts[k].Items {
				w.items[item.Number] = w.PDF.AddLink()
			}
			if t := s.Parts[k].Table; t != nil {
				for _, row := range t.Rows {
					if row.Item > 0 {
						w.items[row.Item] = w.PDF.AddLink()
					}
				}
			}
		}
	}
}

func (w *writer) section(s *packet.Section) {
	w.Y += 14
	w.Need(w.sectionStart(s))
	w.found[s.ID] = w.PDF.PageNo()
	w.PDF.SetLink(w.links[s.ID], w.Y, -1)
	w.Bookmark(s.Title, 0)
	w.PDF.SetFillColor(tint, tint, tint)
	w.PDF.Rect(w.Left, w.Y, w.Width, sectionStyle.Leading+4, "F")
	w.Y += aboveHead
	w.Indented(headIndent, s.Title, sectionStyle)
	w.Y += belowHead
	w.paragraphs(s.Notes)
	for i := range s.Parts {
		w.part(&s.Parts[i])
	}
	w.sheets(s)
}

func (w *writer) paragraphs(list []string) {
	for _, words := range list {
		if words != "" {
			w.Paragraph(words, bodyStyle)
			w.Y += 3
		}
	}
}

func (w *writer) part(p *packet.Part) {
	if p.Title != "" {
		w.Y += abovePart
		w.Need(w.partStart(p))
		w.Bookmark(p.Title, 1)
		w.Paragraph(p.Title, partStyle)
		w.Y += belowPart
	}
	w.paragraphs(p.Notes)
	for _, words := range p.List {
		w.Item(words, bodyStyle, 10)
		w.Y += 1.5
	}
	if p.Table != nil {
		w.table(p.Table, p.Title != "")
	}
	for i := range p.Items {
		w.item(&p.Items[i])
	}
	if d := p.Drawing; d != nil {
		w.listed(d)
	}
}

// listed names a drawing in front of the pages of drawings, and says in words
// what is on it.
func (w *writer) listed(d *packet.Drawing) {
	head := d.Title
	if d.Scale != "" {
		head += ", " + d.Scale
	}
	w.Need(drawingStart())
	w.Paragraph(head, strongStyle)
	w.Indented(10, d.Alt, smallStyle)
	w.Y += 3
}

// sheets adds the pages of the drawings of a section.
func (w *writer) sheets(s *packet.Section) {
	drawn := false
	for i := range s.Parts {
		if d := s.Parts[i].Drawing; d != nil {
			drawings.AddSheet(w.PDF, w.fonts, d.Sheet, 1)
			drawn = true
		}
	}
	if drawn {
		w.Page()
	}
}
