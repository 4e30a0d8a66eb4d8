package measure

import "strings"

// Size is the cross section of a member as it lies in the hand: Depth is the wide face. Nominal is the US softwood
// name, 2x10 or 5/4x6, and is empty for a size that was typed in actual measures.
type Size struct {
	Thickness, Depth Length
	Nominal          string
}

const kindSize = "size"

// Text prints the nominal name if there is one, and the actual measures otherwise: 45 mm x 140 mm.
func (s Size) Text(sys System) string {
	if s.Nominal != "" {
		return s.Nominal
	}
	return s.Actual(sys)
}

// Actual prints the actual measures: 1-1/2" x 9-1/4", 45 mm x 140 mm.
func (s Size) Actual(sys System) string {
	return s.Thickness.Text(sys) + " x " + s.Depth.Text(sys)
}

// ParseSize reads a nominal size or an actual one and tells in which system it was typed. The error is a
// *SpellingError.
func ParseSize(text string) (Size, System, error) {
	sized, err := read(kindSize, text, readSize)
	return sized.size, sized.system, err
}

// ParseNominal reads a US nominal size, 2x10, 4 x 4, 5/4x6, and gives its actual dry measures. The error is a
// *SpellingError.
func ParseNominal(text string) (Size, error) {
	sized, err := read(kindSize, text, readNominal)
	return sized.size, err
}

// ParseActual reads two lengths with their units, the thickness first: 45 mm x 140 mm, 1-1/2 in x 9-1/4 in. The error
// is a *SpellingError.
func ParseActual(text string) (Size, System, error) {
	sized, err := read(kindSize, text, readActual)
	return sized.size, sized.system, err
}

type sizeIn struct {
	size   Size
	system System
}

// readSize takes a text with a unit in it for an actual size, so that the message fits what was meant.
func readSize(text string) (sizeIn, *fault) {
	if strings.Trim(text, "0123456789/xX -()") == "" {
		return readNominal(text)
	}
	return readActual(text)
}

func readActual(text string) (sizeIn, *fault) {
	first, second, found := cutSize(text)
	if !found {
		return sizeIn{}, misshapen("not a thickness x a depth", strings.Replace(text, " by ", " x ", 1))
	}
	thickness, wrong := side(first, second, func(repaired string) string { return repaired + " x " + second })
	if wrong != nil {
		return sizeIn{}, wrong
	}
	depth, wrong := side(second, first, func(repaired string) string { return first + " x " + repaired })
	if wrong != nil {
		return sizeIn{}, wrong
	}
	if thickness.system != depth.system {
		return sizeIn{}, misshapen("one side imperial and the other metric")
	}
	return sizeIn{Size{Thickness: Length(thickness.value), Depth: Length(depth.value)}, depth.system}, nil
}

func cutSize(text string) (first, second string, found bool) {
	at := strings.IndexAny(text, "xX")
	if at < 0 {
		return text, "", false
	}
	return strings.TrimRight(text[:at], " "), strings.TrimLeft(text[at+1:], " "), true
}

// side reads one of the two lengths of a size; rejoin puts a repaired side back. A side without a unit is offered the
// unit of the other.
func side(text, other string, rejoin func(string) string) (measured, *fault) {
	m, wrong := readLength(text)
	switch {
	case wrong != nil && wrong.problem == noUnit:
		unitOfOther := strings.TrimLeft(other, "0123456789/.- ")
		return m, misshapen(noUnit+" behind "+text, rejoin(text+" "+unitOfOther))
	case wrong != nil:
		side := &fault{reason: wrong.reason, problem: quoted(text) + ": " + wrong.problem}
		for _, try := range wrong.try {
			side.try = append(side.try, rejoin(try))
		}
		return m, side
	case strings.HasPrefix(text, "-"):
		return m, misshapen("a negative side")
	case m.value == 0:
		return m, &fault{reason: outOfRange, problem: "a side of zero"}
	}
	return m, nil
}
