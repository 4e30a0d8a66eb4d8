package measure

import (
	"errors"
	"math/big"
	"strings"
)

// SuggestLength offers spellings for a number that was typed without a unit: 16 becomes
// "16 in, 16 ft or 406.4 mm". It is empty for a text that is not such a number.
func SuggestLength(bare string) string {
	_, err := read(kindLength, bare, readLength)
	var wrong *SpellingError
	if !errors.As(err, &wrong) || wrong.Problem != noUnit {
		return ""
	}
	return wrong.Meant
}

// bareLength offers units by the size of the number: nobody builds 300 ft of deck, and nobody measures it in inches.
func bareLength(sign string, n number) *fault {
	value := n.value()
	switch {
	case n.num == 0:
		return misshapen(noUnit, "0 in", "0 mm")
	case !n.whole() && strings.Trim(n.text, "0123456789.") != "":
		return misshapen(noUnit, sign+n.text+" in")
	case value.Cmp(big.NewRat(300, 1)) >= 0:
		metres := exactly(new(big.Rat).Quo(value, big.NewRat(1000, 1)))
		return misshapen(noUnit, sign+exactly(value)+" mm", sign+metres+" m")
	}
	try := []string{sign + n.text + " in"}
	if value.Cmp(big.NewRat(60, 1)) <= 0 {
		try = append(try, sign+n.text+" ft")
	}
	millimetres := exactly(new(big.Rat).Mul(value, big.NewRat(254, 10)))
	return misshapen(noUnit, append(try, sign+millimetres+" mm")...)
}

// unknownLength explains what stands where the unit of the number n was expected. Apart from what goes wrong with any
// quantity there is the shorthand of framing tables and site talk, 12-6 for twelve feet six.
func (d dimension) unknownLength(text string, at int, n number) *fault {
	rest := text[at:]
	before := strings.TrimSuffix(strings.TrimRight(text[:at], " "), n.text)
	switch {
	case rest == "" && strings.Trim(before, "-") == "":
		return bareLength(before, n)
	case rest == "":
		mark := " in"
		if strings.HasSuffix(strings.TrimRight(before, " -"), "'") {
			mark = `"`
		}
		return misshapen(noUnit+" at the end", strings.TrimRight(text, " ")+mark)
	case rest[0] == '-' && n.whole() && strings.Trim(before, "-") == "":
		inches := strings.TrimRight(strings.TrimLeft(rest, "- "), " ")
		return misshapen("no unit behind the feet", before+n.text+"'-"+inches, before+n.text+"'-"+inches+`"`)
	}
	return d.unknown(text, at, n)
}

// notInches explains what stands behind a first part when it is not a number of inches.
func (s *scanner) notInches(start int, first part) *fault {
	rest := s.text[start:]
	if strings.HasPrefix(strings.TrimLeft(rest, " -"), ".") {
		return misshapen("inches behind feet start with a digit", s.text[:start]+strings.Replace(rest, ".", "0.", 1))
	}
	return misshapen("unexpected " + quoted(strings.TrimLeft(rest, " ")) + " behind " + first.text + " " + first.unit.name)
}

// combine refuses two parts of a length that are not whole feet and then inches, or are not the end of the text.
func combine(feet, inches part, s *scanner) *fault {
	switch {
	case feet.unit.name == "in" && inches.unit.name == "ft":
		return misshapen("inches before feet", inches.text+" ft "+feet.text+" in")
	case feet.unit.system == Metric && inches.unit.system == Metric && feet.unit.num > inches.unit.num:
		sum := new(big.Rat).Mul(inches.value(), big.NewRat(inches.unit.num, feet.unit.num))
		sum.Add(sum, feet.value())
		return misshapen(pairing(feet, inches), exactly(sum)+" "+feet.unit.name)
	case feet.unit.name != "ft" || inches.unit.name != "in":
		return misshapen(pairing(feet, inches))
	case !s.done():
		return misshapen("unexpected " + quoted(s.rest()) + " behind the inches")
	case !feet.whole():
		return carriedFeet(feet, inches)
	}
	return nil
}

func pairing(first, second part) string {
	return first.unit.name + " and " + second.unit.name + " in one length, only feet and inches combine"
}

// carriedFeet offers what feet with a fraction and inches come to, where that is a decimal number of inches.
func carriedFeet(feet, inches part) *fault {
	sum := new(big.Rat).Mul(feet.value(), big.NewRat(12, 1))
	sum.Add(sum, inches.value())
	return misshapen("feet before inches are not whole", exactly(sum)+" in")
}

// carriedLength offers the usual spelling of a length whose parts are too large for their places, unless printing
// rounds it.
func carriedLength(d dimension, p part) *fault {
	value, wrong := d.scaled(p.number, p.unit)
	if wrong != nil {
		return wrong
	}
	text := Length(value).Text(p.unit.system)
	if printed, wrong := readLength(text); wrong != nil || printed.value != value {
		text = ""
	}
	return carried(text)
}
