package geometry_test

import (
	"testing"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
)

func TestBoardRows(t *testing.T) {
	cases := []struct {
		name              string
		depth, board, gap measure.Length
		want              geometry.Rows
	}{
		{"a ripped last row", inches(150, 0, 1), inches(5, 1, 2), inches(0, 3, 16), geometry.Rows{Count: 27, Last: inches(2, 1, 8)}},
		{"a full last row", inches(11, 3, 16), inches(5, 1, 2), inches(0, 3, 16), geometry.Rows{Count: 2, Last: inches(5, 1, 2)}},
		{"less than a gap over", inches(11, 5, 16), inches(5, 1, 2), inches(0, 3, 16), geometry.Rows{Count: 2, Last: inches(5, 1, 2), Spare: inches(0, 1, 8)}},
		{"a whole gap over", inches(11, 6, 16), inches(5, 1, 2), inches(0, 3, 16), geometry.Rows{Count: 2, Last: inches(5, 1, 2), Spare: inches(0, 3, 16)}},
		{"a sliver", inches(11, 7, 16), inches(5, 1, 2), inches(0, 3, 16), geometry.Rows{Count: 3, Last: inches(0, 1, 16)}},
		{"no gap", inches(11, 0, 1), inches(5, 1, 2), 0, geometry.Rows{Count: 2, Last: inches(5, 1, 2)}},
		{"less than a board", inches(3, 0, 1), inches(5, 1, 2), inches(0, 3, 16), geometry.Rows{Count: 1, Last: inches(3, 0, 1)}},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			got, err := geometry.BoardRows(c.depth, c.board, c.gap)
			if err != nil {
				t.Fatal(err)
			}
			if got != c.want {
				t.Errorf("got %+v, want %+v", got, c.want)
			}
		})
	}
	for _, bad := range [][3]measure.Length{{0, 1, 1}, {1, 0, 1}, {1, 1, -1}, {measure.Metre, 1, 1}} {
		if got, err := geometry.BoardRows(bad[0], bad[1], bad[2]); err == nil {
			t.Errorf("%v got %+v, want an error", bad, got)
		}
	}
}

func TestRowsFillTheDepth(t *testing.T) {
	rnd := random(20)
	for range 2000 {
		depth := measure.Length(1 + rnd.Int64N(int64(10*measure.Metre)))
		board, gap := inches(3+rnd.Int64N(5), 1, 2), inches(0, rnd.Int64N(6), 16)
		r, err := geometry.BoardRows(depth, board, gap)
		if err != nil {
			t.Fatal(err)
		}
		if sum := measure.Length(r.Count-1)*(board+gap) + r.Last + r.Spare; sum != depth {
			t.Fatalf("%+v fills %d of %d", r, sum, depth)
		}
		if r.Last <= 0 || r.Last > board || r.Spare < 0 || r.Spare > gap || r.Spare > 0 && r.Last != board {
			t.Fatalf("%+v of %d with gaps of %d", r, board, gap)
		}
	}
}

func TestEqualBalusters(t *testing.T) {
	cases := []struct {
		opening, width, limit measure.Length
		count                 int
		gap                   float64
	}{
		{inches(68, 1, 2), inches(1, 1, 4), inches(3, 7, 8), 13, 3.7321},
		{inches(90, 1, 4), inches(0, 3, 4), inches(3, 3, 4), 20, 3.5833},
		{inches(55, 0, 1), inches(1, 1, 2), inches(4, 0, 1), 10, 3.6364},
		{inches(3, 0, 1), inches(1, 1, 2), inches(4, 0, 1), 0, 3},
	}
	for _, c := range cases {
		b, err := geometry.EqualBalusters(c.opening, c.width, c.limit)
		if err != nil {
			t.Fatal(err)
		}
		if b.Count != c.count {
			t.Errorf("%v in has %d balusters, want %d", decimal(c.opening), b.Count, c.count)
		}
		wantInches(t, "the gap", b.Gap.Length(), c.gap, 4)
		if b.Gap.Compare(c.limit) > 0 {
			t.Errorf("a gap of %v is over %v", b.Gap, c.limit)
		}
		// Every gap, the last one to the far post included, is the same.
		at := measure.Length(0)
		for _, m := range append(b.Marks(), c.opening) {
			if d := m - at - b.Gap.Length(); d < -2 || d > 2 {
				t.Errorf("a gap of %v in, want %v", decimal(m-at), c.gap)
			}
			at = m + c.width
		}
	}
	for _, bad := range [][3]measure.Length{{0, 1, 1}, {1, 0, 1}, {1, 1, 0}, {measure.Metre, 1, 1}, {98, 99, 2}} {
		if got, err := geometry.EqualBalusters(bad[0], bad[1], bad[2]); err == nil {
			t.Errorf("%v got %+v, want an error", bad, got)
		}
	}
}
