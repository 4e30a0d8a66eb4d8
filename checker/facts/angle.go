package facts

import (
	"math"
	"math/big"

	"plumbrule/checker/measure"
)

// perDegree is the number of micro-degrees in a degree.
const perDegree = 1_000_000

// degrees rounds an angle in degrees to micro-degrees.
func degrees(a float64) measure.Angle { return measure.Angle(math.Round(a * perDegree)) }

// scaled multiplies a length by a factor and rounds to the nanometre.
func scaled(l measure.Length, factor float64) measure.Length {
	return measure.Length(math.Round(float64(l) * factor))
}

// radians turns micro-degrees into radians.
func radians(a measure.Angle) float64 { return float64(a) / perDegree * math.Pi / 180 }

// share is l times num over den, den above zero, rounded once to the nanometre.
func share(l measure.Length, num, den int64) measure.Length {
	product := new(big.Int).Mul(big.NewInt(int64(l)), big.NewInt(2*num))
	product.Add(product, big.NewInt(den))
	quotient := new(big.Int).Div(product, big.NewInt(2*den)) // towards minus infinity, so halves go up
	return measure.Length(quotient.Int64())
}
