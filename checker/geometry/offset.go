package geometry

import (
	"math"

	"plumbrule/checker/measure"
)

// Offset moves every edge inwards by its own distance, or outwards where that is
// below zero: from the face of the fascia or the edge of the decking to the
// frame, with the house side left where it is. inwards holds one distance for
// each edge.
//
// from tells for each edge of the result which edge of r it was. Where two edges
// that run on in one line move by different distances the result gets a step
// between them, an edge of its own, for which from is -1: the end of the house
// wall halfway along an outline.
//
// The error, a *RingError, says that r is no outline, that a distance is missing,
// or that the ring collapses: an edge would vanish or run the other way, or edges
// would meet that did not.
func (r Ring) Offset(inwards []measure.Length) (result Ring, from []int, err error) {
	if err := r.Check(); err != nil {
		return nil, nil, err
	}
	if len(inwards) != len(r) {
		return nil, nil, &RingError{Problem: "an offset needs one distance for each edge"}
	}
	for i, d := range inwards {
		if !inReach(d) {
			return nil, nil, &RingError{Problem: "moves too far to be reckoned with", Edges: []int{i}}
		}
	}
	for i, p := range r {
		before := (i + len(r) - 1) % len(r)
		for _, w := range r.shifts(i, before, inwards) {
			result = append(result, p.Shift(w.X, w.Y))
			from = append(from, i)
		}
		if n := len(from); n > 1 && from[n-2] == i {
			from[n-2] = -1 // two corners from one: a step between them
		}
	}
	if err := r.checkMoved(result, from); err != nil {
		return nil, nil, err
	}
	return result, from, nil
}

// shifts is how corner i moves when the edges before and after it do: one shift,
// or two where the edges run on in one line and part.
func (r Ring) shifts(i, before int, inwards []measure.Length) []Point {
	u, v := r.Edge(before).heading(), r.Edge(i).heading()
	in := 1.0
	if !r.Clockwise() {
		in = -1
	}
	d, e := in*float64(inwards[before]), in*float64(inwards[i])
	if cross(r[before], r[i], r.Edge(i).B).sign() == 0 {
		if inwards[before] == inwards[i] {
			return []Point{v.aside(e)}
		}
		return []Point{u.aside(d), v.aside(e)}
	}
	// The shift w solves u×w = d and v×w = e. It is computed by itself and added
	// to the corner afterwards, so that floats carry inches and not the whole
	// plan. The conversions keep a compiler from fusing product and difference,
	// which would round differently from one machine to the next.
	sine := float64(u.x*v.y) - float64(u.y*v.x)
	return []Point{{
		X: nearest((float64(d*v.x) - float64(e*u.x)) / sine),
		Y: nearest((float64(d*v.y) - float64(e*u.y)) / sine),
	}}
}

// checkMoved reports the edge of r that the offset turned round or lost, or the
// edges that have come to meet.
func (r Ring) checkMoved(moved Ring, from []int) error {
	for k, i := range from {
		if i < 0 {
			continue
		}
		was, is := r.Edge(i), moved.Edge(k)
		if is.A == is.B || headingDot(was, is) <= 0 {
			return &RingError{Problem: "collapses when the outline is moved", Edges: []int{i}}
		}
	}
	i, j, simple := moved.Simple()
	if simple {
		return nil
	}
	edges := []int{}
	for _, k := range []int{i, j} {
		if from[k] >= 0 {
			edges = append(edges, from[k])
		}
	}
	return &RingError{Problem: "collapse when the outline is moved", Edges: edges}
}

func headingDot(s, t Segment) int {
	return mul(s.B.X-s.A.X, t.B.X-t.A.X).plus(mul(s.B.Y-s.A.Y, t.B.Y-t.A.Y)).sign()
}

// unit is a direction of length one.
type unit struct{ x, y float64 }

// heading is the direction of the segment, which has a length. Edges along the
// axes get exact ones and zeros.
func (s Segment) heading() unit {
	dx, dy := float64(s.B.X-s.A.X), float64(s.B.Y-s.A.Y)
	h := math.Hypot(dx, dy)
	return unit{x: dx / h, y: dy / h}
}

// aside is the shift by d to the right of the heading as seen on the page.
func (u unit) aside(d float64) Point { return Point{X: nearest(-d * u.y), Y: nearest(d * u.x)} }
