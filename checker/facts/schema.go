package facts

import (
	"bytes"
	"encoding/json"
	"fmt"
	"reflect"
	"strings"
	"unicode"
)

// Schema gives the JSON Schema of the facts document as an untyped tree, made
// from the Go types and their doc tags. It keeps to keywords that the checks'
// type checker reads (type, properties, items, $ref), and to required and
// additionalProperties, which state what the checker assumes anyhow: what is
// not listed does not exist.
func Schema() map[string]any {
	s := schemaMaker{defs: map[string]any{}}
	root := s.object(reflect.TypeFor[Facts]())
	root["$schema"] = "https://json-schema.org/draft/2020-12/schema"
	root["$id"] = "https://plumbrule.invalid/schema/facts.schema.json"
	root["title"] = "Facts of a deck"
	root["description"] = "What a design says and what follows from it, as checks read it. A value that is not shown is absent. " +
		"Lengths are whole nanometres, pressures whole micropascals, forces whole micronewtons, angles whole micro-degrees, areas whole square millimetres."
	root["$defs"] = s.defs
	return root
}

// SchemaJSON gives Schema as indented text that ends with a line break, as it
// is published.
func SchemaJSON() ([]byte, error) {
	var text bytes.Buffer
	encoder := json.NewEncoder(&text)
	encoder.SetEscapeHTML(false)
	encoder.SetIndent("", "  ")
	if err := encoder.Encode(Schema()); err != nil {
		return nil, fmt.Errorf("writing the facts schema: %w", err)
	}
	return text.Bytes(), nil
}

// schemaMaker collects one definition for each struct type met.
type schemaMaker struct {
	defs map[string]any
}

// object describes a struct, one property for each field. Fields that are
// never left out are required.
func (s schemaMaker) object(t reflect.Type) map[string]any {
	properties := map[string]any{}
	required := []string{}
	for i := range t.NumField() {
		field := t.Field(i)
		name, options, _ := strings.Cut(field.Tag.Get("json"), ",")
		property := s.of(field.Type)
		property["description"] = field.Tag.Get("doc")
		properties[name] = property
		if options != "omitempty" {
			required = append(required, name)
		}
	}
	return map[string]any{
		"type":                 "object",
		"properties":           properties,
		"required":             required,
		"additionalProperties": false,
	}
}

func (s schemaMaker) of(t reflect.Type) map[string]any {
	switch t.Kind() {
	case reflect.Pointer:
		return s.of(t.Elem())
	case reflect.Slice:
		return map[string]any{"type": "array", "items": s.of(t.Elem())}
	case reflect.Struct:
		return s.reference(t)
	case reflect.String:
		return map[string]any{"type": "string"}
	case reflect.Bool:
		return map[string]any{"type": "boolean"}
	default: // whole numbers are all that is left; a test refuses other kinds
		return map[string]any{"type": "integer"}
	}
}

func (s schemaMaker) reference(t reflect.Type) map[string]any {
	name := definition(t)
	if _, done := s.defs[name]; !done {
		s.defs[name] = nil // reserves the name while the fields are described
		s.defs[name] = s.object(t)
	}
	return map[string]any{"$ref": "#/$defs/" + name}
}

// definition names a struct type in the schema: joist_span for JoistSpan, and
// for a value with its places what kind of value it is.
func definition(t reflect.Type) string {
	outer, inner, generic := strings.Cut(t.Name(), "[")
	if !generic || outer != "Of" {
		return snake(outer)
	}
	inner, _, _ = strings.Cut(strings.TrimSuffix(inner, "]"), "[")
	switch inner = inner[strings.LastIndexAny(inner, "./")+1:]; inner {
	case "Ratio":
		return "shown_slope"
	case "int64":
		return "shown_whole_number"
	case "string":
		return "shown_word"
	case "bool":
		return "shown_flag"
	}
	return "shown_" + snake(inner)
}

func snake(name string) string {
	var b strings.Builder
	for i, r := range name {
		if unicode.IsUpper(r) && i > 0 {
			b.WriteByte('_')
		}
		b.WriteRune(unicode.ToLower(r))
	}
	return b.String()
}
