package paper

import "math"

// Arc is part of a circle, from one angle to another in degrees, against the
// clock as seen on the paper, from the right. A full turn closes it.
type Arc struct {
	Center   Point
	Radius   float64
	From, To float64
	Stroke   Stroke
	Fill     Fill
}

// Circle is a full circle.
func Circle(center Point, radius float64, stroke Stroke, fill Fill) Arc {
	return Arc{Center: center, Radius: radius, To: 360, Stroke: stroke, Fill: fill}
}

// Draw implements Item: an arc is a polyline close enough to the curve that no
// eye tells them apart, alike in every format.
func (a Arc) Draw(c Canvas) {
	const flatness = 0.03 // of a point, from curve to chord
	step := 2 * math.Acos(1-min(flatness/a.Radius, 0.5))
	turn := (a.To - a.From) * math.Pi / 180
	n := max(int(math.Ceil(math.Abs(turn)/step)), 2)
	closed := math.Abs(a.To-a.From) >= 360
	p := Path{Closed: closed, Stroke: a.Stroke, Fill: a.Fill}
	for i := range n + 1 {
		if closed && i == n {
			break
		}
		sin, cos := math.Sincos(a.From*math.Pi/180 + turn*float64(i)/float64(n))
		p.Points = append(p.Points, Point{X: a.Center.X + a.Radius*cos, Y: a.Center.Y - a.Radius*sin})
	}
	c.Path(p)
}

// Moved implements Item.
func (a Arc) Moved(dx, dy float64) Item {
	a.Center = a.Center.Plus(dx, dy)
	return a
}
