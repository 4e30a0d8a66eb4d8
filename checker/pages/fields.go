package pages

import (
	"encoding/json"
	"fmt"
	"slices"
	"strings"

	"plumbrule/schema"
)

// fields describes the fields of a design by the schema of designs.
type fields struct{ root map[string]any }

func readFields() (*fields, error) {
	text, err := schema.JSON("design")
	if err != nil {
		return nil, err
	}
	f := &fields{}
	if err := json.Unmarshal(text, &f.root); err != nil {
		return nil, fmt.Errorf("reading the schema of designs: %w", err)
	}
	return f, nil
}

// about says what a field is, named as in guards[].height; empty where the
// schema has nothing to say of it.
func (f *fields) about(field string) string {
	here := []map[string]any{f.root}
	for step := range strings.SplitSeq(field, ".") {
		name, list := strings.CutSuffix(step, "[]")
		here = f.below(here, name)
		if list {
			here = f.items(here)
		}
	}
	for _, s := range f.all(here) {
		if text, ok := s["description"].(string); ok {
			return text
		}
	}
	return ""
}

// below gives the schemas of a member.
func (f *fields) below(here []map[string]any, name string) []map[string]any {
	var next []map[string]any
	for _, s := range f.all(here) {
		properties, _ := s["properties"].(map[string]any)
		if property, ok := properties[name].(map[string]any); ok {
			next = append(next, property)
		} else if other, ok := s["additionalProperties"].(map[string]any); ok {
			next = append(next, other)
		}
	}
	return next
}

func (f *fields) items(here []map[string]any) []map[string]any {
	var next []map[string]any
	for _, s := range f.all(here) {
		if item, ok := s["items"].(map[string]any); ok {
			next = append(next, item)
		}
	}
	return next
}

// all adds to schemas those that they refer to or are put together from.
func (f *fields) all(here []map[string]any) []map[string]any {
	all := slices.Clone(here)
	for i := 0; i < len(all); i++ {
		s := all[i]
		if ref, ok := s["$ref"].(string); ok {
			defs, _ := f.root["$defs"].(map[string]any)
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
