package json_test

import (
	"bytes"
	stdjson "encoding/json"
	"os"
	"testing"

	"plumbrule/checker/report/content"
	"plumbrule/schema"
)

func decode(t *testing.T, name string) map[string]any {
	t.Helper()
	data, err := os.ReadFile("../../../fixtures/compare/" + name)
	if err != nil {
		t.Fatal(err)
	}
	decoder := stdjson.NewDecoder(bytes.NewReader(data))
	decoder.UseNumber()
	var v map[string]any
	if err := decoder.Decode(&v); err != nil {
		t.Fatal(err)
	}
	return v
}

// TestFitsItsSchema holds what the fixtures come to, which another test keeps
// equal to what is written, against the published schema.
func TestFitsItsSchema(t *testing.T) {
	for _, name := range []string{"revisions.json.want", "sets.json.want"} {
		v := decode(t, name)
		if err := schema.ValidateValue("compare", v); err != nil {
			t.Errorf("%s: %v", name, err)
		}
		if cautions, _ := v["cautions"].([]any); len(cautions) != len(content.Cautions(nil)) {
			t.Errorf("%s has %d cautions", name, len(cautions))
		}
	}
}

func first(v map[string]any, path ...string) map[string]any {
	for _, key := range path {
		switch next := v[key].(type) {
		case map[string]any:
			v = next
		case []any:
			v = next[0].(map[string]any)
		}
	}
	return v
}

// TestSchemaIsStrict makes sure that fitting the schema means something.
func TestSchemaIsStrict(t *testing.T) {
	for name, spoil := range map[string]func(revisions, sets map[string]any){
		"another version":       func(r, _ map[string]any) { r["version"] = 2 },
		"no cautions":           func(_, s map[string]any) { delete(s, "cautions") },
		"both comparisons":      func(r, s map[string]any) { r["rule_sets"] = s["rule_sets"] },
		"neither":               func(r, _ map[string]any) { delete(r, "revisions") },
		"an unknown state":      func(r, _ map[string]any) { first(r, "revisions", "findings")["state"] = "fixed" },
		"a finding of neither":  func(r, _ map[string]any) { f := first(r, "revisions", "findings"); delete(f, "old"); delete(f, "new") },
		"an unknown key":        func(r, _ map[string]any) { first(r, "revisions", "changes")["severity"] = 1 },
		"a change of one place": func(r, _ map[string]any) { delete(first(r, "revisions", "changes"), "old") },
		"one set": func(_, s map[string]any) {
			f := first(s, "rule_sets", "subjects")
			f["by_set"] = f["by_set"].([]any)[:1]
		},
		"no difference":      func(_, s map[string]any) { first(s, "rule_sets", "subjects")["difference"] = "none" },
		"an unknown outcome": func(r, _ map[string]any) { first(r, "revisions", "findings", "new")["outcome"] = "fine" },
	} {
		r, s := decode(t, "revisions.json.want"), decode(t, "sets.json.want")
		spoil(r, s)
		if schema.ValidateValue("compare", r) == nil && schema.ValidateValue("compare", s) == nil {
			t.Errorf("%s fits the schema", name)
		}
	}
}
