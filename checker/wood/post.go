package wood

import (
	"errors"
	"math"

	"plumbrule/checker/measure"
)

// Post is a column of one piece that carries a load and no side load.
type Post struct {
	Lumber   Lumber
	Load     measure.Force
	Duration Duration
	End      End
	// Eccentricity is how far from the middle of the post, towards its thinner side, the load comes down.
	Eccentricity measure.Length
	Longest      measure.Length // caps the height; 0: 50 times the depth over Ke, as the NDS allows
}

// column is a post with its adjusted values, ready for NDS 3.7 and 15.4.
type column struct {
	*working
	b, d       float64 // in; d is the thinner side, about which it buckles
	load       float64 // lb
	fc         float64 // the stress, psi
	starred    float64 // Fc*, psi
	fb         float64 // Fb′, psi
	emin       float64 // Emin′, psi
	ke         float64
	eccentric  float64 // in
	largestRun float64 // in
}

func (p Post) column(profile Profile) (*column, error) {
	if p.Load <= 0 {
		return nil, errors.New("no load on the post")
	}
	if p.Lumber.Plies > 1 || p.Lumber.Flat {
		return nil, errors.New("a post of several plies: NDS 15.3 is not computed here")
	}
	w := &working{Report{Title: "post"}}
	w.assume("no side load; lateral stability of the deck comes from elsewhere")
	a, err := p.Lumber.adjusting(p.Duration, false, profile, w)
	if err != nil {
		return nil, err
	}
	s := a.section
	c := &column{working: w, b: max(s.Breadth, s.Depth), d: min(s.Breadth, s.Depth)}
	w.given("b", c.b, "in", s.Name+", wider side")
	w.given("d", c.d, "in", s.Name+", thinner side")
	w.find("A", "b · d", c.b*c.d, "in²")
	c.load = w.given("P", pounds(p.Load), "lb", "load")
	if profile.PostWeight != 0 {
		weight := w.put("P_0", pounds(profile.PostWeight), "lb", Fitted, "post")
		c.load = w.find("P", "P + P_0", c.load+weight, "lb")
	}
	c.fc = w.find("fc", "P / A", c.load/(c.b*c.d), "psi")
	c.starred = a.value(compression)
	c.emin = a.value(stability)
	c.putEnds(p, profile)
	if c.eccentric > 0 {
		// Bending about the weaker axis would earn a flat use factor, which is left out: less is allowed than could be.
		if c.fb, err = a.bending(); err != nil {
			return nil, err
		}
	}
	c.largestRun = 50 * c.d / c.ke
	if p.Longest > 0 {
		c.largestRun = min(c.largestRun, inches(p.Longest))
	}
	return c, nil
}

// putEnds records Ke and the eccentricity, which a profile may have fitted.
func (c *column) putEnds(p Post, profile Profile) {
	if profile.PostKe != 0 {
		c.ke = c.put("Ke", profile.PostKe, "", Fitted, "effective length factor")
	} else {
		c.ke = c.put("Ke", p.End.Ke(), "", Recalled, "NDS Appendix G")
	}
	c.eccentric = inches(p.Eccentricity)
	switch {
	case profile.PostEccentricity != 0:
		share := c.put("k_e", profile.PostEccentricity, "", Fitted, "eccentricity as a part of the depth")
		c.eccentric = c.find("e", "k_e · d", share*c.d, "in")
	case c.eccentric > 0:
		c.given("e", c.eccentric, "in", "eccentricity")
	default:
		c.assume("the load comes down in the middle of the post")
	}
}

// ratio is how much of the post a height in inches uses, NDS 3.7.1 or 15.4.1; above 1 it is too much.
func (c *column) ratio(height float64) float64 {
	slenderness := c.ke * height / c.d
	if slenderness > 50 {
		return math.Inf(1)
	}
	const stocky = 1e-6 // stands for no height at all
	slenderness = max(slenderness, stocky)
	euler := 0.822 * c.emin / (slenderness * slenderness)
	used := c.fc / (c.starred * columnFactor(euler/c.starred))
	if c.eccentric == 0 {
		return used
	}
	if c.fc >= euler {
		return math.Inf(1)
	}
	return used*used + c.fc*6*c.eccentric/c.d*(1+0.234*c.fc/euler)/(c.fb*(1-c.fc/euler))
}

// explain writes down what ratio computes.
func (c *column) explain(height float64) {
	c.given("h", height, "in", "height between floor and beam")
	slenderness := c.find("le_d", "Ke · h / d", c.ke*height/c.d, "")
	euler := c.find("FcE", "0.822 · Emin′ / le_d²", 0.822*c.emin/(slenderness*slenderness), "psi")
	r := c.find("r_c", "FcE / Fc′", euler/c.starred, "")
	c.assume("Fc′ stands before the column stability factor CP, NDS 3.7.1, c = 0.8 for sawn lumber")
	cp := c.find("CP", "(1 + r_c) / 1.6 - √(((1 + r_c) / 1.6)² - r_c / 0.8)", columnFactor(r), "")
	capacity := c.find("Fc_P", "Fc′ · CP", c.starred*cp, "psi")
	if c.eccentric == 0 {
		c.find("u", "fc / Fc_P", c.fc/capacity, "")
		return
	}
	c.assume("eccentric load by NDS 15.4.1, without CL, Cfu or side load")
	c.find("u", "(fc / Fc_P)² + fc · 6 · e / d · (1 + 0.234 · fc / FcE) / (Fb′ · (1 - fc / FcE))", c.ratio(height), "")
}

// Check gives how much of the post a height uses: fc over Fc′, or the sum of NDS 15.4.1 under an eccentric load. The
// error says that the tables do not have the post, or that it is more slender than the NDS allows.
func (p Post) Check(height measure.Length, profile Profile) (Checks, error) {
	if err := positive("the height", height); err != nil {
		return Checks{}, err
	}
	c, err := p.column(profile)
	if err != nil {
		return Checks{}, err
	}
	if c.ke*inches(height)/c.d > 50 {
		return Checks{}, errTooSlender
	}
	demand := Demand{ByColumn, 0, c.ratio(inches(height)), 1, ""}
	c.explain(inches(height))
	return Checks{Demands: []Demand{demand}, Report: c.report()}, nil
}

// MaxHeight is the greatest height that the post can have, which may be zero. The error says that the tables do not have
// the post.
func (p Post) MaxHeight(profile Profile) (Span, error) {
	c, err := p.column(profile)
	if err != nil {
		return Span{}, err
	}
	highest, governs := c.largestRun, ByLongest
	height := highest
	if c.ratio(height) > 1 {
		governs, height = ByColumn, 0
		if c.ratio(0) < 1 {
			height = bisect(0, highest, func(h float64) float64 { return c.ratio(h) - 1 })
		}
	}
	if height > 0 {
		c.explain(height)
	}
	return Span{lengthOf(height), governs, []Bound{{governs, lengthOf(height)}}, c.report()}, nil
}

// ByColumn is the strength and stability of a post.
const ByColumn Criterion = "column strength and stability"
