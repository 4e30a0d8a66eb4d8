package measure

import (
	"errors"
	"math/big"
)

// Slope is a rise over a run, in lowest terms and with a positive run, so that equal slopes are equal values: 2% is
// 1 over 50, and level is 0 over 1. The zero Slope counts as level too.
type Slope struct {
	Rise, Run int64
}

// maxSlopeTerm bounds the terms of a slope, so that cross-multiplying two of them stays within an int64.
const maxSlopeTerm = 1_000_000_000

var errSlope = errors.New("slope: a run of zero, or terms above 1e9")

// NewSlope reduces a rise over a run, both in the same unit. It refuses a run of zero, and a ratio whose terms remain
// above 1e9 after reduction.
func NewSlope(rise, run int64) (Slope, error) {
	if run == 0 {
		return Slope{}, errSlope
	}
	s, ok := reduced(big.NewRat(rise, run))
	if !ok {
		return Slope{}, errSlope
	}
	return s, nil
}

func reduced(ratio *big.Rat) (Slope, bool) {
	most := big.NewInt(maxSlopeTerm)
	if ratio.Num().CmpAbs(most) > 0 || ratio.Denom().Cmp(most) > 0 {
		return Slope{}, false
	}
	return Slope{ratio.Num().Int64(), ratio.Denom().Int64()}, true
}

// Cmp compares two slopes exactly: -1 if s rises less than other, 0 if they are equal, +1 if s rises more.
func (s Slope) Cmp(other Slope) int { return s.ratio().Cmp(other.ratio()) }

func (s Slope) ratio() *big.Rat {
	if s.Run == 0 {
		return new(big.Rat)
	}
	return big.NewRat(s.Rise, s.Run)
}

func (s Slope) percent() *big.Rat {
	return new(big.Rat).Mul(s.ratio(), big.NewRat(100, 1))
}

// Text prints the slope as one in so many and in percent, alike in both systems: 1 in 60 (1.67%). A percentage that
// ends within four decimals is printed whole, so that a slope typed in percent shows as typed.
func (s Slope) Text(System) string {
	percent := s.percent()
	if percent.Sign() == 0 {
		return "level (0%)"
	}
	lead := ""
	if percent.Sign() < 0 {
		lead = "-"
	}
	places := 2
	if new(big.Rat).Mul(percent, big.NewRat(10_000, 1)).IsInt() {
		places = 4
	}
	run := new(big.Rat).Inv(s.ratio())
	return lead + "1 in " + trimmed(run.Abs(run), 2) + " (" + trimmed(percent, places) + "%)"
}

// In counts the slope in percent, rounded to six decimals, alike in both systems.
func (s Slope) In(System) (float64, string) { return sixDecimals(s.percent()), "%" }
