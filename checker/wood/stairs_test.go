package wood_test

import (
	"testing"

	"plumbrule/checker/measure"
	"plumbrule/checker/wood"
)

// Source: DCA 6 prints 6 ft 0 in for cut and 13 ft 3 in for solid 2x12 stringers. Both follow from northern species, two
// stringers under 36 in of stair and 50 psf, which is an inference from one number each.
func TestPublishedStringerSpans(t *testing.T) {
	s := wood.Stringer{Lumber: no2(t, wood.NorthernSpecies, "2x12"), Throat: 41 * measure.Inch / 8, Width: 18 * measure.Inch, Load: live40(t)}
	cut, err := s.MaxSpan(wood.Strict())
	if err != nil {
		t.Fatal(err)
	}
	near(t, "cut stringer in ft", in(cut.Length)/12, 6.04, 0.005)
	if cut.Governs != wood.ByBending {
		t.Errorf("%s governs", cut.Governs)
	}
	s.Throat = 0
	solid, err := s.MaxSpan(wood.Strict())
	if err != nil {
		t.Fatal(err)
	}
	near(t, "solid stringer in in", in(solid.Length), 159.1, 0.05)

	s.Throat = 12 * measure.Inch
	if _, err := s.MaxSpan(wood.Strict()); err == nil {
		t.Error("a throat deeper than the stringer was accepted")
	}
}

// 200 lb at 36 in, connectors 4 and 8 in below the surface: 200·44/4 = 2200 lb up there, 200·40/4 = 2000 lb down there,
// 600 lb·ft at the surface.
func TestGuardPost(t *testing.T) {
	g := wood.GuardPost{Force: force(t, "200 lb"), Height: 36 * measure.Inch, Upper: 4 * measure.Inch, Lower: 8 * measure.Inch}
	b, err := g.Base()
	if err != nil {
		t.Fatal(err)
	}
	near(t, "moment", b.Moment, 600, 1e-6)
	near(t, "tension", lb(b.Tension), 2200, 1e-5)
	near(t, "press", lb(b.Press), 2000, 1e-5)
	near(t, "balance", lb(b.Tension)-lb(b.Press), 200, 1e-5)
	if b.Lever != 4*measure.Inch {
		t.Errorf("lever %d", b.Lever)
	}
	// A 4x4: 7200/7.1458 = 1007.6 psi.
	c, err := g.Bending(no2(t, wood.SouthernPine, "4x4"), wood.TenMinutes, wood.Strict())
	if err != nil {
		t.Fatal(err)
	}
	near(t, "fb", c.Worst().Have, 1007.6, 0.05)
	near(t, "Fb′", c.Worst().Limit, 1100*1.6, 1e-9)
	for name, bad := range map[string]wood.GuardPost{
		"no force":    {Height: measure.Foot, Lower: 1},
		"no lever":    {Force: 1, Height: measure.Foot, Upper: 2, Lower: 2},
		"upside down": {Force: 1, Height: measure.Foot, Upper: 3, Lower: 2},
		"fixity":      {Force: 1, Height: measure.Foot, Upper: 1, Lower: 2, Fixity: 3},
	} {
		if _, err := bad.Base(); err == nil {
			t.Errorf("%s: no error", name)
		}
		if _, err := bad.Bending(no2(t, wood.SouthernPine, "4x4"), wood.TenMinutes, wood.Strict()); err == nil {
			t.Errorf("%s: no error in bending", name)
		}
	}
}
