package wood

import (
	"math/big"

	"plumbrule/checker/measure"
)

// Tributary gives the width of deck that the outer support of joists with a cantilever carries, in two ways: the
// builder's, half the back span and the cantilever, which leaves out that the cantilever levers on the ledger; and by
// statics, (L + c)²/2L, with all of the deck loaded. 11 ft with 2 ft 6 in give 8 ft and 8.284 ft. Both are rounded to a
// whole length. The error says that the back span is not above zero or the cantilever below it.
func Tributary(backSpan, cantilever measure.Length) (builders, statics measure.Length, err error) {
	if err := checkBackSpan(backSpan, cantilever); err != nil {
		return 0, 0, err
	}
	whole := big.NewInt(int64(backSpan + cantilever))
	square := whole.Mul(whole, whole)
	twice := big.NewInt(2 * int64(backSpan))
	square.Add(square, big.NewInt(int64(backSpan))) // half the divisor: to the nearest
	return (backSpan+1)/2 + cantilever, measure.Length(square.Div(square, twice).Int64()), nil
}

// LedgerTributary gives the width of deck that the ledger carries: the builder's half of the back span, and by statics
// (L² - c²)/2L with all of the deck loaded; with imposed load on the back span alone it is the half again.
func LedgerTributary(backSpan, cantilever measure.Length) (builders, statics measure.Length, err error) {
	_, outer, err := Tributary(backSpan, cantilever)
	if err != nil {
		return 0, 0, err
	}
	return (backSpan + 1) / 2, backSpan + cantilever - outer, nil
}

// quarterFactor is (1 + 1/4)²/2, the load on a beam under joists with a cantilever of a quarter, in joist spans.
const quarterFactor = 0.78125

// JoistSpanFactor gives what the joist span is multiplied with before a beam table is entered that was made for
// cantilevers of a quarter. statics is (1 + C/J)²/1.5625; table is (J/2 + C)/0.75J, which the factors of IRC 2021 Table
// R507.5 follow as recalled: 0.66, 0.72, 0.80, 0.84, 0.90 and 1.0 from no cantilever to a quarter.
func JoistSpanFactor(backSpan, cantilever measure.Length) (statics, table float64, err error) {
	if err := checkBackSpan(backSpan, cantilever); err != nil {
		return 0, 0, err
	}
	share := float64(cantilever) / float64(backSpan)
	return (1 + share) * (1 + share) / (2 * quarterFactor), (0.5 + share) / 0.75, nil
}

func checkBackSpan(backSpan, cantilever measure.Length) error {
	if err := positive("the back span", backSpan); err != nil {
		return err
	}
	if cantilever < 0 {
		return positive("the cantilever", cantilever)
	}
	return nil
}
