package wood

import (
	"errors"
	"math"
)

// flexure is a bending member with its adjusted values and line loads, ready for statics. Stresses are psi, loads plf.
type flexure struct {
	*working
	section        Section
	fb, fv, fcPerp float64
	stiffness      float64 // E′I, lb·in²
	elasticity     float64 // E′, psi
	dead, imposed  float64
	bent           float64 // the load that deflection is held against
	limits         Limits
}

// flexure adjusts the values of a member that carries a strip of the given width in inches.
func (l Lumber) flexure(title string, load Load, width float64, symbol, note string, repetitive bool, limits Limits, p Profile) (*flexure, error) {
	if err := load.check(); err != nil {
		return nil, err
	}
	if width <= 0 {
		return nil, errors.New("the width that the member carries is not above zero")
	}
	w := &working{Report{Title: title}}
	a, err := l.adjusting(load.Duration, repetitive, p, w)
	if err != nil {
		return nil, err
	}
	f := &flexure{working: w, section: a.section, limits: limits}
	a.section.put(w)
	f.dead, f.imposed = load.put(w, width, symbol, note)
	f.bent = f.imposed
	w.assume("the member's own weight is in the dead load")
	if p.DeadInDeflection != 0 {
		share := w.put("k_D", p.DeadInDeflection, "", Fitted, "part of the dead load in the deflection")
		f.bent = w.find("w_Δ", "w_Q + k_D · w_D", f.imposed+share*f.dead, "plf")
	} else {
		w.find("w_Δ", "w_Q", f.bent, "plf")
	}
	if f.fb, err = a.bending(); err != nil {
		return nil, err
	}
	f.fv = a.value(shear)
	f.elasticity = a.value(elasticity)
	if limits.Bearing > 0 {
		f.fcPerp = a.value(bearing)
	}
	f.stiffness = w.find("EI", "E′ · I", f.elasticity*a.section.Inertia(), "lb·in²")
	return f, nil
}

// total is the whole load in plf.
func (f *flexure) total() float64 { return f.dead + f.imposed }

// maxSpan is the longest simple span between centers of bearing, in closed form.
func (f *flexure) maxSpan() (Span, error) {
	f.assume("simple span between centers of bearing, even load")
	var a allowed
	s, w := f.section, f.total()/12
	a.take(ByBending, "L_b", f.find("L_b", "√(8 · Fb′ · S / (w / 12))", math.Sqrt(8*f.fb*s.Modulus()/w), "in"))

	shear := 4.0 / 3 * f.fv * s.Area() / w
	if f.limits.ShearAtDepth {
		f.assume("even load within a depth of a support left out of the shear, NDS 3.4.3.1")
		a.take(ByShear, "L_v", f.find("L_v", "4 / 3 · Fv′ · A / (w / 12) + 2 · d", shear+2*s.Depth, "in"))
	} else {
		a.take(ByShear, "L_v", f.find("L_v", "4 / 3 · Fv′ · A / (w / 12)", shear, "in"))
	}
	if f.limits.Imposed > 0 && f.bent > 0 {
		n := f.given("n", float64(f.limits.Imposed), "", "span over deflection under imposed load")
		a.take(ByImposedDeflection, "L_Δ", f.find("L_Δ", "∛(384 · EI / (5 · n · w_Δ / 12))", f.deflected(n, f.bent), "in"))
	}
	if f.limits.Total > 0 {
		n := f.given("n_T", float64(f.limits.Total), "", "span over deflection under the whole load")
		a.take(ByTotalDeflection, "L_T", f.find("L_T", "∛(384 · EI / (5 · n_T · w / 12))", f.deflected(n, f.total()), "in"))
	}
	if f.limits.Bearing > 0 {
		lb := f.given("lb", inches(f.limits.Bearing), "in", "length of bearing")
		a.take(ByBearing, "L_N", f.find("L_N", "2 · Fc⊥′ · b · lb / (w / 12)", 2*f.fcPerp*s.Width()*lb/w, "in"))
	}
	if f.limits.Longest > 0 {
		a.take(ByLongest, "L_max", f.given("L_max", inches(f.limits.Longest), "in", "cap"))
	}
	return a.span(f.working, "L"), nil
}

// deflected is the simple span at which a line load in plf bends the member by an nth of the span.
func (f *flexure) deflected(n, load float64) float64 {
	return math.Cbrt(384 * f.stiffness / (5 * n * load / 12))
}

// forPeople takes off what a short load, such as snow, has added to an adjusted value: a force at a tip is a person, whose
// weight counts as an occupancy load.
func (f *flexure) forPeople(name, of string, value float64, unit string) float64 {
	cd, _ := f.Find("CD")
	return f.find(name, of+" / max(1, CD)", value/max(1, cd.Value), unit)
}
