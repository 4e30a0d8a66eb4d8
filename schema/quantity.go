package schema

import (
	"errors"

	"github.com/santhosh-tekuri/jsonschema/v5"

	"plumbrule/checker/measure"
)

// quantity is a kind of value that carries a unit. A schema asks for one by its pattern.
type quantity struct {
	name    string // with its article, for a message
	example string
	read    func(text string) error
	// unitless is set where a bare number lacks more than a unit.
	unitless bool
}

// quantityOf gives the kind of quantity that a pattern stands for.
func quantityOf(pattern string) (quantity, bool) {
	switch pattern {
	case measure.LengthPattern:
		return quantity{name: "a length", example: `12 ft 6-3/8 in`, read: func(text string) error {
			_, _, err := measure.ParseLength(text)
			return err
		}}, true
	case measure.PressurePattern:
		return quantity{name: "a load on an area", example: "40 psf", read: func(text string) error {
			_, _, err := measure.ParsePressure(text)
			return err
		}}, true
	case measure.ForcePattern:
		return quantity{name: "a force or weight", example: "1500 lb", read: func(text string) error {
			_, _, err := measure.ParseForce(text)
			return err
		}}, true
	case measure.AnglePattern:
		return quantity{name: "an angle", example: "45 or 45 deg", read: func(text string) error {
			_, err := measure.ParseAngle(text)
			return err
		}}, true
	case measure.SlopePattern:
		return quantity{name: "a slope", example: "1 in 60 or 2%", read: func(text string) error {
			_, err := measure.ParseSlope(text)
			return err
		}}, true
	case measure.NominalPattern:
		return quantity{name: "a nominal size", example: "2x10", unitless: true, read: func(text string) error {
			_, err := measure.ParseNominal(text)
			return err
		}}, true
	case measure.ActualPattern:
		return quantity{name: "a real size", example: "45 mm x 140 mm", read: func(text string) error {
			_, _, err := measure.ParseActual(text)
			return err
		}}, true
	}
	return quantity{}, false
}

// quantityKeyword makes a schema refuse what fits the pattern of a quantity and still cannot be read, such as a zero
// denominator or fourteen inches after feet. Other validators see the pattern alone.
func quantityKeyword(c *jsonschema.Compiler) {
	c.RegisterExtension("quantity", nil, quantityCompiler{})
}

type quantityCompiler struct{}

// Compile picks the schemas that have the pattern of a quantity.
func (quantityCompiler) Compile(_ jsonschema.CompilerContext, s map[string]interface{}) (jsonschema.ExtSchema, error) {
	pattern, _ := s["pattern"].(string)
	q, ok := quantityOf(pattern)
	if !ok {
		return nil, nil
	}
	return quantitySchema{q}, nil
}

type quantitySchema struct{ quantity }

// Validate reads the text. It complains under the name of the pattern, so that a text which does not fit the pattern
// either is complained of once.
func (s quantitySchema) Validate(ctx jsonschema.ValidationContext, v interface{}) error {
	text, ok := v.(string)
	if !ok {
		return nil
	}
	if err := s.read(text); err != nil {
		return ctx.Error("pattern", "%v", err)
	}
	return nil
}

// unreadable words why a text is not the quantity: the message, and the spelling that was probably meant.
func (q quantity) unreadable(text string) (message, hint string) {
	err := q.read(text)
	var spelling *measure.SpellingError
	if !errors.As(err, &spelling) {
		return shown(text) + " is not " + q.name, "write it like " + q.example
	}
	if spelling.Meant == "" {
		hint = "write it like " + q.example
	} else {
		hint = "write " + spelling.Meant
	}
	without := *spelling
	without.Meant = ""
	return without.Error(), hint
}
