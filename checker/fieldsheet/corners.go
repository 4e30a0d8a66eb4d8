package fieldsheet

import (
	"math"
	"slices"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
)

// corners lists the saw setting at every corner: for boards of one width, and
// for the border where its front board has a width of its own.
func (p *platform) corners() {
	t := Table{Columns: []Column{{"Corner", Words}, {"Kind", Words}, {"Inside angle", Angle}, {"Saw, first board", Angle}, {"Saw, second board", Angle}}}
	ring := p.plan.Outline
	angles := ring.InteriorAngles()
	for i, interior := range angles {
		first, second := p.edgeBefore(i), p.plan.Edges[i].Name
		a, b := p.border(first), p.border(second)
		if a == 0 || b == 0 {
			a, b = measure.Inch, measure.Inch // any width, so long as both are alike
		}
		sawA, sawB, err := geometry.UnequalMiter(a, b, interior)
		if err != nil {
			continue
		}
		kind := "outside"
		if interior > 180 {
			kind = "inside"
		}
		t.row(text(first+" / "+second), text(kind), angle(degrees(interior)), angle(degrees(sawA)), angle(degrees(sawB)))
	}
	t.alike()
	t.Notes = append(t.Notes, "Off a square cut, first board first. Boards of one width (fascia, border) share the corner evenly.")
	if front := p.border("front"); front != 0 && front != p.border("") {
		t.Notes = append(t.Notes, "The border is "+front.Text(p.sys)+" wide at the front and "+p.border("").Text(p.sys)+" elsewhere: its corners there are not cut alike.")
	}
	s := Section{Title: "Corner cuts" + p.of}
	s.add(t)
	p.section(s)
}

// alike puts corners that are all cut the same into one row.
func (t *Table) alike() {
	for _, row := range t.Rows {
		if !slices.Equal(row[1:], t.Rows[0][1:]) {
			return
		}
	}
	if len(t.Rows) > 0 {
		t.Rows = t.Rows[:1]
		t.Rows[0][0] = text("every corner")
	}
}

func (p *platform) edgeBefore(corner int) string {
	n := len(p.plan.Edges)
	return p.plan.Edges[(corner+n-1)%n].Name
}

// border is the width of the border along an edge, all its boards and the gaps
// between them; 0 where none is drawn or its width is not shown.
func (p *platform) border(edge string) measure.Length {
	d := p.m.Decking
	if d == nil || d.PictureFrame == nil {
		return 0
	}
	frame := d.PictureFrame
	if edge == "front" && frame.FrontBoardWidth != nil {
		return frame.FrontBoardWidth.V
	}
	width := frame.BoardWidth
	if width == nil {
		width = d.BoardWidth
	}
	if width == nil {
		return 0
	}
	if frame.Boards == nil || frame.Boards.V <= 1 || d.Gap == nil {
		return width.V
	}
	return width.V*measure.Length(frame.Boards.V) + d.Gap.V*measure.Length(frame.Boards.V-1)
}

// degrees rounds an angle in degrees to micro-degrees.
func degrees(a float64) measure.Angle { return measure.Angle(math.Round(a * float64(measure.Degree))) }
