package wood

import (
	"errors"
	"math"

	"plumbrule/checker/measure"
)

// FootingRow is a printed footing: side of a square one, diameter of a round one, and one thickness for both.
type FootingRow struct {
	Square, Round, Thickness measure.Length
	Report                   Report
}

// TableFooting repeats the footings of DCA 6 (2015 IRC edition) Table 4: 40 psf live and 10 psf dead on three quarters of
// the joist span, a post of 165 lb (fitted), the pad's own weight off the soil, sizes to the nearest inch.
func TableFooting(joistSpan, beamSpan measure.Length, soil measure.Pressure) (FootingRow, error) {
	load, w, err := dca6PostLoad(joistSpan, beamSpan)
	if err != nil {
		return FootingRow{}, err
	}
	const post = 11 * measure.Inch / 2
	pad := Footing{Load: load, Soil: soil, Post: post, Weighed: true, Shape: Round}
	round, err := pad.Size()
	if err != nil {
		return FootingRow{}, err
	}
	// The square one has the thickness of the round one.
	net := psf(soil) - concrete*inches(round.Thickness)/12
	side, formula := Square.side(pounds(load) / net)
	w.Steps = append(w.Steps, round.Report.Steps...)
	w.find("B", formula, side, "in")
	return FootingRow{toInch(side), toInch(inches(round.Side)), round.Thickness, w.report()}, nil
}

// dca6PostLoad is the load of a post in DCA 6 Table 4.
func dca6PostLoad(joistSpan, beamSpan measure.Length) (measure.Force, *working, error) {
	if err := positive("the joist span", joistSpan); err != nil {
		return 0, nil, err
	}
	if err := positive("the beam span", beamSpan); err != nil {
		return 0, nil, err
	}
	w := &working{Report{Title: "post load"}}
	w.assume("40 psf live and 10 psf dead load; joists with a cantilever of a quarter by the builder's widths")
	j := w.given("L_J", inches(joistSpan), "in", "joist span")
	b := w.given("L_B", inches(beamSpan), "in", "beam span")
	post := w.put("P_0", pounds(TablePosts().PostWeight), "lb", Fitted, "post")
	load := w.find("P", "50 · 0.75 · L_J · L_B / 144 + P_0", 50*0.75*j*b/144+post, "lb")
	return forceOf(load), w, nil
}

// TableFootingByArea repeats Table R507.3.1 of IRC 2018 and 2021, as recalled: the live or snow load and 10 psf on a
// tributary area in square feet, the soil without deduction, to the nearest inch, at least 12 in square or 14 in round.
// The thickness rule, half of what the diameter has above 8 in, is fitted.
func TableFootingByArea(area float64, imposed, soil measure.Pressure) (FootingRow, error) {
	if !(area > 0) || imposed <= 0 || soil <= 0 {
		return FootingRow{}, errors.New("a footing needs an area, a load and a soil that bears")
	}
	w := &working{Report{Title: "footing by tributary area"}}
	a := w.given("A_T", area, "ft²", "tributary area")
	p := w.given("Q", psf(imposed), "psf", "live or snow load")
	q := w.given("q", psf(soil), "psf", "soil bearing")
	load := w.find("N", "(Q + 10) · A_T", (p+10)*a, "lb")
	w.find("A", "N / q", load/q, "ft²")
	side, formula := Square.side(load / q)
	w.find("B", formula, side, "in")
	diameter, formula := Round.side(load / q)
	w.find("D", formula, diameter, "in")
	off := w.put("k_t", 8, "in", Fitted, "for the thickness")
	t := w.find("t", "max(6, floor((D - k_t) / 2))", max(minimumThickness, math.Floor((diameter-off)/2)), "in")
	return FootingRow{
		max(12*measure.Inch, toInch(side)), max(14*measure.Inch, toInch(diameter)), lengthOf(t), w.report(),
	}, nil
}

// toInch rounds inches to the nearest whole one.
func toInch(v float64) measure.Length { return lengthOf(math.Floor(v + 0.5)) }
