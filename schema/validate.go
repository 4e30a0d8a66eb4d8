package schema

import (
	"encoding/json"
	"errors"
	"fmt"
	"slices"
	"strings"

	"github.com/santhosh-tekuri/jsonschema/v5"

	"plumbrule/checker/source"
)

// Problem is one mistake in the shape of a document.
type Problem struct {
	// Span is what is wrong: the value; the key, if the key itself has no place there; the start of the object, if
	// something is missing in it.
	Span source.Span
	// Pointer leads to the value, or to the object in which something is missing (RFC 6901, plain tokens).
	Pointer string
	Message string // one line, lower case
	Hint    string // what to write instead, or "" if that is not known
}

// Validate gives everything in a document that does not fit the named schema, one problem for each mistake, in the
// order of the file; none means that it fits. It is safe for concurrent use. A name that Names does not know is
// reported as a problem of the whole document, so that nothing can be taken as fitting a schema that does not exist.
func Validate(name string, doc *source.Document) []Problem {
	p, err := lookup(name)
	if err != nil {
		return []Problem{{Span: start(doc.Root), Message: err.Error()}}
	}
	return p.validate(doc.Root)
}

// ValidateValue checks a value that was not read from a file, such as a report about to be written. The value is taken
// as encoding/json would write it. The error lists every problem with its pointer.
func ValidateValue(name string, v any) error {
	p, err := lookup(name)
	if err != nil {
		return err
	}
	data, err := json.Marshal(v)
	if err != nil {
		return fmt.Errorf("encoding a value for schema %q: %w", name, err)
	}
	plain, err := decode(data)
	if err != nil {
		return fmt.Errorf("reading back a value for schema %q: %w", name, err)
	}
	var errs []error
	for _, problem := range p.validate(tree(plain, "", nil)) {
		line := problem.Message
		if problem.Hint != "" {
			line += " (" + problem.Hint + ")"
		}
		errs = append(errs, fmt.Errorf("%s %q: %s", name, problem.Pointer, line))
	}
	return errors.Join(errs...)
}

func (p *published) validate(root *source.Node) []Problem {
	if absurd := absurdNumbers(root); len(absurd) > 0 {
		return ordered(absurd) // the validator would compute with them
	}
	err := p.compiled.Validate(root.Interface())
	if err == nil {
		return nil
	}
	var invalid *jsonschema.ValidationError
	if !errors.As(err, &invalid) {
		return []Problem{{Span: start(root), Message: fmt.Sprintf("checking against schema %q: %v", p.name, err)}}
	}
	var found []finding
	for _, l := range p.leaves(invalid, nil) {
		found = append(found, p.word(l, root)...)
	}
	var problems []Problem
	for _, f := range withoutConsequences(found) {
		problems = append(problems, f.Problem)
	}
	return ordered(problems)
}

// finding is a problem with what is needed to see that another one only follows from it.
type finding struct {
	Problem
	closes bool     // the key has no place here, so what else is wrong with its value does not matter
	object string   // the object that an unknown key stands in
	meant  string   // the known key that an unknown one probably is
	lacks  []string // the keys of which one is missing at Pointer
}

// withoutConsequences leaves out what mending another problem mends too: anything in a value whose key has no
// place where it stands, and a missing key that is there under a misspelt name.
func withoutConsequences(found []finding) []finding {
	closed := make(map[string]bool)
	misspelt := make(map[string]bool)
	for _, f := range found {
		if f.closes {
			closed[f.Pointer] = true
		}
		if f.meant != "" {
			misspelt[f.object+"\x00"+f.meant] = true
		}
	}
	return slices.DeleteFunc(found, func(f finding) bool {
		if closed[f.Pointer] && !f.closes {
			return true
		}
		for i, r := range f.Pointer {
			if r == '/' && closed[f.Pointer[:i]] {
				return true
			}
		}
		return slices.ContainsFunc(f.lacks, func(key string) bool { return misspelt[f.Pointer+"\x00"+key] })
	})
}

// ordered sorts problems as they come in the file and drops repetitions: the validator goes through maps, and two
// branches of a schema can complain of the same thing.
func ordered(problems []Problem) []Problem {
	slices.SortFunc(problems, func(a, b Problem) int {
		if d := a.Span.Start.Offset - b.Span.Start.Offset; d != 0 {
			return d
		}
		if d := strings.Compare(a.Message, b.Message); d != 0 {
			return d
		}
		return strings.Compare(a.Pointer, b.Pointer)
	})
	return slices.CompactFunc(problems, func(a, b Problem) bool {
		return a.Pointer == b.Pointer && a.Message == b.Message
	})
}
