package geometry_test

import (
	"math"
	"slices"
	"testing"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
)

func TestStripArea(t *testing.T) {
	r := wrap()
	// From 10 ft to 14 ft along the house: 4 x 10 and the clip's triangle 4 x 4 / 2.
	if got, want := r.StripArea(geometry.X, feet(10, 0, 0), feet(14, 0, 0)), int64(math.Round(48*squareFoot)); got != want {
		t.Errorf("strip is %d mm², want %d", got, want)
	}
	// The outer half of the triangle's height: (1 + 0)/2 of it, 2 x 2 / 2.
	if got, want := r.StripArea(geometry.Y, feet(14, 0, 0), feet(12, 0, 0)), int64(math.Round((20+2)*squareFoot)); got != want {
		t.Errorf("strip is %d mm², want %d", got, want)
	}
	if got := r.StripArea(geometry.X, feet(30, 0, 0), feet(40, 0, 0)); got != 0 {
		t.Errorf("strip beside the ring is %d mm²", got)
	}
}

func TestStripsAddUpToTheArea(t *testing.T) {
	rnd := random(9)
	for n := range 200 {
		r := star(rnd, 3+n%12, measure.Inch/4)
		b := r.Bounds()
		cuts := []measure.Length{b.Min.X, b.Max.X}
		for range 4 {
			cuts = append(cuts, b.Min.X+measure.Length(rnd.Int64N(int64(b.Max.X-b.Min.X))))
		}
		slices.Sort(cuts)
		var sum int64
		for i := 1; i < len(cuts); i++ {
			sum += r.StripArea(geometry.X, cuts[i-1], cuts[i])
		}
		// Each of the five strips is rounded to half a square millimetre.
		if d := sum - r.Area(); d < -3 || d > 3 {
			t.Fatalf("strips add up to %d, area is %d: %v", sum, r.Area(), r)
		}
	}
}

func TestOverlapWithAnUprightWindowIsAStrip(t *testing.T) {
	rnd := random(10)
	for n := range 100 {
		r := star(rnd, 3+n%12, measure.Inch/4)
		b := r.Bounds()
		from := b.Min.X + measure.Length(rnd.Int64N(int64(b.Max.X-b.Min.X)))
		to := from + measure.Length(rnd.Int64N(int64(measure.Metre)))
		window := geometry.Ring{{X: from, Y: b.Min.Y - 9}, {X: to, Y: b.Min.Y - 9}, {X: to, Y: b.Max.Y + 9}, {X: from, Y: b.Max.Y + 9}}
		for range 2 {
			got, err := r.OverlapArea(window)
			if err != nil {
				t.Fatal(err)
			}
			if want := r.StripArea(geometry.X, from, to); got-want > 1 || want-got > 1 {
				t.Fatalf("overlap is %d, strip %d: %v", got, want, r)
			}
			slices.Reverse(window)
		}
	}
}

// The overlap of two outlines is scanned in thin slices and compared.
func TestOverlapAgainstScans(t *testing.T) {
	rnd := random(11)
	for n := range 40 {
		r := star(rnd, 5+n%8, measure.Inch/4)
		window := hull(rnd)
		got, err := r.OverlapArea(window)
		if err != nil {
			t.Fatal(err)
		}
		b := r.Bounds()
		const slabs = 1500
		width := (b.Max.X - b.Min.X) / slabs
		want := 0.0
		for i := range measure.Length(slabs) {
			x := b.Min.X + i*width + width/2
			in := window.Scan(geometry.X, x)
			for _, v := range r.Scan(geometry.X, x) {
				for _, w := range in {
					want += math.Max(0, float64(min(v.To, w.To)-max(v.From, w.From))) * float64(width) / 1e12
				}
			}
		}
		if math.Abs(float64(got)-want) > 1e-3*float64(r.Area()) {
			t.Fatalf("overlap is %d mm², slices have %.0f: %v with %v", got, want, r, window)
		}
		if r.Area() < got || window.Area() < got {
			t.Fatalf("overlap of %d mm² is more than %d or %d", got, r.Area(), window.Area())
		}
	}
}

func TestOverlapIsSymmetricForConvexRings(t *testing.T) {
	rnd := random(12)
	for range 50 {
		a, b := hull(rnd), hull(rnd)
		ab, err := a.OverlapArea(b)
		if err != nil {
			t.Fatal(err)
		}
		ba, err := b.OverlapArea(a)
		if err != nil {
			t.Fatal(err)
		}
		if ab-ba > 1 || ba-ab > 1 {
			t.Fatalf("%d one way, %d the other", ab, ba)
		}
	}
}

func TestOverlapRefusesAConcaveWindow(t *testing.T) {
	if _, err := wrap().OverlapArea(notched()); err == nil {
		t.Error("a concave window must be refused")
	}
	if _, err := wrap().OverlapArea(nil); err == nil {
		t.Error("an empty window must be refused")
	}
	if got, err := geometry.Ring(nil).OverlapArea(inFeet([2]int64{0, 0}, [2]int64{1, 0}, [2]int64{0, 1})); got != 0 || err != nil {
		t.Errorf("nothing overlaps by %d, %v", got, err)
	}
}
