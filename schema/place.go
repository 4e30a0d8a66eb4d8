package schema

import (
	"slices"
	"strconv"
	"strings"
)

// Field is what a schema says of one field of a document.
type Field struct {
	Description string // "" where the schema has none
	// OwnNames are the steps of the path that the schema leaves to the author of a document, such as the name of an edge,
	// and that the path spells out instead of writing them in brackets.
	OwnNames []string
}

// FieldAt finds a field in the named schema by its path: guards[].height, platforms[].edges.<edge>.drop. Brackets stand
// for any entry of a list and for any name that the author of a document gives. ok is false where the schema has no such
// field, or is unknown.
func FieldAt(name, path string) (field Field, ok bool) {
	p, err := lookup(name)
	if err != nil {
		return Field{}, false
	}
	var steps []string
	for step := range strings.SplitSeq(path, ".") {
		key, list := strings.CutSuffix(step, "[]")
		steps = append(steps, key)
		if list {
			steps = append(steps, anyEntry)
		}
	}
	here, own := p.follow(steps)
	for _, s := range p.widened(here) {
		if field.Description = text(s["description"]); field.Description != "" {
			break
		}
	}
	field.OwnNames = own
	return field, len(here) > 0
}

// HasField reports whether any object of the named schema has a field of that name, whatever the object.
func HasField(name, key string) bool {
	p, err := lookup(name)
	return err == nil && len(p.ownersOf(key)) > 0
}

// anyEntry is the step into a list; one of a pointer is a number.
const anyEntry = "[]"

// follow gives the schema objects, references not followed, that speak of what the steps lead to from the root. There
// are several where the schema says of one value what may stand there by cases. Own are the steps that are names which
// the schema leaves open, without their brackets.
func (p *published) follow(steps []string) (here []map[string]any, own []string) {
	here = []map[string]any{p.object(nil)}
	for _, step := range steps {
		next, open := p.under(p.widened(here), step)
		if open {
			own = append(own, step)
		}
		here = next
	}
	return here, own
}

// under gives the schema objects of a member or an entry. Open says that the step is a name that these leave to the
// author and stands without brackets.
func (p *published) under(all []map[string]any, step string) (next []map[string]any, open bool) {
	_, err := strconv.Atoi(step)
	entry := err == nil || step == anyEntry
	for _, s := range all {
		properties, _ := s["properties"].(map[string]any)
		if member, ok := properties[step].(map[string]any); ok {
			next = append(next, member)
		}
		if item, ok := s["items"].(map[string]any); ok && entry {
			next = append(next, item)
		}
	}
	if len(next) > 0 || step == anyEntry {
		return next, false
	}
	for _, s := range all {
		if member, ok := s["additionalProperties"].(map[string]any); ok {
			next = append(next, member)
		}
	}
	return next, len(next) > 0 && !strings.HasPrefix(step, "<")
}

// widened adds to schema objects those that they refer to or are put together from.
func (p *published) widened(here []map[string]any) []map[string]any {
	all := slices.Clone(here)
	for i := 0; i < len(all); i++ { // grows as it goes
		s := all[i]
		if _, refers := s["$ref"]; refers {
			all = append(all, p.resolve(s))
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

func text(v any) string {
	s, _ := v.(string)
	return s
}
