package geometry_test

import (
	"math"
	"testing"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
)

func seg(ax, ay, bx, by measure.Length) geometry.Segment {
	return geometry.Segment{A: geometry.Point{X: ax, Y: ay}, B: geometry.Point{X: bx, Y: by}}
}

func TestCrossings(t *testing.T) {
	s := seg(0, 0, 300, 100)
	if y, ok := s.CrossX(100); !ok || y != 33 {
		t.Errorf("at x = 100 got %d %v, want 33", y, ok)
	}
	if x, ok := s.CrossY(50); !ok || x != 150 {
		t.Errorf("at y = 50 got %d %v, want 150", x, ok)
	}
	for _, c := range []measure.Length{-1, 301} {
		if _, ok := s.CrossX(c); ok {
			t.Errorf("the segment does not reach x = %d", c)
		}
	}
	for _, c := range []measure.Length{0, 300} {
		if y, ok := s.CrossX(c); !ok || y != c/3 {
			t.Errorf("the end at x = %d got %d %v", c, y, ok)
		}
	}
	if _, ok := seg(7, 0, 7, 9).CrossX(7); ok {
		t.Error("a segment along the line has no single crossing")
	}
	// The widest segment there is must neither overflow nor panic.
	if y, ok := seg(math.MinInt64, math.MinInt64, math.MaxInt64, math.MaxInt64).CrossX(12); !ok || y != 12 {
		t.Errorf("across everything got %d %v, want 12", y, ok)
	}
}

func TestBothWaysOfASegmentCrossAlike(t *testing.T) {
	rnd := random(4)
	for range 2000 {
		s := seg(anywhere(rnd), anywhere(rnd), anywhere(rnd), anywhere(rnd))
		c := (s.A.X + s.B.X) / 2
		y, ok := s.CrossX(c)
		back, okBack := s.Reverse().CrossX(c)
		if y != back || ok != okBack {
			t.Fatalf("%v crosses at %d and %d", s, y, back)
		}
	}
}

func TestIntersect(t *testing.T) {
	cases := []struct {
		name     string
		s, t     geometry.Segment
		want     geometry.Segment
		together bool
	}{
		{"cross", seg(0, 0, 10, 10), seg(0, 10, 10, 0), seg(5, 5, 5, 5), true},
		{"cross, rounded", seg(0, 0, 10, 10), seg(0, 7, 10, 7), seg(7, 7, 7, 7), true},
		{"end on the other", seg(0, 0, 10, 0), seg(4, 0, 4, 9), seg(4, 0, 4, 0), true},
		{"parallel", seg(0, 0, 10, 0), seg(0, 1, 10, 1), geometry.Segment{}, false},
		{"short of it", seg(0, 0, 10, 0), seg(4, 1, 4, 9), geometry.Segment{}, false},
		{"in line, apart", seg(0, 0, 10, 0), seg(11, 0, 19, 0), geometry.Segment{}, false},
		{"in line, overlapping", seg(0, 0, 10, 0), seg(20, 0, 6, 0), seg(6, 0, 10, 0), true},
		{"in line, the other way", seg(10, 0, 0, 0), seg(20, 0, 6, 0), seg(10, 0, 6, 0), true},
		{"in line, one inside", seg(3, 3, 1, 1), seg(0, 0, 9, 9), seg(3, 3, 1, 1), true},
		{"a point on it", seg(4, 4, 4, 4), seg(0, 0, 9, 9), seg(4, 4, 4, 4), true},
		{"on a point", seg(0, 0, 9, 9), seg(4, 4, 4, 4), seg(4, 4, 4, 4), true},
		{"upright overlap", seg(2, 0, 2, 8), seg(2, 5, 2, 20), seg(2, 5, 2, 8), true},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			got, ok := geometry.Intersect(c.s, c.t)
			if got != c.want || ok != c.together {
				t.Errorf("got %v %v, want %v %v", got, ok, c.want, c.together)
			}
		})
	}
}

func TestDistanceAndPlaceAlong(t *testing.T) {
	s := seg(0, 0, feet(12, 0, 0), feet(16, 0, 0))
	p := s.At(feet(10, 0, 0))
	if want := (geometry.Point{X: feet(6, 0, 0), Y: feet(8, 0, 0)}); p != want {
		t.Errorf("10 ft along is %v, want %v", p, want)
	}
	if got, want := s.At(-feet(5, 0, 0)), (geometry.Point{X: -feet(3, 0, 0), Y: -feet(4, 0, 0)}); got != want {
		t.Errorf("5 ft behind is %v, want %v", got, want)
	}
	// A 3-4-5 step square to a 3-4-5 line.
	q := p.Shift(-feet(4, 0, 0), feet(3, 0, 0))
	if got := s.Distance(q); got != feet(5, 0, 0) {
		t.Errorf("distance is %d, want 5 ft", got)
	}
	if got := s.Along(q); got != feet(10, 0, 0) {
		t.Errorf("place along is %d, want 10 ft", got)
	}
	if got := s.Along(s.At(-feet(5, 0, 0))); got != -feet(5, 0, 0) {
		t.Errorf("place behind is %d, want -5 ft", got)
	}
	beyond := s.At(feet(26, 0, 0))
	if got := s.Distance(beyond); got != feet(6, 0, 0) {
		t.Errorf("beyond the end is %d away, want 6 ft", got)
	}
	point := seg(5, 5, 5, 5)
	if point.At(9) != point.A || point.Along(q) != 0 || point.Distance(geometry.Point{X: 8, Y: 9}) != 5 {
		t.Error("a segment without length is a point")
	}
}

func TestLengthsAreRoundedOnce(t *testing.T) {
	// sqrt(2)*1e9 is 1414213562.373, sqrt(3) times the same 1732050807.569.
	if got := (geometry.Point{}).To(geometry.Point{X: 1e9, Y: 1e9}); got != 1_414_213_562 {
		t.Errorf("got %d", got)
	}
	if got := geometry.Diagonal(1e9, geometry.Diagonal(1e9, 1e9)); got != 1_732_050_807 && got != 1_732_050_808 {
		t.Errorf("got %d", got)
	}
	if got := geometry.Diagonal(3, -4); got != 5 {
		t.Errorf("got %d", got)
	}
}

func TestTapesLocate(t *testing.T) {
	rnd := random(5)
	for range 500 {
		ledger := seg(0, 0, feet(10+rnd.Int64N(30), rnd.Int64N(12), 3), 0)
		p := geometry.Point{X: feet(rnd.Int64N(60)-20, 2, 7), Y: feet(1+rnd.Int64N(25), 0, 9)}
		a, b := geometry.Tapes(ledger.A, ledger.B, p)
		got, err := geometry.Locate(ledger, a, b)
		if err != nil {
			t.Fatal(err)
		}
		// Nearly in line with the ledger a nanometre on the tape is several across.
		if miss := got.To(p); miss > 2000 {
			t.Fatalf("tapes %d and %d lead %d nm beside %v", a, b, miss, p)
		}
	}
	if _, err := geometry.Locate(seg(0, 0, feet(20, 0, 0), 0), feet(8, 0, 0), feet(9, 0, 0)); err == nil {
		t.Error("tapes that do not meet must be refused")
	}
}
