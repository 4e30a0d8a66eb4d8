package geometry

import (
	"math"

	"plumbrule/checker/measure"
)

// Incline is the angle of a stair in degrees from level, given one riser and the
// run of one tread. The error says that a measure is not above zero or beyond
// Reach.
func Incline(rise, run measure.Length) (float64, error) {
	if err := checkLengths(named{"the riser", rise}, named{"the run of a tread", run}); err != nil {
		return 0, err
	}
	return degrees(math.Atan2(float64(rise), float64(run))), nil
}

// Throat is the wood left between a notch and the lower edge of a cut stringer,
// square to that edge: its depth less the height of the triangle cut out for one
// tread. It is zero or below where the notch goes through. The error says that a
// measure is not above zero or beyond Reach.
func Throat(depth, rise, run measure.Length) (measure.Length, error) {
	if err := checkLengths(named{"the depth of the stringer", depth}, named{"the riser", rise}, named{"the run of a tread", run}); err != nil {
		return 0, err
	}
	notch := mul(rise, run).big()
	square := mul(rise, rise).plus(mul(run, run)).big()
	return depth - root(notch.Mul(notch, notch), square), nil
}
