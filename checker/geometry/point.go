package geometry

import "plumbrule/checker/measure"

// Reach is the largest coordinate, offset from zero, and the largest length for
// which results are exact: a thousand kilometres. The area of a square across
// the whole of it still fits an int64 of square millimetres.
const Reach = 1_000_000 * measure.Metre

// Axis names one of the two coordinates of the plan.
type Axis uint8

// The axes of the plan: X along the house, Y out from it.
const (
	X Axis = iota
	Y
)

// of is the coordinate of p on this axis.
func (a Axis) of(p Point) measure.Length {
	if a == X {
		return p.X
	}
	return p.Y
}

// other is the axis at right angles to this one.
func (a Axis) other() Axis {
	if a == X {
		return Y
	}
	return X
}

// point has u on this axis and v on the other one.
func (a Axis) point(u, v measure.Length) Point {
	if a == X {
		return Point{X: u, Y: v}
	}
	return Point{X: v, Y: u}
}

// Point is a place on the plan, in nanometres from the left end of the house
// and from its face.
type Point struct {
	X measure.Length // along the house, to the right
	Y measure.Length // out from the house
}

// To is the straight distance from p to q, rounded to the nanometre.
func (p Point) To(q Point) measure.Length { return hypot(q.X-p.X, q.Y-p.Y) }

// Shift is p moved by dx along the house and dy out from it.
func (p Point) Shift(dx, dy measure.Length) Point { return Point{X: p.X + dx, Y: p.Y + dy} }

func (p Point) inReach() bool { return inReach(p.X) && inReach(p.Y) }

func inReach(l measure.Length) bool { return l >= -Reach && l <= Reach }

// Tapes gives the two distances that locate p without a square: from a and from
// b, the ends of a base line such as the ledger. Together with the side of the
// base line on which p lies they fix it, whether or not the outline is square.
func Tapes(a, b, p Point) (fromA, fromB measure.Length) { return a.To(p), b.To(p) }
