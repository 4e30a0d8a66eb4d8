package geometry_test

import (
	"errors"
	"slices"
	"testing"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
)

func evenly(n int, d measure.Length) []measure.Length {
	return slices.Repeat([]measure.Length{d}, n)
}

func TestOffsetFromFasciaToFrame(t *testing.T) {
	fascia := inches(0, 3, 4)
	in := evenly(7, fascia)
	in[0] = 0 // the house edge carries none
	got, from, err := wrap().Offset(in)
	if err != nil {
		t.Fatal(err)
	}
	if !slices.Equal(from, []int{0, 1, 2, 3, 4, 5, 6}) {
		t.Errorf("edges come from %v", from)
	}
	// At the ends of the clip, between an axis and 45 degrees, the corner moves
	// along the clip's neighbour by d*tan(22.5 degrees): 0.41421356 x 19.05 mm.
	slip := measure.Length(7_890_768)
	want := geometry.Ring{
		{X: fascia, Y: 0},
		{X: feet(24, 0, 0) - fascia, Y: 0},
		{X: feet(24, 0, 0) - fascia, Y: feet(10, 0, 0) - fascia},
		{X: feet(14, 0, 0) - slip, Y: feet(10, 0, 0) - fascia},
		{X: feet(10, 0, 0) - fascia, Y: feet(14, 0, 0) - slip},
		{X: feet(10, 0, 0) - fascia, Y: feet(22, 0, 0) - fascia},
		{X: fascia, Y: feet(22, 0, 0) - fascia},
	}
	if !slices.Equal(got, want) {
		t.Errorf("got %v, want %v", got, want)
	}
}

func TestOffsetStepsWhereTheWallEnds(t *testing.T) {
	r := inFeet([2]int64{0, 0}, [2]int64{8, 0}, [2]int64{12, 0}, [2]int64{12, 8}, [2]int64{0, 8})
	d := inches(1, 1, 2)
	got, from, err := r.Offset([]measure.Length{0, d, d, d, d})
	if err != nil {
		t.Fatal(err)
	}
	want := geometry.Ring{
		{X: d}, {X: feet(8, 0, 0)}, {X: feet(8, 0, 0), Y: d}, {X: feet(12, 0, 0) - d, Y: d},
		{X: feet(12, 0, 0) - d, Y: feet(8, 0, 0) - d}, {X: d, Y: feet(8, 0, 0) - d},
	}
	if !slices.Equal(got, want) || !slices.Equal(from, []int{0, -1, 1, 2, 3, 4}) {
		t.Errorf("got %v from %v, want %v", got, from, want)
	}
	got, _, err = r.Offset(evenly(5, d))
	if err != nil {
		t.Fatal(err)
	}
	if len(got) != 5 || got[1] != (geometry.Point{X: feet(8, 0, 0), Y: d}) {
		t.Errorf("edges moved alike need no step: %v", got)
	}
}

func TestOffsetCollapses(t *testing.T) {
	cases := []struct {
		name  string
		ring  geometry.Ring
		in    []measure.Length
		edges int
	}{
		{"through the middle", inFeet([2]int64{0, 0}, [2]int64{9, 0}, [2]int64{9, 4}, [2]int64{0, 4}), evenly(4, feet(3, 0, 0)), 1},
		{"to the middle exactly", inFeet([2]int64{0, 0}, [2]int64{9, 0}, [2]int64{9, 4}, [2]int64{0, 4}), evenly(4, feet(2, 0, 0)), 1},
		{"slot closes outwards", notched(), evenly(8, -feet(2, 0, 0)), 1},
		{"feet meet", notched(), []measure.Length{0, 0, 0, 0, feet(5, 0, 0), 0, 0, 0}, 2},
		{"too few distances", notched(), evenly(3, 1), 0},
		{"beyond reach", notched(), evenly(8, geometry.Reach+1), 1},
		{"no outline", inFeet([2]int64{0, 0}, [2]int64{4, 4}, [2]int64{4, 0}, [2]int64{0, 4}), evenly(4, 1), 2},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			got, _, err := c.ring.Offset(c.in)
			var ring *geometry.RingError
			if !errors.As(err, &ring) {
				t.Fatalf("got %v and %v, want a RingError", got, err)
			}
			if len(ring.Edges) != c.edges {
				t.Errorf("error %q names %d edges, want %d", ring, len(ring.Edges), c.edges)
			}
		})
	}
}

// A moved edge is parallel to the old one at its own distance, and moving it back
// restores the ring.
func TestOffsetThereAndBack(t *testing.T) {
	rnd := random(14)
	moved := 0
	for n := range 300 {
		r := star(rnd, 3+n%9, measure.Inch)
		in := make([]measure.Length, len(r))
		out := make([]measure.Length, len(r))
		for i := range in {
			in[i] = measure.Length(rnd.Int64N(int64(4*measure.Inch))) - measure.Inch
			out[i] = -in[i]
		}
		inner, from, err := r.Offset(in)
		if err != nil || slices.Contains(from, -1) {
			continue
		}
		moved++
		for i := range r {
			line, corner := r.Edge(i), inner.Edge(i).A
			off := line.Along(corner)
			if d := corner.To(line.At(off)) - max(in[i], -in[i]); d > 5 || d < -5 {
				t.Fatalf("edge %d moved %d too far", i, d)
			}
			if in[i] > 5 && r.Edge(i).A.To(corner) < in[i]-5 {
				t.Fatalf("corner %d moved less than its edge", i)
			}
		}
		back, _, err := inner.Offset(out)
		if err != nil {
			t.Fatalf("cannot move back: %v", err)
		}
		for i := range r {
			// A sharp corner magnifies the rounding of the edges.
			if d := back[i].To(r[i]); d > 20_000 {
				t.Fatalf("corner %d comes back %d nm off", i, d)
			}
		}
	}
	if moved < 100 {
		t.Errorf("only %d rings could be moved; the test looks at too few", moved)
	}
}

func TestOffsetWorksForEitherDirection(t *testing.T) {
	r := wrap()
	a, _, err := r.Offset(evenly(7, inches(3, 0, 1)))
	if err != nil {
		t.Fatal(err)
	}
	slices.Reverse(r)
	b, _, err := r.Offset(evenly(7, inches(3, 0, 1)))
	if err != nil {
		t.Fatal(err)
	}
	slices.Reverse(b)
	if !slices.Equal(a, b) {
		t.Errorf("got %v walking one way, %v the other", a, b)
	}
}
