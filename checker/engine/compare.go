package engine

import (
	"cmp"
	"math"
	"math/big"
	"strconv"
	"strings"

	"plumbrule/checker/catalog"
	"plumbrule/checker/measure"
	"plumbrule/checker/result"
)

// numeric reports whether quantities of the kind can be subtracted.
func (q quantity) numeric() bool { return q.kind.Whole() || q.ratio != nil }

// minus gives q less other, of the same kind. It has no answer for words, and
// where the difference leaves the range of whole numbers.
func (q quantity) minus(other quantity) (quantity, bool) {
	if !q.numeric() || !other.numeric() || q.kind != other.kind {
		return quantity{}, false
	}
	if q.ratio != nil {
		return quantity{kind: q.kind, ratio: new(big.Rat).Sub(q.ratio, other.ratio)}, true
	}
	d := q.whole - other.whole
	if other.whole > 0 && d > q.whole || other.whole < 0 && d < q.whole || d == math.MinInt64 {
		return quantity{}, false
	}
	return quantity{kind: q.kind, whole: d}, true
}

func (q quantity) sign() int {
	if q.ratio != nil {
		return q.ratio.Sign()
	}
	return cmp.Compare(q.whole, 0)
}

func (q quantity) negated() quantity {
	if q.ratio != nil {
		return quantity{kind: q.kind, ratio: new(big.Rat).Neg(q.ratio)}
	}
	return quantity{kind: q.kind, whole: -q.whole}
}

// margin gives how far inside the limit a value is, negative outside of it. It
// has no answer where values cannot be subtracted, and where the difference
// contradicts the check: then something else decided, such as a guard that is
// there although the drop asks for one.
func margin(have, limit quantity, relation result.Relation, outside bool) (quantity, bool) {
	inside, ok := limit.minus(have)
	if !ok {
		return quantity{}, false
	}
	strict := false
	switch relation {
	case result.AtMost:
	case result.LessThan:
		strict = true
	case result.AtLeast:
		inside = inside.negated()
	case result.MoreThan:
		inside, strict = inside.negated(), true
	case result.Exactly:
		if inside.sign() > 0 {
			inside = inside.negated()
		}
	default:
		return quantity{}, false
	}
	sign := inside.sign()
	if (sign < 0 || sign == 0 && strict) != outside {
		return quantity{}, false
	}
	return inside, true
}

// distinct prints two quantities that are compared so that different values
// never print alike.
func distinct(have, limit quantity, sys measure.System) (string, string) {
	if have.kind == catalog.Length && limit.kind == catalog.Length {
		return measure.Distinct(measure.Length(have.whole), measure.Length(limit.whole), sys)
	}
	h, l := have.text(sys), limit.text(sys)
	difference, ok := have.minus(limit)
	if !ok || difference.sign() == 0 {
		return h, l
	}
	if have.ratio != nil {
		for places := 4; (h == l || misleads(h, have, limit)) && places < 20; places++ {
			h, l = fraction(have.ratio, places), fraction(limit.ratio, places)
		}
		return h, l
	}
	if h == l {
		h, l = precise(have, sys), precise(limit, sys)
	}
	if h == l {
		h, l = raw(have), raw(limit)
	}
	return h, l
}

// misleads reports whether a ratio printed in decimals reads as the limit.
func misleads(text string, have, limit quantity) bool {
	printed, ok := new(big.Rat).SetString(text)
	return ok && printed.Cmp(limit.ratio) == 0 && have.ratio.Cmp(limit.ratio) != 0
}

// precise prints a quantity with all the decimals that its number keeps.
func precise(q quantity, sys measure.System) string {
	n, unit := q.number(sys)
	return strconv.FormatFloat(n, 'f', -1, 64) + " " + unit
}

// raw prints a quantity in the unit that it is kept in, the last resort for
// values that differ by less than any other unit shows.
func raw(q quantity) string {
	unit := map[catalog.Kind]string{catalog.Pressure: " µPa", catalog.Force: " µN", catalog.Angle: " µdeg"}[q.kind]
	return strconv.FormatInt(q.whole, 10) + unit
}

// magnitude prints a margin without its sign, and says so where it is too small
// to print.
func magnitude(q quantity, sys measure.System) string {
	if q.sign() < 0 {
		q = q.negated()
	}
	if q.kind == catalog.Slope {
		return decimals(new(big.Rat).Mul(q.ratio, big.NewRat(100, 1)), 2) + "%"
	}
	text := q.text(sys)
	if q.sign() == 0 || strings.ContainsAny(text, "123456789") {
		return text
	}
	_, unit := q.number(sys)
	return strings.TrimSpace("under 0.001 " + strings.TrimSuffix(unit, "ratio"))
}
