package pdf

import (
	"fmt"

	"plumbrule/checker/packet"
	"plumbrule/checker/pdfpages"
	"plumbrule/checker/result"
)

// Measures of a finding in points.
const (
	numberWidth = 25
	termWidth   = 84
	indent      = numberWidth + 8
)

// item writes one finding, on one page where a page can hold it.
func (w *writer) item(item *packet.Item) {
	w.Y += 4
	height := w.itemHeight(item)
	if height < w.Bottom-w.Top {
		w.Need(height)
	}
	w.PDF.SetLink(w.items[item.Number], w.Y, -1)
	w.Rule(w.Left, w.Width, w.Y, 0.6)
	w.Y += pad
	w.number(item)
	for _, line := range w.Wrap(item.Head, strongStyle, w.Width-indent) {
		w.line(indent, strongStyle, line)
	}
	w.line(indent, smallStyle, about(item))
	w.Y++
	for k, l := range item.Lines {
		lines := w.Wrap(l.Text, rowStyle, w.Width-indent-termWidth)
		for i, line := range lines {
			w.Need(rowStyle.Leading)
			if i == 0 && (k == 0 || item.Lines[k-1].Term != l.Term) {
				w.Line(w.Left+indent, 0, headStyle, l.Term)
			}
			w.line(indent+termWidth, rowStyle, line)
		}
		w.Y++
	}
	w.Y += pad
}

// line writes one line, on the next page where there is no room.
func (w *writer) line(from float64, style pdfpages.Style, words string) {
	w.Need(style.Leading)
	w.Line(w.Left+from, 0, style, words)
	w.Y += style.Leading
}

func (w *writer) itemHeight(item *packet.Item) float64 {
	height := 2*pad + 1 + smallStyle.Leading
	height += float64(len(w.Wrap(item.Head, strongStyle, w.Width-indent))) * strongStyle.Leading
	for _, l := range item.Lines {
		height += float64(len(w.Wrap(l.Text, rowStyle, w.Width-indent-termWidth)))*rowStyle.Leading + 1
	}
	return height
}

// about is what is said of a finding below its headline.
func about(item *packet.Item) string {
	words := string(item.Outcome) + "; " + string(item.Class)
	if item.ID != "" {
		words += "; id " + item.ID
	}
	return words
}

// number sets the number of a finding in the shape that it has on drawings.
func (w *writer) number(item *packet.Item) {
	const high = 13
	doc, y := w.PDF, w.Y+0.5
	doc.SetDrawColor(0, 0, 0)
	doc.SetFillColor(0, 0, 0)
	doc.SetLineWidth(0.8)
	switch item.Outcome {
	case result.Outside:
		doc.Rect(w.Left, y, numberWidth, high, "FD")
		doc.SetTextColor(255, 255, 255)
	case result.Excused:
		doc.Rect(w.Left, y, numberWidth, high, "D")
		doc.Rect(w.Left+1.8, y+1.8, numberWidth-3.6, high-3.6, "D")
	case result.NotShown, result.CouldNotRun, result.Within, result.DoesNotApply:
		doc.SetDashPattern([]float64{3, 1.5}, 0)
		doc.Rect(w.Left, y, numberWidth, high, "D")
		doc.SetDashPattern(nil, 0)
	}
	words := fmt.Sprint(item.Number)
	w.Use(strongStyle)
	w.Text(w.Left+(numberWidth-w.Measure(words))/2, y+9.6, words)
	doc.SetTextColor(0, 0, 0)
}
