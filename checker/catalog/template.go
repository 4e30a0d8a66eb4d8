package catalog

import (
	"fmt"
	"regexp"
	"strings"
)

// Template is a line of text with names in braces that values take the place
// of: "riser height is {have}".
type Template struct {
	literals []string // one more than names: text before, between and after them
	names    []string
}

var placeholder = regexp.MustCompile(`\{([a-z][a-z0-9_]*)\}`)

// parseTemplate reads a line. Braces that hold no name are an error, as nobody
// means to print them.
func parseTemplate(line string) (Template, error) {
	var t Template
	end := 0
	for _, at := range placeholder.FindAllStringSubmatchIndex(line, -1) {
		t.literals = append(t.literals, line[end:at[0]])
		t.names = append(t.names, line[at[2]:at[3]])
		end = at[1]
	}
	t.literals = append(t.literals, line[end:])
	for _, literal := range t.literals {
		if i := strings.IndexAny(literal, "{}"); i >= 0 {
			return Template{}, fmt.Errorf("stray brace at %q, a value is named as {have}", literal[i:])
		}
	}
	return t, nil
}

// Names gives the names in braces, in order, repeated ones repeated.
func (t Template) Names() []string { return t.names }

// Expand puts values in the place of names. A word that the text before ends
// with is not said again: beam {beam} is beam 2, not beam beam 2. The error names
// a value that is not there.
func (t Template) Expand(values map[string]string) (string, error) {
	var b strings.Builder
	for i, name := range t.names {
		value, ok := values[name]
		if !ok {
			return "", fmt.Errorf("the message names {%s}, which the check did not return", name)
		}
		b.WriteString(strings.TrimSuffix(t.literals[i], repeated(t.literals[i], value)))
		b.WriteString(value)
	}
	b.WriteString(t.literals[len(t.names)])
	return b.String(), nil
}

// String gives the line as it was written.
func (t Template) String() string {
	var b strings.Builder
	for i, name := range t.names {
		b.WriteString(t.literals[i] + "{" + name + "}")
	}
	if len(t.literals) > 0 {
		b.WriteString(t.literals[len(t.names)])
	}
	return b.String()
}

// repeated gives the word with its space that a text ends and a value begins
// with, or nothing.
func repeated(text, value string) string {
	word, _, more := strings.Cut(value, " ")
	word += " "
	if more && (text == word || strings.HasSuffix(text, " "+word)) {
		return word
	}
	return ""
}
