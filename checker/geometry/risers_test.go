package geometry_test

import (
	"testing"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
)

func TestRisers(t *testing.T) {
	mm := measure.Millimetre
	cases := []struct {
		total, limit measure.Length
		count        int
		unit         float64
	}{
		{inches(52, 0, 1), inches(7, 3, 4), 7, 7.4286},
		{inches(33, 1, 2), inches(7, 3, 4), 5, 6.7},
		{inches(71, 1, 4), inches(7, 1, 2), 10, 7.125},
		{inches(31, 0, 1), inches(7, 3, 4), 4, 7.75}, // exactly at the limit
		{inches(7, 0, 1), inches(7, 3, 4), 1, 7},
	}
	for _, c := range cases {
		f, err := geometry.Risers(c.total, c.limit)
		if err != nil {
			t.Fatal(err)
		}
		if f.Risers() != c.count || f.Treads != c.count-1 {
			t.Errorf("%v in has %d risers and %d treads, want %d", decimal(c.total), f.Risers(), f.Treads, c.count)
		}
		wantInches(t, "a riser", f.Rise.Length(), c.unit, 4)
	}
	f, err := geometry.Risers(1143*mm, 190*mm)
	if err != nil {
		t.Fatal(err)
	}
	if f.Risers() != 7 || f.Rise.Length() != 163_285_714 {
		t.Errorf("1143 mm has %d risers of %d nm, want 7 of 163.286 mm", f.Risers(), f.Rise.Length())
	}
	for _, bad := range [][2]measure.Length{{0, 1}, {1, 0}, {measure.Metre, 1}} {
		if got, err := geometry.Risers(bad[0], bad[1]); err == nil {
			t.Errorf("%v got %+v, want an error", bad, got)
		}
	}
}

func TestRisersOnFallingGround(t *testing.T) {
	limit := inches(7, 3, 4)
	d := geometry.Descent{AtEdge: inches(40, 0, 1), Fall: measure.Slope{Rise: 1, Run: 16}, Run: inches(10, 1, 2)}
	f, err := d.Risers(limit)
	if err != nil {
		t.Fatal(err)
	}
	if f.Risers() != 6 {
		t.Errorf("%d risers, want 6", f.Risers())
	}
	wantInches(t, "a riser", f.Rise.Length(), 7.2135, 4)
	wantInches(t, "the total rise", f.Rise.Over, 43.28, 2)

	// The rise at the edge alone would take five of 7.2 in, and leave a last one
	// of 10-1/2 in where the ground has fallen.
	d = geometry.Descent{AtEdge: inches(36, 0, 1), Fall: measure.Slope{Rise: 1, Run: 12}, Run: inches(10, 0, 1)}
	f, err = d.Risers(limit)
	if err != nil {
		t.Fatal(err)
	}
	if f.Risers() != 6 {
		t.Errorf("%d risers, want 6", f.Risers())
	}
	wantInches(t, "a riser", f.Rise.Length(), 6.694, 3)
	five, err := d.Total(5)
	if err != nil {
		t.Fatal(err)
	}
	wantInches(t, "the last of five at 7.2", five-4*inches(7, 1, 5), 10.53, 2)
}

// The closed form gives what trying one riser after the other gives.
func TestRisersOnSlopesAgainstTrying(t *testing.T) {
	rnd := random(21)
	landed := 0
	for range 2000 {
		d := geometry.Descent{
			AtEdge:   inches(2+rnd.Int64N(120), rnd.Int64N(16), 16),
			Fall:     measure.Slope{Rise: rnd.Int64N(9) - 4, Run: 5 + rnd.Int64N(30)},
			Run:      inches(9+rnd.Int64N(5), rnd.Int64N(4), 4),
			FlushTop: rnd.IntN(2) == 0,
		}
		limit := inches(6, rnd.Int64N(32), 16)
		want := 0
		for n := 1; n <= geometry.MaxParts; n++ {
			total, err := d.Total(n)
			if err != nil {
				break // the ground has risen to the decking
			}
			if (geometry.Pitch{Over: total, Parts: int64(n)}).Compare(limit) <= 0 {
				want = n
				break
			}
		}
		f, err := d.Risers(limit)
		if want == 0 {
			if err == nil {
				t.Fatalf("%+v: got %+v, trying finds none", d, f)
			}
			continue
		}
		landed++
		if err != nil || f.Risers() != want {
			t.Fatalf("%+v at %v: got %d risers, %v; trying finds %d", d, decimal(limit), f.Risers(), err, want)
		}
		if treads := want - 1; d.FlushTop && f.Treads != want || !d.FlushTop && f.Treads != treads {
			t.Fatalf("%d treads with %d risers", f.Treads, want)
		}
	}
	if landed < 1000 {
		t.Errorf("only %d stairs landed; the test looks at too few", landed)
	}
}

func TestLevelGroundIsNoSlope(t *testing.T) {
	plain, err := geometry.Risers(inches(52, 0, 1), inches(7, 3, 4))
	if err != nil {
		t.Fatal(err)
	}
	for _, level := range []measure.Slope{{}, {Rise: 0, Run: 1}} {
		d := geometry.Descent{AtEdge: inches(52, 0, 1), Fall: level, Run: inches(10, 0, 1)}
		if got, err := d.Risers(inches(7, 3, 4)); err != nil || got != plain {
			t.Errorf("level as %+v: got %+v, %v; want %+v", level, got, err, plain)
		}
	}
}

func TestDescentRefuses(t *testing.T) {
	good := geometry.Descent{AtEdge: inches(40, 0, 1), Run: inches(10, 0, 1)}
	with := func(f func(*geometry.Descent)) geometry.Descent {
		d := good
		f(&d)
		return d
	}
	cases := []struct {
		name  string
		d     geometry.Descent
		limit measure.Length
		want  string
	}{
		{"no rise", with(func(d *geometry.Descent) { d.AtEdge = 0 }), inches(7, 0, 1), "the rise at the edge must be more than zero"},
		{"no run", with(func(d *geometry.Descent) { d.Run = 0 }), inches(7, 0, 1), "the run of a tread must be more than zero"},
		{"no limit", good, 0, "the riser's limit must be more than zero"},
		{"a cliff", with(func(d *geometry.Descent) { d.Fall = measure.Slope{Rise: 1} }), inches(7, 0, 1), "the fall of the ground has no run"},
		{"a bank", with(func(d *geometry.Descent) { d.Fall = measure.Slope{Rise: 3, Run: 2} }), inches(7, 0, 1), "the ground is steeper than 45 degrees"},
		{"as steep as the stair", with(func(d *geometry.Descent) { d.Fall = measure.Slope{Rise: 7, Run: 10} }), inches(7, 0, 1), "the ground falls away as fast as the stair descends"},
		{"nearly as steep", with(func(d *geometry.Descent) { d.Fall = measure.Slope{Rise: 69_999, Run: 100_000} }), inches(7, 0, 1), "330001 risers are more than the 10000 that are worked out"},
		{"rising to meet it", with(func(d *geometry.Descent) { d.Fall = measure.Slope{Rise: -1, Run: 1}; d.Run = feet(9, 0, 0) }), inches(7, 0, 1), "the ground rises to the decking before the stair lands"},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			if got, err := c.d.Risers(c.limit); err == nil || err.Error() != c.want {
				t.Errorf("got %+v, %v; want %s", got, err, c.want)
			}
		})
	}
	if _, err := good.Total(0); err == nil {
		t.Error("a stair of no risers must be refused")
	}
}

func TestInclineAndThroat(t *testing.T) {
	f, err := geometry.Risers(inches(52, 0, 1), inches(7, 3, 4))
	if err != nil {
		t.Fatal(err)
	}
	run := inches(10, 1, 4)
	angle, err := geometry.Incline(f.Rise.Length(), run)
	if err != nil {
		t.Fatal(err)
	}
	wantDegrees(t, "the incline", angle, 35.932, 3)
	throat, err := geometry.Throat(inches(11, 1, 4), f.Rise.Length(), run)
	if err != nil {
		t.Fatal(err)
	}
	wantInches(t, "the throat", throat, 5.235, 3)
	if through, err := geometry.Throat(inches(5, 1, 2), f.Rise.Length(), run); err != nil || through >= 0 {
		t.Errorf("the notch goes through, got %d, %v", through, err)
	}
	if _, err := geometry.Incline(0, run); err == nil {
		t.Error("a riser of nothing must be refused")
	}
	if _, err := geometry.Throat(0, 1, 1); err == nil {
		t.Error("a stringer of nothing must be refused")
	}
}
