package wood

import (
	"fmt"
	"math"

	"plumbrule/checker/measure"
)

// inches counts a length in inches.
func inches(l measure.Length) float64 { return float64(l) / float64(measure.Inch) }

// psf counts a load in lb per square foot. The rounding of the text form gives 40 for what was typed as 40 psf.
func psf(p measure.Pressure) float64 {
	v, _ := p.In(measure.Imperial)
	return v
}

// pounds counts a force in lb.
func pounds(f measure.Force) float64 {
	v, _ := f.In(measure.Imperial)
	return v
}

// forceOf rounds pounds to a whole force.
func forceOf(lb float64) measure.Force {
	const micronewtons = 4_448_221.615_260_5 // in a pound
	return measure.Force(math.Round(lb * micronewtons))
}

// positive refuses a length that is zero or less.
func positive(what string, l measure.Length) error {
	if l <= 0 {
		return fmt.Errorf("%s is %s, not above zero", what, l.Text(measure.Imperial))
	}
	return nil
}
