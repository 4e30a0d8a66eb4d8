package facts_test

import (
	"bytes"
	"flag"
	"os"
	"reflect"
	"strings"
	"testing"

	"plumbrule/checker/facts"
)

var update = flag.Bool("update", false, "rewrite the published schema")

const published = "../../schema/facts.schema.json"

func TestSchemaIsPublished(t *testing.T) {
	want, err := facts.SchemaJSON()
	if err != nil {
		t.Fatal(err)
	}
	if *update {
		if err := os.WriteFile(published, want, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	have, err := os.ReadFile(published)
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(have, want) {
		t.Errorf("%s is not what the types say; run go test ./checker/facts -run TestSchemaIsPublished -update", published)
	}
}

// TestEveryFieldCanBeDescribed keeps the types to what the schema and the
// input of the checks can carry: a name in snake case, a doc tag, pointers and
// texts left out when empty, and no kind but whole numbers, words and flags.
func TestEveryFieldCanBeDescribed(t *testing.T) {
	seen := map[reflect.Type]bool{}
	var visit func(path string, typ reflect.Type)
	visit = func(path string, typ reflect.Type) {
		switch typ.Kind() {
		case reflect.Pointer, reflect.Slice:
			visit(path, typ.Elem())
		case reflect.String, reflect.Bool, reflect.Int64:
		case reflect.Struct:
			if seen[typ] {
				return
			}
			seen[typ] = true
			for i := range typ.NumField() {
				field := typ.Field(i)
				where := path + "." + field.Name
				name, options, _ := strings.Cut(field.Tag.Get("json"), ",")
				if name == "" || name != strings.ToLower(name) || strings.Contains(name, "-") {
					t.Errorf("%s: the json tag names %q, want a name in snake case", where, name)
				}
				if field.Tag.Get("doc") == "" {
					t.Errorf("%s has no doc tag", where)
				}
				if field.Type.Kind() == reflect.Pointer && options != "omitempty" {
					t.Errorf("%s is a pointer and must be left out when nil", where)
				}
				visit(where, field.Type)
			}
		default:
			t.Errorf("%s has kind %s, which facts do not carry", path, typ.Kind())
		}
	}
	visit("Facts", reflect.TypeFor[facts.Facts]())
}

func TestSchemaKeepsToPlainKeywords(t *testing.T) {
	allowed := map[string]bool{
		"$schema": true, "$id": true, "$defs": true, "$ref": true, "title": true, "description": true,
		"type": true, "properties": true, "items": true, "required": true, "additionalProperties": true,
	}
	refs := 0
	var visit func(path string, schema map[string]any)
	visit = func(path string, schema map[string]any) {
		for keyword := range schema {
			if !allowed[keyword] {
				t.Errorf("%s uses the keyword %s", path, keyword)
			}
		}
		if schema["type"] == "object" && schema["additionalProperties"] != false {
			t.Errorf("%s is open", path)
		}
		if ref, ok := schema["$ref"].(string); ok {
			refs++
			name := strings.TrimPrefix(ref, "#/$defs/")
			if facts.Schema()["$defs"].(map[string]any)[name] == nil {
				t.Errorf("%s refers to %s, which does not exist", path, ref)
			}
		}
		for _, nested := range []string{"properties", "$defs"} {
			members, _ := schema[nested].(map[string]any)
			for name, member := range members {
				visit(path+"/"+nested+"/"+name, member.(map[string]any))
			}
		}
		if items, ok := schema["items"].(map[string]any); ok {
			visit(path+"/items", items)
		}
	}
	visit("", facts.Schema())
	if refs < 50 {
		t.Errorf("visited %d references, the walk missed the types", refs)
	}
}

func TestSchemaSaysWhatIsAlwaysThere(t *testing.T) {
	defs := facts.Schema()["$defs"].(map[string]any)
	flight := defs["flight"].(map[string]any)
	required := flight["required"].([]string)
	for name, want := range map[string]bool{"at": true, "n": true, "risers": false, "riser_max_n": true, "riser_max": false} {
		have := false
		for _, r := range required {
			have = have || r == name
		}
		if have != want {
			t.Errorf("flight.%s: required is %t, want %t", name, have, want)
		}
	}
	length := defs["shown_length"].(map[string]any)["properties"].(map[string]any)
	if length["value"].(map[string]any)["type"] != "integer" {
		t.Errorf("a length's value is %v, want a whole number", length["value"])
	}
}
