package geometry_test

import (
	"slices"
	"testing"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
)

var joist = inches(1, 1, 2)

func bays(t *testing.T, length, limit measure.Length) geometry.Bays {
	t.Helper()
	b, err := geometry.EqualBays(length, joist, limit)
	if err != nil {
		t.Fatal(err)
	}
	return b
}

func TestEqualBays(t *testing.T) {
	cases := []struct {
		length, limit measure.Length
		count         int
		pitch         float64
		last          measure.Length
	}{
		{feet(11, 7, 4), inches(16, 0, 1), 9, 15.3056, feet(11, 5, 12)},
		{feet(18, 0, 0), inches(16, 0, 1), 14, 15.3214, feet(17, 10, 8)},
		{feet(20, 0, 0), inches(16, 0, 1), 15, 15.9, inches(238, 1, 2)},
		{feet(13, 10, 8), inches(12, 0, 1), 14, 11.7857, feet(13, 9, 0)},
		{feet(16, 1, 8), inches(16, 0, 1), 12, 16, feet(16, 0, 0)}, // exactly at the limit
	}
	for _, c := range cases {
		b := bays(t, c.length, c.limit)
		if b.Count != c.count {
			t.Errorf("%v in has %d bays, want %d", decimal(c.length), b.Count, c.count)
		}
		wantInches(t, "the spacing", b.Pitch.Length(), c.pitch, 4)
		if got := b.Mark(b.Count); got != c.last {
			t.Errorf("the last mark is %v in, want %v", decimal(got), decimal(c.last))
		}
	}
}

func TestMarksOfEqualBays(t *testing.T) {
	wantMarks(t, bays(t, feet(11, 7, 4), inches(16, 0, 1)).Marks(), []measure.Length{
		0, feet(1, 3, 5), feet(2, 6, 10), feet(3, 9, 15), feet(5, 1, 4), feet(6, 4, 8),
		feet(7, 7, 13), feet(8, 11, 2), feet(10, 2, 7), feet(11, 5, 12),
	})
	if got := onTape(bays(t, feet(18, 0, 0), inches(16, 0, 1)).Mark(4)); got != feet(5, 1, 5) {
		t.Errorf("the fifth mark is %v in, want 61-5/16", decimal(got))
	}
}

// Adding up a rounded spacing runs off: 15 times 15-7/8 in is 238-1/8, but the
// last joist of 20 ft stands at 238-1/2.
func TestMarksAreNotRoundedSpacingsAddedUp(t *testing.T) {
	b := bays(t, feet(20, 0, 0), inches(16, 0, 1))
	if added := 15 * onTape(b.Pitch.Length()); added != inches(238, 1, 8) {
		t.Fatalf("rounded spacings add up to %v", decimal(added))
	}
	if got := b.Mark(15); got != inches(238, 1, 2) {
		t.Errorf("the last mark is %v", decimal(got))
	}
}

func TestMarksRunBackFromTheOtherEnd(t *testing.T) {
	rnd := random(18)
	for range 300 {
		length := feet(3+rnd.Int64N(40), rnd.Int64N(12), rnd.Int64N(16))
		limit := inches(10+rnd.Int64N(15), 0, 1)
		b := bays(t, length, limit)
		if b.Pitch.Compare(limit) > 0 {
			t.Fatalf("%d bays of %v are over %v", b.Count, b.Pitch, limit)
		}
		if fewer := (geometry.Pitch{Over: b.Pitch.Over, Parts: int64(b.Count - 1)}); b.Count > 1 && fewer.Compare(limit) <= 0 {
			t.Fatalf("%d bays would do", b.Count-1)
		}
		marks := b.Marks()
		for i, m := range marks {
			if d := m + marks[len(marks)-1-i] - (length - joist); d < -1 || d > 1 {
				t.Fatalf("mark %d from both ends is %d nm apart", i, d)
			}
		}
	}
}

func TestOnCenter(t *testing.T) {
	on := func(length, spacing measure.Length, start geometry.End, first geometry.FirstBay) []measure.Length {
		t.Helper()
		marks, err := geometry.OnCenter(length, joist, spacing, start, first)
		if err != nil {
			t.Fatal(err)
		}
		return marks
	}
	at16 := inches(16, 0, 1)
	edges := on(feet(5, 0, 0), at16, geometry.Left, geometry.EdgeMarks)
	wantMarks(t, edges, []measure.Length{0, feet(1, 4, 0), feet(2, 8, 0), feet(4, 0, 0), feet(4, 10, 8)})
	// A tape hooked over the first joist and marked for centres: 15-1/4.
	wantMarks(t, on(feet(5, 0, 0), at16, geometry.Left, geometry.CentreMarks),
		[]measure.Length{0, feet(1, 3, 4), feet(2, 7, 4), feet(3, 11, 4), feet(4, 10, 8)})
	wantMarks(t, on(feet(5, 0, 0), at16, geometry.Right, geometry.EdgeMarks),
		[]measure.Length{0, feet(0, 10, 8), feet(2, 2, 8), feet(3, 6, 8), feet(4, 10, 8)})
	// The bays come out whole: the joist on the last mark is the last joist.
	wantMarks(t, on(feet(4, 1, 8), at16, geometry.Left, geometry.EdgeMarks),
		[]measure.Length{0, feet(1, 4, 0), feet(2, 8, 0), feet(4, 0, 0)})
	// The last mark stands half an inch off the flush joist: both side by side.
	wantMarks(t, on(feet(4, 2, 0), at16, geometry.Left, geometry.EdgeMarks),
		[]measure.Length{0, feet(1, 4, 0), feet(2, 8, 0), feet(3, 11, 0), feet(4, 0, 8)})
	wantMarks(t, on(feet(0, 3, 0), at16, geometry.Left, geometry.EdgeMarks), []measure.Length{0, inches(1, 1, 2)})
}

func TestOnCenterKeepsItsSpacing(t *testing.T) {
	rnd := random(19)
	for range 500 {
		length := feet(1+rnd.Int64N(40), rnd.Int64N(12), rnd.Int64N(16))
		spacing := inches(4+rnd.Int64N(21), rnd.Int64N(16), 16)
		first := geometry.FirstBay(rnd.IntN(2))
		left, err := geometry.OnCenter(length, joist, spacing, geometry.Left, first)
		if err != nil {
			t.Fatal(err)
		}
		right, err := geometry.OnCenter(length, joist, spacing, geometry.Right, first)
		if err != nil {
			t.Fatal(err)
		}
		for i := 1; i < len(left); i++ {
			if bay := left[i] - left[i-1]; bay > spacing || bay < joist {
				t.Fatalf("bay %d is %v in at %v on centre: %v", i, decimal(bay), decimal(spacing), left)
			}
		}
		if left[0] != 0 || left[len(left)-1] != length-joist {
			t.Fatalf("the outside joists stand at %v", left)
		}
		slices.Reverse(right)
		for i := range left {
			if left[i]+right[i] != length-joist {
				t.Fatalf("layouts from both ends are no mirror images: %v %v", left, right)
			}
		}
	}
}

func TestLayoutsRefuse(t *testing.T) {
	cases := []struct {
		length, thickness, spacing measure.Length
		want                       string
	}{
		{0, 1, 1, "the length must be more than zero"},
		{10, 0, 1, "the thickness must be more than zero"},
		{10, 1, 0, "the spacing must be more than zero"},
		{10, 10, 1, "the outside members do not fit into the length"},
		{measure.Metre, 1, 1, "999999999 bays are more than the 10000 that are worked out"},
	}
	for _, c := range cases {
		if _, err := geometry.EqualBays(c.length, c.thickness, c.spacing); err == nil || err.Error() != c.want {
			t.Errorf("equal bays: got %v, want %s", err, c.want)
		}
		if _, err := geometry.OnCenter(c.length, c.thickness, c.spacing, geometry.Left, geometry.EdgeMarks); err == nil || err.Error() != c.want {
			t.Errorf("on centre: got %v, want %s", err, c.want)
		}
	}
	if _, err := geometry.OnCenter(100, 10, 9, geometry.Left, geometry.EdgeMarks); err == nil {
		t.Error("joists that overlap must be refused")
	}
}

func TestStringerCount(t *testing.T) {
	for _, c := range []struct {
		width, limit measure.Length
		want         int
	}{
		{feet(4, 0, 0), inches(16, 0, 1), 4},
		{feet(4, 1, 8), inches(16, 0, 1), 4}, // three bays of exactly 16
		{feet(3, 0, 0), inches(36, 0, 1), 2},
		{feet(3, 6, 0), inches(10, 0, 1), 6},
	} {
		got, err := geometry.StringerCount(c.width, joist, c.limit)
		if err != nil {
			t.Fatal(err)
		}
		if got != c.want {
			t.Errorf("%v in wide at %v has %d stringers, want %d", decimal(c.width), decimal(c.limit), got, c.want)
		}
	}
	if _, err := geometry.StringerCount(joist, joist, 1); err == nil {
		t.Error("two stringers need room")
	}
}

func TestPitch(t *testing.T) {
	p := geometry.Pitch{Over: 10, Parts: 3}
	if p.Length() != 3 || p.Times(2) != 7 || p.Times(3) != 10 || p.Compare(3) != 1 || p.Compare(4) != -1 {
		t.Errorf("ten thirds are %d, %d, %d", p.Length(), p.Times(2), p.Times(3))
	}
	if (geometry.Pitch{Over: 9, Parts: 3}).Compare(3) != 0 {
		t.Error("nine thirds are three")
	}
	var none geometry.Pitch
	if none.Length() != 0 || none.Compare(1) != -1 || none.Compare(0) != 0 {
		t.Error("no parts make the zero length")
	}
}
