package paper

import (
	"math"

	"plumbrule/checker/measure"
)

// Dimension says how far two things on the drawing are apart.
type Dimension struct {
	// From and To are the things; Start and End the ends of the dimension line,
	// beside them.
	From, To   Point
	Start, End Point
	// Value is what the drawing says; the words of the label print it.
	Value measure.Length
	Label Text
	// FromCenter and ToCenter are true where the line from the thing to the
	// dimension line is its center line.
	FromCenter, ToCenter bool
	// FromFree and ToFree are how much of the way from the thing is left free: a
	// little at least, all where another line runs there already.
	FromFree, ToFree float64
	// Apart leaves the label to be drawn by itself, above the lines of dimensions
	// that come later.
	Apart bool
	// Leader runs from the label to the dimension line where the label does not
	// fit above it; empty where it does.
	Leader []Point
}

const (
	extensionGap  = 2.5 // left open between a thing and its extension line
	extensionPast = 3   // of extension line past the dimension line
	slash         = 2.6 // half the stroke that ends a dimension line
)

// Draw implements Item: extension lines, the dimension line with an oblique
// stroke at either end, the label.
func (d Dimension) Draw(c Canvas) {
	c.Group("dimension", func() {
		extension(c, d.From, d.Start, d.FromFree, d.FromCenter)
		extension(c, d.To, d.End, d.ToFree, d.ToCenter)
		c.Path(Line(d.Start, d.End, Fine))
		ux, uy := direction(d.Start, d.End)
		for _, p := range []Point{d.Start, d.End} {
			// Half a right angle off the dimension line, whichever way that runs.
			dx, dy := (ux+uy)*slash*math.Sqrt2/2, (uy-ux)*slash*math.Sqrt2/2
			c.Path(Line(p.Plus(-dx, -dy), p.Plus(dx, dy), Bold))
		}
		if len(d.Leader) > 1 {
			c.Path(Path{Points: d.Leader, Stroke: Fine})
		}
		if !d.Apart {
			d.Label.Draw(c)
		}
	})
}

func extension(c Canvas, from, to Point, free float64, center bool) {
	stroke := Fine
	if center {
		stroke = Center
	}
	if a, b, ok := ExtensionLine(from, to, free); ok {
		c.Path(Line(a, b, stroke))
	}
}

// ExtensionLine is the line from beside a thing to past the dimension line, of
// which so much is left free; ok is false where nothing is left to draw.
func ExtensionLine(from, to Point, free float64) (a, b Point, ok bool) {
	free = max(free, extensionGap)
	if math.Hypot(to.X-from.X, to.Y-from.Y) <= free {
		return to, to, false
	}
	ux, uy := direction(from, to)
	return from.Plus(ux*free, uy*free), to.Plus(ux*extensionPast, uy*extensionPast), true
}

// direction is the unit vector from a to b; along X where they are one point.
func direction(a, b Point) (ux, uy float64) {
	length := math.Hypot(b.X-a.X, b.Y-a.Y)
	if length == 0 {
		return 1, 0
	}
	return (b.X - a.X) / length, (b.Y - a.Y) / length
}

// Moved implements Item.
func (d Dimension) Moved(dx, dy float64) Item {
	for _, p := range []*Point{&d.From, &d.To, &d.Start, &d.End, &d.Label.At} {
		*p = p.Plus(dx, dy)
	}
	d.Leader = moved(d.Leader, dx, dy)
	return d
}
