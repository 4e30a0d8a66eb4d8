package schema

import (
	"strings"

	"plumbrule/checker/measure"
)

// Quantity is the kind of value that a schema asks for at a place, as far as equal values of it may be spelled
// differently.
type Quantity uint8

// The kinds of quantity. Plain is everything that means what it spells.
const (
	Plain Quantity = iota
	Length
	Pressure
	Force
	Angle
	Slope
	Size
	// Point is a place on the plan: a list of two lengths that is one value.
	Point
)

// QuantityAt gives the kind of quantity that the named schema asks for at a JSON pointer of a document (plain tokens).
// It is Plain where the schema or the place is unknown.
func QuantityAt(name, pointer string) Quantity {
	p, err := lookup(name)
	if err != nil {
		return Plain
	}
	steps := strings.Split(pointer, "/")[1:]
	for i, token := range steps {
		steps[i] = strings.NewReplacer("~1", "/", "~0", "~").Replace(token)
	}
	here, _ := p.follow(steps)
	for _, s := range p.widened(here) {
		if strings.HasSuffix(text(s["$ref"]), "/point") {
			return Point
		}
		if kind := kindOf(text(s["pattern"])); kind != Plain {
			return kind
		}
	}
	return Plain
}

// kindOf gives the quantity that a pattern is for.
func kindOf(pattern string) Quantity {
	switch pattern {
	case measure.LengthPattern:
		return Length
	case measure.PressurePattern:
		return Pressure
	case measure.ForcePattern:
		return Force
	case measure.AnglePattern:
		return Angle
	case measure.SlopePattern:
		return Slope
	case measure.NominalPattern, measure.ActualPattern:
		return Size
	}
	return Plain
}
