package geometry

import (
	"errors"
	"math"

	"plumbrule/checker/measure"
)

// Rectangle is what six measures say about a quadrilateral meant to be a
// rectangle, none of its corners turned in: four sides in walking order from the
// left end of the house, and two diagonals, the one from that corner first. All
// differences carry a sign, first less second.
type Rectangle struct {
	// Closure is the second diagonal as measured less the one that follows from
	// the other five measures. Five fix the figure, so a closure beyond what
	// reading the tape explains means that a measure is wrong and nothing else
	// here is worth reading. Which of the six is wrong cannot be told. On a figure
	// that is nearly a rectangle, spreading it by least squares would put a
	// quarter of it on each diagonal.
	Closure measure.Length
	// Sides are the differences of opposite sides: house less front, right less
	// left. They come before the diagonals, since a symmetric trapezoid has equal
	// diagonals too.
	Sides [2]measure.Length
	// Diagonals is the difference of the diagonals.
	Diagonals measure.Length
	// Corners are the interior angles in degrees, in walking order. Each follows
	// from the two sides that meet there and the diagonal across.
	Corners [4]float64
}

// CheckRectangle compares six measures of a rectangle. The error says that one
// of them is not above zero or beyond Reach, or that a diagonal closes no
// triangle with the sides it goes with.
func CheckRectangle(sides [4]measure.Length, diagonals [2]measure.Length) (Rectangle, error) {
	if err := checkLengths(
		named{"the first side", sides[0]}, named{"the second side", sides[1]},
		named{"the third side", sides[2]}, named{"the fourth side", sides[3]},
		named{"the first diagonal", diagonals[0]}, named{"the second diagonal", diagonals[1]},
	); err != nil {
		return Rectangle{}, err
	}
	r := Rectangle{
		Sides:     [2]measure.Length{sides[0] - sides[2], sides[1] - sides[3]},
		Diagonals: diagonals[0] - diagonals[1],
	}
	for i := range sides {
		// Corner i lies between side i-1 and side i, across from it runs the
		// diagonal that does not start there.
		angle, ok := angleAt(sides[(i+3)%4], sides[i], diagonals[(i+1)%2])
		if !ok {
			return Rectangle{}, errors.New("a diagonal closes no triangle with two of the sides")
		}
		r.Corners[i] = degrees(angle)
	}
	r.Closure = diagonals[1] - secondDiagonal(sides, diagonals[0])
	return r, nil
}

// secondDiagonal follows from four sides and the first diagonal: the diagonal
// splits the first corner into two angles, each known from its triangle. Both
// triangles are known to close.
func secondDiagonal(sides [4]measure.Length, first measure.Length) measure.Length {
	right, _ := angleAt(sides[0], first, sides[1])
	left, _ := angleAt(first, sides[3], sides[2])
	a, b := float64(sides[0]), float64(sides[3])
	// Written so that no step subtracts large squares from each other:
	// a² + b² - 2ab·cos φ = (a-b)² + 4ab·sin²(φ/2).
	s := math.Sin((right + left) / 2)
	return nearest(math.Hypot(a-b, 2*math.Sqrt(a*b)*s))
}

// Shape is what a measured quadrilateral turns out to be.
type Shape uint8

// The shapes of a measured quadrilateral.
const (
	// Rectangular has equal opposite sides and equal diagonals.
	Rectangular Shape = iota
	// Parallelogram has equal opposite sides and unequal diagonals: it has to be
	// racked square.
	Parallelogram
	// Trapezoid has equal diagonals although opposite sides differ: the figure
	// that a check of the diagonals alone takes for a rectangle.
	Trapezoid
	// Irregular has neither.
	Irregular
)

// Shape classifies the figure, taking differences up to and including tolerance
// for none. It says nothing about the closure, which is to be judged first.
func (r Rectangle) Shape(tolerance measure.Length) Shape {
	equal := func(difference measure.Length) bool { return size(difference) <= size(tolerance) }
	sides := equal(r.Sides[0]) && equal(r.Sides[1])
	switch {
	case sides && equal(r.Diagonals):
		return Rectangular
	case sides:
		return Parallelogram
	case equal(r.Diagonals):
		return Trapezoid
	default:
		return Irregular
	}
}
