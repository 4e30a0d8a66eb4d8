package geometry

import (
	"math"
	"math/big"
	"math/bits"

	"plumbrule/checker/measure"
)

// wide is a signed 128-bit integer in two's complement. The product of two
// nanometre lengths of an ordinary deck already needs 67 bits, and a big.Int
// for each of the thousands of side tests would cost more than the test.
type wide struct {
	hi int64
	lo uint64
}

func mul(a, b measure.Length) wide {
	hi, lo := bits.Mul64(uint64(a), uint64(b))
	// Mul64 read the operands as unsigned: a negative one was taken 2^64 too
	// large, which put the other operand once too often into the high half.
	signed := int64(hi)
	if a < 0 {
		signed -= int64(b)
	}
	if b < 0 {
		signed -= int64(a)
	}
	return wide{signed, lo}
}

func (w wide) plus(v wide) wide {
	lo, carry := bits.Add64(w.lo, v.lo, 0)
	hi, _ := bits.Add64(uint64(w.hi), uint64(v.hi), carry)
	return wide{int64(hi), lo}
}

func (w wide) minus(v wide) wide {
	lo, borrow := bits.Sub64(w.lo, v.lo, 0)
	hi, _ := bits.Sub64(uint64(w.hi), uint64(v.hi), borrow)
	return wide{int64(hi), lo}
}

func (w wide) sign() int {
	switch {
	case w.hi < 0:
		return -1
	case w.hi == 0 && w.lo == 0:
		return 0
	default:
		return 1
	}
}

// float converts the magnitude and then restores the sign: adding the two halves
// of a small negative number directly would cancel all of its digits.
func (w wide) float() float64 {
	if w.hi < 0 {
		return -wide{}.minus(w).magnitude()
	}
	return w.magnitude()
}

func (w wide) magnitude() float64 {
	return math.Ldexp(float64(uint64(w.hi)), 64) + float64(w.lo)
}

func (w wide) big() *big.Int {
	n := big.NewInt(w.hi)
	n.Lsh(n, 64)
	return n.Add(n, new(big.Int).SetUint64(w.lo))
}

// cross is twice the signed area of the triangle o, a, b: positive when b lies
// to the right of the way from o to a as seen on the page.
func cross(o, a, b Point) wide {
	return mul(a.X-o.X, b.Y-o.Y).minus(mul(a.Y-o.Y, b.X-o.X))
}

// dot is the scalar product of the ways from o to a and from o to b.
func dot(o, a, b Point) wide {
	return mul(a.X-o.X, b.X-o.X).plus(mul(a.Y-o.Y, b.Y-o.Y))
}

// mulDiv is a*b/c rounded to the nearest, halves up. A quotient that does not
// fit is cut to the largest value instead of letting Div64 panic; within Reach
// no caller comes near it.
func mulDiv(a, b, c uint64) uint64 {
	hi, lo := bits.Mul64(a, b)
	if hi >= c {
		return math.MaxUint64
	}
	q, rem := bits.Div64(hi, lo, c)
	if rem >= c-rem {
		q++
	}
	return q
}

// signedMulDiv is a*b/c rounded to the nearest, halves away from zero; c is not
// zero.
func signedMulDiv(a, b, c measure.Length) measure.Length {
	q := measure.Length(mulDiv(size(a), size(b), size(c)))
	if (a < 0) != (b < 0) != (c < 0) {
		return -q
	}
	return q
}

// size is the magnitude of a length. Unsigned, it holds that of the most
// negative length as well.
func size(a measure.Length) uint64 {
	if a < 0 {
		return -uint64(a)
	}
	return uint64(a)
}

// quotient is num/den rounded to the nearest, halves away from zero; den is not
// zero.
func quotient(num, den *big.Int) *big.Int {
	twice := new(big.Int).Abs(num)
	twice.Lsh(twice, 1)
	positive := new(big.Int).Abs(den)
	twice.Add(twice, positive)
	twice.Quo(twice, positive.Lsh(positive, 1))
	if num.Sign()*den.Sign() < 0 {
		twice.Neg(twice)
	}
	return twice
}

// ceilDiv is a/b rounded up, for a at least zero and b above zero.
func ceilDiv(a, b measure.Length) int64 {
	q := int64(a / b)
	if a%b != 0 {
		q++
	}
	return q
}

// ceilBig is num/den rounded up; den is above zero.
func ceilBig(num, den *big.Int) *big.Int {
	q, m := new(big.Int).DivMod(num, den, new(big.Int))
	if m.Sign() != 0 {
		q.Add(q, big.NewInt(1))
	}
	return q
}

// root is the square root of num/den rounded to the nearest length. The integer
// root of four times the quotient is the floor of twice the answer, which holds
// the half that rounding needs.
func root(num, den *big.Int) measure.Length {
	n := new(big.Int).Lsh(num, 2)
	n.Quo(n, den)
	n.Sqrt(n)
	n.Add(n, big.NewInt(1))
	n.Rsh(n, 1)
	return measure.Length(n.Int64())
}

// hypot is the length of the diagonal over dx and dy.
func hypot(dx, dy measure.Length) measure.Length {
	switch {
	case dx == 0:
		return measure.Length(size(dy))
	case dy == 0:
		return measure.Length(size(dx))
	}
	sum := mul(dx, dx).big()
	return root(sum.Add(sum, mul(dy, dy).big()), big.NewInt(1))
}

// degrees turns radians into degrees.
func degrees(radians float64) float64 { return radians * 180 / math.Pi }

// radians turns degrees into radians.
func radians(degrees float64) float64 { return degrees * math.Pi / 180 }

// nearest rounds a float to a length, halves away from zero.
func nearest(f float64) measure.Length { return measure.Length(math.Round(f)) }
