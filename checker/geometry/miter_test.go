package geometry_test

import (
	"math"
	"testing"

	"plumbrule/checker/geometry"
)

func TestMiter(t *testing.T) {
	for interior, want := range map[float64]float64{135: 22.5, 90: 45, 180: 0, 270: 45, 225: 22.5} {
		if got, err := geometry.Miter(interior); got != want || err != nil {
			t.Errorf("at %v got %v, %v; want %v", interior, got, err, want)
		}
	}
	for _, bad := range []float64{0, 360, -45, 400, math.NaN(), math.Inf(1)} {
		if got, err := geometry.Miter(bad); err == nil {
			t.Errorf("at %v got %v, want an error", bad, got)
		}
	}
}

func TestUnequalMiter(t *testing.T) {
	a, b, err := geometry.UnequalMiter(inches(5, 1, 2), inches(3, 1, 2), 90)
	if err != nil {
		t.Fatal(err)
	}
	wantDegrees(t, "the saw for the wide board", a, 32.47, 2)
	wantDegrees(t, "the saw for the narrow board", b, 57.53, 2)
	for _, interior := range []float64{30, 60, 90, 120, 135, 175, 225, 270} {
		equal, err := geometry.Miter(interior)
		if err != nil {
			t.Fatal(err)
		}
		a, b, err := geometry.UnequalMiter(inches(5, 1, 2), inches(5, 1, 2), interior)
		if err != nil {
			t.Fatal(err)
		}
		wantDegrees(t, "equal widths", a, equal, 9)
		wantDegrees(t, "equal widths", b, equal, 9)
		a, b, err = geometry.UnequalMiter(inches(5, 1, 2), inches(3, 1, 2), interior)
		if err != nil {
			t.Fatal(err)
		}
		// Both cut faces are the joint, so they are equally long.
		if one, other := 5.5/math.Cos(a*math.Pi/180), 3.5/math.Cos(b*math.Pi/180); math.Abs(one-other) > 1e-9 {
			t.Errorf("at %v the faces are %v and %v long", interior, one, other)
		}
		wantDegrees(t, "both settings together", a+b, 2*equal, 9)
	}
	if a, _, err := geometry.UnequalMiter(inches(5, 1, 2), inches(1, 1, 2), 150); err != nil || a >= 0 {
		t.Errorf("a board much wider leans the other way: got %v, %v", a, err)
	}
	if _, _, err := geometry.UnequalMiter(0, 1, 90); err == nil {
		t.Error("a width of nothing must be refused")
	}
	if _, _, err := geometry.UnequalMiter(1, 1, 0); err == nil {
		t.Error("an angle of nothing must be refused")
	}
}
