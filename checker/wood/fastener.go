package wood

import (
	"fmt"

	"plumbrule/checker/measure"
)

// Fastener is a bolt or lag screw as the NDS yield equations see it.
type Fastener struct {
	Name     string
	Diameter measure.Length // nominal, D
	Root     measure.Length // diameter that bends and bears where threads lie at the joint
	Tip      measure.Length // tapered end of a lag screw, which does not count
	Fyb      float64        // bending yield strength, psi
	Threaded bool
}

// Bolt is a full-body bolt. Its bending yield strength is from memory of the NDS.
func Bolt(diameter measure.Length) (Fastener, error) {
	if err := positive("the diameter", diameter); err != nil {
		return Fastener{}, err
	}
	return Fastener{Name: diameter.Text(measure.Imperial) + " bolt", Diameter: diameter, Root: diameter, Fyb: 45_000}, nil
}

// Lag is a lag screw with reduced-body threads. Root diameter, tip and bending yield strength are from memory of NDS
// Appendix L and Table 12K. The error says that the diameter is not one of them.
func Lag(diameter measure.Length) (Fastener, error) {
	for _, row := range [...]struct{ diameter, root, tip, fyb float64 }{
		{0.25, 0.173, 5.0 / 32, 70_000},
		{0.3125, 0.227, 3.0 / 16, 60_000},
		{0.375, 0.265, 7.0 / 32, 45_000},
		{0.4375, 0.328, 9.0 / 32, 45_000},
		{0.5, 0.371, 5.0 / 16, 45_000},
		{0.625, 0.471, 13.0 / 32, 45_000},
		{0.75, 0.579, 1.0 / 2, 45_000},
		{0.875, 0.683, 19.0 / 32, 45_000},
		{1, 0.780, 11.0 / 16, 45_000},
	} {
		if diameter == lengthOf(row.diameter) {
			return Fastener{
				Name: diameter.Text(measure.Imperial) + " lag screw", Diameter: diameter,
				Root: lengthOf(row.root), Tip: lengthOf(row.tip), Fyb: row.fyb, Threaded: true,
			}, nil
		}
	}
	return Fastener{}, fmt.Errorf("no lag screw of %s is tabulated", diameter.Text(measure.Imperial))
}

// Layer is one of the two members that a fastener joins.
type Layer struct {
	Length measure.Length // of the fastener in it, ls or lm of NDS 12.3
	G      float64        // specific gravity of wood
	Fe     float64        // dowel bearing strength of another material in psi; 0 for wood
	Angle  float64        // of the force to the grain, degrees
}

// Dowel bearing strengths of steel plates in psi, from memory of the NDS.
const (
	FeSteelGrade33 = 61_850 // ASTM A653, thin plates
	FeSteelA36     = 87_000
)
