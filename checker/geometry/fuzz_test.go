package geometry_test

import (
	"encoding/binary"
	"math"
	"math/big"
	"testing"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
)

// decode reads lengths of eight bytes each; coarse ones lie on a small lattice,
// where corners, edges and lines coincide often.
func decode(data []byte, coarse bool) []measure.Length {
	var lengths []measure.Length
	if coarse {
		for _, b := range data {
			lengths = append(lengths, measure.Length(int8(b)%8)*measure.Foot)
		}
		return lengths
	}
	for ; len(data) >= 8; data = data[8:] {
		lengths = append(lengths, measure.Length(binary.LittleEndian.Uint64(data)))
	}
	return lengths
}

func at(lengths []measure.Length, i int) measure.Length {
	if len(lengths) == 0 {
		return 0
	}
	return lengths[i%len(lengths)]
}

func FuzzRing(f *testing.F) {
	f.Add([]byte{0, 0, 4, 0, 4, 4, 0, 4}, true)
	f.Add([]byte{0, 0, 6, 0, 6, 6, 4, 6, 4, 3, 2, 3, 2, 6, 0, 6}, true)
	f.Add([]byte{0, 0, 4, 4, 4, 0, 0, 4}, true)
	f.Add(binary.LittleEndian.AppendUint64(nil, 1<<63), false)
	f.Add([]byte("0123456789abcdef0123456789ABCDEFfedcba9876543210"), false)
	f.Fuzz(func(t *testing.T, data []byte, coarse bool) {
		lengths := decode(data, coarse)
		if len(lengths) > 64 {
			return
		}
		var r geometry.Ring
		for i := 0; i+1 < len(lengths); i += 2 {
			r = append(r, geometry.Point{X: lengths[i], Y: lengths[i+1]})
		}
		checked := r.Check() == nil
		line := seg(at(lengths, 0), at(lengths, 1), at(lengths, 2), at(lengths, 5))
		r.InteriorAngles()
		r.Bounds()
		r.Contains(line.B)
		r.StripArea(geometry.Y, at(lengths, 1), at(lengths, 7))
		line.Distance(geometry.Point{X: at(lengths, 4), Y: at(lengths, 3)})
		line.Along(geometry.Point{X: at(lengths, 4), Y: at(lengths, 3)})
		line.At(at(lengths, 6))
		geometry.Intersect(line, seg(at(lengths, 3), at(lengths, 4), at(lengths, 6), at(lengths, 7)))
		r.ClipLine(line)
		window := geometry.Ring{{}, {X: at(lengths, 1)}, {X: at(lengths, 2), Y: at(lengths, 3)}}
		overlap, err := r.OverlapArea(window)
		// Cuts are rounded: a nanometre along either outline, at most.
		slack := int64((r.Perimeter()+window.Perimeter())/measure.Metre/1000) + 1
		if err == nil && checked && (overlap < 0 || overlap > r.Area()+slack || overlap > window.Area()+slack) {
			t.Fatalf("overlap of %d mm² is more than %d or %d", overlap, r.Area(), window.Area())
		}
		for _, axis := range []geometry.Axis{geometry.X, geometry.Y} {
			end := measure.Length(math.MinInt64)
			for _, v := range r.Scan(axis, at(lengths, 2)) {
				if v.From >= v.To || v.From <= end && end != math.MinInt64 {
					t.Fatalf("stretches of %v overlap or are empty", r)
				}
				end = v.To
			}
		}
		if !checked {
			return
		}
		if got := r.AreaTwice().Cmp(new(big.Int)); got == 0 {
			t.Fatalf("an outline without area passed: %v", r)
		}
		b := r.Bounds()
		if whole := r.StripArea(geometry.X, b.Min.X, b.Max.X); whole != r.Area() {
			t.Fatalf("the strip across is %d mm², the area %d", whole, r.Area())
		}
		in := make([]measure.Length, len(r))
		for i := range in {
			in[i] = at(lengths, i) / 16
		}
		if inner, from, err := r.Offset(in); err == nil && (len(inner) != len(from) || inner.Clockwise() != r.Clockwise()) {
			t.Fatalf("%v moved to %v", r, inner)
		}
	})
}

func FuzzLayouts(f *testing.F) {
	f.Add(int64(feet(18, 0, 0)), int64(inches(1, 1, 2)), int64(inches(16, 0, 1)), int64(1), int64(16))
	f.Add(int64(math.MaxInt64), int64(math.MaxInt64), int64(1), int64(math.MinInt64), int64(0))
	f.Add(int64(geometry.Reach), int64(1), int64(geometry.Reach), int64(1), int64(math.MaxInt64))
	f.Fuzz(func(t *testing.T, i, j, k, m, n int64) {
		a, b, c := measure.Length(i), measure.Length(j), measure.Length(k)
		if bays, err := geometry.EqualBays(a, b, c); err == nil {
			if marks := bays.Marks(); marks[0] != 0 || marks[len(marks)-1] != a-b || bays.Pitch.Compare(c) > 0 {
				t.Fatalf("%d, %d, %d has marks from %d to %d", a, b, c, marks[0], marks[len(marks)-1])
			}
		}
		if marks, err := geometry.OnCenter(a, b, c, geometry.Right, geometry.CentreMarks); err == nil {
			for i := 1; i < len(marks); i++ {
				if marks[i]-marks[i-1] > c {
					t.Fatalf("%d, %d, %d has a bay of %d", a, b, c, marks[i]-marks[i-1])
				}
			}
		}
		if balusters, err := geometry.EqualBalusters(a, b, c); err == nil && balusters.Gap.Compare(c) > 0 {
			t.Fatalf("%d, %d, %d has a gap of %v", a, b, c, balusters.Gap)
		}
		if rows, err := geometry.BoardRows(a, b, c); err == nil && (rows.Last <= 0 || rows.Last > b) {
			t.Fatalf("%d, %d, %d has a last row of %d", a, b, c, rows.Last)
		}
		if flight, err := geometry.Risers(a, c); err == nil && flight.Rise.Compare(c) > 0 {
			t.Fatalf("%d, %d has risers of %v", a, c, flight.Rise)
		}
		d := geometry.Descent{AtEdge: a, Fall: measure.Slope{Rise: m, Run: n}, Run: b, FlushTop: i%2 == 0}
		if flight, err := d.Risers(c); err == nil && flight.Rise.Length() > c {
			t.Fatalf("%+v has risers of %v, over %d", d, flight.Rise, c)
		}
		if angle, err := geometry.CornerAngle(a, b, c); err == nil && !(angle >= 0 && angle <= 180) {
			t.Fatalf("%d, %d, %d has an angle of %v", a, b, c, angle)
		}
		if r, err := geometry.CheckRectangle([4]measure.Length{a, b, c, measure.Length(m)}, [2]measure.Length{measure.Length(n), a}); err == nil {
			r.Shape(b)
		}
		_, _ = geometry.Slide(a, b, c)
		_, _ = geometry.Largest345(a, b, c)
		_, _ = geometry.Throat(a, b, c)
		_, _ = geometry.Locate(seg(0, 0, a, b), c, measure.Length(m))
		if _, closure, err := geometry.Walk([]geometry.Leg{{a, measure.Angle(m)}, {b, measure.Angle(n)}, {c, measure.Angle(k)}}); err == nil && closure.Miss < 0 {
			t.Fatalf("closure is %+v", closure)
		}
	})
}
