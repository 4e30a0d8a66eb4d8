package geometry_test

import (
	"errors"
	"math"
	"math/big"
	"slices"
	"testing"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
)

// squareFoot is exact: 304.8 mm squared.
const squareFoot = 92903.04

func TestRingOfAWrapAround(t *testing.T) {
	r := wrap()
	if err := r.Check(); err != nil {
		t.Fatal(err)
	}
	// By hand: 24 x 10, a column 10 x 12 below it, and the triangle of the clip.
	if got, want := r.Area(), int64(math.Round((240+120+8)*squareFoot)); got != want {
		t.Errorf("area is %d mm², want %d", got, want)
	}
	if got, want := r.Perimeter(), feet(24+10+10+8+10+22, 0, 0)+geometry.Diagonal(feet(4, 0, 0), feet(4, 0, 0)); got != want {
		t.Errorf("perimeter is %d, want %d", got, want)
	}
	if !r.Clockwise() || mirrored(mirrored(r)).Area() != r.Area() {
		t.Error("the ring walks the wrong way")
	}
	want := []float64{90, 90, 90, 225, 225, 90, 90}
	for i, got := range r.InteriorAngles() {
		if got != want[i] {
			t.Errorf("angle %d is %v, want exactly %v", i, got, want[i])
		}
	}
	if got, want := r.Bounds(), (geometry.Box{Max: geometry.Point{X: feet(24, 0, 0), Y: feet(22, 0, 0)}}); got != want {
		t.Errorf("bounds are %v, want %v", got, want)
	}
}

func TestAreaAgainstTriangulation(t *testing.T) {
	rnd := random(1)
	for n := range 300 {
		r := star(rnd, 3+n%12, measure.Inch/64+measure.Length(n))
		ears := byEars(r)
		if ears == nil {
			t.Fatalf("no triangulation of %v", r)
		}
		if got := r.AreaTwice(); got.Cmp(ears) != 0 {
			t.Fatalf("twice the area is %s, triangles have %s: %v", got, ears, r)
		}
	}
}

// Pick's theorem (G. Pick, Geometrisches zur Zahlenlehre, 1899): twice the area of
// a lattice polygon is 2I + B - 2, with I lattice points inside and B on the edge.
func TestContainsCountsByPick(t *testing.T) {
	rnd := random(2)
	for n := range 25 {
		r := star(rnd, 3+n%9, 1)
		var inside, edge int64
		b := r.Bounds()
		for x := b.Min.X - 1; x <= b.Max.X+1; x++ {
			for y := b.Min.Y - 1; y <= b.Max.Y+1; y++ {
				switch r.Contains(geometry.Point{X: x, Y: y}) {
				case geometry.Inside:
					inside++
				case geometry.OnEdge:
					edge++
				case geometry.Outside:
				}
			}
		}
		if want := big.NewInt(2*inside + edge - 2); r.AreaTwice().Cmp(want) != 0 {
			t.Errorf("twice the area is %s, the lattice has %s: %v", r.AreaTwice(), want, r)
		}
	}
}

func TestMovingAndMirroringChangeNothing(t *testing.T) {
	rnd := random(3)
	for n := range 100 {
		r := star(rnd, 4+n%10, measure.Inch/16)
		dx, dy := feet(rnd.Int64N(400)-200, 3, 5), feet(rnd.Int64N(400)-200, 7, 1)
		away := moved(r, func(p geometry.Point) geometry.Point { return p.Shift(dx, dy) })
		flipped := mirrored(r)
		for _, other := range []geometry.Ring{away, flipped} {
			if other.Area() != r.Area() || other.Perimeter() != r.Perimeter() || !other.Clockwise() {
				t.Fatalf("area, perimeter or direction changed: %v", r)
			}
		}
		want, shifted, back := r.InteriorAngles(), away.InteriorAngles(), flipped.InteriorAngles()
		sum := 0.0
		for i, a := range want {
			sum += a
			if shifted[i] != a || math.Abs(back[len(back)-1-i]-a) > 1e-9 {
				t.Fatalf("angle %d changed: %v %v %v", i, a, shifted[i], back[len(back)-1-i])
			}
		}
		if math.Abs(sum-float64(180*(len(r)-2))) > 1e-8 {
			t.Fatalf("angles add up to %v", sum)
		}
		c := r.Bounds().Min.X/2 + 12345
		was, is := r.Scan(geometry.X, c), away.Scan(geometry.X, c+dx)
		for i := range was {
			if is[i].From != was[i].From+dy || is[i].To != was[i].To+dy {
				t.Fatalf("scan changed: %v %v", was, is)
			}
		}
	}
}

func TestCheckNamesTheEdges(t *testing.T) {
	cases := []struct {
		name  string
		ring  geometry.Ring
		edges []int
		text  string
	}{
		{"empty", nil, nil, "an outline needs three corners, this has 0"},
		{"two corners", inFeet([2]int64{0, 0}, [2]int64{1, 0}), nil, "an outline needs three corners, this has 2"},
		{"bow tie", inFeet([2]int64{0, 0}, [2]int64{4, 4}, [2]int64{4, 0}, [2]int64{0, 4}), []int{0, 2}, "edges 1 and 3 cross or touch"},
		{"repeated corner", inFeet([2]int64{0, 0}, [2]int64{4, 0}, [2]int64{4, 0}, [2]int64{0, 4}), []int{1}, "edge 2 has no length"},
		{"spike", inFeet([2]int64{0, 0}, [2]int64{4, 0}, [2]int64{2, 0}, [2]int64{2, 4}), []int{0, 1}, "edges 1 and 2 cross or touch"},
		{"spike over the start", inFeet([2]int64{1, 0}, [2]int64{4, 0}, [2]int64{4, 4}, [2]int64{2, 0}), []int{0, 2}, "edges 1 and 3 cross or touch"},
		{"corner on an edge", inFeet([2]int64{0, 0}, [2]int64{8, 0}, [2]int64{8, 4}, [2]int64{4, 0}, [2]int64{0, 4}), []int{0, 2}, "edges 1 and 3 cross or touch"},
		{"beyond reach", geometry.Ring{{}, {X: geometry.Reach + 1}, {Y: 5}}, []int{1}, "edge 2 starts too far from the house to be reckoned with"},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			err := c.ring.Check()
			var ring *geometry.RingError
			if !errors.As(err, &ring) {
				t.Fatalf("got %v, want a RingError", err)
			}
			if ring.Error() != c.text {
				t.Errorf("got %q, want %q", ring.Error(), c.text)
			}
			if len(ring.Edges) != len(c.edges) {
				t.Fatalf("edges are %v, want %v", ring.Edges, c.edges)
			}
			for i := range c.edges {
				if ring.Edges[i] != c.edges[i] {
					t.Errorf("edges are %v, want %v", ring.Edges, c.edges)
				}
			}
		})
	}
}

func TestEdgesInOneLineAreSimple(t *testing.T) {
	r := inFeet([2]int64{0, 0}, [2]int64{4, 0}, [2]int64{9, 0}, [2]int64{9, 4}, [2]int64{0, 4})
	if i, j, simple := r.Simple(); !simple {
		t.Errorf("edges %d and %d are said to cross", i, j)
	}
	if got := r.InteriorAngles()[1]; got != 180 {
		t.Errorf("the corner in the line has %v degrees", got)
	}
}

func TestInteriorAnglesOfARingWalkedBackwards(t *testing.T) {
	r := wrap()
	want := r.InteriorAngles()
	slices.Reverse(r)
	slices.Reverse(want)
	if got := r.InteriorAngles(); !slices.Equal(got, want) || r.Clockwise() {
		t.Errorf("got %v, want %v", got, want)
	}
}

func TestALineThereAndBackIsNotSimple(t *testing.T) {
	if i, j, simple := inFeet([2]int64{0, 0}, [2]int64{3, 0}).Simple(); simple || i != 0 || j != 1 {
		t.Errorf("got %d, %d, %v", i, j, simple)
	}
}
