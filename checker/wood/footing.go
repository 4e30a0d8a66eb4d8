package wood

import (
	"errors"
	"math"

	"plumbrule/checker/measure"
)

// Shape is the plan of a footing.
type Shape uint8

// The shapes.
const (
	Square Shape = iota
	Round
)

// side gives the side or diameter in inches of an area in square feet.
func (s Shape) side(area float64) (value float64, formula string) {
	if s == Round {
		return 12 * math.Sqrt(4*area/math.Pi), "12 · √(4 · A / 3.141592653589793)"
	}
	return 12 * math.Sqrt(area), "12 · √A"
}

// Footing is a pad of plain concrete under a post.
type Footing struct {
	Load  measure.Force
	Soil  measure.Pressure // what the soil bears
	Shape Shape
	// Post is the side of the post, from which the load spreads at 45° through the pad.
	Post measure.Length
	// Weighed takes the weight of the pad off what the soil bears.
	Weighed bool
}

// FootingSize is what a footing needs, unrounded.
type FootingSize struct {
	Side      measure.Length // or diameter
	Thickness measure.Length
	Report    Report
}

// concrete is the weight of concrete in lb per cubic foot; common practice.
const concrete = 150

// Size finds side and thickness together, since a thicker pad weighs more. The thickness is half of what the pad is wider
// than the post, which keeps it within a spread of 45° without reinforcement, common practice, rounded up to a whole
// inch and at least 6 in. The error says that the soil bears nothing but the pad.
func (f Footing) Size() (FootingSize, error) {
	if f.Load <= 0 || f.Soil <= 0 {
		return FootingSize{}, errors.New("a footing needs a load and a soil that bears")
	}
	w := &working{Report{Title: "footing"}}
	load := w.given("N", pounds(f.Load), "lb", "load")
	soil := w.given("q", psf(f.Soil), "psf", "soil bearing")
	post := w.given("p", inches(f.Post), "in", "side of the post")
	net, side, thickness, formula := soil, 0.0, minimumThickness, ""
	for range 100 {
		if f.Weighed {
			net = soil - concrete*thickness/12
		}
		if net <= 0 {
			return FootingSize{}, errors.New("the soil does not bear the footing's own weight")
		}
		side, formula = f.Shape.side(load / net)
		next := max(minimumThickness, math.Ceil((side-post)/2))
		if next <= thickness {
			break
		}
		thickness = next
	}
	w.put("t", thickness, "in", CommonPractice, "thickness, (D - p)/2 up to a whole inch, at least 6 in")
	if f.Weighed {
		w.put("γ", concrete, "pcf", CommonPractice, "concrete")
		w.find("q", "q - γ · t / 12", net, "psf")
	}
	w.find("A", "N / q", load/net, "ft²")
	w.find("D", formula, side, "in")
	return FootingSize{lengthOf(side), lengthOf(thickness), w.report()}, nil
}

const minimumThickness = 6.0

// Concrete gives the volume in cubic feet of a pad or pier of that shape.
func (s Shape) Concrete(side, height measure.Length) float64 {
	a, h := inches(side)/12, inches(height)/12
	if s == Round {
		return math.Pi / 4 * a * a * h
	}
	return a * a * h
}
