package schema

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"net/url"
	"strings"
	"sync"

	"github.com/santhosh-tekuri/jsonschema/v5"
)

// published is a schema ready for use: compiled for validating, and as plain data for wording what went wrong.
type published struct {
	name     string
	root     any
	compiled *jsonschema.Schema
}

// all holds one lazy compilation per schema, because a run needs two or three of them at most.
var all = sync.OnceValue(func() map[string]func() (*published, error) {
	lazy := make(map[string]func() (*published, error))
	for _, name := range Names() {
		lazy[name] = sync.OnceValues(func() (*published, error) {
			return compile(name, quantityKeyword)
		})
	}
	return lazy
})

// lookup gives the schema of that name, compiled at its first use.
func lookup(name string) (*published, error) {
	get, ok := all()[name]
	if !ok {
		_, err := JSON(name)
		return nil, err
	}
	return get()
}

// compile prepares a published schema. The extensions add meaning to keywords that are there for other validators too.
func compile(name string, extensions ...func(*jsonschema.Compiler)) (*published, error) {
	data, err := JSON(name)
	if err != nil {
		return nil, err
	}
	return build(name, data, extensions...)
}

// build prepares a schema from its text.
func build(name string, data []byte, extensions ...func(*jsonschema.Compiler)) (*published, error) {
	root, err := decode(data)
	if err != nil {
		return nil, fmt.Errorf("reading schema %q: %w", name, err)
	}
	c := jsonschema.NewCompiler()
	c.Draft = jsonschema.Draft2020
	c.LoadURL = load
	for _, extend := range extensions {
		extend(c)
	}
	location := base + name + suffix
	if err := c.AddResource(location, bytes.NewReader(data)); err != nil {
		return nil, fmt.Errorf("reading schema %q: %w", name, err)
	}
	compiled, err := c.Compile(location)
	if err != nil {
		return nil, fmt.Errorf("compiling schema %q: %w", name, err)
	}
	return &published{name: name, root: root, compiled: compiled}, nil
}

// load serves a schema that another one refers to. Nothing outside this package is ever read.
func load(location string) (io.ReadCloser, error) {
	data, err := JSON(strings.TrimSuffix(strings.TrimPrefix(location, base), suffix))
	if err != nil {
		return nil, err
	}
	return io.NopCloser(bytes.NewReader(data)), nil
}

// decode reads JSON without changing a number.
func decode(data []byte) (any, error) {
	d := json.NewDecoder(bytes.NewReader(data))
	d.UseNumber()
	var v any
	if err := d.Decode(&v); err != nil {
		return nil, err
	}
	if _, err := d.Token(); !errors.Is(err, io.EOF) {
		return nil, errors.New("something follows the value")
	}
	return v, nil
}

// tokens splits a location of the validator into the plain keys of its fragment.
func tokens(location string) []string {
	_, fragment, _ := strings.Cut(location, "#")
	fragment = strings.TrimPrefix(fragment, "/")
	if fragment == "" {
		return nil
	}
	parts := strings.Split(fragment, "/")
	for i, part := range parts {
		// The validator escapes for a pointer first and for a URL second.
		if plain, err := url.PathUnescape(part); err == nil {
			part = plain
		}
		parts[i] = strings.NewReplacer("~1", "/", "~0", "~").Replace(part)
	}
	return parts
}

// at gives the part of the schema that a path of keys leads to, or nil.
func (p *published) at(path []string) any {
	here := p.root
	for _, key := range path {
		switch v := here.(type) {
		case map[string]any:
			here = v[key]
		case []any:
			i := index(key, len(v))
			if i < 0 {
				return nil
			}
			here = v[i]
		default:
			return nil
		}
	}
	return here
}

// object gives the schema object at a path of keys; it is empty where there is none.
func (p *published) object(path []string) map[string]any {
	m, _ := p.at(path).(map[string]any)
	return m
}

// resolve follows the references of a schema object inside its own document, so that what a reference leads to can be
// read: its title, description, pattern.
func (p *published) resolve(s map[string]any) map[string]any {
	for range 16 { // a schema that refers to itself in a ring would not have compiled
		ref, ok := s["$ref"].(string)
		if !ok || !strings.HasPrefix(ref, "#") {
			return s
		}
		s = p.object(tokens(ref))
	}
	return s
}
