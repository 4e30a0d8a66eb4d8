package wood_test

import (
	"math"
	"testing"

	"plumbrule/checker/measure"
	"plumbrule/checker/wood"
)

func evenly(t *testing.T, l wood.Layout, plf float64, permanent bool) wood.Envelope {
	t.Helper()
	e, err := l.Envelope(1e8, []wood.Action{{From: l.From, To: l.To, Line: plf, Permanent: permanent}})
	if err != nil {
		t.Fatal(err)
	}
	return e
}

// Source: beam diagrams and formulas as in AISC Table 3-22c and 3-23, from memory: coefficients of wL² and wL of equal
// spans under even load, all loaded.
func TestEqualSpans(t *testing.T) {
	const span, w = 120.0, 50.0 // in, plf
	for _, c := range []struct {
		spans                      int
		sagging, hogging, reaction float64
	}{
		{1, 0.125, 0, 0.5}, {2, 9.0 / 128, 0.125, 1.25}, {3, 0.08, 0.1, 1.1}, {4, 0.0772, 0.1071, 1.143},
	} {
		e := evenly(t, wood.Equal(c.spans, 10*measure.Foot), w, true)
		near(t, "sagging moment", e.Sagging, c.sagging*w/12*span*span, 2e-4*w/12*span*span)
		near(t, "hogging moment", -e.Hogging, c.hogging*w/12*span*span, 2e-4*w/12*span*span)
		near(t, "second reaction", e.Reactions[1].Most, c.reaction*w/12*span, 5e-4*w/12*span)
	}
	// Three spans, the load where it is worst: 0.101 in the end span, 0.117 over a support.
	e := evenly(t, wood.Equal(3, 10*measure.Foot), w, false)
	near(t, "patterned sagging", e.Sagging, 0.1013*w/12*span*span, 2e-4*w/12*span*span)
	near(t, "patterned hogging", -e.Hogging, 0.1167*w/12*span*span, 2e-4*w/12*span*span)
	// 5wL⁴/384EI
	e = evenly(t, wood.Simple(10*measure.Foot), w, true)
	near(t, "deflection", e.Deflections[1].Most, 5*w/12*math.Pow(span, 4)/384/1e8, 1e-12)
}

func TestTributary(t *testing.T) {
	builders, statics, err := wood.Tributary(11*measure.Foot, 30*measure.Inch)
	if err != nil {
		t.Fatal(err)
	}
	// 13.5²/22 = 8.28409 ft against 11/2 + 2.5 = 8 ft
	if builders != 8*measure.Foot || statics != 2_524_990_909 {
		t.Errorf("builder's %d, statics %d", builders, statics)
	}
	near(t, "statics in ft", in(statics)/12, 8.284, 0.0005)

	// The solver, with all of the deck loaded, agrees.
	e, err := wood.Overhang(11*measure.Foot, 30*measure.Inch).Envelope(1, []wood.Action{{To: 162 * measure.Inch, Line: 1, Permanent: true}})
	if err != nil {
		t.Fatal(err)
	}
	near(t, "reaction per plf", e.Reactions[1].Most, in(statics)/12, 1e-8)
	half, ledger, err := wood.LedgerTributary(11*measure.Foot, 30*measure.Inch)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "ledger per plf", e.Reactions[0].Most, in(ledger)/12, 1e-8)
	if half != 66*measure.Inch || ledger+statics != 162*measure.Inch {
		t.Errorf("ledger: builder's %d, statics %d", half, ledger)
	}
	if _, statics, err := wood.Tributary(measure.MaxLength, measure.MaxLength); err != nil || statics != 2*measure.MaxLength {
		t.Errorf("greatest lengths: %d, %v", statics, err)
	}
	for _, c := range [][2]measure.Length{{0, 1}, {-1, 1}, {1, -1}} {
		if _, _, err := wood.Tributary(c[0], c[1]); err == nil {
			t.Errorf("%v was accepted", c)
		}
		if _, _, err := wood.JoistSpanFactor(c[0], c[1]); err == nil {
			t.Errorf("%v has a factor", c)
		}
	}
}

// Source of the table's factors: IRC 2021 Table R507.5 footnote, from memory: 0.66, 0.72, 0.80, 0.84, 0.90, 1.0.
func TestJoistSpanFactor(t *testing.T) {
	for _, c := range []struct {
		share                   measure.Length // the back span is this many cantilevers
		statics, table, printed float64
	}{
		{0, 0.64, 0.6667, 0.66}, {12, 0.7511, 0.7778, 0.72}, {10, 0.7744, 0.8, 0.80}, {8, 0.81, 0.8333, 0.84}, {6, 0.8711, 0.8889, 0.90}, {4, 1, 1, 1},
	} {
		cantilever := measure.Length(0)
		if c.share > 0 {
			cantilever = 120 * measure.Inch / c.share
		}
		statics, table, err := wood.JoistSpanFactor(120*measure.Inch, cantilever)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "statics", statics, c.statics, 5e-5)
		near(t, "table", table, c.table, 5e-5)
		near(t, "printed", table, c.printed, 0.06)
	}
}

func TestPointLoadsAndPatches(t *testing.T) {
	e, err := wood.Simple(10*measure.Foot).Envelope(1e8, []wood.Action{
		{From: 5 * measure.Foot, Force: force(t, "300 lb")},
		{From: 0, To: 10 * measure.Foot, Line: 10, Permanent: true},
	})
	if err != nil {
		t.Fatal(err)
	}
	near(t, "PL/4 + wL²/8", e.Sagging, 300*120/4.0+10.0/12*120*120/8, 1e-3)
	near(t, "least reaction", e.Reactions[0].Least, 50, 1e-4)
	near(t, "greatest reaction", e.Reactions[0].Most, 200, 1e-4)
	if e.SaggingAt != 5*measure.Foot {
		t.Errorf("greatest moment at %s", e.SaggingAt.Text(measure.Imperial))
	}
}

func TestLayoutErrors(t *testing.T) {
	f := measure.Foot
	line := []wood.Action{{To: 10 * f, Line: 10}}
	for name, c := range map[string]struct {
		layout    wood.Layout
		stiffness float64
		actions   []wood.Action
	}{
		"one support":      {wood.Layout{To: 10 * f, Supports: []measure.Length{0}}, 1, line},
		"too many":         {wood.Equal(500, f), 1, nil},
		"not rising":       {wood.Layout{To: 10 * f, Supports: []measure.Length{0, 5 * f, 5 * f}}, 1, line},
		"support beyond":   {wood.Layout{To: 10 * f, Supports: []measure.Length{0, 11 * f}}, 1, line},
		"no stiffness":     {wood.Simple(10 * f), 0, line},
		"nan stiffness":    {wood.Simple(10 * f), math.NaN(), line},
		"load beyond":      {wood.Simple(10 * f), 1, []wood.Action{{From: -f, To: f, Line: 1}}},
		"load past end":    {wood.Simple(10 * f), 1, []wood.Action{{From: f, To: 11 * f, Line: 1}}},
		"backward load":    {wood.Simple(10 * f), 1, []wood.Action{{From: f, To: f, Line: 1}}},
		"nan load":         {wood.Simple(10 * f), 1, []wood.Action{{To: f, Line: math.NaN()}}},
		"force beyond":     {wood.Simple(10 * f), 1, []wood.Action{{From: 11 * f, Force: 1}}},
		"zero-span layout": {wood.Simple(0), 1, nil},
	} {
		if _, err := c.layout.Envelope(c.stiffness, c.actions); err == nil {
			t.Errorf("%s: no error", name)
		}
	}
}
