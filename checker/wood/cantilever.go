package wood

import (
	"math"

	"plumbrule/checker/measure"
)

// maxCantilever is the longest cantilever a behind a back span L, each criterion in closed form but the deflection under
// even load, whose cubic is bisected. The load patterns are those that are worst for each: all loaded for the moment and
// the shear, the cantilever alone for its tip, the span alone for the rise of the tip.
func (f *flexure) maxCantilever(backSpan measure.Length, strength bool) (Span, error) {
	if err := positive("the back span", backSpan); err != nil {
		return Span{}, err
	}
	back := f.given("L", inches(backSpan), "in", "back span between centers of bearing")
	var a allowed
	if f.limits.Quarter {
		a.take(ByQuarter, "a_4", f.find("a_4", "L / 4", back/4, "in"))
	}
	f.tipForce(&a, back)
	if strength {
		f.cantileverStrength(&a, back)
		f.cantileverDeflection(&a, back)
	}
	return a.span(f.working, "a"), nil
}

// tipForce takes the deflection under a force at the tip alone, P·a²(L + a)/3E′I ≤ a/n.
func (f *flexure) tipForce(a *allowed, back float64) {
	if f.limits.TipLoad == 0 || f.limits.Tip == 0 {
		return
	}
	p, n := f.putTip()
	k := f.find("K", "3 · EI / (n_a · P)", 3*f.stiffness/(n*p), "in²")
	length := (math.Sqrt(back*back+4*k) - back) / 2
	a.take(ByTipDeflection, "a_P", f.find("a_P", "(√(L² + 4 · K) - L) / 2", length, "in"))
}

func (f *flexure) putTip() (p, n float64) {
	p = f.given("P", pounds(f.limits.TipLoad), "lb", "force at the tip, nothing else on the member")
	n = f.given("n_a", float64(f.limits.Tip), "", "cantilever over deflection of its tip")
	return p, n
}

// cantileverStrength takes the moment over the support and the shear on both sides of it.
func (f *flexure) cantileverStrength(a *allowed, back float64) {
	f.assume("the lower edge is held at the support of the cantilever")
	w := f.total() / 12
	moment := f.find("M′", "Fb′ · S", f.fb*f.section.Modulus(), "lb·in")
	a.take(ByBendingAtSupport, "a_b", f.find("a_b", "√(2 · M′ / (w / 12))", math.Sqrt(2*moment/w), "in"))
	if f.limits.TipLoad != 0 {
		p := f.given("P", pounds(f.limits.TipLoad), "lb", "force at the tip, nothing else on the member")
		moment := f.forPeople("M′_P", "M′", moment, "lb·in")
		name, formula, length := "a_bP", "M′_P / P", moment/p
		if dead := f.dead / 12; dead > 0 {
			formula = "(√(P² + 2 · w_D / 12 · M′_P) - P) / (w_D / 12)"
			length = (math.Sqrt(p*p+2*dead*moment) - p) / dead
		}
		a.take(ByBendingAtSupport, name, f.find(name, formula, length, "in"))
	}
	shear := f.find("V′", "2 / 3 · Fv′ · A", 2.0/3*f.fv*f.section.Area(), "lb")
	a.take(ByShear, "a_v", f.find("a_v", "V′ / (w / 12)", shear/w, "in"))
	// On the span's side: w·L/2 + w·a²/2L ≤ V′.
	left := max(0, back*(2*shear/w-back))
	a.take(ByShear, "a_vL", f.find("a_vL", "√(max(0, L · (2 · V′ / (w / 12) - L)))", math.Sqrt(left), "in"))
}

// cantileverDeflection takes the tip under even imposed load: on the cantilever alone downwards, on the span alone
// upwards.
func (f *flexure) cantileverDeflection(a *allowed, back float64) {
	if f.limits.Tip == 0 || f.bent == 0 {
		return
	}
	n := f.given("n_a", float64(f.limits.Tip), "", "cantilever over deflection of its tip")
	w := f.bent / 12
	// w·a³(4L + 3a)/24E′I = a/n
	excess := func(length float64) float64 {
		return w*length*length*(4*back+3*length)*n - 24*f.stiffness
	}
	high := back
	for excess(high) < 0 {
		high *= 2
	}
	length := bisect(0, high, excess)
	f.put("a_Δ", length, "in", Computed, "by bisection; the next step is a_Δ again")
	f.find("a_Δ", "n_a · w_Δ / 12 · a_Δ³ · (4 · L + 3 · a_Δ) / (24 · EI)", n*w*length*length*length*(4*back+3*length)/(24*f.stiffness), "in")
	a.take(ByTipUnderLoad, "a_Δ", length)

	rise := f.find("θ", "w_Δ / 12 · L³ / (24 · EI)", w*back*back*back/(24*f.stiffness), "")
	f.find("θ_n", "θ · n_a", rise*n, "")
	f.assume("with the span alone loaded the tip rises by a · θ, within a / n_a where θ_n is at most 1")
	if f.limits.TipRise && rise*n > 1 {
		a.take(ByTipRise, "0", 0)
	}
}
