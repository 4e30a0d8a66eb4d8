package wood_test

import (
	"math"
	"testing"

	"plumbrule/checker/measure"
	"plumbrule/checker/wood"
)

// A dry southern pine 6x6 No. 2 of 10 ft by hand: le/d = 120/5.5 = 21.818, FcE = 0.822·440000/476.03 = 759.8 psi,
// r = 759.8/525 = 1.4472, CP = 1.52951 - √(2.33940 - 1.80903) = 0.80124, so 525·0.80124·30.25 = 12 725 lb.
func TestColumn(t *testing.T) {
	l := no2(t, wood.SouthernPine, "6x6")
	p := wood.Post{Lumber: l, Load: force(t, "12725 lb")}
	c, err := p.Check(10*measure.Foot, wood.Strict())
	if err != nil {
		t.Fatal(err)
	}
	cp, _ := c.Report.Find("CP")
	near(t, "CP", cp.Value, 0.8012, 1e-4)
	near(t, "ratio", c.Worst().Ratio(), 1, 1e-4)
	h, err := p.MaxHeight(wood.Strict())
	if err != nil {
		t.Fatal(err)
	}
	near(t, "height", in(h.Length), 120, 0.05)

	p.End = wood.FixedFree
	free, err := p.MaxHeight(wood.Strict())
	if err != nil {
		t.Fatal(err)
	}
	near(t, "height with a free head", in(free.Length), in(h.Length)/2.1, 1e-6)
}

// The greatest height uses the post up; a little less height uses less; eccentricity costs height.
func TestMaxHeight(t *testing.T) {
	for _, nominal := range []string{"4x4", "4x6", "6x6", "8x8"} {
		last := math.Inf(1)
		for e := measure.Length(0); e <= 2*measure.Inch; e += measure.Inch / 2 {
			p := wood.Post{Lumber: no2(t, wood.DouglasFirLarch, nominal), Load: force(t, "5000 lb"), Eccentricity: e}
			h, err := p.MaxHeight(wood.Strict())
			if err != nil {
				t.Fatal(err)
			}
			if h.Governs == wood.ByColumn && h.Length > 0 {
				c, err := p.Check(h.Length, wood.Strict())
				if err != nil {
					t.Fatal(err)
				}
				near(t, "ratio", c.Worst().Ratio(), 1, 1e-6)
			}
			if in(h.Length) > last {
				t.Errorf("%s: %g in at an eccentricity of %g in, %g in before", nominal, in(h.Length), in(e), last)
			}
			last = in(h.Length)
		}
	}
}

func TestPostErrors(t *testing.T) {
	good := wood.Post{Lumber: no2(t, wood.SouthernPine, "4x4"), Load: force(t, "1000 lb")}
	if _, err := good.Check(20*measure.Foot, wood.Strict()); err == nil {
		t.Error("a slenderness above 50 was accepted")
	}
	if _, err := good.Check(0, wood.Strict()); err == nil {
		t.Error("no height was accepted")
	}
	none, plies := good, good
	none.Load, plies.Lumber.Plies = 0, 2
	for _, p := range []wood.Post{none, plies} {
		if _, err := p.MaxHeight(wood.Strict()); err == nil {
			t.Errorf("%+v was accepted", p)
		}
	}
	heavy := good
	heavy.Load = force(t, "100 kip")
	if h, err := heavy.MaxHeight(wood.Strict()); err != nil || h.Length != 0 {
		t.Errorf("under 100 kip a 4x4 stands %s, %v", h.Length.Text(measure.Imperial), err)
	}
	if _, err := wood.TablePostHeight(wood.HemFir, 6*measure.Foot, 6*measure.Foot); err == nil {
		t.Error("hem-fir post heights were not reproduced")
	}
	if _, err := wood.TablePostHeightByArea(wood.GroupCedars, size(t, "4x4"), 20, pressure(t, "40 psf")); err == nil {
		t.Error("post heights of cedars were not reproduced")
	}
}

// Without what was fitted, the concentric column is 2 to 5 ft above the heights of DCA 6 Table 4 at heavy loads.
func TestConcentricPostsAreTooTall(t *testing.T) {
	p := wood.Post{Lumber: no2(t, wood.SouthernPine, "6x6"), Load: force(t, "12315 lb"), Longest: 14 * measure.Foot}
	h, err := p.MaxHeight(wood.Strict())
	if err != nil {
		t.Fatal(err)
	}
	const printed = 5 // ft, joists and beam of 18 ft
	if over := in(h.Length)/12 - printed; over < 2 || over > 6 {
		t.Errorf("%g ft above the printed height", over)
	}
}

func TestFooting(t *testing.T) {
	f := wood.Footing{Load: force(t, "4500 lb"), Soil: pressure(t, "1500 psf"), Shape: wood.Square}
	s, err := f.Size()
	if err != nil {
		t.Fatal(err)
	}
	near(t, "side of 3 ft²", in(s.Side), 12*math.Sqrt(3), 1e-6)
	f.Shape, f.Weighed, f.Post = wood.Round, true, 11*measure.Inch/2
	weighed, err := f.Size()
	if err != nil {
		t.Fatal(err)
	}
	net := 1500 - 150*in(weighed.Thickness)/12
	near(t, "diameter", in(weighed.Side), 12*math.Sqrt(4*4500/net/math.Pi), 1e-6)
	if want := math.Ceil((in(weighed.Side) - 5.5) / 2); in(weighed.Thickness) != want {
		t.Errorf("%g in thick, want %g", in(weighed.Thickness), want)
	}
	for _, bad := range []wood.Footing{{}, {Load: f.Load}, {Load: f.Load, Soil: pressure(t, "60 psf"), Weighed: true}} {
		if _, err := bad.Size(); err == nil {
			t.Errorf("%+v has a size", bad)
		}
	}
	// A pier of 15 in and 42 in: π/4·1.25²·3.5 = 4.295 ft³
	near(t, "concrete", wood.Round.Concrete(15*measure.Inch, 42*measure.Inch), 4.295, 5e-4)
	near(t, "concrete", wood.Square.Concrete(24*measure.Inch, 12*measure.Inch), 4, 1e-12)
}
