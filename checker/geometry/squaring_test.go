package geometry_test

import (
	"math"
	"testing"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
)

// By the theorem of Pythagoras, to the sixteenth that a tape is read to.
func TestDiagonal(t *testing.T) {
	cases := []struct{ a, b, want measure.Length }{
		{feet(12, 0, 0), feet(16, 0, 0), feet(20, 0, 0)},
		{feet(14, 0, 0), feet(22, 0, 0), feet(26, 0, 15)},
		{feet(11, 6, 0), feet(17, 3, 0), feet(20, 8, 13)},
		{feet(20, 0, 0), feet(28, 0, 0), feet(34, 4, 15)},
	}
	for _, c := range cases {
		if got := geometry.Diagonal(c.a, c.b); onTape(got) != c.want {
			t.Errorf("%v by %v has %.4f, want %v", decimal(c.a), decimal(c.b), decimal(got), decimal(c.want))
		}
	}
	if got := geometry.Diagonal(feet(12, 0, 0), feet(16, 0, 0)); got != feet(20, 0, 0) {
		t.Errorf("a whole triangle is exact, got %d", got)
	}
}

func TestCornerAngle(t *testing.T) {
	cases := []struct {
		a, b, diagonal measure.Length
		want           float64
	}{
		{feet(6, 0, 0), feet(8, 0, 0), feet(10, 0, 8), 90.4984},
		{feet(9, 0, 0), feet(12, 0, 0), feet(14, 11, 12), 89.8343},
	}
	for _, c := range cases {
		got, err := geometry.CornerAngle(c.a, c.b, c.diagonal)
		if err != nil {
			t.Fatal(err)
		}
		wantDegrees(t, "the corner", got, c.want, 4)
	}
	if got, err := geometry.CornerAngle(feet(9, 0, 0), feet(12, 0, 0), feet(15, 0, 0)); got != 90 || err != nil {
		t.Errorf("3-4-5 is %v, %v; want exactly 90", got, err)
	}
	for _, c := range []struct {
		a, b, diagonal measure.Length
		want           string
	}{
		{1, 1, 2, "the two legs and the diagonal close no triangle"},
		{9, 4, 5, "the two legs and the diagonal close no triangle"},
		{4, 9, 5, "the two legs and the diagonal close no triangle"},
		{0, 1, 1, "the first leg must be more than zero"},
		{1, 1, geometry.Reach + 1, "the diagonal is too long to be reckoned with"},
	} {
		if _, err := geometry.CornerAngle(c.a, c.b, c.diagonal); err == nil || err.Error() != c.want {
			t.Errorf("%d, %d, %d: got %v, want %s", c.a, c.b, c.diagonal, err, c.want)
		}
	}
}

func TestSlide(t *testing.T) {
	// A 20 x 14 ft frame whose diagonals are 3/4 in apart about the true one.
	true20x14 := geometry.Diagonal(feet(20, 0, 0), feet(14, 0, 0))
	longer, shorter := true20x14+inches(0, 3, 8), true20x14-inches(0, 3, 8)
	got, err := geometry.Slide(feet(20, 0, 0), longer, shorter)
	if err != nil {
		t.Fatal(err)
	}
	wantInches(t, "the slide", got, 0.458, 3)
	back, err := geometry.Slide(feet(20, 0, 0), shorter, longer)
	if err != nil {
		t.Fatal(err)
	}
	if back != -got {
		t.Errorf("the other way round slides %d, want %d", back, -got)
	}
	if _, err := geometry.Slide(0, longer, shorter); err == nil {
		t.Error("a side of nothing must be refused")
	}
}

// Sliding the far side of any parallelogram back by the result squares it.
func TestSlideSquaresAParallelogram(t *testing.T) {
	rnd := random(15)
	for range 500 {
		a, h := feet(4+rnd.Int64N(30), rnd.Int64N(12), 5), feet(4+rnd.Int64N(30), rnd.Int64N(12), 11)
		k := measure.Length(rnd.Int64N(int64(measure.Foot))) - measure.Foot/2
		p := [4]geometry.Point{{}, {X: a}, {X: a + k, Y: h}, {X: k, Y: h}}
		got, err := geometry.Slide(a, p[0].To(p[2]), p[1].To(p[3]))
		if err != nil {
			t.Fatal(err)
		}
		if d := got - k; d < -3 || d > 3 {
			t.Fatalf("slid %d, the side is off by %d", got, k)
		}
	}
}

func TestLargest345(t *testing.T) {
	cases := []struct {
		a, b measure.Length
		want int64
	}{
		{feet(12, 0, 0), feet(16, 0, 0), 4},
		{feet(16, 0, 0), feet(12, 0, 0), 4},
		{feet(11, 11, 15), feet(30, 0, 0), 3},
		{feet(14, 0, 0), feet(14, 0, 0), 3},
		{feet(2, 6, 0), feet(9, 0, 0), 0},
	}
	for _, c := range cases {
		got, err := geometry.Largest345(c.a, c.b, measure.Foot)
		if err != nil {
			t.Fatal(err)
		}
		if got != c.want {
			t.Errorf("%v by %v has %d, want %d", decimal(c.a), decimal(c.b), got, c.want)
		}
	}
	if _, err := geometry.Largest345(1, 1, 0); err == nil {
		t.Error("a unit of nothing must be refused")
	}
}

func TestRectangleOfWhole345(t *testing.T) {
	long, short := feet(16, 0, 0), feet(12, 0, 0)
	got := rectangle(t, [4]measure.Length{long, short, long, short}, [2]measure.Length{feet(20, 0, 0), feet(20, 0, 0)})
	if got != (geometry.Rectangle{Corners: [4]float64{90, 90, 90, 90}}) {
		t.Errorf("got %+v", got)
	}
	// One diagonal misread by a quarter: the other five still make a rectangle.
	got = rectangle(t, [4]measure.Length{long, short, long, short}, [2]measure.Length{feet(20, 0, 0), feet(20, 0, 4)})
	if got.Closure != inches(0, 1, 4) || got.Diagonals != -inches(0, 1, 4) {
		t.Errorf("closure is %d, want 1/4 in", got.Closure)
	}
	// To first order the closure is d(diagonals) - (side/diagonal) d(side): 1/8 in
	// on a diagonal less 16/20 of 1/16 in on a side.
	got = rectangle(t, [4]measure.Length{long, short, feet(16, 0, 1), short}, [2]measure.Length{feet(20, 0, 0), feet(20, 0, 2)})
	wantInches(t, "the closure", got.Closure, 0.075, 3)
	if got.Sides != [2]measure.Length{-inches(0, 1, 16), 0} {
		t.Errorf("opposite sides differ by %v", got.Sides)
	}
}

func rectangle(t *testing.T, sides [4]measure.Length, diagonals [2]measure.Length) geometry.Rectangle {
	t.Helper()
	r, err := geometry.CheckRectangle(sides, diagonals)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// measured is what tapes read on four corners.
func measured(p [4]geometry.Point) (sides [4]measure.Length, diagonals [2]measure.Length) {
	for i := range p {
		sides[i] = p[i].To(p[(i+1)%4])
	}
	return sides, [2]measure.Length{p[0].To(p[2]), p[1].To(p[3])}
}

// Six measures of one figure close whatever its shape, and the corners are those
// of the ring.
func TestTrueMeasuresClose(t *testing.T) {
	rnd := random(16)
	for range 500 {
		off := func() measure.Length { return measure.Length(rnd.Int64N(int64(3 * measure.Foot))) }
		a, h := feet(8+rnd.Int64N(20), 0, 0), feet(8+rnd.Int64N(20), 0, 0)
		p := [4]geometry.Point{{X: off(), Y: off()}, {X: a - off(), Y: off()}, {X: a - off(), Y: h - off()}, {X: off(), Y: h - off()}}
		got := rectangle(t, first(measured(p)), second(measured(p)))
		if got.Closure > 20 || got.Closure < -20 {
			t.Fatalf("closure of true measures is %d nm: %v", got.Closure, p)
		}
		for i, angle := range geometry.Ring(p[:]).InteriorAngles() {
			if math.Abs(got.Corners[i]-angle) > 1e-6 {
				t.Fatalf("corner %d is %v, the ring has %v", i, got.Corners[i], angle)
			}
		}
	}
}

func first[A, B any](a A, _ B) A  { return a }
func second[A, B any](_ A, b B) B { return b }

func TestEqualDiagonalsProveNoRectangle(t *testing.T) {
	rnd := random(17)
	for range 200 {
		a, h := feet(8+rnd.Int64N(20), rnd.Int64N(12), 0), feet(8+rnd.Int64N(20), rnd.Int64N(12), 0)
		narrower := inches(1+rnd.Int64N(12), 1, 2)
		sides, diagonals := measured([4]geometry.Point{{}, {X: a}, {X: a - narrower, Y: h}, {X: narrower, Y: h}})
		got := rectangle(t, sides, diagonals)
		if got.Diagonals != 0 {
			t.Fatalf("a symmetric trapezoid has equal diagonals, these differ by %d", got.Diagonals)
		}
		if s := got.Shape(inches(0, 1, 8)); s != geometry.Trapezoid {
			t.Fatalf("%v is taken for shape %d", sides, s)
		}
		if got.Sides[0] != 2*narrower || got.Sides[1] != 0 {
			t.Fatalf("opposite sides differ by %v", got.Sides)
		}
	}
}

func TestShapes(t *testing.T) {
	a, h, k := feet(16, 0, 0), feet(12, 0, 0), feet(1, 0, 0)
	cases := []struct {
		name string
		p    [4]geometry.Point
		want geometry.Shape
	}{
		{"rectangle", [4]geometry.Point{{}, {X: a}, {X: a, Y: h}, {Y: h}}, geometry.Rectangular},
		{"racked", [4]geometry.Point{{}, {X: a}, {X: a + k, Y: h}, {X: k, Y: h}}, geometry.Parallelogram},
		{"tapered", [4]geometry.Point{{}, {X: a}, {X: a - k, Y: h}, {X: k, Y: h}}, geometry.Trapezoid},
		{"one corner out", [4]geometry.Point{{}, {X: a}, {X: a + k, Y: h}, {Y: h}}, geometry.Irregular},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			r := rectangle(t, first(measured(c.p)), second(measured(c.p)))
			if got := r.Shape(inches(0, 1, 4)); got != c.want {
				t.Errorf("got %d, want %d", got, c.want)
			}
			if got := r.Shape(2 * k); got != geometry.Rectangular {
				t.Errorf("within two feet all are rectangles, got %d", got)
			}
		})
	}
}

func TestRectangleRefuses(t *testing.T) {
	a := feet(10, 0, 0)
	cases := []struct {
		sides     [4]measure.Length
		diagonals [2]measure.Length
		want      string
	}{
		{[4]measure.Length{a, a, a, a}, [2]measure.Length{3 * a, a}, "a diagonal closes no triangle with two of the sides"},
		{[4]measure.Length{a, a, a, a}, [2]measure.Length{a, 3 * a}, "a diagonal closes no triangle with two of the sides"},
		{[4]measure.Length{a, 0, a, a}, [2]measure.Length{a, a}, "the second side must be more than zero"},
		{[4]measure.Length{a, a, a, a}, [2]measure.Length{a, -a}, "the second diagonal must be more than zero"},
	}
	for _, c := range cases {
		if _, err := geometry.CheckRectangle(c.sides, c.diagonals); err == nil || err.Error() != c.want {
			t.Errorf("%v %v: got %v, want %s", c.sides, c.diagonals, err, c.want)
		}
	}
}
