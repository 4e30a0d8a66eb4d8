package paper

import "math"

// Box is a rectangle in any direction, by its corners in order.
type Box struct{ Corners [4]Point }

// How far letters reach above and below their base line, in parts of their size.
const (
	ascent  = 0.78
	descent = 0.24
)

// Box is the room that the words take.
func (t Text) Box() Box {
	from := 0.0
	switch t.Align {
	case Middle:
		from = -t.Width / 2
	case Right:
		from = -t.Width
	}
	sin, cos := math.Sincos(t.Turn * math.Pi / 180)
	place := func(along, up float64) Point {
		return t.At.Plus(along*cos-up*sin, -along*sin-up*cos)
	}
	const side = 0.6 // of a point, so that neighbors do not touch
	low, high := -descent*t.Size, ascent*t.Size
	return Box{[4]Point{
		place(from-side, low), place(from+t.Width+side, low), place(from+t.Width+side, high), place(from-side, high),
	}}
}

// Upright is the box between two opposite corners.
func Upright(a, b Point) Box { return Box{[4]Point{a, {b.X, a.Y}, b, {a.X, b.Y}}} }

// Grown is the box with a margin all round.
func (b Box) Grown(margin float64) Box {
	ux, uy := direction(b.Corners[0], b.Corners[1])
	vx, vy := direction(b.Corners[1], b.Corners[2])
	for i, s := range [4][2]float64{{-1, -1}, {1, -1}, {1, 1}, {-1, 1}} {
		b.Corners[i] = b.Corners[i].Plus(margin*(s[0]*ux+s[1]*vx), margin*(s[0]*uy+s[1]*vy))
	}
	return b
}

// Moved is the box shifted by dx and dy.
func (b Box) Moved(dx, dy float64) Box {
	for i := range b.Corners {
		b.Corners[i] = b.Corners[i].Plus(dx, dy)
	}
	return b
}

// Meets reports whether two boxes overlap. Boxes that only touch do not.
func (b Box) Meets(o Box) bool {
	return !b.apart(o) && !o.apart(b)
}

// apart reports whether a line along one of the sides of b parts the boxes.
func (b Box) apart(o Box) bool {
	for i := range 2 {
		ux, uy := direction(b.Corners[i], b.Corners[i+1])
		min1, max1 := span(b.Corners[:], ux, uy)
		min2, max2 := span(o.Corners[:], ux, uy)
		const touch = 1e-6
		if max1 <= min2+touch || max2 <= min1+touch {
			return true
		}
	}
	return false
}

// Crosses reports whether the line from a to b runs through the box.
func (b Box) Crosses(from, to Point) bool {
	line := Box{[4]Point{from, to, to, from}}
	if b.apart(line) {
		return false
	}
	ux, uy := direction(from, to)
	min1, max1 := span(b.Corners[:], -uy, ux)
	at := -uy*from.X + ux*from.Y
	return min1 < at && at < max1
}

// span is how far points reach in a direction.
func span(points []Point, ux, uy float64) (low, high float64) {
	low, high = math.Inf(1), math.Inf(-1)
	for _, p := range points {
		v := p.X*ux + p.Y*uy
		low, high = min(low, v), max(high, v)
	}
	return low, high
}

// Extent is the smallest upright rectangle round what is drawn.
type Extent struct{ Min, Max Point }

// NoExtent is the extent of nothing.
func NoExtent() Extent {
	return Extent{Min: Point{math.Inf(1), math.Inf(1)}, Max: Point{math.Inf(-1), math.Inf(-1)}}
}

// With is the extent that also reaches round the points.
func (e Extent) With(points ...Point) Extent {
	for _, p := range points {
		e.Min = Point{min(e.Min.X, p.X), min(e.Min.Y, p.Y)}
		e.Max = Point{max(e.Max.X, p.X), max(e.Max.Y, p.Y)}
	}
	return e
}

// Width is the width of the extent, Height its height; both are 0 for nothing.
func (e Extent) Width() float64 { return max(e.Max.X-e.Min.X, 0) }

// Height is the height of the extent.
func (e Extent) Height() float64 { return max(e.Max.Y-e.Min.Y, 0) }

// Bounds is the extent of all that the items draw, words and all.
func Bounds(items []Item) Extent {
	m := measuring{NoExtent()}
	for _, item := range items {
		item.Draw(&m)
	}
	return m.Extent
}

type measuring struct{ Extent }

func (m *measuring) Path(p Path)               { m.Extent = m.With(p.Points...) }
func (m *measuring) Text(t Text)               { box := t.Box(); m.Extent = m.With(box.Corners[:]...) }
func (m *measuring) Group(_ string, do func()) { do() }

// Texts lists all words that the items draw.
func Texts(items []Item) []Text {
	var l lettering
	for _, item := range items {
		item.Draw(&l)
	}
	return l.list
}

type lettering struct{ list []Text }

func (l *lettering) Path(Path)                 {}
func (l *lettering) Text(t Text)               { l.list = append(l.list, t) }
func (l *lettering) Group(_ string, do func()) { do() }
