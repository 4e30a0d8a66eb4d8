package draw

import (
	"math"

	"plumbrule/checker/draw/paper"
	"plumbrule/checker/geometry"
)

// vector is a direction on paper of length one.
type vector struct{ x, y float64 }

// towards is the direction from a to b; along x where they are one point.
func towards(a, b paper.Point) vector {
	length := math.Hypot(b.X-a.X, b.Y-a.Y)
	if length == 0 {
		return vector{1, 0}
	}
	return vector{(b.X - a.X) / length, (b.Y - a.Y) / length}
}

// outward is the direction out of the surface, from an edge that has it to the
// right of its walk.
func outward(e geometry.Segment) vector {
	dx, dy := float64(e.B.X-e.A.X), float64(e.B.Y-e.A.Y)
	length := math.Hypot(dx, dy)
	if length == 0 {
		return vector{0, -1}
	}
	return vector{dy / length, -dx / length}
}

// left is the direction a quarter turn against the clock, as seen on paper.
func (v vector) left() vector { return vector{v.y, -v.x} }

// turn is the angle in degrees against the clock, as seen on paper.
func (v vector) turn() float64 { return math.Atan2(-v.y, v.x) * 180 / math.Pi }

func moved(p paper.Point, v vector, d float64) paper.Point { return p.Plus(v.x*d, v.y*d) }

func middle(a, b paper.Point) paper.Point { return paper.Point{X: (a.X + b.X) / 2, Y: (a.Y + b.Y) / 2} }

func distance(a, b paper.Point) float64 { return math.Hypot(b.X-a.X, b.Y-a.Y) }

// readable turns an angle so that words along it are not upside down.
func readable(turn float64) float64 {
	for turn > 90.001 {
		turn -= 180
	}
	for turn <= -89.999 {
		turn += 180
	}
	return turn
}

// side is the side of the drawing that an edge looks to.
type side uint8

const (
	slanted side = iota
	above
	below
	atLeft
	atRight
)

// facing tells the side; an edge that a walk left a hair askew counts as
// straight.
func facing(v vector) side {
	const straight = 0.9995
	switch {
	case v.y < -straight:
		return above
	case v.y > straight:
		return below
	case v.x < -straight:
		return atLeft
	case v.x > straight:
		return atRight
	}
	return slanted
}
