package measure

import (
	"math/big"
	"strconv"
	"strings"
)

const (
	sixtyFourth = Inch / 64
	// feetAbove is the length above which inches alone are hard to read off a tape.
	feetAbove = 48 * Inch

	inchPlaces       = 4
	millimetrePlaces = 3
	micrometre       = uint64(Millimetre / 1000)
)

// Text prints the length for people. Imperial: 7-3/4", 6'-8", 20'-8 13/16", in inches up to 48 in and in feet and
// inches above, with a fraction where the value is a whole number of 1/64 in and with at most four decimals elsewhere,
// 7.4286". Metric: millimetres with at most three decimals, 163.286 mm.
func (l Length) Text(sys System) string {
	size := l.magnitude()
	if sys == Metric {
		count := (size + micrometre/2) / micrometre
		return sign(l, count) + point(count, 1000) + " mm"
	}
	if size%uint64(sixtyFourth) != 0 {
		return l.decimalText(size)
	}
	return sign(l, size) + tape(size/uint64(sixtyFourth), 64, size > uint64(feetAbove))
}

// In counts the length in inches or millimetres, rounded to six decimals, and names that unit.
func (l Length) In(sys System) (float64, string) {
	u := lengthIn(sys)
	return u.float(int64(l)), u.name
}

// Sixteenths prints the length as a tape shows it, rounded to 1/16 in, in feet and inches from one foot on:
// 9-1/4", 5'-1 5/16".
func (l Length) Sixteenths() string {
	const sixteenth = uint64(Inch / 16)
	count := (l.magnitude() + sixteenth/2) / sixteenth
	return sign(l, count) + tape(count, 16, count >= 12*16)
}

// Distinct prints two lengths that are compared, with as many decimals as it takes to make the texts of different
// values different.
func Distinct(have, limit Length, sys System) (h, l string) {
	places := inchPlaces
	if sys == Metric {
		places = millimetrePlaces
	}
	u := lengthIn(sys)
	a, b := u.in(int64(have)), u.in(int64(limit))
	if have == limit || trimmed(a, places) != trimmed(b, places) {
		return have.Text(sys), limit.Text(sys)
	}
	// 1 nm shows in the eighth decimal of an inch and the sixth of a millimetre, so this ends.
	for trimmed(a, places) == trimmed(b, places) {
		places++
	}
	return plainText(a, places, sys), plainText(b, places, sys)
}

func plainText(value *big.Rat, places int, sys System) string {
	if sys == Metric {
		return trimmed(value, places) + " mm"
	}
	return trimmed(value, places) + `"`
}

func lengthIn(sys System) unit {
	if sys == Metric {
		return unit{"mm", int64(Millimetre), 1, Metric}
	}
	return unit{"in", int64(Inch), 1, Imperial}
}

// magnitude does not overflow where negating would.
func (l Length) magnitude() uint64 {
	if l < 0 {
		return -uint64(l)
	}
	return uint64(l)
}

// sign is the minus of a negative length, unless nothing of it is left after rounding.
func sign(l Length, shown uint64) string {
	if l < 0 && shown > 0 {
		return "-"
	}
	return ""
}

// decimalText prints a length that is no whole number of 1/64 in.
func (l Length) decimalText(size uint64) string {
	const perInch = 10_000 // inchPlaces decimals
	const step = uint64(Inch) / perInch
	count := (size + step/2) / step
	lead := sign(l, count)
	if size > uint64(feetAbove) {
		lead += strconv.FormatUint(count/(12*perInch), 10) + "'-"
		count %= 12 * perInch
	}
	return lead + point(count, perInch) + `"`
}

// point prints a count of decimal parts of a unit, without zeros at the end.
func point(count, perUnit uint64) string {
	whole := strconv.FormatUint(count/perUnit, 10)
	if count%perUnit == 0 {
		return whole
	}
	decimals := strconv.FormatUint(perUnit+count%perUnit, 10)[1:]
	return whole + "." + strings.TrimRight(decimals, "0")
}

// tape prints a count of inch fractions with marks: 7-3/4" or, with feet, 20'-8 13/16".
func tape(count, perInch uint64, feet bool) string {
	inches, num := count/perInch, count%perInch
	lead, join := "", "-"
	if feet {
		lead, join = strconv.FormatUint(inches/12, 10)+"'-", " "
		inches %= 12
	}
	if num == 0 {
		return lead + strconv.FormatUint(inches, 10) + `"`
	}
	den := perInch
	for num%2 == 0 {
		num, den = num/2, den/2
	}
	fraction := strconv.FormatUint(num, 10) + "/" + strconv.FormatUint(den, 10) + `"`
	if inches == 0 && !feet {
		return fraction
	}
	return lead + strconv.FormatUint(inches, 10) + join + fraction
}
