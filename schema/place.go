package schema

import (
	"strconv"
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
	here := p.object(nil)
	point := false
	for _, token := range strings.Split(pointer, "/")[1:] {
		next := p.under(here, strings.NewReplacer("~1", "/", "~0", "~").Replace(token))
		point = strings.HasSuffix(text(next["$ref"]), "/point")
		here = p.resolve(next)
	}
	if point {
		return Point
	}
	return p.kindOf(here)
}

// under gives the schema object of a member or an entry, references not followed.
func (p *published) under(s map[string]any, token string) map[string]any {
	if properties, ok := s["properties"].(map[string]any); ok {
		if member, ok := properties[token].(map[string]any); ok {
			return member
		}
	}
	if _, err := strconv.Atoi(token); err == nil {
		if entry, ok := s["items"].(map[string]any); ok {
			return entry
		}
	}
	rest, _ := s["additionalProperties"].(map[string]any)
	return rest
}

func text(v any) string {
	s, _ := v.(string)
	return s
}

// kindOf gives the quantity that a schema object asks for, itself or unless a word stands instead.
func (p *published) kindOf(s map[string]any) Quantity {
	pattern := text(s["pattern"])
	if pattern == "" {
		pattern = text(p.inner(s, "else")["pattern"])
	}
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
