package geometry

import (
	"math/big"

	"plumbrule/checker/measure"
)

// Segment is the straight way from A to B.
type Segment struct{ A, B Point }

// Length is the distance from A to B, rounded to the nanometre.
func (s Segment) Length() measure.Length { return s.A.To(s.B) }

// Reverse is the same way walked from B to A.
func (s Segment) Reverse() Segment { return Segment{A: s.B, B: s.A} }

// CrossX is the Y at which the segment, ends included, meets the line X = c. ok
// is false where it does not reach that line, and where it lies along it and has
// no single crossing.
func (s Segment) CrossX(c measure.Length) (y measure.Length, ok bool) { return s.crossing(X, c) }

// CrossY is the X at which the segment, ends included, meets the line Y = c. ok
// is false where it does not reach that line, and where it lies along it.
func (s Segment) CrossY(c measure.Length) (x measure.Length, ok bool) { return s.crossing(Y, c) }

func (s Segment) crossing(fixed Axis, c measure.Length) (measure.Length, bool) {
	// Reckoned from the lesser end always, so that an edge of two rings
	// crosses at the same nanometre in both.
	if fixed.of(s.A) > fixed.of(s.B) {
		s = s.Reverse()
	}
	a, b := fixed.of(s.A), fixed.of(s.B)
	if a == b || c < a || c > b {
		return 0, false
	}
	from, to := fixed.other().of(s.A), fixed.other().of(s.B)
	// Unsigned differences cannot overflow, and the result lies between the ends.
	run, part := uint64(b)-uint64(a), uint64(c)-uint64(a)
	if to < from {
		return measure.Length(uint64(from) - mulDiv(uint64(from)-uint64(to), part, run)), true
	}
	return measure.Length(uint64(from) + mulDiv(uint64(to)-uint64(from), part, run)), true
}

// At is the point on the line through the segment at the distance d from A
// towards B, rounded to the nanometre; d below zero lies behind A and d above
// the length lies beyond B. A segment without length yields A.
func (s Segment) At(d measure.Length) Point {
	dx, dy := s.B.X-s.A.X, s.B.Y-s.A.Y
	switch {
	case dx == 0 && dy == 0:
		return s.A
	case dy == 0:
		return s.A.Shift(withSign(d, dx), 0)
	case dx == 0:
		return s.A.Shift(0, withSign(d, dy))
	}
	// d*dx/length with the root taken last, so that it is rounded once.
	square := dot(s.A, s.B, s.B).big()
	return s.A.Shift(
		withSign(scaled(d, dx, square), dx)*signOf(d),
		withSign(scaled(d, dy, square), dy)*signOf(d))
}

// scaled is |d*part|/sqrt(square).
func scaled(d, part measure.Length, square *big.Int) measure.Length {
	n := mul(d, part).big()
	return root(n.Mul(n, n), square)
}

func withSign(d, like measure.Length) measure.Length { return d * signOf(like) }

func signOf(l measure.Length) measure.Length {
	switch {
	case l < 0:
		return -1
	case l > 0:
		return 1
	default:
		return 0
	}
}

// Along is how far from A, measured along the segment's line towards B, the
// perpendicular from p meets that line. It is below zero behind A. A segment
// without length yields 0.
func (s Segment) Along(p Point) measure.Length {
	square := dot(s.A, s.B, s.B)
	if square.sign() == 0 {
		return 0
	}
	along := dot(s.A, s.B, p)
	n := along.big()
	return root(n.Mul(n, n), square.big()) * measure.Length(along.sign())
}

// Distance is the shortest way from p to the segment, ends included, rounded to
// the nanometre.
func (s Segment) Distance(p Point) measure.Length {
	if dot(s.A, s.B, p).sign() <= 0 {
		return s.A.To(p)
	}
	if dot(s.B, s.A, p).sign() <= 0 {
		return s.B.To(p)
	}
	n := cross(s.A, s.B, p).big()
	return root(n.Mul(n, n), dot(s.A, s.B, s.B).big())
}

// Intersect is the part that two segments have in common, ends included. It runs
// the way s runs; a single point in common is a segment without length. A crossing between
// the corners of the plan is rounded to the nanometre.
func Intersect(s, t Segment) (both Segment, ok bool) {
	if !meets(s, t) {
		return Segment{}, false
	}
	fromA, fromB := cross(t.A, t.B, s.A), cross(t.A, t.B, s.B)
	if fromA.sign() != 0 || fromB.sign() != 0 {
		p := between(s, fromA, fromB)
		return Segment{A: p, B: p}, true
	}
	// Both on one line (or one of them a point): the part in common lies between
	// the inner two of the four ends.
	axis := s.steep()
	if s.A == s.B {
		axis = t.steep()
	}
	lower := func(g Segment) Segment {
		if axis.of(g.A) > axis.of(g.B) {
			return g.Reverse()
		}
		return g
	}
	l, m := lower(s), lower(t)
	if axis.of(m.A) > axis.of(l.A) {
		l.A = m.A
	}
	if axis.of(m.B) < axis.of(l.B) {
		l.B = m.B
	}
	if axis.of(s.A) > axis.of(s.B) {
		l = l.Reverse()
	}
	return l, true
}

// steep is the axis along which the segment advances most.
func (s Segment) steep() Axis {
	if size(s.B.X-s.A.X) >= size(s.B.Y-s.A.Y) {
		return X
	}
	return Y
}

// between is the point of s where a value that is a at s.A and b at s.B, and
// grows evenly, becomes zero. a and b are of opposite sign, or one of them is
// zero and the other not.
func between(s Segment, a, b wide) Point {
	switch {
	case a.sign() == 0:
		return s.A
	case b.sign() == 0:
		return s.B
	}
	num := a.big()
	den := new(big.Int).Sub(num, b.big())
	part := func(from, to measure.Length) measure.Length {
		n := new(big.Int).Mul(num, big.NewInt(int64(to-from)))
		return from + measure.Length(quotient(n, den).Int64())
	}
	return Point{X: part(s.A.X, s.B.X), Y: part(s.A.Y, s.B.Y)}
}

// meets reports whether two segments have a point in common, decided exactly.
func meets(s, t Segment) bool {
	sa, sb := cross(t.A, t.B, s.A).sign(), cross(t.A, t.B, s.B).sign()
	ta, tb := cross(s.A, s.B, t.A).sign(), cross(s.A, s.B, t.B).sign()
	if sa*sb < 0 && ta*tb < 0 {
		return true
	}
	return s.has(t.A, ta) || s.has(t.B, tb) || t.has(s.A, sa) || t.has(s.B, sb)
}

// has reports whether p lies on the segment, given on which side of its line.
func (s Segment) has(p Point, side int) bool {
	return side == 0 &&
		min(s.A.X, s.B.X) <= p.X && p.X <= max(s.A.X, s.B.X) &&
		min(s.A.Y, s.B.Y) <= p.Y && p.Y <= max(s.A.Y, s.B.Y)
}
