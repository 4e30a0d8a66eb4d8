package schema

import (
	"bytes"
	"encoding/json"
	"fmt"
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v5"

	"plumbrule/checker/measure"
)

// visit calls fn for every schema inside a schema, with its pointer. It goes only where schemas stand, so that a
// property named "type" or an example is not taken for one.
func visit(v any, pointer string, fn func(pointer string, s map[string]any)) {
	s, ok := v.(map[string]any)
	if !ok {
		return
	}
	fn(pointer, s)
	for _, keyword := range []string{"items", "additionalProperties", "unevaluatedProperties", "propertyNames", "if", "then", "else", "not", "contains"} {
		visit(s[keyword], pointer+"/"+keyword, fn)
	}
	for _, keyword := range []string{"properties", "patternProperties", "$defs", "dependentSchemas"} {
		members, _ := s[keyword].(map[string]any)
		for _, key := range sortedKeys(members) {
			visit(members[key], pointer+"/"+keyword+"/"+key, fn)
		}
	}
	for _, keyword := range []string{"allOf", "anyOf", "oneOf", "prefixItems"} {
		items, _ := s[keyword].([]any)
		for i, item := range items {
			visit(item, fmt.Sprintf("%s/%s/%d", pointer, keyword, i), fn)
		}
	}
}

func mustLookup(t testing.TB, name string) *published {
	t.Helper()
	p, err := lookup(name)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

func TestEverySchemaCompilesUnderItsName(t *testing.T) {
	if !slices.Contains(Names(), "design") || !slices.IsSorted(Names()) {
		t.Errorf("Names() = %v", Names())
	}
	meta, err := jsonschema.Compile("https://json-schema.org/draft/2020-12/schema")
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range Names() {
		p := mustLookup(t, name)
		if err := meta.Validate(p.root); err != nil {
			t.Errorf("%s is no JSON Schema: %v", name, err)
		}
		for key, want := range map[string]string{"$id": base + name + suffix, "$schema": "https://json-schema.org/draft/2020-12/schema"} {
			if got := p.object(nil)[key]; got != want {
				t.Errorf("%s: %s is %v, want %s", name, key, got, want)
			}
		}
		if titled(p.object(nil)) == "this place" {
			t.Errorf("%s has no title", name)
		}
	}
	if _, err := JSON("roof"); err == nil || !strings.Contains(err.Error(), "design") {
		t.Errorf("JSON of an unknown schema gives %v", err)
	}
}

// TestEveryFieldOfADesignIsDescribed keeps the promise that an editor can explain each key. A few marks that all
// elements share are described where they are defined; a quantity says in each place what it is the quantity of.
func TestEveryFieldOfADesignIsDescribed(t *testing.T) {
	p := mustLookup(t, "design")
	count := 0
	visit(p.root, "", func(pointer string, s map[string]any) {
		properties, _ := s["properties"].(map[string]any)
		if _, isObject := s["type"]; !isObject {
			return // a branch of a condition describes nothing anew
		}
		for key, value := range properties {
			property := value.(map[string]any)
			description, _ := property["description"].(string)
			_, isQuantity := quantityOf(fmt.Sprint(p.resolve(property)["pattern"]))
			if description == "" && !isQuantity {
				description, _ = p.resolve(property)["description"].(string)
			}
			if !strings.HasSuffix(description, ".") || len(description) < 12 {
				t.Errorf("%s/properties/%s has no description worth the name: %q", pointer, key, description)
			}
			count++
		}
	})
	if count < 300 {
		t.Errorf("only %d fields seen: the test looks in the wrong place", count)
	}
}

func TestADesignIsClosedAndHasNoDefaults(t *testing.T) {
	objects := 0
	visit(mustLookup(t, "design").root, "", func(pointer string, s map[string]any) {
		if value, ok := s["default"]; ok {
			t.Errorf("%s has the default %v: what is left out is not shown", pointer, value)
		}
		for _, keyword := range []string{"oneOf", "unevaluatedProperties"} {
			if _, ok := s[keyword]; ok {
				t.Errorf("%s uses %s, whose errors have no single cause", pointer, keyword)
			}
		}
		if !kinds(s)["object"] {
			return
		}
		objects++
		switch rest := s["additionalProperties"].(type) {
		case map[string]any: // names of the user's own, with values of one kind
		case bool:
			if rest {
				t.Errorf("%s accepts any key", pointer)
			}
		default:
			t.Errorf("%s does not say which keys it accepts", pointer)
		}
		if required, ok := s["required"]; ok && pointer != "" {
			t.Errorf("%s requires %v: a drawing may not show it", pointer, required)
		}
	})
	if objects < 50 {
		t.Errorf("only %d objects seen", objects)
	}
}

// TestEveryElementCanBeMarked looks at the objects that lists hold: findings name them by mark and sheet.
func TestEveryElementCanBeMarked(t *testing.T) {
	p := mustLookup(t, "design")
	visit(p.root, "", func(pointer string, s map[string]any) {
		item := p.inner(s, "items")
		if !kinds(item)["object"] {
			return
		}
		properties := item["properties"].(map[string]any)
		for _, key := range []string{"mark", "see", "note"} {
			if _, ok := properties[key]; !ok {
				t.Errorf("an entry of %s has no %q", pointer, key)
			}
		}
	})
}

// TestExamplesFit holds the examples, which editors offer for copying, against the schema that they stand in.
func TestExamplesFit(t *testing.T) {
	for _, name := range Names() {
		c := jsonschema.NewCompiler()
		c.LoadURL = load
		quantityKeyword(c)
		visit(mustLookup(t, name).root, "", func(pointer string, s map[string]any) {
			examples, _ := s["examples"].([]any)
			if len(examples) == 0 {
				return
			}
			here, err := c.Compile(base + name + suffix + "#" + pointer)
			if err != nil {
				t.Fatal(err)
			}
			for _, example := range examples {
				if err := here.Validate(example); err != nil {
					t.Errorf("%s%s: the example %v does not fit: %v", name, pointer, example, err)
				}
			}
		})
	}
}

// TestPatterns keeps the patterns of the quantities equal to what package measure says. With -update the file follows.
func TestPatterns(t *testing.T) {
	want := map[string]string{
		"length": measure.LengthPattern, "signed_length": measure.LengthPattern, "pressure": measure.PressurePattern,
		"force": measure.ForcePattern, "angle": measure.AnglePattern, "slope": measure.SlopePattern,
		"nominal_size": measure.NominalPattern, "actual_size": measure.ActualPattern,
	}
	p := mustLookup(t, "design")
	text, err := JSON("design")
	if err != nil {
		t.Fatal(err)
	}
	for definition, pattern := range want {
		got, _ := p.object([]string{"$defs", definition})["pattern"].(string)
		if got == pattern {
			continue
		}
		if *update {
			text = bytes.ReplaceAll(text, quoted(t, got), quoted(t, pattern))
			continue
		}
		t.Errorf("the pattern of %s differs from that of package measure; go test ./schema -update carries it over", definition)
	}
	if *update {
		if err := os.WriteFile("design"+suffix, text, 0o644); err != nil {
			t.Fatal(err)
		}
	}
}

// quoted writes a text as it stands in the schema files: JSON in plain ASCII, so that no blank is invisible.
func quoted(t *testing.T, text string) []byte {
	t.Helper()
	var buffer bytes.Buffer
	encoder := json.NewEncoder(&buffer)
	encoder.SetEscapeHTML(false)
	if err := encoder.Encode(text); err != nil {
		t.Fatal(err)
	}
	var ascii bytes.Buffer
	for _, r := range strings.TrimSuffix(buffer.String(), "\n") {
		if r < 0x80 {
			ascii.WriteRune(r)
		} else {
			fmt.Fprintf(&ascii, `\u%04x`, r)
		}
	}
	return ascii.Bytes()
}

func TestEverythingElseIsASCII(t *testing.T) {
	text, err := JSON("design")
	if err != nil {
		t.Fatal(err)
	}
	if i := bytes.IndexFunc(text, func(r rune) bool { return r >= 0x80 }); i >= 0 {
		t.Errorf("byte %d of the design schema is not ASCII", i)
	}
}

// TestEveryKeywordHasWords makes sure that no complaint ends as "does not fit here" only because a schema started to
// use a keyword that nobody had worded.
func TestEveryKeywordHasWords(t *testing.T) {
	worded := strings.Fields(`$schema $id $ref $defs $comment title description examples deprecated readOnly writeOnly
		type enum const required properties additionalProperties unevaluatedProperties patternProperties propertyNames
		items prefixItems minItems maxItems uniqueItems contains minContains minProperties maxProperties
		minLength maxLength pattern minimum maximum exclusiveMinimum exclusiveMaximum multipleOf
		allOf anyOf oneOf not if then else dependentRequired dependentSchemas format`)
	for _, name := range Names() {
		visit(mustLookup(t, name).root, "", func(pointer string, s map[string]any) {
			for keyword := range s {
				if !slices.Contains(worded, keyword) {
					t.Errorf("%s%s uses %s, which has no words", name, pointer, keyword)
				}
			}
			if not, ok := s["not"].(map[string]any); ok && s["$comment"] == nil {
				t.Errorf("%s%s refuses %v without saying why in a $comment", name, pointer, not)
			}
		})
	}
}
