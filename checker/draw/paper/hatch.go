package paper

import (
	"math"
	"slices"
)

// Hatch fills an area with parallel lines.
type Hatch struct {
	Area []Point
	// Turn is the direction of the lines in degrees against the clock, Gap the
	// distance from one to the next.
	Turn, Gap float64
	// Through is a point that one of the lines runs through.
	Through Point
	Stroke  Stroke
}

// maxHatchLines keeps a pattern far too fine for its area from becoming a solid
// one line by line.
const maxHatchLines = 2000

// Draw implements Item.
func (h Hatch) Draw(c Canvas) {
	c.Group("hatch", func() {
		for _, line := range h.Lines() {
			c.Path(line)
		}
	})
}

// Lines are the lines of the pattern, each clipped by the area.
func (h Hatch) Lines() []Path {
	if h.Gap <= 0 || len(h.Area) < 3 {
		return nil
	}
	sin, cos := math.Sincos(h.Turn * math.Pi / 180)
	// u runs along the lines, v across them.
	turned := make([]Point, len(h.Area))
	low, high := math.Inf(1), math.Inf(-1)
	for i, p := range h.Area {
		x, y := p.X-h.Through.X, p.Y-h.Through.Y
		turned[i] = Point{X: x*cos - y*sin, Y: x*sin + y*cos}
		low, high = min(low, turned[i].Y), max(high, turned[i].Y)
	}
	first, last := math.Ceil(low/h.Gap), math.Floor(high/h.Gap)
	if last-first > maxHatchLines {
		return nil
	}
	var lines []Path
	back := func(u, v float64) Point {
		return Point{X: u*cos + v*sin + h.Through.X, Y: v*cos - u*sin + h.Through.Y}
	}
	for k := first; k <= last; k++ {
		v := k * h.Gap
		crossings := across(turned, v)
		for i := 0; i+1 < len(crossings); i += 2 {
			if crossings[i+1]-crossings[i] > 0.1 {
				lines = append(lines, Line(back(crossings[i], v), back(crossings[i+1], v), h.Stroke))
			}
		}
	}
	return lines
}

// across lists where the line Y = v enters and leaves an area.
func across(area []Point, v float64) []float64 {
	var list []float64
	for i, a := range area {
		b := area[(i+1)%len(area)]
		if (a.Y > v) != (b.Y > v) {
			list = append(list, a.X+(v-a.Y)/(b.Y-a.Y)*(b.X-a.X))
		}
	}
	slices.Sort(list)
	return list
}

// Moved implements Item.
func (h Hatch) Moved(dx, dy float64) Item {
	h.Area, h.Through = moved(h.Area, dx, dy), h.Through.Plus(dx, dy)
	return h
}
