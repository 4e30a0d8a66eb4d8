package pdf

import (
	"fmt"

	"plumbrule/checker/packet"
)

// front is the first page: title block, stamp and list of contents.
func (w *writer) front(p *packet.Packet) {
	w.Paragraph("REVIEW PACKET", kindStyle)
	w.Paragraph(p.Title, titleStyle)
	w.Y += 4
	w.block(p.Block)
	w.Y += 10
	w.stamp("Disposition: " + p.Disposition)
	w.Y += 8
	w.Paragraph("Contents", partStyle)
	for i := range p.Sections {
		w.entry(&p.Sections[i])
	}
}

// block is the title block, boxes in rows of at most three.
func (w *writer) block(lines []packet.Line) {
	const across = 3
	for len(lines) > 0 {
		row := lines[:min(across, len(lines))]
		width := w.Width / float64(len(row))
		lines = lines[len(row):]
		height := 0.0
		for _, l := range row {
			n := len(w.Wrap(l.Text, strongStyle, width-2*pad))
			height = max(height, smallStyle.Leading+float64(n)*strongStyle.Leading+2*pad)
		}
		w.Need(height)
		for i, l := range row {
			x := w.Left + float64(i)*width
			w.box(x, width, height)
			top := w.Y
			w.Y += pad
			w.Line(x+pad, 0, smallStyle, l.Term)
			w.Y += smallStyle.Leading
			for k, line := range w.Wrap(l.Text, strongStyle, width-2*pad) {
				w.Line(x+pad, k, strongStyle, line)
			}
			w.Y = top
		}
		w.Y += height
	}
}

// box draws the border of a box whose upper edge is at Y.
func (w *writer) box(x, width, height float64) {
	w.PDF.SetDrawColor(0, 0, 0)
	w.PDF.SetLineWidth(0.8)
	w.PDF.Rect(x, w.Y, width, height, "D")
}

// stamp is the disposition in a box with a double line.
func (w *writer) stamp(words string) {
	lines := w.Wrap(words, stampStyle, w.Width-24)
	w.Use(stampStyle)
	width := 0.0
	for _, line := range lines {
		width = max(width, w.Measure(line))
	}
	height := float64(len(lines))*stampStyle.Leading + 10
	w.Need(height)
	w.box(w.Left, width+24, height)
	w.PDF.Rect(w.Left+2.2, w.Y+2.2, width+24-4.4, height-4.4, "D")
	w.Y += 4
	for i, line := range lines {
		w.Line(w.Left+12, i, stampStyle, line)
	}
	w.Y += height - 4
}

// entry is a line of the list of contents.
func (w *writer) entry(s *packet.Section) {
	w.Need(bodyStyle.Leading)
	w.PDF.Link(w.Left, w.Y, w.Width, bodyStyle.Leading, w.links[s.ID])
	w.Line(w.Left, 0, bodyStyle, s.Title)
	number := ""
	if n := w.starts[s.ID]; n > 0 {
		number = fmt.Sprint(n)
	}
	w.Line(w.Left+w.Width-w.Measure(number), 0, bodyStyle, number)
	from, to := w.Left+w.Measure(s.Title)+6, w.Left+w.Width-24
	if from < to {
		w.Rule(from, to-from, w.Y+bodyStyle.Leading*0.75, 0.3)
	}
	w.Y += bodyStyle.Leading + 1
}
