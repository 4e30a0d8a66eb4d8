package geometry_test

import (
	"slices"
	"testing"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
)

const (
	quarter = 90 * measure.Degree
	eighth  = 45 * measure.Degree
)

func walk(t *testing.T, legs ...geometry.Leg) (geometry.Ring, geometry.Closure) {
	t.Helper()
	r, c, err := geometry.Walk(legs)
	if err != nil {
		t.Fatal(err)
	}
	return r, c
}

func TestWalkRoundARectangleCloses(t *testing.T) {
	long, short := feet(16, 0, 0), feet(12, 0, 0)
	r, c := walk(t, geometry.Leg{long, quarter}, geometry.Leg{short, quarter}, geometry.Leg{long, quarter}, geometry.Leg{short, quarter})
	if c != (geometry.Closure{}) {
		t.Errorf("closure is %+v, want none", c)
	}
	want := inFeet([2]int64{0, 0}, [2]int64{16, 0}, [2]int64{16, 12}, [2]int64{0, 12})
	if !slices.Equal(r, want) || !r.Clockwise() {
		t.Errorf("got %v, want %v", r, want)
	}
}

// 2'-10" is the tape's reading of a clip that is 24 in either way: 33.941 in.
func TestWalkOverAClipMisses(t *testing.T) {
	r, c := walk(t,
		geometry.Leg{feet(16, 0, 0), quarter}, geometry.Leg{feet(10, 0, 0), eighth}, geometry.Leg{feet(2, 10, 0), eighth},
		geometry.Leg{feet(14, 0, 0), quarter}, geometry.Leg{feet(12, 0, 0), quarter})
	wantInches(t, "the miss", c.Miss, 0.059, 3)
	if c.Turn != 0 {
		t.Errorf("turns are off by %d", c.Turn)
	}
	if len(r) != 5 {
		t.Errorf("%d corners, want 5", len(r))
	}
	exact := geometry.Diagonal(feet(2, 0, 0), feet(2, 0, 0))
	_, c = walk(t,
		geometry.Leg{feet(16, 0, 0), quarter}, geometry.Leg{feet(10, 0, 0), eighth}, geometry.Leg{exact, eighth},
		geometry.Leg{feet(14, 0, 0), quarter}, geometry.Leg{feet(12, 0, 0), quarter})
	if c.Miss > 1 {
		t.Errorf("with the true clip the walk misses by %d nm", c.Miss)
	}
}

func TestWalkWithTurnsOffSquareMisses(t *testing.T) {
	half := measure.Degree / 2
	_, c := walk(t,
		geometry.Leg{inches(192, 0, 1), quarter - half}, geometry.Leg{inches(144, 0, 1), quarter + half},
		geometry.Leg{inches(191, 1, 2), quarter}, geometry.Leg{inches(144, 0, 1), quarter})
	wantInches(t, "the miss", c.Miss, 1.757, 3)
	if c.Turn != 0 {
		t.Errorf("turns are off by %d", c.Turn)
	}
}

func TestWalkReportsMissingTurns(t *testing.T) {
	_, c := walk(t, geometry.Leg{100, quarter}, geometry.Leg{100, quarter}, geometry.Leg{100, quarter}, geometry.Leg{100, 89 * measure.Degree})
	if c.Turn != -measure.Degree || c.Miss != 0 {
		t.Errorf("got %+v, want a closed walk one degree short", c)
	}
}

func TestWalkTurnsLeftToo(t *testing.T) {
	// An L: the fourth corner turns back to the left.
	r, c := walk(t,
		geometry.Leg{feet(10, 0, 0), quarter}, geometry.Leg{feet(4, 0, 0), quarter}, geometry.Leg{feet(6, 0, 0), -quarter},
		geometry.Leg{feet(5, 0, 0), quarter}, geometry.Leg{feet(4, 0, 0), quarter}, geometry.Leg{feet(9, 0, 0), quarter})
	if c != (geometry.Closure{}) {
		t.Errorf("closure is %+v", c)
	}
	want := inFeet([2]int64{0, 0}, [2]int64{10, 0}, [2]int64{10, 4}, [2]int64{4, 4}, [2]int64{4, 9}, [2]int64{0, 9})
	if !slices.Equal(r, want) {
		t.Errorf("got %v, want %v", r, want)
	}
}

// Every ring walked from its own lengths and angles closes, whatever its turns.
func TestWalkRetracesARing(t *testing.T) {
	rnd := random(13)
	for n := range 200 {
		r := star(rnd, 3+n%9, measure.Inch)
		angles := r.InteriorAngles()
		var legs []geometry.Leg
		for i := range r {
			turn := measure.Angle((180 - angles[(i+1)%len(r)]) * float64(measure.Degree))
			legs = append(legs, geometry.Leg{Go: r.EdgeLength(i), Turn: turn})
		}
		back, c := walk(t, legs...)
		// Turns lose up to a micro-degree each: 2e-8 of a few metres per corner.
		if c.Miss > 12*2*1e3*measure.Length(len(r)) {
			t.Fatalf("misses by %d nm: %v", c.Miss, r)
		}
		if d := back.Area() - r.Area(); d > r.Area()/1e5 || -d > r.Area()/1e5 {
			t.Fatalf("area %d became %d", r.Area(), back.Area())
		}
	}
}

func TestWalkRefuses(t *testing.T) {
	ok := geometry.Leg{Go: 100, Turn: quarter}
	cases := []struct {
		name string
		legs []geometry.Leg
		want string
	}{
		{"two legs", []geometry.Leg{ok, ok}, "a walk needs three legs, this has 2"},
		{"a leg of nothing", []geometry.Leg{ok, {Go: 0, Turn: quarter}, ok}, "edge 2 has no length"},
		{"a leg backwards", []geometry.Leg{ok, ok, {Go: -1, Turn: quarter}}, "edge 3 has no length"},
		{"a full turn", []geometry.Leg{{Go: 1, Turn: measure.MaxAngle}, ok, ok}, "edge 1 ends with a full turn or more"},
		{"too far", []geometry.Leg{ok, {Go: geometry.Reach + 1}, ok}, "edge 2 leads too far to be reckoned with"},
		{"too far together", []geometry.Leg{{Go: geometry.Reach}, {Go: geometry.Reach}, ok}, "edge 2 leads too far to be reckoned with"},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			if _, _, err := geometry.Walk(c.legs); err == nil || err.Error() != c.want {
				t.Errorf("got %v, want %s", err, c.want)
			}
		})
	}
}
