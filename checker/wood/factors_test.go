package wood_test

import (
	"strconv"
	"testing"

	"plumbrule/checker/measure"
	"plumbrule/checker/wood"
)

// step reads one step of the adjusted values of dry hem-fir No. 2.
func step(t *testing.T, nominal, name string, flat bool) float64 {
	t.Helper()
	l := wood.Lumber{Species: wood.HemFir, Grade: wood.No2, Size: size(t, nominal), Flat: flat}
	a, err := l.Adjust(wood.TenYears, false, wood.Strict())
	if err != nil {
		t.Fatal(err)
	}
	s, ok := a.Report.Find(name)
	if !ok {
		t.Fatalf("%s: no step %s", nominal, name)
	}
	return s.Value
}

// Source: NDS Supplement Table 4A, size factors and flat use factors, from memory.
func TestSizeFactors(t *testing.T) {
	for nominal, want := range map[string][3]float64{ // CF for Fb, CF for Fc, Cfu
		"2x2": {1.5, 1.15, 1}, "2x3": {1.5, 1.15, 1}, "2x4": {1.5, 1.15, 1.1}, "2x5": {1.4, 1.1, 1.1}, "2x6": {1.3, 1.1, 1.15},
		"2x8": {1.2, 1.05, 1.15}, "2x10": {1.1, 1, 1.2}, "2x12": {1, 1, 1.2}, "2x14": {0.9, 0.9, 1.2},
		"4x4": {1.5, 1.15, 1}, "4x6": {1.3, 1.1, 1.05}, "4x8": {1.3, 1.05, 1.05}, "4x10": {1.2, 1, 1.1}, "4x12": {1.1, 1, 1.1},
		"4x14": {1, 0.9, 1.1},
	} {
		near(t, nominal+" CF", step(t, nominal, "CF", false), want[0], 0)
		near(t, nominal+" CF for Fc", step(t, nominal, "CF_Fc", false), want[1], 0)
		near(t, nominal+" flat CF", step(t, nominal, "CF", true), want[0], 0)
		near(t, nominal+" Cfu", step(t, nominal, "Cfu", true), want[2], 0)
	}
	// 14x14: (12/13.5)^(1/9) = 0.98700
	near(t, "14x14 CF", step(t, "14x14", "CF", false), 0.98700, 1e-5)
}

// Source: NDS 2.3.2, 11.3.3 and Appendix G, from memory.
func TestNamedFactors(t *testing.T) {
	for d, want := range map[wood.Duration]float64{
		wood.Permanent: 0.9, wood.TenYears: 1, wood.TwoMonths: 1.15, wood.SevenDays: 1.25, wood.TenMinutes: 1.6, wood.Impact: 2,
	} {
		near(t, d.String(), d.Factor(), want, 0)
	}
	for e, want := range map[wood.End]float64{
		wood.PinnedPinned: 1, wood.FixedFixed: 0.65, wood.FixedPinned: 0.8, wood.FixedSliding: 1.2, wood.FixedFree: 2.1, wood.PinnedSliding: 2.4,
	} {
		near(t, "Ke of "+strconv.Itoa(int(e)), e.Ke(), want, 0)
	}
	for s, want := range map[wood.ConnectionService]float64{wood.DryThroughout: 1, wood.WetInService: 0.7, wood.WetThenDry: 0.4} {
		near(t, "CM of "+strconv.Itoa(int(s)), s.Factor(), want, 0)
	}
}

// A bearing of 3 in away from the ends has Cb = 3.375/3 = 1.125; at an end it has none.
func TestBearingAreaFactor(t *testing.T) {
	b := beamOf(t, "2x10", 2)
	b.Limits.Bearing = 3 * measure.Inch
	c, err := b.Check(wood.Equal(2, 7*measure.Foot), wood.Strict())
	if err != nil {
		t.Fatal(err)
	}
	var limits []float64
	for _, d := range c.Demands {
		if d.Criterion == wood.ByBearing {
			limits = append(limits, d.Limit/(565*0.67))
		}
	}
	if len(limits) != 3 {
		t.Fatalf("%d bearings", len(limits))
	}
	near(t, "end", limits[0], 1, 1e-12)
	near(t, "middle", limits[1], 1.125, 1e-12)
	near(t, "other end", limits[2], 1, 1e-12)
}

// A tip's force is a person, not snow: it earns no load duration factor above 1.
func TestTipForceIsNotSnow(t *testing.T) {
	j := wood.Joist{Lumber: no2(t, wood.SouthernPine, "2x10"), Spacing: 16 * measure.Inch, Load: live40(t), Limits: wood.CodeLimits()}
	j.Load.Duration = wood.TwoMonths
	c, err := j.Check(wood.Overhang(10*measure.Foot, 2*measure.Foot), wood.Strict())
	if err != nil {
		t.Fatal(err)
	}
	limits := map[wood.Criterion][]float64{}
	for _, d := range c.Demands {
		limits[d.Criterion] = append(limits[d.Criterion], d.Limit)
	}
	near(t, "Fb′ under snow", limits[wood.ByBending][0], 800*1.15*1.15, 1e-6)
	near(t, "Fb′ over the support under snow", limits[wood.ByBendingAtSupport][0], 800*1.15*1.15, 1e-6)
	near(t, "Fb′ under a person", limits[wood.ByBendingAtSupport][1], 800*1.15, 1e-6)
}
