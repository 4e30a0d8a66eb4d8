package schema

import (
	"strings"
	"testing"
)

// TestWords goes through the keywords one by one, those too that the design schema does without: other schemas have
// them, and their readers are owed an answer as good.
func TestWords(t *testing.T) {
	for _, c := range []struct{ schema, text, want string }{
		{`{"type": "array", "minItems": 2}`, "[1]", "1:1: expected at least 2 entries, found 1\n"},
		{`{"type": "array", "maxItems": 2, "items": {"title": "cell"}}`, "[1, 2, 3]", "1:1: expected at most 2 cells, found 3\n"},
		{`{"uniqueItems": true}`, "[1, 1]", "1:1: an entry stands in the list twice\n"},
		{`{"contains": {"const": 3}}`, "[1]", "1:1: an entry is missing from the list\n"},
		{`{"items": {"minimum": 1, "maximum": 9}}`, "[0, 1, 10]", "1:2: expected at least 1, found 0\n1:8: expected at most 9, found 10\n"},
		{`{"items": {"exclusiveMinimum": 1}}`, "[1]", "1:2: expected more than 1, found 1\n"},
		{`{"items": {"exclusiveMaximum": 1}}`, "[1]", "1:2: expected less than 1, found 1\n"},
		{`{"items": {"multipleOf": 4}}`, "[6]", "1:2: expected a multiple of 4, found 6\n"},
		{`{"items": {"minLength": 3}}`, "[ab]", "1:2: the text is shorter than 3 characters\n"},
		{`{"items": {"maxLength": 3}}`, "[abcd]", "1:2: the text is longer than 3 characters\n"},
		{`{"items": {"pattern": "^[a-z]+$", "title": "id", "examples": ["guards"]}}`, "[G1]", "1:2: \"G1\" is no id\n  write it like guards\n"},
		{`{"items": {"pattern": "^[a-z]+$"}}`, "[G1]", "1:2: \"G1\" is no text that fits here\n"},
		{`{"items": {"enum": [1, 2]}}`, "[3]", "1:2: the number 3 is not among the values known here\n  values here: 1, 2\n"},
		{`{"items": {"const": "a"}}`, "[b]", "1:2: \"b\" is not a word known here\n  words here: a\n"},
		{`{"items": {"type": ["string", "null"]}}`, "[3]", "1:2: expected text, found the number 3\n  put it in quotes: \"3\"\n"},
		{`{"items": {"type": "integer"}}`, "[3.5]", "1:2: expected a whole number, found the number 3.5\n"},
		{`{"items": {"type": ["boolean", "array"]}}`, "[3]", "1:2: expected a list or true or false, found the number 3\n"},
		{`{"items": {"type": "boolean"}}`, "[on]", "1:2: expected true or false, found the text \"on\"\n  write true\n"},
		{`{"properties": {"a": false}}`, "{a: 1}", "1:2: \"a\" has no place here\n"},
		{`{"properties": {"a": true}, "unevaluatedProperties": false}`, "{a: 1, b: 2}", "1:8: \"b\" has no place here\n"},
		{`{"not": {"required": ["a"]}}`, "{a: 1}", "1:1: the document does not fit here\n"},
		{`{"minProperties": 1, "title": "table"}`, "{}", "1:1: the table is empty\n"},
		{`{"maxProperties": 1}`, "{a: 1, b: 2}", "1:1: there are more than 1 keys\n"},
		{`{"propertyNames": {"pattern": "^[a-z]+$"}}`, "{A1: {b: 1}}", "1:2: \"A1\" cannot be a name here\n"},
		{`{"dependentRequired": {"a": ["b"]}}`, "{a: 1}", "1:1: this place lacks the key \"b\"\n"},
		{`{"required": ["a", "b"], "properties": {"b": {"examples": [7]}}}`, "{}", "1:1: this place lacks the key \"a\"\n1:1: this place lacks the key \"b\"\n  add it, for example b: 7\n"},
		// The branch that fits furthest is the one that was meant.
		{`{"anyOf": [{"type": "string"}, {"properties": {"a": {"type": "integer"}}}]}`, "{a: x}", "1:5: expected a whole number, found the text \"x\"\n"},
		{`{"oneOf": [{"required": ["b"], "minProperties": 1}, {"required": ["a"]}]}`, "{}", "1:1: this place lacks the key \"a\"\n"},
		{`{"oneOf": [{"required": ["a"]}, {"required": ["b"]}]}`, "{a: 1, b: 2}", "1:1: the document fits more than one of the ways to write it\n"},
		{`{"items": {"if": {"enum": ["none", "all"]}, "else": {"type": "integer"}}}`, "[3.5]", "1:2: expected a whole number, found the number 3.5\n"},
		{`{"additionalProperties": false, "properties": {"x": {"description": "Far away. Elsewhere: chi (GR, east), ics."}}}`, "{chi: 1}", "1:2: unknown key \"chi\" in this place\n  it is called \"x\" here; keys here: x\n"},
	} {
		t.Run(c.schema, func(t *testing.T) {
			p, err := build("trial", []byte(c.schema), quantityKeyword)
			if err != nil {
				t.Fatal(err)
			}
			if got := listed(p.validate(parse(t, "x.yaml", c.text).Root)); got != c.want {
				t.Errorf("%s gives\n%swanted\n%s", c.text, got, c.want)
			}
		})
	}
}

func TestBrokenSchemaIsAnError(t *testing.T) {
	for _, text := range []string{`{`, `{} {}`, `{"type": "length"}`, `{"$ref": "https://plumbrule.invalid/schema/roof.schema.json"}`} {
		if _, err := build("trial", []byte(text)); err == nil {
			t.Errorf("%s compiles", text)
		}
	}
}

func TestShown(t *testing.T) {
	for text, want := range map[string]string{
		`16`:                     `"16"`,
		`16" o.c.`:               "`16\" o.c.`",
		"a\nb":                   `"a\nb"`,
		strings.Repeat("x", 100): `"` + strings.Repeat("x", maxText-1) + `…"`,
	} {
		if got := shown(text); got != want {
			t.Errorf("shown(%q) = %s, want %s", text, got, want)
		}
	}
}

func TestNearest(t *testing.T) {
	choices := []string{"out_from_house", "along_house", "mark", "size", "lag screw"}
	for word, want := range map[string]string{
		"Out-From-House": "out_from_house", "along_hosue": "along_house", "marc": "mark", "sizes": "size",
		"lagscrew": "lag screw", "see": "", "depth": "", "": "",
	} {
		if got := nearest(word, choices); got != want {
			t.Errorf("nearest(%q) = %q, want %q", word, got, want)
		}
	}
}
