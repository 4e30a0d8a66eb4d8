package geometry_test

import (
	"math"
	"slices"
	"testing"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
)

func TestScan(t *testing.T) {
	ft := func(spans ...[2]int64) []geometry.Interval {
		var v []geometry.Interval
		for _, s := range spans {
			v = append(v, geometry.Interval{From: feet(s[0], 0, 0), To: feet(s[1], 0, 0)})
		}
		return v
	}
	diamond := inFeet([2]int64{0, 4}, [2]int64{4, 0}, [2]int64{8, 4}, [2]int64{4, 8})
	cases := []struct {
		name string
		ring geometry.Ring
		axis geometry.Axis
		at   int64
		want []geometry.Interval
	}{
		{"through the arm", wrap(), geometry.X, 5, ft([2]int64{0, 22})},
		{"through the clip", wrap(), geometry.X, 12, ft([2]int64{0, 12})},
		{"along the left edge", wrap(), geometry.X, 0, ft([2]int64{0, 22})},
		{"along the right edge", wrap(), geometry.X, 24, ft([2]int64{0, 10})},
		{"along an inner edge", wrap(), geometry.X, 10, ft([2]int64{0, 22})},
		{"along the return", wrap(), geometry.Y, 10, ft([2]int64{0, 24})},
		{"along the front", wrap(), geometry.Y, 22, ft([2]int64{0, 10})},
		{"beside it", wrap(), geometry.X, 25, nil},
		{"across the slot", notched(), geometry.Y, 6, ft([2]int64{0, 4}, [2]int64{8, 12})},
		{"along the slot's end", notched(), geometry.Y, 4, ft([2]int64{0, 12})},
		{"along both feet", notched(), geometry.Y, 8, ft([2]int64{0, 4}, [2]int64{8, 12})},
		{"corner to corner", diamond, geometry.X, 4, ft([2]int64{0, 8})},
		{"touching a corner", diamond, geometry.X, 8, nil},
		{"nothing", nil, geometry.X, 8, nil},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			if got := c.ring.Scan(c.axis, feet(c.at, 0, 0)); !slices.Equal(got, c.want) {
				t.Errorf("got %v, want %v", got, c.want)
			}
		})
	}
}

// Between two neighbouring corners the length of the scan grows evenly, so its
// middle value times the width is the area of that slab.
func TestScansAddUpToTheArea(t *testing.T) {
	rnd := random(6)
	for n := range 200 {
		r := star(rnd, 3+n%12, measure.Inch/4)
		for _, axis := range []geometry.Axis{geometry.X, geometry.Y} {
			var cuts []measure.Length
			for _, p := range r {
				if axis == geometry.X {
					cuts = append(cuts, p.X)
				} else {
					cuts = append(cuts, p.Y)
				}
			}
			slices.Sort(cuts)
			cuts = slices.Compact(cuts)
			area := 0.0
			for i := 1; i < len(cuts); i++ {
				for _, v := range r.Scan(axis, (cuts[i-1]+cuts[i])/2) {
					area += float64(v.Length()) * float64(cuts[i]-cuts[i-1]) / 1e12
				}
			}
			if got := float64(r.Area()); math.Abs(got-area) > 2 {
				t.Fatalf("area is %v mm², scans add up to %v: %v", got, area, r)
			}
		}
	}
}

func TestClipLineOfABeam(t *testing.T) {
	// Half a foot of an angled beam is drawn; it runs from outline to outline.
	drawn := seg(feet(14, 0, 0), feet(9, 0, 0), feet(13, 6, 0), feet(9, 6, 0))
	got := wrap().ClipLine(drawn)
	want := []geometry.Segment{seg(feet(23, 0, 0), 0, feet(1, 0, 0), feet(22, 0, 0))}
	if !slices.Equal(got, want) {
		t.Errorf("got %v, want %v", got, want)
	}
	// The clip's own line runs along the clip: on the outline counts as inside.
	clip := wrap().Edge(3)
	got = wrap().ClipLine(clip)
	want = []geometry.Segment{seg(feet(24, 0, 0), 0, feet(2, 0, 0), feet(22, 0, 0))}
	if !slices.Equal(got, want) {
		t.Errorf("got %v, want %v", got, want)
	}
	across := seg(feet(1, 0, 0), feet(6, 0, 0), feet(2, 0, 0), feet(6, 0, 0))
	got = notched().ClipLine(across.Reverse())
	want = []geometry.Segment{
		seg(feet(12, 0, 0), feet(6, 0, 0), feet(8, 0, 0), feet(6, 0, 0)),
		seg(feet(4, 0, 0), feet(6, 0, 0), 0, feet(6, 0, 0)),
	}
	if !slices.Equal(got, want) {
		t.Errorf("got %v, want %v", got, want)
	}
	if got := wrap().ClipLine(seg(5, 5, 5, 5)); got != nil {
		t.Errorf("a point has no line, got %v", got)
	}
}

func TestClipLineAgreesWithScan(t *testing.T) {
	rnd := random(7)
	for n := range 300 {
		r := star(rnd, 3+n%10, measure.Inch/4)
		c := r[n%len(r)].X // through a corner, the awkward place
		scan := r.Scan(geometry.X, c)
		clip := r.ClipLine(seg(c, 0, c, 1))
		if len(scan) != len(clip) {
			t.Fatalf("scan %v, clip %v", scan, clip)
		}
		for i := range scan {
			if clip[i].A.X != c || clip[i].A.Y-scan[i].From > 1 || scan[i].From-clip[i].A.Y > 1 || clip[i].B.Y-scan[i].To > 1 || scan[i].To-clip[i].B.Y > 1 {
				t.Fatalf("scan %v, clip %v", scan[i], clip[i])
			}
		}
	}
}

func TestClippedPartsLieInside(t *testing.T) {
	rnd := random(8)
	for n := range 300 {
		r := star(rnd, 3+n%10, measure.Inch/4)
		line := geometry.Segment{A: r[0].Shift(anywhere(rnd)/100, 0), B: r[1].Shift(0, anywhere(rnd)/100)}
		for _, part := range r.ClipLine(line) {
			middle := part.At(part.Length() / 2)
			if part.Length() > 10 && r.Contains(middle) == geometry.Outside {
				t.Fatalf("%v of %v lies outside %v", part, line, r)
			}
			for _, end := range []geometry.Point{part.A, part.B} {
				nearest := measure.Length(math.MaxInt64)
				for i := range r {
					nearest = min(nearest, r.Edge(i).Distance(end))
				}
				if nearest > 100 {
					t.Fatalf("%v ends %d nm off the outline", part, nearest)
				}
			}
		}
	}
}

func TestWithout(t *testing.T) {
	span := func(a, b measure.Length) geometry.Interval { return geometry.Interval{From: a, To: b} }
	cases := []struct{ stretches, holes, want []geometry.Interval }{
		{[]geometry.Interval{span(0, 10)}, nil, []geometry.Interval{span(0, 10)}},
		{[]geometry.Interval{span(0, 10)}, []geometry.Interval{span(3, 5), span(7, 8)}, []geometry.Interval{span(0, 3), span(5, 7), span(8, 10)}},
		{[]geometry.Interval{span(0, 10)}, []geometry.Interval{span(-5, 4), span(9, 20)}, []geometry.Interval{span(4, 9)}},
		{[]geometry.Interval{span(0, 4), span(6, 10)}, []geometry.Interval{span(3, 7)}, []geometry.Interval{span(0, 3), span(7, 10)}},
		{[]geometry.Interval{span(2, 4)}, []geometry.Interval{span(0, 9)}, nil},
		{[]geometry.Interval{span(2, 4)}, []geometry.Interval{span(4, 9), span(0, 2)}, []geometry.Interval{span(2, 4)}},
	}
	for _, c := range cases {
		if got := geometry.Without(c.stretches, c.holes); !slices.Equal(got, c.want) {
			t.Errorf("%v without %v is %v, want %v", c.stretches, c.holes, got, c.want)
		}
	}
}
