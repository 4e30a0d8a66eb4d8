package geometry

import (
	"fmt"

	"plumbrule/checker/measure"
)

// Pitch is a length divided into equal parts, kept as the division: 11'-5 3/4"
// over nine bays has no exact length for one bay, and a rounded one added up
// nine times misses the end. Parts of zero or less make the zero length.
type Pitch struct {
	Over  measure.Length
	Parts int64
}

// Length is one part, rounded to the nanometre.
func (p Pitch) Length() measure.Length { return p.Times(1) }

// Times is i parts together, rounded to the nanometre once, from the exact
// value. It is meant for i from 0 to Parts.
func (p Pitch) Times(i int64) measure.Length {
	if p.Parts <= 0 {
		return 0
	}
	return signedMulDiv(p.Over, measure.Length(i), measure.Length(p.Parts))
}

// Compare is -1 if one part is less than limit, 0 if it is exactly that and 1 if
// it is more, found by multiplying and not by dividing.
func (p Pitch) Compare(limit measure.Length) int {
	if p.Parts <= 0 {
		return compare(0, limit)
	}
	return mul(p.Over, 1).minus(mul(limit, measure.Length(p.Parts))).sign()
}

// MaxParts is the largest number of bays, rows, gaps or risers that is worked
// out; more means that a unit was mistyped.
const MaxParts = 10_000

func checkParts(n int64, what string) error {
	if n > MaxParts {
		return fmt.Errorf("%d %s are more than the %d that are worked out", n, what, MaxParts)
	}
	return nil
}
