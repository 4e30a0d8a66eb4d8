package geometry

import (
	"errors"
	"fmt"
	"math"

	"plumbrule/checker/measure"
)

// Miter is the saw setting in degrees, off a square cut, for two boards of equal
// width that meet at an interior angle in degrees. The error says that the angle
// is not between 0 and 360.
func Miter(interior float64) (float64, error) {
	if err := checkInterior(interior); err != nil {
		return 0, err
	}
	return math.Abs(180-interior) / 2, nil
}

// UnequalMiter gives the two saw settings in degrees, off a square cut, for
// boards of the widths a and b that meet at an interior angle in degrees. The
// joint runs from the inner corner to the outer one, so it is not the bisector.
// A setting below zero leans the other way: a board so much wider than its
// neighbour, at so open an angle, that the joint leaves it over its end.
//
// At an angle above 180 the boards meet as they do on the other side of it. The
// error says that the angle is not between 0 and 360, or that a width is not
// above zero or beyond Reach.
func UnequalMiter(a, b measure.Length, interior float64) (sawA, sawB float64, err error) {
	if err := checkInterior(interior); err != nil {
		return 0, 0, err
	}
	if err := checkLengths(named{"the first width", a}, named{"the second width", b}); err != nil {
		return 0, 0, err
	}
	theta := radians(180 - math.Abs(180-interior))
	// The angle between a board's edge and the joint: the width is the joint's
	// length times its sine, and both angles together are the interior one.
	joint := func(own, other measure.Length) float64 {
		return degrees(math.Atan2(float64(own)*math.Sin(theta), float64(other)+float64(float64(own)*math.Cos(theta))))
	}
	return 90 - joint(a, b), 90 - joint(b, a), nil
}

func checkInterior(degrees float64) error {
	if math.IsNaN(degrees) {
		return errors.New("an interior angle is not a number")
	}
	if degrees <= 0 || degrees >= 360 {
		return fmt.Errorf("an interior angle lies between 0 and 360 degrees, not at %g", degrees)
	}
	return nil
}
