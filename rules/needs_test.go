package rules_test

import (
	"encoding/json"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"

	"plumbrule/schema"
)

var fieldPath = regexp.MustCompile(`^[a-z_]+(\[\])?(\.[a-z0-9_<>]+(\[\])?)+$`)

// TestFieldsThatChecksAskForExist resolves every path of a field that a check
// names, as guards[].height, in the schema of designs: a field that is not
// shown must be one that can be shown.
func TestFieldsThatChecksAskForExist(t *testing.T) {
	text, err := schema.JSON("design")
	if err != nil {
		t.Fatal(err)
	}
	var root map[string]any
	if err := json.Unmarshal(text, &root); err != nil {
		t.Fatal(err)
	}
	found := 0
	for file, m := range load(t).Modules() {
		ast.WalkTerms(m, func(term *ast.Term) bool {
			path, ok := term.Value.(ast.String)
			if !ok || !fieldPath.MatchString(string(path)) {
				return false
			}
			found++
			if !(design{root}).has([]map[string]any{root}, strings.Split(string(path), ".")) {
				t.Errorf("%s:%d: the language of designs has no field %s", file, term.Location.Row, path)
			}
			return false
		})
	}
	if found < 20 {
		t.Errorf("only %d paths found in all checks", found)
	}
}

// design resolves paths in a schema.
type design struct{ root map[string]any }

func (d design) has(here []map[string]any, path []string) bool {
	if len(path) == 0 {
		return len(here) > 0
	}
	name, list := strings.CutSuffix(path[0], "[]")
	var next []map[string]any
	for _, s := range d.all(here) {
		properties, _ := s["properties"].(map[string]any)
		if p, ok := properties[name].(map[string]any); ok {
			next = append(next, p)
		}
		if p, ok := s["additionalProperties"].(map[string]any); ok && strings.HasPrefix(name, "<") {
			next = append(next, p)
		}
	}
	if list {
		var items []map[string]any
		for _, s := range d.all(next) {
			if item, ok := s["items"].(map[string]any); ok {
				items = append(items, item)
			}
		}
		next = items
	}
	return len(next) > 0 && d.has(next, path[1:])
}

// all adds to schemas those that they refer to or are put together from.
func (d design) all(here []map[string]any) []map[string]any {
	all := slices.Clone(here)
	for i := 0; i < len(all); i++ {
		s := all[i]
		if ref, ok := s["$ref"].(string); ok {
			defs, _ := d.root["$defs"].(map[string]any)
			if def, ok := defs[strings.TrimPrefix(ref, "#/$defs/")].(map[string]any); ok {
				all = append(all, def)
			}
		}
		for _, keyword := range []string{"then", "else"} {
			if branch, ok := s[keyword].(map[string]any); ok {
				all = append(all, branch)
			}
		}
		for _, keyword := range []string{"allOf", "anyOf", "oneOf"} {
			branches, _ := s[keyword].([]any)
			for _, branch := range branches {
				if b, ok := branch.(map[string]any); ok {
					all = append(all, b)
				}
			}
		}
	}
	return all
}
