package geometry

import (
	"math"
	"math/big"
	"math/rand/v2"
	"testing"

	"plumbrule/checker/measure"
)

func wholeRange(rnd *rand.Rand) measure.Length {
	return measure.Length(rnd.Uint64()) >> rnd.IntN(64)
}

func TestWideAgainstBigNumbers(t *testing.T) {
	rnd := rand.New(rand.NewPCG(1, 2))
	for range 5000 {
		a, b, c, d := wholeRange(rnd), wholeRange(rnd), wholeRange(rnd)>>1, wholeRange(rnd)>>1
		want := new(big.Int).Mul(big.NewInt(int64(a)), big.NewInt(int64(b)))
		got := mul(a, b)
		if got.big().Cmp(want) != 0 || got.sign() != want.Sign() {
			t.Fatalf("%d * %d is %s, want %s", a, b, got.big(), want)
		}
		if f, _ := new(big.Float).SetInt(want).Float64(); math.Abs(got.float()-f) > math.Abs(f)*1e-15 {
			t.Fatalf("%s as a float is %g", want, got.float())
		}
		a, b = a>>1, b>>1
		first, second := new(big.Int).Mul(big.NewInt(int64(a)), big.NewInt(int64(b))), new(big.Int).Mul(big.NewInt(int64(c)), big.NewInt(int64(d)))
		if sum := mul(a, b).plus(mul(c, d)).big(); sum.Cmp(new(big.Int).Add(first, second)) != 0 {
			t.Fatalf("%s + %s is %s", first, second, sum)
		}
		if difference := mul(a, b).minus(mul(c, d)).big(); difference.Cmp(new(big.Int).Sub(first, second)) != 0 {
			t.Fatalf("%s - %s is %s", first, second, difference)
		}
	}
}

func TestDivisionsAgainstRationals(t *testing.T) {
	rnd := rand.New(rand.NewPCG(3, 4))
	for range 5000 {
		a, b, c := wholeRange(rnd)>>2, wholeRange(rnd)>>40, wholeRange(rnd)>>2
		if c == 0 {
			continue
		}
		exact := new(big.Rat).SetFrac(new(big.Int).Mul(big.NewInt(int64(a)), big.NewInt(int64(b))), big.NewInt(int64(c)))
		rounded, ok := new(big.Int).SetString(exact.FloatString(0), 10) // halves away from zero
		if !ok {
			t.Fatalf("cannot read %s", exact.FloatString(0))
		}
		if got := quotient(exact.Num(), exact.Denom()); got.Cmp(rounded) != 0 {
			t.Fatalf("%s is %s, want %s", exact, got, rounded)
		}
		if !rounded.IsInt64() {
			continue
		}
		if got := signedMulDiv(a, b, c); int64(got) != rounded.Int64() {
			t.Fatalf("%d * %d / %d is %d, want %s", a, b, c, got, rounded)
		}
	}
}

func TestRootIsNearest(t *testing.T) {
	rnd := rand.New(rand.NewPCG(5, 6))
	for range 5000 {
		num, den := big.NewInt(rnd.Int64()), big.NewInt(1+rnd.Int64N(1000))
		got := root(num, den)
		// (got - 1/2)² <= num/den < (got + 1/2)², times four.
		square := func(n int64) *big.Int {
			s := big.NewInt(n)
			return s.Mul(s.Mul(s, s), den)
		}
		four := new(big.Int).Lsh(num, 2)
		if got > 0 && square(2*int64(got)-1).Cmp(four) > 0 || square(2*int64(got)+1).Cmp(four) <= 0 {
			t.Fatalf("the root of %s/%s is not %d", num, den, got)
		}
	}
}

func TestCeilings(t *testing.T) {
	for a := range int64(40) {
		for b := int64(1); b < 12; b++ {
			want := int64(math.Ceil(float64(a) / float64(b)))
			if got := ceilDiv(measure.Length(a), measure.Length(b)); got != want {
				t.Errorf("%d/%d rounded up is %d", a, b, got)
			}
			if got := ceilBig(big.NewInt(a), big.NewInt(b)); got.Int64() != want {
				t.Errorf("%d/%d rounded up is %s", a, b, got)
			}
		}
	}
}
