package wood_test

import (
	"math"
	"testing"

	"plumbrule/checker/measure"
	"plumbrule/checker/wood"
)

// Source: NDS Supplement Table 1B, from memory; each follows from b and d by hand.
func TestSectionProperties(t *testing.T) {
	for _, c := range []struct {
		nominal string
		plies   int
		a, s, i float64
	}{
		{"2x4", 1, 5.25, 3.0625, 5.3594}, {"2x6", 1, 8.25, 7.5625, 20.7969}, {"2x8", 1, 10.875, 13.1406, 47.6348},
		{"2x10", 1, 13.875, 21.3906, 98.9316}, {"2x12", 1, 16.875, 31.6406, 177.9785}, {"3x10", 1, 23.125, 35.6510, 164.8861},
		{"4x4", 1, 12.25, 7.1458, 12.5052}, {"4x12", 1, 39.375, 73.8281, 415.2832}, {"6x6", 1, 30.25, 27.7292, 76.2552},
		{"8x8", 1, 56.25, 70.3125, 263.6719}, {"2x10", 3, 41.625, 64.1719, 296.7949},
	} {
		s, err := wood.SectionOf(size(t, c.nominal), c.plies)
		if err != nil {
			t.Fatal(err)
		}
		near(t, s.Name+" A", s.Area(), c.a, 5e-5)
		near(t, s.Name+" S", s.Modulus(), c.s, 5e-5)
		near(t, s.Name+" I", s.Inertia(), c.i, 5e-5)
	}
	flat, err := wood.SectionOf(size(t, "2x6"), 1)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "flat 2x6 S", flat.Flat().Modulus(), 5.5*1.5*1.5/6, 1e-9)
}

// Source: NDS 2018 Appendix D: Emin = E·(1 - 1.645·COV)·1.03/1.66 with COV 0.25 for visually graded lumber, to 10 000 psi.
func TestStabilityModulus(t *testing.T) {
	species := []wood.Species{
		wood.SouthernPine, wood.DouglasFirLarch, wood.HemFir, wood.SprucePineFir, wood.SprucePineFirSouth, wood.Redwood,
		wood.WesternCedars, wood.WesternWoods, wood.NorthernSpecies,
	}
	grades := []wood.Grade{
		wood.SelectStructural, wood.No1AndBetter, wood.No1, wood.No1OpenGrain, wood.No1No2, wood.No2, wood.No2OpenGrain, wood.No3,
	}
	found := 0
	for _, s := range species {
		for _, g := range grades {
			for _, nominal := range []string{"2x4", "2x6", "2x8", "2x10", "2x12", "6x6"} {
				section, err := wood.SectionOf(size(t, nominal), 1)
				if err != nil {
					t.Fatal(err)
				}
				r, err := wood.Lookup(s, g, section)
				if err != nil {
					continue
				}
				found++
				want := math.Round(r.E*(1-1.645*0.25)*1.03/1.66/1e4) * 1e4
				near(t, string(s)+" "+string(g)+" "+nominal+" Emin", r.Emin, want, 0)
				if r.Status != wood.Recalled || r.Note == "" || r.G < 0.35 || r.G > 0.55 {
					t.Errorf("%s %s %s: %+v", s, g, nominal, r)
				}
				if _, ok := wood.Density(r.G); !ok {
					t.Errorf("no density for G %g", r.G)
				}
			}
		}
	}
	if found < 150 {
		t.Errorf("only %d values found", found)
	}
}

// Each adjusted value by hand, from the recalled values and factors.
func TestAdjustedValues(t *testing.T) {
	for _, c := range []struct {
		name                        string
		lumber                      wood.Lumber
		duration                    wood.Duration
		repetitive                  bool
		profile                     wood.Profile
		fb, fv, fcPerp, fc, e, emin float64
	}{
		{ // 1000·1.15; wet but not above 1150
			"southern pine 2x6", no2(t, wood.SouthernPine, "2x6"), wood.TenYears, true, wood.Strict(),
			1150, 175 * 0.97, 565 * 0.67, 1400 * 0.8, 1.26e6, 459e3,
		},
		{ // 900·1.3 = 1170 is above 1150
			"incised Douglas fir-larch 2x6 under snow",
			wood.Lumber{Species: wood.DouglasFirLarch, Grade: wood.No2, Size: size(t, "2x6"), Wet: true, Incised: true},
			wood.TwoMonths, true, wood.Strict(),
			900 * 1.15 * 1.3 * 0.85 * 0.8 * 1.15, 180 * 1.15 * 0.97 * 0.8, 625 * 0.67, 1350 * 1.15 * 1.1 * 0.8 * 0.8, 1.6e6 * 0.9 * 0.95, 580e3 * 0.9 * 0.95,
		},
		{ // the 4-in column, and without a third ply no Cr
			"dry hem-fir 4x10", wood.Lumber{Species: wood.HemFir, Grade: wood.No1, Size: size(t, "4x10")}, wood.TenYears, false, wood.Strict(),
			975 * 1.2, 150, 405, 1350, 1.5e6, 550e3,
		},
		{
			"the same by the printed beam tables", wood.Lumber{Species: wood.HemFir, Grade: wood.No1, Size: size(t, "4x10")}, wood.TenYears, false, wood.TableBeams(),
			975 * 1.1, 150, 405, 1350, 1.5e6, 550e3,
		},
		{
			"three plies", wood.Lumber{Species: wood.HemFir, Grade: wood.No2, Size: size(t, "2x12"), Plies: 3, Wet: true}, wood.TenYears, false, wood.Strict(),
			850 * 1.15, 150 * 0.97, 405 * 0.67, 1300 * 0.8, 1.3e6 * 0.9, 470e3 * 0.9,
		},
		{
			"flat 2x6", wood.Lumber{Species: wood.HemFir, Grade: wood.No2, Size: size(t, "2x6"), Flat: true}, wood.TenYears, false, wood.Strict(),
			850 * 1.3 * 1.15, 150, 405, 1300 * 1.1, 1.3e6, 470e3,
		},
		{
			"wet 6x6 Douglas fir-larch", no2(t, wood.DouglasFirLarch, "6x6"), wood.TenYears, true, wood.Strict(),
			750, 170, 625 * 0.67, 700 * 0.91, 1.3e6, 470e3,
		},
		{
			"wet 6x6 southern pine", no2(t, wood.SouthernPine, "6x6"), wood.TenYears, false, wood.Strict(),
			850, 165, 375, 525, 1.2e6, 440e3,
		},
		{ // 4 in thick and 8 in or wider: ·1.1
			"southern pine 4x8", wood.Lumber{Species: wood.SouthernPine, Grade: wood.No2, Size: size(t, "4x8")}, wood.TenYears, false, wood.Strict(),
			925 * 1.1, 175, 565, 1350, 1.4e6, 510e3,
		},
		{ // wider than 12 in: 0.9 of the 12-in value
			"southern pine 2x14", wood.Lumber{Species: wood.SouthernPine, Grade: wood.No2, Size: size(t, "2x14")}, wood.Permanent, false, wood.Strict(),
			750 * 0.9 * 0.9, 175 * 0.9, 565, 1250 * 0.9 * 0.9, 1.4e6, 510e3,
		},
		{
			"hot and wet", wood.Lumber{Species: wood.HemFir, Grade: wood.No2, Size: size(t, "2x12"), Wet: true, Temperature: wood.UpTo150F}, wood.TenYears, false, wood.Strict(),
			850 * 0.5, 150 * 0.97 * 0.5, 405 * 0.67 * 0.5, 1300 * 0.8 * 0.5, 1.3e6 * 0.9 * 0.9, 470e3 * 0.9 * 0.9,
		},
	} {
		a, err := c.lumber.Adjust(c.duration, c.repetitive, c.profile)
		if err != nil {
			t.Errorf("%s: %v", c.name, err)
			continue
		}
		near(t, c.name+" Fb", a.Fb, c.fb, 1e-6)
		near(t, c.name+" Fv", a.Fv, c.fv, 1e-6)
		near(t, c.name+" Fc⊥", a.FcPerp, c.fcPerp, 1e-6)
		near(t, c.name+" Fc", a.Fc, c.fc, 1e-6)
		near(t, c.name+" E", a.E, c.e, 1e-3)
		near(t, c.name+" Emin", a.Emin, c.emin, 1e-3)
	}
}

// CL of a dry southern pine 2x10 No. 2 unbraced over 8 ft, by hand: lu/d = 10.4, le = 1.63·96 + 3·9.25 = 184.23 in,
// RB = √(184.23·9.25/2.25) = 27.521, FbE = 1.2·510000/757.4 = 808.0 psi, r = 1.0100, CL = 1.05790 - √(1.11915 - 1.06317).
func TestBeamStability(t *testing.T) {
	l := wood.Lumber{Species: wood.SouthernPine, Grade: wood.No2, Size: size(t, "2x10")}
	l.Brace = wood.Brace{Unbraced: 8 * measure.Foot}
	a, err := l.Adjust(wood.TenYears, false, wood.Strict())
	if err != nil {
		t.Fatal(err)
	}
	cl, _ := a.Report.Find("CL")
	near(t, "CL", cl.Value, 0.8213, 5e-4)
	near(t, "Fb", a.Fb, 800*cl.Value, 1e-9)

	last := 0.0
	for i, c := range []wood.Bracing{wood.CantileverPointAtTip, wood.SimpleUniform, wood.SimplePointAtCenter, wood.CantileverUniform} {
		l.Brace.Case = c
		a, err := l.Adjust(wood.TenYears, false, wood.Strict())
		if err != nil {
			t.Fatal(err)
		}
		if i > 1 && a.Fb <= last {
			t.Errorf("case %d: %g psi after %g", c, a.Fb, last)
		}
		last = a.Fb
	}
	l.Brace = wood.Brace{Unbraced: 60 * measure.Foot}
	if _, err := l.Adjust(wood.TenYears, false, wood.Strict()); err == nil {
		t.Error("a slenderness above 50 was accepted")
	}
	l.Size = size(t, "4x4")
	if a, err := l.Adjust(wood.TenYears, false, wood.Strict()); err != nil || a.Fb != 1100 {
		t.Errorf("a square section needs no bracing: %g psi, %v", a.Fb, err)
	}
}

func TestUnknownLumber(t *testing.T) {
	for name, l := range map[string]wood.Lumber{
		"no size":        {Species: wood.HemFir, Grade: wood.No2},
		"species":        {Species: "ipe", Grade: wood.No2, Size: size(t, "2x8")},
		"grade":          {Species: wood.HemFir, Grade: "stud", Size: size(t, "2x8")},
		"beam, stringer": {Species: wood.HemFir, Grade: wood.No2, Size: size(t, "6x12")},
		"deck board":     {Species: wood.HemFir, Grade: wood.No2, Size: size(t, "5/4x6")},
		"flat timber":    {Species: wood.HemFir, Grade: wood.No2, Size: size(t, "6x6"), Flat: true},
		"plies":          {Species: wood.HemFir, Grade: wood.No2, Plies: -1},
	} {
		if _, err := l.Adjust(wood.TenYears, false, wood.Strict()); err == nil {
			t.Errorf("%s: no error", name)
		}
	}
}

func TestParseSpeciesAndGrade(t *testing.T) {
	for text, want := range map[string]wood.Species{
		"Southern Pine": wood.SouthernPine, "douglas fir-larch": wood.DouglasFirLarch, "Hem-Fir": wood.HemFir,
		"S-P-F": wood.SprucePineFir, "spruce-pine-fir": wood.SprucePineFir, "SPF (South)": wood.SprucePineFirSouth,
		"western red cedar": wood.WesternCedars, "Ponderosa Pine": wood.WesternWoods, "red pine": wood.NorthernSpecies,
		"redwood": wood.Redwood, "pine": "", "fir": "", "radiata pine": "", "": "",
	} {
		if got, ok := wood.ParseSpecies(text); got != want || ok != (want != "") {
			t.Errorf("%q is %q, %t", text, got, ok)
		}
	}
	for text, want := range map[string]wood.Grade{
		"No. 2": wood.No2, "#2": wood.No2, "no 2 and better": wood.No2, "No.1": wood.No1, "Select Structural": wood.SelectStructural,
		"SS": wood.SelectStructural, "No. 1 & Btr": wood.No1AndBetter, "No. 1/No. 2": wood.No1No2, "No. 2 open grain": wood.No2OpenGrain,
		"C24": "", "SG8": "", "": "",
	} {
		if got, ok := wood.ParseGrade(text); got != want || ok != (want != "") {
			t.Errorf("%q is %q, %t", text, got, ok)
		}
	}
	for _, g := range []wood.Grade{wood.SelectStructural, wood.No1AndBetter, wood.No1, wood.No1OpenGrain, wood.No1No2, wood.No2, wood.No2OpenGrain, wood.No3} {
		if got, ok := wood.ParseGrade(string(g)); got != g || !ok {
			t.Errorf("%q reads as %q", g, got)
		}
	}
}
