package measure

import (
	"math/big"
	"strconv"
	"strings"

	"github.com/agnivade/levenshtein"
)

// unit says how many base units (nanometres, micropascals and so on) one of it is: num/den.
type unit struct {
	name     string
	num, den int64
	system   System
}

// in is a base-unit value counted in this unit, exactly.
func (u unit) in(value int64) *big.Rat {
	count := big.NewRat(value, u.num)
	return count.Mul(count, big.NewRat(u.den, 1))
}

// float counts a base-unit value in this unit, rounded to six decimals.
func (u unit) float(value int64) float64 { return sixDecimals(u.in(value)) }

func sixDecimals(value *big.Rat) float64 {
	// Decimals of a quotient of int64s are well within the range of a float64, so this cannot fail.
	f, _ := strconv.ParseFloat(value.FloatString(6), 64)
	return f
}

// printedPlaces is how many decimals a printed value has at most.
const printedPlaces = 4

// print writes a base-unit value in this unit.
func (u unit) print(value int64) string {
	return trimmed(u.in(value), printedPlaces) + " " + u.name
}

// trimmed writes a number with at most so many decimals, half away from zero, without zeros at the end.
func trimmed(value *big.Rat, places int) string {
	text := value.FloatString(places)
	if strings.Contains(text, ".") {
		text = strings.TrimRight(strings.TrimRight(text, "0"), ".")
	}
	if text == "-0" {
		return "0"
	}
	return text
}

// exactly writes a number as a decimal if six places hold it, and is empty otherwise: a hint must not change a value.
func exactly(value *big.Rat) string {
	if !new(big.Rat).Mul(value, big.NewRat(1_000_000, 1)).IsInt() {
		return ""
	}
	return trimmed(value, 6)
}

// dimension is what the parsers of one kind of quantity need to know about its units.
type dimension struct {
	kind   string
	unit   func(spelling string) (unit, bool)
	words  string // one spelling or more of each unit, in the order in which they are offered
	limit  int64  // the largest magnitude accepted, in base units
	signed bool
}

// scaled brings a number of units to base units, rounded to the nearest, halves away from zero.
func (d dimension) scaled(n number, u unit) (int64, *fault) {
	twice := new(big.Int).SetUint64(n.num)
	twice.Mul(twice, big.NewInt(2*u.num))
	divisor := new(big.Int).SetUint64(n.den)
	divisor.Mul(divisor, big.NewInt(u.den))
	value := twice.Add(twice, divisor)
	value.Quo(value, divisor.Lsh(divisor, 1))
	if !value.IsInt64() || value.Int64() > d.limit {
		return 0, &fault{reason: outOfRange, problem: "more than " + trimmed(u.in(d.limit), 0) + " " + u.name}
	}
	return value.Int64(), nil
}

// measured is a base-unit value and the system it was typed in.
type measured struct {
	value  int64
	system System
}

// read reads one number and one unit.
func (d dimension) read(text string) (measured, *fault) {
	s := scanner{text: text}
	minus := s.take("-")
	if minus && !d.signed {
		return measured{}, misshapen("negative", s.rest())
	}
	n, wrong := s.number()
	if wrong != nil {
		return measured{}, wrong
	}
	s.space()
	start := s.at
	u, ok := d.unit(s.rest())
	if !ok {
		return measured{}, d.unknown(text, start, n)
	}
	if n.improper {
		return measured{}, carried(exactly(n.value()) + " " + u.name)
	}
	value, wrong := d.scaled(n, u)
	if minus {
		value = -value
	}
	return measured{value, u.system}, wrong
}

func carried(try string) *fault {
	return &fault{reason: needsCarry, problem: "a whole number with a fraction of one or more", try: []string{try}}
}

// unknown explains what stands at a place where a unit of this dimension was expected, behind the number n.
func (d dimension) unknown(text string, at int, n number) *fault {
	rest := text[at:]
	if rest == "" {
		return d.missing(n)
	}
	if rest[0] == ',' {
		return d.comma(text, at)
	}
	s := scanner{text: rest}
	word := s.word()
	if word == "" {
		return misshapen("unexpected " + quoted(rest) + " behind the number " + n.text)
	}
	if d.kind != kindLength {
		word = rest // of the other kinds, nothing follows the unit
	}
	known := strings.Fields(d.words)
	list := ", known are " + strings.Join(known[:min(5, len(known))], ", ")
	if kind := kindOfUnit(word); kind != "" && kind != d.kind {
		return misshapen(quoted(word) + " is a unit of " + kind + list)
	}
	if near := nearest(word, d.words); near != "" {
		return misshapen("unknown unit "+quoted(word), text[:at]+near+rest[len(word):])
	}
	return misshapen("unknown unit " + quoted(word) + list)
}

func (d dimension) missing(n number) *fault {
	var try []string
	for _, word := range strings.Fields(d.words)[:2] {
		try = append(try, n.text+" "+word)
	}
	return misshapen(noUnit, try...)
}

// comma offers the point for a decimal comma and drops a comma between thousands. Where it could be either, both are
// offered, except in US units, which nobody writes with a decimal comma.
func (d dimension) comma(text string, at int) *fault {
	s := scanner{text: text, at: at + 1}
	behind := s.digits()
	point := text[:at] + "." + behind + s.rest()
	whole := text[:at] + behind + s.rest()
	u, known := d.unit(strings.TrimLeft(s.rest(), " "))
	switch {
	case len(behind) != 3:
		return misshapen("a comma in a number, decimals follow a point", point)
	case known && u.system == Imperial:
		return misshapen("a comma in a number", whole)
	}
	return misshapen("a comma in a number", whole, point)
}

// nearest finds the word that is spelled most like the one given; words is separated by blanks.
func nearest(word, words string) string {
	best, distance := "", 1+len(word)/3
	for _, candidate := range strings.Fields(words) {
		if strings.EqualFold(candidate, word) {
			return candidate
		}
		d := levenshtein.ComputeDistance(strings.ToLower(word), strings.ToLower(candidate))
		if d <= distance && d < len(word) && d < len(candidate) {
			best, distance = candidate, d-1
		}
	}
	return best
}

// kindOfUnit tells what a unit measures, and is empty for a word that is no unit.
func kindOfUnit(word string) string {
	for _, d := range [...]dimension{lengthDimension(), pressureDimension(), forceDimension(), angleDimension()} {
		if _, ok := d.unit(word); ok {
			return d.kind
		}
	}
	return ""
}
