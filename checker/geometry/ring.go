package geometry

import (
	"fmt"
	"math/big"

	"plumbrule/checker/measure"
)

// Ring is a closed outline given by its corners in walking order; the first
// corner is not repeated at the end. Edge i runs from corner i to the next one,
// the last edge back to corner 0.
type Ring []Point

// Box is an upright rectangle, Min the corner at the house and to the left.
type Box struct{ Min, Max Point }

// RingError says what keeps a ring from being an outline. Edges are indexes of
// edges, at most two, so that a caller can put names to them; it is empty where
// the whole ring is meant.
type RingError struct {
	Problem string
	Edges   []int
}

// Error names the edges by number, counted from 1 in walking order.
func (e *RingError) Error() string {
	switch len(e.Edges) {
	case 0:
		return e.Problem
	case 1:
		return fmt.Sprintf("edge %d %s", e.Edges[0]+1, e.Problem)
	default:
		return fmt.Sprintf("edges %d and %d %s", e.Edges[0]+1, e.Edges[1]+1, e.Problem)
	}
}

// Check reports, as a *RingError, why the ring is no outline: fewer than three
// corners, a corner beyond Reach, an edge without length, or edges that cross,
// touch or fold back.
func (r Ring) Check() error {
	if len(r) < 3 {
		return &RingError{Problem: fmt.Sprintf("an outline needs three corners, this has %d", len(r))}
	}
	for i, p := range r {
		if !p.inReach() {
			return &RingError{Problem: "starts too far from the house to be reckoned with", Edges: []int{i}}
		}
	}
	i, j, simple := r.Simple()
	switch {
	case simple:
		return nil
	case i == j:
		return &RingError{Problem: "has no length", Edges: []int{i}}
	default:
		return &RingError{Problem: "cross or touch", Edges: []int{i, j}}
	}
}

// Edge is edge i, for i from 0 to len(r)-1.
func (r Ring) Edge(i int) Segment { return Segment{A: r[i], B: r[(i+1)%len(r)]} }

// EdgeLength is the length of edge i, for i from 0 to len(r)-1.
func (r Ring) EdgeLength(i int) measure.Length { return r.Edge(i).Length() }

// Perimeter is the sum of the edge lengths.
func (r Ring) Perimeter() measure.Length {
	var sum measure.Length
	for i := range r {
		sum += r.EdgeLength(i)
	}
	return sum
}

// AreaTwice is exactly twice the area in square nanometres, above zero for a
// ring that walks clockwise on the page and below zero for the other way round.
func (r Ring) AreaTwice() *big.Int {
	var sum wide
	// Fanned from the first corner, so that an outline far from the origin does
	// not need larger numbers than one at it.
	for i := 1; i+1 < len(r); i++ {
		sum = sum.plus(cross(r[0], r[i], r[i+1]))
	}
	return sum.big()
}

// squareMillimetre is a square millimetre in square nanometres.
const squareMillimetre = 1_000_000_000_000

// Area is the area in square millimetres, rounded, whichever way the ring walks.
func (r Ring) Area() int64 {
	return quotient(new(big.Int).Abs(r.AreaTwice()), big.NewInt(2*squareMillimetre)).Int64()
}

// Clockwise reports whether the ring walks clockwise on the page, as outlines
// should. It is false for a ring without area.
func (r Ring) Clockwise() bool { return r.AreaTwice().Sign() > 0 }

// Bounds is the smallest upright rectangle around the ring; the zero Box for a
// ring without corners.
func (r Ring) Bounds() Box {
	if len(r) == 0 {
		return Box{}
	}
	b := Box{Min: r[0], Max: r[0]}
	for _, p := range r[1:] {
		b.Min = Point{X: min(b.Min.X, p.X), Y: min(b.Min.Y, p.Y)}
		b.Max = Point{X: max(b.Max.X, p.X), Y: max(b.Max.Y, p.Y)}
	}
	return b
}

// Simple reports whether no two edges share more than the corner between
// neighbours. Where some do, i and j are the first such edges; i equals j for an
// edge without length, which is looked for first. Neighbours that run on in one line are simple, neighbours
// that fold back on themselves are not.
func (r Ring) Simple() (i, j int, simple bool) {
	n := len(r)
	for i := range r {
		if e := r.Edge(i); e.A == e.B {
			return i, i, false
		}
	}
	for i := range r {
		e := r.Edge(i)
		for j := i + 1; j < n; j++ {
			f := r.Edge(j)
			switch {
			case j == i+1 && n > 2:
				if foldsBack(e, f) {
					return i, j, false
				}
			case i == 0 && j == n-1:
				if foldsBack(f, e) {
					return i, j, false
				}
			case meets(e, f):
				return i, j, false
			}
		}
	}
	return 0, 0, true
}

// foldsBack reports whether next, which starts where e ends, retraces e.
func foldsBack(e, next Segment) bool {
	return cross(e.B, e.A, next.B).sign() == 0 && dot(e.B, e.A, next.B).sign() > 0
}
