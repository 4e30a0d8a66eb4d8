package measure

import "strings"

// Length is a length in nanometres.
type Length int64

// Lengths that others are made of.
const (
	Inch       Length = 25_400_000
	Foot              = 12 * Inch
	Millimetre Length = 1_000_000
	Metre             = 1000 * Millimetre
)

// MaxLength is the largest length that is read. It leaves room for sums, and keeps a product of two lengths within
// 128 bits.
const MaxLength = 10_000 * Metre

const kindLength = "length"

func lengthDimension() dimension {
	return dimension{
		kind: kindLength, unit: lengthUnit, limit: int64(MaxLength), signed: true,
		words: "in ft mm cm m inch inches foot feet millimetre millimetres centimetre centimetres metre metres",
	}
}

// lengthUnit knows US units in small letters and capitals, and metric symbols in their own case only.
func lengthUnit(spelling string) (unit, bool) {
	switch spelling {
	case `"`, "in", "in.", "inch", "inches", "IN", "IN.", "INCH", "INCHES":
		return unit{"in", int64(Inch), 1, Imperial}, true
	case "'", "ft", "ft.", "foot", "feet", "FT", "FT.", "FOOT", "FEET":
		return unit{"ft", int64(Foot), 1, Imperial}, true
	case "mm", "millimetre", "millimetres", "millimeter", "millimeters":
		return unit{"mm", int64(Millimetre), 1, Metric}, true
	case "cm", "centimetre", "centimetres", "centimeter", "centimeters":
		return unit{"cm", 10 * int64(Millimetre), 1, Metric}, true
	case "m", "metre", "metres", "meter", "meters":
		return unit{"m", int64(Metre), 1, Metric}, true
	}
	return unit{}, false
}

// ParseLength reads a length with its unit, rounded once to the nearest nanometre, and tells in which system it was
// typed: 12 ft 6-3/8 in, 12'-6 3/8", 150.375 in, 6½", 3820 mm, 3.82 m. A leading minus is accepted; whether it makes
// sense is for the caller to say. The error is a *SpellingError.
func ParseLength(text string) (Length, System, error) {
	m, err := read(kindLength, text, readLength)
	return Length(m.value), m.system, err
}

func readLength(text string) (measured, *fault) {
	d := lengthDimension()
	s := scanner{text: text}
	minus := s.take("-")
	m, wrong := s.length(d)
	if minus {
		m.value = -m.value
	}
	return m, wrong
}

// length reads an unsigned length up to the end of the text.
func (s *scanner) length(d dimension) (measured, *fault) {
	first, wrong := s.part(d)
	if wrong != nil {
		return measured{}, wrong
	}
	if s.done() {
		if first.improper {
			return measured{}, carriedLength(d, first)
		}
		value, wrong := d.scaled(first.number, first.unit)
		return measured{value, first.unit.system}, wrong
	}
	return s.inchesBehind(d, first)
}

// part is a number and its unit of length.
type part struct {
	number
	unit     unit
	spelling string // the unit as typed
}

func (s *scanner) part(d dimension) (part, *fault) {
	n, wrong := s.number()
	if wrong != nil {
		return part{}, wrong
	}
	s.space()
	start := s.at
	u, spelling, ok := s.lengthUnit()
	if !ok {
		return part{}, d.unknownLength(s.text, start, n)
	}
	return part{n, u, spelling}, nil
}

// lengthUnit reads a word or a mark that is a unit of length.
func (s *scanner) lengthUnit() (u unit, spelling string, ok bool) {
	start := s.at
	if !s.take("'") && !s.take(`"`) {
		s.word()
	}
	spelling = s.text[start:s.at]
	u, ok = lengthUnit(spelling)
	return u, spelling, ok
}

// inchesBehind reads the inches that follow a first part, which ought to be feet.
func (s *scanner) inchesBehind(d dimension, first part) (measured, *fault) {
	start := s.at
	s.space()
	s.take("-")
	s.space()
	if !s.numberNext() || strings.HasPrefix(s.rest(), ".") {
		return measured{}, s.notInches(start, first)
	}
	if s.at == start && first.spelling[len(first.spelling)-1] == '.' {
		// 12ft.5in could be half an inch as well as five.
		return measured{}, misshapen("no space behind the full stop", s.text[:start]+" "+s.rest())
	}
	inches, wrong := s.part(d)
	if wrong != nil {
		return measured{}, wrong
	}
	if wrong := combine(first, inches, s); wrong != nil {
		return measured{}, wrong
	}
	sum, wrong := inches.plus(12 * first.num)
	if wrong != nil {
		return measured{}, wrong
	}
	total := part{number: sum, unit: inches.unit}
	if inches.improper {
		return measured{}, carriedLength(d, total)
	}
	if inches.num >= 12*inches.den {
		wrong := carriedLength(d, total)
		if wrong.reason == needsCarry {
			wrong.problem = "twelve inches or more behind the feet"
		}
		return measured{}, wrong
	}
	value, wrong := d.scaled(total.number, total.unit)
	return measured{value, Imperial}, wrong
}
