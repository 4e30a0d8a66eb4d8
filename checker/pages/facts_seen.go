package pages

import (
	"bytes"
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"reflect"
	"strings"

	"plumbrule/checker"
	"plumbrule/checker/facts"
	md "plumbrule/checker/markdown"
	"plumbrule/checker/measure"
)

// field names a field of the facts.
type field struct {
	of   reflect.Type
	name string
}

// seen gives for each field of the facts its value in the first design that has
// it.
func (p *Pages) seen() (map[field]string, error) {
	found := map[field]string{}
	for _, pattern := range []string{"fixtures/designs/*.deck.yaml", "fixtures/checks/*/*/*.deck.yaml"} {
		files, err := filepath.Glob(filepath.Join(p.root, filepath.FromSlash(pattern)))
		if err != nil {
			return nil, fmt.Errorf("listing designs: %w", err)
		}
		for _, file := range files {
			if err := p.look(file, found); err != nil {
				return nil, err
			}
		}
	}
	return found, nil
}

// look adds the fields of one design that no design before it had.
func (p *Pages) look(file string, found map[field]string) error {
	data, err := os.ReadFile(file)
	if err != nil {
		return err
	}
	f, problems := checker.Facts(checker.Input{Name: filepath.Base(file), Data: data})
	if len(problems) > 0 {
		return fmt.Errorf("%s: %s", file, problems[0].Message)
	}
	name, err := filepath.Rel(p.root, file)
	if err != nil {
		return err
	}
	name = filepath.ToSlash(name)
	short := strings.TrimSuffix(filepath.Base(file), ".deck.yaml")
	if topic, ok := strings.CutPrefix(name, "fixtures/checks/"); ok {
		short = filepath.ToSlash(filepath.Dir(topic)) + " " + short
	}
	l := looker{found: found, system: measure.Imperial, design: link(md.Text(short), factsPage, "../"+name)}
	if f.Units == measure.Metric.String() {
		l.system = measure.Metric
	}
	return l.walk(reflect.ValueOf(*f))
}

// looker notes fields of one design.
type looker struct {
	found  map[field]string
	system measure.System
	design string // link to it
}

func (l *looker) walk(v reflect.Value) error {
	switch v.Kind() {
	case reflect.Pointer:
		if v.IsNil() {
			return nil
		}
		return l.walk(v.Elem())
	case reflect.Slice:
		for i := range v.Len() {
			if err := l.walk(v.Index(i)); err != nil {
				return err
			}
		}
	case reflect.Struct:
		if shown(v.Type()) != nil {
			v = v.FieldByName("Value")
			if v.Kind() != reflect.Struct {
				return nil
			}
		}
		for i := range v.NumField() {
			if err := l.note(v, i); err != nil {
				return err
			}
		}
	}
	return nil
}

// note keeps a field that has a value, and goes on below it.
func (l *looker) note(of reflect.Value, i int) error {
	v := of.Field(i)
	key := field{of.Type(), jsonName(of.Type().Field(i))}
	t := v.Type()
	plain := shown(t) != nil || within(t) == nil
	if _, known := l.found[key]; plain && !known && !empty(v) {
		text, err := l.print(v)
		if err != nil {
			return err
		}
		l.found[key] = text + ", " + l.design
	}
	return l.walk(v)
}

// empty reports whether a field says nothing. A flag always says something.
func empty(v reflect.Value) bool {
	return v.Kind() != reflect.Bool && v.IsZero() || v.Kind() == reflect.Slice && v.Len() == 0
}

// mostListed is how many elements of a list are printed.
const mostListed = 3

// print gives a value as people write it and as checks get it, where these
// differ.
func (l *looker) print(v reflect.Value) (string, error) {
	if v.Kind() == reflect.Pointer {
		v = v.Elem()
	}
	if shown(v.Type()) != nil {
		v = v.FieldByName("Value")
	}
	more := ""
	if v.Kind() == reflect.Slice && v.Len() > mostListed {
		v, more = v.Slice(0, mostListed), " and so on"
	}
	var raw bytes.Buffer
	encoder := json.NewEncoder(&raw)
	encoder.SetEscapeHTML(false)
	if err := encoder.Encode(v.Interface()); err != nil {
		return "", fmt.Errorf("printing a fact: %w", err)
	}
	text := md.Code(raw.String()) + more
	if words := l.words(v.Interface()); words != "" {
		text = md.Text(words) + " (" + text + ")"
	}
	return text, nil
}

// words gives a measure as people write it; empty for what is none.
func (l *looker) words(value any) string {
	switch v := value.(type) {
	case measure.Length:
		return v.Text(l.system)
	case measure.Pressure:
		return v.Text(l.system)
	case measure.Force:
		return v.Text(l.system)
	case measure.Angle:
		return v.Text(l.system)
	case facts.Ratio:
		return fmt.Sprintf("%d in %d", v.Rise, v.Run)
	}
	return ""
}
