package wood_test

import (
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"plumbrule/checker/measure"
	"plumbrule/checker/wood"
)

func randomJoist(t *testing.T, r *rand.Rand) wood.Joist {
	species := []wood.Species{wood.SouthernPine, wood.HemFir, wood.WesternCedars, wood.NorthernSpecies}
	sizes := []string{"2x6", "2x8", "2x10", "2x12"}
	j := wood.Joist{
		Lumber:  no2(t, species[r.IntN(len(species))], sizes[r.IntN(len(sizes))]),
		Spacing: measure.Length(8+r.IntN(17)) * measure.Inch,
		Load:    live40(t),
		Limits:  wood.CodeLimits(),
	}
	j.Lumber.Incised = r.IntN(2) == 0
	if r.IntN(2) == 0 {
		j.Limits.ShearAtDepth, j.Limits.Total, j.Limits.Bearing = true, 240, measure.Inch
	}
	return j
}

// What the closed form gives, the solver uses up exactly.
func TestMaxSpanIsUsedUp(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 8))
	seen := map[wood.Criterion]bool{}
	for range 400 {
		j := randomJoist(t, r)
		span, err := j.MaxSpan(wood.Strict())
		if err != nil {
			t.Fatal(err)
		}
		checks, err := j.Check(wood.Simple(span.Length), wood.Strict())
		if err != nil {
			t.Fatal(err)
		}
		worst := checks.Worst()
		near(t, "ratio at the longest span", worst.Ratio(), 1, 1e-7)
		if worst.Criterion != span.Governs {
			t.Errorf("%s governs the span, %s the check", span.Governs, worst.Criterion)
		}
		seen[span.Governs] = true
	}
	if len(seen) < 3 {
		t.Errorf("only %v governed", seen)
	}
}

// The longest cantilever uses up one of the criteria that a cantilever has, or its quarter.
func TestMaxCantileverIsUsedUp(t *testing.T) {
	r := rand.New(rand.NewPCG(9, 10))
	seen := map[wood.Criterion]bool{}
	for range 400 {
		j := randomJoist(t, r)
		j.Limits.Bearing, j.Limits.Total, j.Limits.Quarter = 0, 0, r.IntN(2) == 0
		j.Limits.ShearAtDepth, j.Limits.TipRise = false, r.IntN(4) == 0
		switch r.IntN(3) {
		case 0:
			j.Limits.TipLoad = 0 // so that the even load may govern
		case 1:
			j.Limits.Tip = 40 // a loose limit lets the strength govern
		}
		plain, err := j.MaxSpan(wood.Strict())
		if err != nil {
			t.Fatal(err)
		}
		back := measure.Length(float64(plain.Length) * (0.2 + 0.7*r.Float64()))
		a, err := j.MaxCantilever(back, wood.Strict())
		if err != nil {
			t.Fatal(err)
		}
		seen[a.Governs] = true
		if a.Governs == wood.ByTipRise {
			if a.Length != 0 {
				t.Errorf("the tip rises too much at any length, yet %s is allowed", a.Length.Text(measure.Imperial))
			}
			continue
		}
		checks, err := j.Check(wood.Overhang(back, a.Length), wood.Strict())
		if err != nil {
			t.Fatal(err)
		}
		used := 0.0
		for _, d := range checks.Demands {
			switch d.Criterion {
			case wood.ByBendingAtSupport, wood.ByShear, wood.ByTipDeflection, wood.ByTipUnderLoad, wood.ByTipRise:
				used = max(used, d.Ratio())
			}
		}
		switch {
		case used > 1+1e-6:
			t.Errorf("%s governs, and %g is used", a.Governs, used)
		case a.Governs != wood.ByQuarter && used < 1-1e-6:
			t.Errorf("%s governs, and only %g is used", a.Governs, used)
		}
	}
	t.Logf("governed: %v", seen)
	if len(seen) < 4 {
		t.Errorf("only %v governed", seen)
	}
}

// A strict cantilever is never longer than the printed rule, which looks at a force at the tip alone.
func TestStrictCantileverIsNotLonger(t *testing.T) {
	shorter := 0
	for _, nominal := range []string{"2x6", "2x8", "2x10", "2x12"} {
		for back := measure.Length(4); back <= 14; back += 2 {
			printed, permitted, err := wood.TableMaxCantilever(wood.GroupSouthernPine, size(t, nominal), back*measure.Foot, live40(t))
			if err != nil {
				t.Fatal(err)
			}
			if !permitted {
				continue
			}
			j := wood.Joist{Lumber: no2(t, wood.SouthernPine, nominal), Spacing: 24 * measure.Inch, Load: live40(t), Limits: wood.CodeLimits()}
			strict, err := j.MaxCantilever(back*measure.Foot, wood.Strict())
			if err != nil {
				t.Fatal(err)
			}
			if strict.Length > printed.Length+measure.Inch/2 {
				t.Errorf("%s behind %d ft: %s, printed %s", nominal, back, strict.Length.Sixteenths(), printed.Length.Sixteenths())
			}
			if strict.Length < printed.Length-measure.Inch/2 {
				shorter++
			}
		}
	}
	t.Logf("at 24 in the uniform load is worse than the force at the tip in %d cells", shorter)
}

func beamOf(t testing.TB, nominal string, plies int) wood.Beam {
	t.Helper()
	l := no2(t, wood.SouthernPine, nominal)
	l.Plies = plies
	return wood.Beam{Lumber: l, Tributary: 8 * measure.Foot, Load: live40(t), Limits: wood.CodeLimits()}
}

func TestPliesInPieces(t *testing.T) {
	const ft = measure.Foot
	b := beamOf(t, "2x10", 2)
	l := wood.Equal(3, 6*ft)
	whole, err := b.Check(l, wood.Strict())
	if err != nil {
		t.Fatal(err)
	}
	unbroken, err := b.CheckPlies(l, [][]measure.Length{nil, nil}, wood.Strict())
	if err != nil {
		t.Fatal(err)
	}
	near(t, "two unbroken plies against the beam", unbroken.Worst().Ratio(), whole.Worst().Ratio(), 1e-9)
	for i := range whole.Reactions {
		near(t, "reaction", lb(unbroken.Reactions[i].Most), lb(whole.Reactions[i].Most), 1e-3)
	}
	simple, err := b.Check(wood.Simple(6*ft), wood.Strict())
	if err != nil {
		t.Fatal(err)
	}
	everywhere := []measure.Length{6 * ft, 12 * ft}
	broken, err := b.CheckPlies(l, [][]measure.Length{everywhere, everywhere}, wood.Strict())
	if err != nil {
		t.Fatal(err)
	}
	near(t, "plies broken over each post against a simple beam", broken.Worst().Ratio(), simple.Worst().Ratio(), 1e-9)
	near(t, "inner post", lb(broken.Reactions[1].Most), 2*lb(simple.Reactions[0].Most), 1e-3)

	staggered, err := b.CheckPlies(l, [][]measure.Length{{6 * ft}, {12 * ft}}, wood.Strict())
	if err != nil {
		t.Fatal(err)
	}
	if len(staggered.Reactions) != 4 || staggered.Worst().Ratio() <= whole.Worst().Ratio()-1e-9 {
		t.Errorf("%d reactions, ratio %g against %g unbroken", len(staggered.Reactions), staggered.Worst().Ratio(), whole.Worst().Ratio())
	}
	for name, joints := range map[string][][]measure.Length{
		"off the posts":    {{7 * ft}, nil},
		"too few":          {nil},
		"falling":          {{12 * ft, 6 * ft}, nil},
		"before the start": {{0}, nil},
	} {
		if _, err := b.CheckPlies(l, joints, wood.Strict()); err == nil {
			t.Errorf("%s: no error", name)
		}
	}
	if _, err := b.CheckPlies(l, [][]measure.Length{{7 * ft}, nil}, wood.Strict()); !strings.Contains(err.Error(), "ply 1: a joint at 7'-0\"") {
		t.Error(err)
	}
}

func TestMaxEqualSpan(t *testing.T) {
	b := beamOf(t, "2x10", 3)
	b.Limits.Bearing = 3 * measure.Inch
	var spans []float64
	for n := 1; n <= 4; n++ {
		s, err := b.MaxEqualSpan(n, wood.Strict())
		if err != nil {
			t.Fatal(err)
		}
		spans = append(spans, in(s.Length))
		checks, err := b.Check(wood.Equal(n, s.Length), wood.Strict())
		if err != nil {
			t.Fatal(err)
		}
		near(t, "ratio", checks.Worst().Ratio(), 1, 1e-3)
	}
	t.Logf("one to four spans: %.1f in", spans)
	b.Limits.Longest = 2 * measure.Foot
	if s, err := b.MaxEqualSpan(3, wood.Strict()); err != nil || s.Length != 2*measure.Foot || s.Governs != wood.ByLongest {
		t.Errorf("capped: %v, %v", s.Length, err)
	}
	if _, err := b.MaxEqualSpan(0, wood.Strict()); err == nil {
		t.Error("no span was accepted")
	}
}

func TestUplift(t *testing.T) {
	j := wood.Joist{Lumber: no2(t, wood.SouthernPine, "2x10"), Spacing: 16 * measure.Inch, Load: live40(t), Limits: wood.CodeLimits()}
	c, err := j.Check(wood.Overhang(6*measure.Foot, 4*measure.Foot), wood.Strict())
	if err != nil {
		t.Fatal(err)
	}
	// Cantilever loaded alone: 13.33·(6/2 - 4²/12) - 53.33·4²/12 = -48.9 lb; 220 lb at the tip: 22.2 - 220·4/6 = -124.4 lb.
	near(t, "least reaction at the ledger", lb(c.Reactions[0].Least), 13.3333*(3-16.0/12)-220*4/6.0, 0.01)
}

// TestBadLoads: what cannot be computed is refused, not guessed.
func TestBadLoads(t *testing.T) {
	j := wood.Joist{Lumber: no2(t, wood.SouthernPine, "2x10"), Spacing: 16 * measure.Inch, Load: live40(t), Limits: wood.CodeLimits()}
	for name, spoil := range map[string]func(*wood.Joist){
		"no load":        func(j *wood.Joist) { j.Load = wood.Load{} },
		"negative":       func(j *wood.Joist) { j.Load.Dead = -1 },
		"dead alone":     func(j *wood.Joist) { j.Load.Imposed = j.Load.Dead / 20 },
		"no spacing":     func(j *wood.Joist) { j.Spacing = 0 },
		"unknown lumber": func(j *wood.Joist) { j.Lumber.Grade = "" },
	} {
		bad := j
		spoil(&bad)
		if _, err := bad.MaxSpan(wood.Strict()); err == nil {
			t.Errorf("%s: a span was found", name)
		}
		if _, err := bad.MaxCantilever(10*measure.Foot, wood.Strict()); err == nil {
			t.Errorf("%s: a cantilever was found", name)
		}
		if _, err := bad.Check(wood.Simple(10*measure.Foot), wood.Strict()); err == nil {
			t.Errorf("%s: it was checked", name)
		}
	}
	if _, err := j.MaxCantilever(0, wood.Strict()); err == nil {
		t.Error("a cantilever behind no back span")
	}
	if _, err := wood.TableJoistSpan(9, size(t, "2x6"), measure.Foot, live40(t)); err == nil {
		t.Error("a group that is none")
	}
	if _, err := wood.TableBeamSpan(wood.GroupFirs, size(t, "2x8"), 2, 6*measure.Foot, live40(t)); err == nil {
		t.Error("the table has no firs")
	}
	if ratio := (wood.Demand{Have: 1}).Ratio(); !math.IsInf(ratio, 1) {
		t.Errorf("a demand without limit has ratio %g", ratio)
	}
}
