package wood

import (
	"math"
	"slices"

	"plumbrule/checker/measure"
)

// tableJoist is a joist as the joist tables were evidently made.
func tableJoist(l Lumber, size measure.Size, spacing measure.Length, load Load) Joist {
	l.Size = size
	limits := CodeLimits()
	limits.Longest = codeCap
	return Joist{Lumber: l, Spacing: spacing, Load: load, Limits: limits}
}

// TableJoistSpan repeats Table R507.6 of IRC 2021, which for 40 psf is Table 2 of DCA 6 (2015 IRC edition): the NDS
// without fitted figures, the least of the group, L/360 under live or snow load, at most 18 ft, to the nearest inch.
func TableJoistSpan(g Group, size measure.Size, spacing measure.Length, load Load) (Span, error) {
	span, err := exactJoistSpan(g, size, spacing, load)
	if err != nil {
		return Span{}, err
	}
	return span.nearest(), nil
}

func exactJoistSpan(g Group, size measure.Size, spacing measure.Length, load Load) (Span, error) {
	if err := g.check(); err != nil {
		return Span{}, err
	}
	return g.least(func(l Lumber) (Span, error) { return tableJoist(l, size, spacing, load).MaxSpan(Strict()) })
}

// TableJoistSpanWithCantilever repeats the joist spans of IRC 2015 and 2018 that allow a cantilever of a quarter: the
// plain span, or less where 220 lb at the tip of a quarter of the span would move it by more than 1/180 of its length.
func TableJoistSpanWithCantilever(g Group, size measure.Size, spacing measure.Length, load Load) (Span, error) {
	if err := g.check(); err != nil {
		return Span{}, err
	}
	span, err := g.least(func(l Lumber) (Span, error) {
		f, err := tableJoist(l, size, spacing, load).flexure("joist span with a cantilever of a quarter", Strict())
		if err != nil {
			return Span{}, err
		}
		plain, err := f.maxSpan()
		if err != nil {
			return Span{}, err
		}
		p, n := f.putTip()
		// With a = L/4, P·a²(L + a)/3E′I = a/n gives L² = 3E′I/(n·P·5/16).
		k := f.find("K", "3 · EI / (n_a · P)", 3*f.stiffness/(n*p), "in²")
		tip := f.find("L_P", "√(K / 0.3125)", math.Sqrt(k/0.3125), "in")
		if tip >= inches(plain.Length) {
			plain.Report = f.report()
			return plain, nil
		}
		bounds := append(slices.Clone(plain.Bounds), Bound{ByTipDeflection, lengthOf(tip)})
		return Span{lengthOf(tip), ByTipDeflection, bounds, f.report()}, nil
	})
	if err != nil {
		return Span{}, err
	}
	return span.nearest(), nil
}

// TableOverhang repeats the overhangs of DCA 6 (2015 IRC edition) Table 2 at the tabulated span: the cantilever that 220
// lb at its tip allows, 3 in less, at most a quarter of the span, to the nearest inch.
func TableOverhang(g Group, size measure.Size, spacing measure.Length, load Load) (Span, error) {
	plain, err := TableJoistSpan(g, size, spacing, load)
	if err != nil {
		return Span{}, err
	}
	profile := TableOverhangs()
	span, err := g.least(func(l Lumber) (Span, error) {
		f, err := tableJoist(l, size, spacing, load).flexure("joist overhang", profile)
		if err != nil {
			return Span{}, err
		}
		back := f.given("L", inches(plain.Length), "in", "tabulated span")
		var tip, all allowed
		f.tipForce(&tip, back)
		shift := f.put("k_a", inches(profile.CantileverShift), "in", Fitted, "taken off")
		all.take(ByTipDeflection, "a_t", f.find("a_t", "a_P - k_a", tip.least-shift, "in"))
		all.take(ByQuarter, "a_4", f.find("a_4", "L / 4", back/4, "in"))
		return all.span(f.working, "a"), nil
	})
	if err != nil {
		return Span{}, err
	}
	return span.nearest(), nil
}

// TableMaxCantilever repeats the cantilevers by back span of IRC 2021 Table R507.6, as recalled: what 220 lb at the tip
// allow, at most a quarter of the back span. permitted is false where the back span is beyond what the joist spans at 12
// in; the table prints NP there.
func TableMaxCantilever(g Group, size measure.Size, backSpan measure.Length, load Load) (span Span, permitted bool, err error) {
	plain, err := TableJoistSpan(g, size, measure.Foot, load)
	if err != nil {
		return Span{}, false, err
	}
	span, err = g.least(func(l Lumber) (Span, error) {
		f, err := tableJoist(l, size, measure.Foot, load).flexure("joist cantilever", Strict())
		if err != nil {
			return Span{}, err
		}
		return f.maxCantilever(backSpan, false)
	})
	if err != nil {
		return Span{}, false, err
	}
	return span.nearest(), backSpan <= plain.Length, nil
}
