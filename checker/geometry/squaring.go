package geometry

import (
	"errors"
	"fmt"
	"math"
	"math/big"

	"plumbrule/checker/measure"
)

// Diagonal is the diagonal of a rectangle with the sides a and b, rounded to the
// nanometre.
func Diagonal(a, b measure.Length) measure.Length { return hypot(a, b) }

// CornerAngle is the angle in degrees between two legs measured from a corner,
// given the diagonal between their far ends, by the law of cosines. The error
// says that a measure is not above zero or beyond Reach, or that the three close
// no triangle.
func CornerAngle(legA, legB, diagonal measure.Length) (float64, error) {
	if err := checkLengths(named{"the first leg", legA}, named{"the second leg", legB}, named{"the diagonal", diagonal}); err != nil {
		return 0, err
	}
	angle, ok := angleAt(legA, legB, diagonal)
	if !ok {
		return 0, errors.New("the two legs and the diagonal close no triangle")
	}
	return degrees(angle), nil
}

// angleAt is the angle in radians between the sides a and b of a triangle whose
// third side is c; ok is false if the three close none.
func angleAt(a, b, c measure.Length) (angle float64, ok bool) {
	if c >= a+b || a >= b+c || b >= a+c {
		return 0, false
	}
	// The difference of squares nearly cancels at a square corner, so it is taken
	// exactly before it becomes a float.
	twiceABCos := mul(a, a).plus(mul(b, b)).minus(mul(c, c)).float()
	return math.Acos(twiceABCos / (2 * float64(a) * float64(b))), true
}

// Slide is how far to move a side along itself to square a parallelogram whose
// diagonals differ. first is the diagonal from the corner where the side starts
// when walking round, second the one from its other end. Above zero, the side
// opposite has to go back towards the start of this one, or this side on by as
// much.
//
// Builders know it as difference times diagonal over twice the side; with the
// mean of both diagonals that is exact. The error says that a measure is not
// above zero or beyond Reach.
func Slide(side, first, second measure.Length) (measure.Length, error) {
	if err := checkLengths(named{"the side", side}, named{"the first diagonal", first}, named{"the second diagonal", second}); err != nil {
		return 0, err
	}
	return signedMulDiv(first-second, first+second, 4*side), nil
}

// Largest345 is the largest whole number k for which a triangle of 3k, 4k and 5k
// units fits into the corner of a rectangle with the sides a and b: the larger
// the triangle, the less a misread tape turns the corner. It is 0 if none fits.
// The error says that a measure is not above zero or beyond Reach.
func Largest345(a, b, unit measure.Length) (int64, error) {
	if err := checkLengths(named{"the first side", a}, named{"the second side", b}, named{"the unit", unit}); err != nil {
		return 0, err
	}
	return min(int64(min(a, b)/(3*unit)), int64(max(a, b)/(4*unit))), nil
}

// Locate is the point at the distances fromA and fromB from the ends of the base
// line, to the right of the base as seen on the page, where the deck is if the
// base is a ledger walked along the house. It is what two tapes give. The error
// says that a measure is not above zero or beyond Reach, or that the tapes do not
// meet.
func Locate(base Segment, fromA, fromB measure.Length) (Point, error) {
	length := base.Length()
	if err := checkLengths(named{"the base line", length}, named{"the first tape", fromA}, named{"the second tape", fromB}); err != nil {
		return Point{}, err
	}
	if fromA+fromB < length || length+fromA < fromB || length+fromB < fromA {
		return Point{}, errors.New("the two tapes do not meet")
	}
	// Along the base from A, then out by what is left of the first tape.
	n := mul(fromA, fromA).minus(mul(fromB, fromB)).plus(mul(length, length)).big()
	along := measure.Length(quotient(n, big.NewInt(2*int64(length))).Int64())
	square := mul(fromA, fromA).minus(mul(along, along))
	if square.sign() < 0 {
		square = wide{} // flat triangle, and along was rounded up
	}
	out := float64(root(square.big(), big.NewInt(1)))
	foot, side := base.At(along), base.heading().aside(out)
	return foot.Shift(side.X, side.Y), nil
}

// named is a length with its name for an error.
type named struct {
	name  string
	value measure.Length
}

func checkLengths(lengths ...named) error {
	for _, l := range lengths {
		if l.value <= 0 {
			return fmt.Errorf("%s must be more than zero", l.name)
		}
		if l.value > Reach {
			return fmt.Errorf("%s is too long to be reckoned with", l.name)
		}
	}
	return nil
}
