package geometry

import (
	"math/big"

	"plumbrule/checker/measure"
)

// StripArea is the area in square millimetres of the part of the ring between
// two parallel lines: X = from and X = to with Axis X, Y = from and Y = to with
// Axis Y. It is exact for a simple ring, concave or not, before its one rounding.
// The order of from and to does not matter.
func (r Ring) StripArea(fixed Axis, from, to measure.Length) int64 {
	from, to = min(from, to), max(from, to)
	twice := new(big.Rat)
	for i := range r {
		twice.Add(twice, r.Edge(i).under(fixed, from, to))
	}
	return squareMillimetres(twice)
}

// under is twice the signed area between the axis and that part of the segment
// whose coordinate lies between from and to: the trapezoid rule, edge by edge,
// needs no clipped ring and so cannot go astray on a concave one.
func (s Segment) under(fixed Axis, from, to measure.Length) *big.Rat {
	a, b := fixed.of(s.A), fixed.of(s.B)
	start, end := min(max(a, from), to), min(max(b, from), to)
	if start == end {
		return new(big.Rat)
	}
	flat := fixed.other()
	va, run, rise := flat.of(s.A), b-a, flat.of(s.B)-flat.of(s.A)
	// Both heights added: 2*va + rise*((start-a)+(end-a))/run.
	heights := mul(2*va, run).plus(mul(rise, start-a+end-a)).big()
	heights.Mul(heights, big.NewInt(int64(end-start)))
	return new(big.Rat).SetFrac(heights, big.NewInt(int64(run)))
}

// squareMillimetres rounds twice an area in square nanometres, of either sign.
func squareMillimetres(twice *big.Rat) int64 {
	den := new(big.Int).Mul(twice.Denom(), big.NewInt(2*squareMillimetre))
	return quotient(new(big.Int).Abs(twice.Num()), den).Int64()
}
