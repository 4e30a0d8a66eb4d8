package catalog

import (
	"slices"

	"github.com/open-policy-agent/opa/v1/ast"
)

// The rules that the program asks a check for.
const (
	RuleApplies  = "applies"  // true where the check means something
	RuleReadings = "readings" // one row for each subject and figure
	RuleUnknown  = "unknown"  // one row for each subject that lacks a value
	RuleExempt   = "exempt"   // one row for each subject left alone on purpose
)

// row says which keys the rows of a rule have beside the check's own values.
type row struct {
	required, allowed []string
	values            bool
}

func rowOf(rule string) row {
	switch rule {
	case RuleReadings:
		return row{required: []string{"at", "figure", "outside"}, allowed: []string{"have", "limit", "say", "cell", "engineered", "stated_at"}, values: true}
	case RuleUnknown:
		return row{required: []string{"at", "needs"}, allowed: []string{"figure"}}
	default:
		return row{required: []string{"at", "because"}, values: true}
	}
}

// reservedKey reports whether a row may have the key whatever the check.
func reservedKey(key string) bool {
	for _, rule := range []string{RuleReadings, RuleUnknown, RuleExempt} {
		if keys := rowOf(rule); slices.Contains(keys.required, key) || slices.Contains(keys.allowed, key) {
			return true
		}
	}
	return key == "margin" // messages have it
}

// checkRow refuses, as far as the text of a rule shows them, rows that could
// never be read: keys nobody declared, a key missing, a figure, message or
// reason that does not exist. Rows put together in the body are left to the
// moment when they are returned.
func (c *Check) checkRow(rule string, head *ast.Head, found *problems) {
	if head.Key == nil {
		return
	}
	object, ok := head.Key.Value.(ast.Object)
	if !ok {
		return
	}
	shape := rowOf(rule)
	known := slices.Concat(shape.required, shape.allowed)
	if shape.values {
		for value := range c.Values {
			known = append(known, value)
		}
	}
	var keys []string
	object.Foreach(func(k, v *ast.Term) {
		key, ok := k.Value.(ast.String)
		if !ok {
			return
		}
		keys = append(keys, string(key))
		if !slices.Contains(known, string(key)) {
			found.at(k.Location, "%s return %q, which is none of %s%s", rule, string(key), list(known), nearestOf(string(key), known))
		}
		if word, ok := v.Value.(ast.String); ok {
			c.checkWord(string(key), string(word), v.Location, found)
		}
	})
	for _, key := range shape.required {
		if !slices.Contains(keys, key) {
			found.at(head.Location, "%s return no %q", rule, key)
		}
	}
}

func (c *Check) checkWord(key, word string, at *ast.Location, found *problems) {
	var known []string
	switch key {
	case "figure":
		for _, figure := range c.Figures {
			known = append(known, figure.Name)
		}
	case "say":
		known = keysOf(c.Messages)
	case "because":
		known = keysOf(c.Exempt)
	default:
		return
	}
	if figure := c.Figure(word); key == "figure" && figure != nil && !figure.Limits() {
		found.at(at, "figure %q does not say on which side of it the inside lies (relation), so no reading can rest on it", word)
	}
	if !slices.Contains(known, word) {
		found.at(at, "%s %q is not in the metadata, which has %s%s", key, word, list(known), nearestOf(word, known))
	}
}

func keysOf(m map[string]Template) []string {
	var keys []string
	for key := range m {
		keys = append(keys, key)
	}
	return keys
}
