package paper

import "strconv"

// Form tells markers apart by shape, not by color.
type Form uint8

// The forms of a marker.
const (
	Full   Form = iota // white number on black
	Hollow             // number in a dashed box
	Twice              // number in a box with a double line
)

// Tag is one number of a marker.
type Tag struct {
	N    int
	Form Form
}

// Sizes of tags, in points.
const (
	TagHeight = 11.0
	tagLetter = 7.5
	tagSide   = 3.0 // beside the number
	tagGap    = 2.0
	tagsInRow = 4
	spotSize  = 1.8
)

// Marker is a block of numbers with a line to the spot that they concern. At is
// the upper left corner of the block.
type Marker struct {
	Spot, At Point
	Tags     []Tag
	// Bare leaves the line to the spot out, as in a list.
	Bare bool
}

// TagWidth is the width of the box round a number.
func (f *Fonts) TagWidth(n int) float64 {
	return max(f.Width(strconv.Itoa(n), tagLetter, true)+2*tagSide, TagHeight)
}

// MarkerSize is the room that a block of numbers takes.
func (f *Fonts) MarkerSize(tags []Tag) (width, height float64) {
	cell := f.cell(tags)
	columns := min(len(tags), tagsInRow)
	rows := (len(tags) + tagsInRow - 1) / tagsInRow
	return float64(columns)*(cell+tagGap) - tagGap, float64(rows)*(TagHeight+tagGap) - tagGap
}

// cell is the width of the widest number, so that blocks line up.
func (f *Fonts) cell(tags []Tag) float64 {
	cell := 0.0
	for _, t := range tags {
		cell = max(cell, f.TagWidth(t.N))
	}
	return cell
}

// Marker builds the items of a marker.
func (f *Fonts) Marker(m Marker) Group {
	g := Group{Kind: "marker"}
	width, height := f.MarkerSize(m.Tags)
	if !m.Bare {
		g.Items = append(g.Items, Line(m.Spot, nearest(m.Spot, m.At, width, height), Thin), Circle(m.Spot, spotSize, Fine, Solid))
	}
	cell := f.cell(m.Tags)
	for i, tag := range m.Tags {
		x := m.At.X + float64(i%tagsInRow)*(cell+tagGap)
		y := m.At.Y + float64(i/tagsInRow)*(TagHeight+tagGap)
		g.Items = append(g.Items, f.tag(tag, Point{x, y}, cell)...)
	}
	return g
}

// nearest is the point of the block where the line from the spot arrives.
func nearest(spot, at Point, width, height float64) Point {
	return Point{
		X: min(max(spot.X, at.X), at.X+width),
		Y: min(max(spot.Y, at.Y), at.Y+height),
	}
}

func (f *Fonts) tag(tag Tag, at Point, width float64) []Item {
	box := func(in float64, stroke Stroke, fill Fill) Path {
		return Rectangle(at.Plus(in, in), at.Plus(width-in, TagHeight-in), stroke, fill)
	}
	number := f.Text(strconv.Itoa(tag.N), tagLetter)
	number.Bold, number.Align = true, Middle
	number.Width = f.Width(number.Words, tagLetter, true)
	number.At = at.Plus(width/2, TagHeight/2+0.36*tagLetter)
	switch tag.Form {
	case Hollow:
		return []Item{box(0, NoStroke, White), box(0, Hidden, NoFill), number}
	case Twice:
		return []Item{box(0, Thin, White), box(1.5, Thin, NoFill), number}
	}
	number.Ink = Reverse
	return []Item{box(0, Edge, Solid), number}
}
