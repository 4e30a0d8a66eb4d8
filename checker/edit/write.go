package edit

import (
	"bytes"
	"encoding/json"
	"strconv"
	"strings"

	"plumbrule/checker/source"
)

// Text is a string as a value.
func Text(text string) *source.Node { return &source.Node{Kind: source.String, Text: text} }

// Number is a whole number as a value.
func Number(n int) *source.Node { return &source.Node{Kind: source.Number, Text: strconv.Itoa(n)} }

// Flag is true or false as a value.
func Flag(on bool) *source.Node {
	return &source.Node{Kind: source.Bool, Text: strconv.FormatBool(on)}
}

// List is a list of strings as a value.
func List(texts []string) *source.Node {
	list := &source.Node{Kind: source.Array}
	for _, t := range texts {
		list.Items = append(list.Items, Text(t))
	}
	return list
}

// Object is an object as a value; keys and values take turns.
func Object(pairs ...string) *source.Node {
	object := &source.Node{Kind: source.Object}
	for i := 0; i+1 < len(pairs); i += 2 {
		object.Members = append(object.Members, source.Member{Key: pairs[i], Value: Text(pairs[i+1])})
	}
	return object
}

// Written gives a value as YAML on one line, a text without quotes of its own.
func Written(n *source.Node) string {
	if n.Kind == source.String {
		return n.Text
	}
	return write(nil, n, nil)
}

// write puts a value into text, in brackets and on one line. A string keeps the
// quotes of the one whose place it takes, if any.
func write(doc *source.Document, n, old *source.Node) string {
	switch n.Kind {
	case source.String:
		quotes := ""
		if old != nil && old.Kind == source.String && old.Span.Start.Offset < len(doc.Bytes) {
			quotes = string(doc.Bytes[old.Span.Start.Offset])
		}
		return text(doc, n.Text, quotes)
	case source.Array:
		parts := make([]string, len(n.Items))
		for i, item := range n.Items {
			parts[i] = write(doc, item, nil)
		}
		return "[" + strings.Join(parts, ", ") + "]"
	case source.Object:
		parts := make([]string, len(n.Members))
		for i, m := range n.Members {
			parts[i] = text(doc, m.Key, "") + ": " + write(doc, m.Value, nil)
		}
		return "{" + strings.Join(parts, ", ") + "}"
	case source.Number, source.Bool:
		return n.Text
	}
	return "null"
}

// text writes a string in the quotes asked for, and in double ones, which both
// formats read alike, where it needs some.
func text(doc *source.Document, s, quotes string) string {
	switch {
	case quotes == "'" && !strings.ContainsAny(s, "\r\n"):
		return "'" + strings.ReplaceAll(s, "'", "''") + "'"
	case quotes != `"` && !isJSON(doc) && isPlain(s):
		return s
	}
	var out bytes.Buffer
	encoder := json.NewEncoder(&out)
	encoder.SetEscapeHTML(false)
	if err := encoder.Encode(s); err != nil {
		return strconv.Quote(s)
	}
	return strings.TrimSpace(out.String())
}

// isJSON reports whether the document writes keys in quotes. In YAML in which
// somebody did so, further quotes do no harm.
func isJSON(doc *source.Document) bool {
	if doc == nil {
		return false
	}
	if strings.HasSuffix(doc.Name, ".json") {
		return true
	}
	return len(doc.Root.Members) > 0 && doc.Bytes[doc.Root.Members[0].KeySpan.Start.Offset] == '"'
}

// isPlain reports whether YAML reads a string without quotes as itself, in
// brackets as well. It says no where that takes a closer look.
func isPlain(s string) bool {
	if s == "" || strings.TrimSpace(s) != s {
		return false
	}
	letters := false
	for _, c := range s {
		switch {
		case 'a' <= c && c <= 'z' || 'A' <= c && c <= 'Z':
			letters = true
		case '0' <= c && c <= '9', strings.ContainsRune(" ./%-_'\"", c):
		default:
			return false
		}
	}
	if first := s[0]; first == '-' || first == '.' || first == '%' || first == '\'' || first == '"' {
		return false
	}
	switch strings.ToLower(s) {
	case "true", "false", "null", "yes", "no", "on", "off", "y", "n":
		return false
	}
	_, isFloat := strconv.ParseFloat(s, 64)
	_, isInt := strconv.ParseInt(s, 0, 64)
	return letters && isFloat != nil && isInt != nil || strings.HasSuffix(s, "%") && !letters
}
