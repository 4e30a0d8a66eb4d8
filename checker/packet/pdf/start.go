package pdf

import "plumbrule/checker/packet"

// The room round headings in points, and how far that of a section is set in.
const (
	aboveHead, belowHead, headIndent = 1.5, 7, 6
	abovePart, belowPart             = 6, 2
)

// A heading stays on one page with the beginning of what follows it. That must
// not be more than a page can hold.

// sectionStart is the room that the heading of a section takes with its notes and
// the beginning of its first part.
func (w *writer) sectionStart(s *packet.Section) float64 {
	lines := len(w.Wrap(s.Title, sectionStyle, w.Width-headIndent))
	height := float64(lines)*sectionStyle.Leading + aboveHead + belowHead + w.notesHeight(s.Notes)
	if len(s.Parts) > 0 {
		height += abovePart + w.partStart(&s.Parts[0])
	}
	return min(height, w.Bottom-w.Top)
}

// partStart is the room that a part takes as far as it is not parted.
func (w *writer) partStart(p *packet.Part) float64 {
	height := w.notesHeight(p.Notes)
	if p.Title != "" {
		height += w.Height([]string{p.Title}, partStyle) + belowPart
	}
	switch {
	case len(p.List) > 0:
		height += w.Height(p.List[:1], bodyStyle)
	case p.Table != nil:
		height += w.tableStart(w.grid(p.Table))
	case len(p.Items) > 0:
		height += 4 + w.itemHeight(&p.Items[0])
	case p.Drawing != nil:
		height += drawingStart()
	}
	return min(height, w.Bottom-w.Top)
}

// drawingStart is the room of the name of a drawing and the first of its words.
func drawingStart() float64 { return 3 * bodyStyle.Leading }

// tableStart is the room of a table's caption and headings with the rows that
// stay with them.
func (w *writer) tableStart(g *grid) float64 {
	return 2 + w.headHeight(g) + strongStyle.Leading + w.together(g)
}

func (w *writer) notesHeight(list []string) float64 {
	height := 0.0
	for _, words := range list {
		if words != "" {
			height += w.Height([]string{words}, bodyStyle) + 3
		}
	}
	return height
}
