package wood

import (
	"errors"
	"math"

	"plumbrule/checker/measure"
)

// Connection is one fastener through a side and a main member in single shear, or through a main member between two
// alike side members in double shear.
type Connection struct {
	Fastener   Fastener
	Side, Main Layer
	Double     bool
}

// Mode is a yield mode of NDS 12.3.1 and the force it allows.
type Mode struct {
	Name string
	Z    measure.Force
}

// Yield is the reference lateral design value Z of a fastener: the least of its modes.
type Yield struct {
	Z       measure.Force
	Governs string
	Modes   []Mode
	Report  Report
}

// Yield evaluates the yield limit equations of NDS 12.3.1 without any adjustment factor. The error says that a length,
// gravity or angle makes no sense.
func (c Connection) Yield() (Yield, error) {
	for _, l := range [...]Layer{c.Side, c.Main} {
		switch {
		case l.Length <= 0:
			return Yield{}, errors.New("the fastener has no length in a member")
		case l.Fe == 0 && !(l.G > 0 && l.G < 1.5):
			return Yield{}, errors.New("a specific gravity is not between 0 and 1.5")
		case !(l.Angle >= 0 && l.Angle <= 90):
			return Yield{}, errors.New("an angle to the grain is not between 0 and 90 degrees")
		}
	}
	if c.Fastener.Diameter <= 0 || c.Fastener.Root <= 0 || c.Fastener.Fyb <= 0 {
		return Yield{}, errors.New("the fastener has no diameter or no strength")
	}
	y := c.yielding()
	y.singleOrDouble(c.Double)
	return y.least(), nil
}

// yielding holds the symbols of NDS 12.3.1 in lb, in and psi.
type yielding struct {
	*working
	d, fyb, ls, lm, fes, fem, re float64
	rd                           func(mode string) float64
	modes                        []Mode
	formulas                     string
	z                            float64
	governs                      string
}

func (c Connection) yielding() *yielding {
	w := &working{Report{Title: c.Fastener.Name + " under lateral load"}}
	w.assume("edge, end and row distances that earn a geometry factor of 1")
	w.put("D", inches(c.Fastener.Diameter), "in", Given, "nominal diameter")
	y := &yielding{working: w, fyb: c.Fastener.Fyb, ls: inches(c.Side.Length), lm: inches(c.Main.Length)}
	y.d = w.put("Dr", inches(c.Fastener.Root), "in", Recalled, "diameter in the yield equations")
	w.put("Fyb", y.fyb, "psi", Recalled, "bending yield strength")
	w.given("ls", y.ls, "in", "side member")
	w.given("lm", y.lm, "in", "main member")
	y.fes = c.Side.bearing(w, "s", inches(c.Fastener.Diameter))
	y.fem = c.Main.bearing(w, "m", inches(c.Fastener.Diameter))
	y.re = w.find("Re", "Fe_m / Fe_s", y.fem/y.fes, "")
	y.reduction(c)
	return y
}

// bearing gives the dowel bearing strength at the layer's angle, NDS 12.3.3, rounded to 50 psi as the NDS tables do.
func (l Layer) bearing(w *working, side string, d float64) float64 {
	name := "Fe_" + side
	if l.Fe != 0 {
		return w.put(name, l.Fe, "psi", Given, "dowel bearing strength")
	}
	to50 := func(v float64) float64 { return 50 * math.Floor(v/50+0.5) }
	g := w.given("G_"+side, l.G, "", "specific gravity")
	if d < 0.25 {
		return w.find(name, "50 · round(16600 · G_"+side+" ^ 1.84 / 50)", to50(16600*math.Pow(g, 1.84)), "psi")
	}
	along := w.find(name+"∥", "50 · round(11200 · G_"+side+" / 50)", to50(11200*g), "psi")
	across := w.find(name+"⊥", "50 · round(6100 · G_"+side+" ^ 1.45 / √D / 50)", to50(6100*math.Pow(g, 1.45)/math.Sqrt(d)), "psi")
	sin := math.Sin(l.Angle * math.Pi / 180)
	// Hankinson.
	s2 := w.put("sin2_"+side, sin*sin, "", Computed, "angle to the grain "+number(l.Angle)+"°")
	c2 := w.find("cos2_"+side, "1 - sin2_"+side, 1-s2, "")
	return w.find(name, name+"∥ · "+name+"⊥ / ("+name+"∥ · sin2_"+side+" + "+name+"⊥ · cos2_"+side+")", along*across/(along*s2+across*c2), "psi")
}

// reduction gives the reduction term Rd of NDS Table 12.3.1B by mode.
func (y *yielding) reduction(c Connection) {
	angle := 0.0
	for _, l := range [...]Layer{c.Side, c.Main} {
		if l.Fe == 0 {
			angle = max(angle, l.Angle)
		}
	}
	y.given("θ", angle, "°", "greatest angle of the force to the grain")
	k := y.find("Kθ", "1 + 0.25 · θ / 90", 1+0.25*angle/90, "")
	nominal := inches(c.Fastener.Diameter)
	if y.d < 0.25 {
		kd, formula := 2.2, "2.2"
		if y.d > 0.17 {
			kd, formula = 10*y.d+0.5, "10 · Dr + 0.5"
		}
		r := y.find("KD", formula, kd, "")
		if nominal >= 0.25 {
			// A screw of 1/4 in and more whose root is thinner has both reductions.
			r = y.find("KD", "KD · Kθ", r*k, "")
		}
		y.rd = func(string) float64 { return r }
		for _, group := range [...]string{"Rd_I", "Rd_II", "Rd_III"} {
			y.find(group, "KD", r, "")
		}
		return
	}
	one, two, three := y.find("Rd_I", "4 · Kθ", 4*k, ""), y.find("Rd_II", "3.6 · Kθ", 3.6*k, ""), y.find("Rd_III", "3.2 · Kθ", 3.2*k, "")
	y.rd = func(group string) float64 {
		switch group {
		case "Rd_I":
			return one
		case "Rd_II":
			return two
		}
		return three
	}
}

// singleOrDouble evaluates the equations 12.3-1 to 12.3-10.
func (y *yielding) singleOrDouble(double bool) {
	sides, times := 1.0, ""
	if double {
		sides, times = 2, "2 · "
	}
	d, re := y.d, y.re
	y.mode("Im", "Rd_I", "Dr · lm · Fe_m / Rd_I", d*y.lm*y.fem)
	y.mode("Is", "Rd_I", times+"Dr · ls · Fe_s / Rd_I", sides*d*y.ls*y.fes)
	if !double {
		rt := y.find("Rt", "lm / ls", y.lm/y.ls, "")
		k1 := y.find("k1", "(√(Re + 2 · Re² · (1 + Rt + Rt²) + Rt² · Re³) - Re · (1 + Rt)) / (1 + Re)",
			(math.Sqrt(re+2*re*re*(1+rt+rt*rt)+rt*rt*re*re*re)-re*(1+rt))/(1+re), "")
		y.mode("II", "Rd_II", "k1 · Dr · ls · Fe_s / Rd_II", k1*d*y.ls*y.fes)
		k2 := y.find("k2", "√(2 · (1 + Re) + 2 · Fyb · (1 + 2 · Re) · Dr² / (3 · Fe_m · lm²)) - 1",
			math.Sqrt(2*(1+re)+2*y.fyb*(1+2*re)*d*d/(3*y.fem*y.lm*y.lm))-1, "")
		y.mode("IIIm", "Rd_III", "k2 · Dr · lm · Fe_m / ((1 + 2 · Re) · Rd_III)", k2*d*y.lm*y.fem/(1+2*re))
	}
	k3 := y.find("k3", "√(2 · (1 + Re) / Re + 2 · Fyb · (2 + Re) · Dr² / (3 · Fe_m · ls²)) - 1",
		math.Sqrt(2*(1+re)/re+2*y.fyb*(2+re)*d*d/(3*y.fem*y.ls*y.ls))-1, "")
	y.mode("IIIs", "Rd_III", times+"k3 · Dr · ls · Fe_m / ((2 + Re) · Rd_III)", sides*k3*d*y.ls*y.fem/(2+re))
	y.mode("IV", "Rd_III", times+"Dr² / Rd_III · √(2 · Fe_m · Fyb / (3 · (1 + Re)))", sides*d*d*math.Sqrt(2*y.fem*y.fyb/(3*(1+re))))
}

// mode writes down one mode; force is before its reduction.
func (y *yielding) mode(name, group, formula string, force float64) {
	z := y.find("Z_"+name, formula, force/y.rd(group), "lb")
	if len(y.modes) == 0 || z < y.z {
		y.z, y.governs = z, name
	}
	if y.formulas != "" {
		y.formulas += ", "
	}
	y.formulas += "Z_" + name
	y.modes = append(y.modes, Mode{name, forceOf(z)})
}

func (y *yielding) least() Yield {
	y.find("Z", "min("+y.formulas+")", y.z, "lb")
	return Yield{forceOf(y.z), y.governs, y.modes, y.report()}
}
