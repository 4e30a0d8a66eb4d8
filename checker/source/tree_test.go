package source

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// designs reads the sample designs by file name.
func designs(tb testing.TB) map[string][]byte {
	tb.Helper()
	paths, err := filepath.Glob("../../fixtures/designs/*.deck.yaml")
	if err != nil || len(paths) == 0 {
		tb.Fatalf("no sample designs found: %v", err)
	}
	files := map[string][]byte{}
	for _, path := range paths {
		data, err := os.ReadFile(path)
		if err != nil {
			tb.Fatal(err)
		}
		files[filepath.Base(path)] = data
	}
	return files
}

func mustRead(tb testing.TB, name, text string) *Document {
	tb.Helper()
	doc, err := Read(name, []byte(text))
	if err != nil {
		tb.Fatalf("reading %q: %v", text, err)
	}
	return doc
}

// sketch writes a tree on one line, with kinds told apart and order kept.
func sketch(n *Node) string {
	switch n.Kind {
	case Object:
		parts := make([]string, len(n.Members))
		for i, m := range n.Members {
			parts[i] = fmt.Sprintf("%q: %s", m.Key, sketch(m.Value))
		}
		return "{" + strings.Join(parts, ", ") + "}"
	case Array:
		parts := make([]string, len(n.Items))
		for i, item := range n.Items {
			parts[i] = sketch(item)
		}
		return "[" + strings.Join(parts, ", ") + "]"
	case String:
		return fmt.Sprintf("%q", n.Text)
	case Null:
		return "null" + n.Text
	}
	return n.Text
}

// checker holds what is true of every tree that Read returns: places are
// consistent and nested, pointers lead back, and the bytes of each scalar's and
// each key's span, read alone, give the same value.
type checker struct {
	testing.TB
	doc *Document
	ext string
}

func checkTree(tb testing.TB, doc *Document, ext string) {
	tb.Helper()
	c := &checker{TB: tb, doc: doc, ext: ext}
	if doc.Root == nil || doc.Root.Parent != nil || doc.Root.Pointer != "" {
		tb.Fatalf("the root is %+v", doc.Root)
	}
	c.node(doc.Root)
}

func (c *checker) node(n *Node) {
	c.Helper()
	c.span(n.Span, n.Pointer)
	if c.doc.Find(n.Pointer) != n {
		c.Fatalf("Find(%q) gives another node", n.Pointer)
	}
	at := n.Span.Start.Offset
	inside := func(s Span, what string) {
		c.Helper()
		if s.Start.Offset < at || s.End.Offset > n.Span.End.Offset {
			c.Fatalf("%s: span %v of %s leaves its place in %v", n.Pointer, s, what, n.Span)
		}
		at = s.End.Offset
	}
	switch n.Kind {
	case Object:
		for _, m := range n.Members {
			c.span(m.KeySpan, m.Key)
			inside(m.KeySpan, "key "+m.Key)
			inside(m.Value.Span, "value of "+m.Key)
			if m.Value.Parent != n || n.Member(m.Key).Value != m.Value {
				c.Fatalf("%s: member %q is not linked", n.Pointer, m.Key)
			}
			if !c.key(m) {
				c.scalar(m.KeySpan, String, m.Key)
			}
			c.node(m.Value)
		}
	case Array:
		for _, item := range n.Items {
			inside(item.Span, item.Pointer)
			if item.Parent != n {
				c.Fatalf("%s: item is not linked", item.Pointer)
			}
			c.node(item)
		}
	default:
		if n.Kind == Null && n.Span.Start == n.Span.End && c.ext == ".yaml" {
			return // a value left empty
		}
		c.scalar(n.Span, n.Kind, n.Text)
	}
}

func (c *checker) span(s Span, what string) {
	c.Helper()
	if s.Start.Offset < 0 || s.End.Offset < s.Start.Offset || s.End.Offset > len(c.doc.Bytes) {
		c.Fatalf("%s: span %v is outside the file of %d bytes", what, s, len(c.doc.Bytes))
	}
	for _, p := range []Position{s.Start, s.End} {
		if got := c.doc.Position(p.Offset); got != p {
			c.Fatalf("%s: %+v, but its offset gives %+v", what, p, got)
		}
	}
}

// key reports whether a key's bytes, read as the only key of an object, give
// the key. Some, such as a lone colon, mean another thing where they are no key,
// and others cannot stand before a colon on one line.
func (c *checker) key(m Member) bool {
	slice := string(c.doc.Bytes[m.KeySpan.Start.Offset:m.KeySpan.End.Offset])
	text := " " + slice + ": 0"
	if c.ext == ".json" {
		text = "{" + slice + ": 0}"
	}
	doc, err := Read("alone"+c.ext, []byte(text))
	return err == nil && len(doc.Root.Members) == 1 && doc.Root.Members[0].Key == m.Key
}

// withIndicator finds a block text whose header states the indentation of the
// text relative to what is around it.
var withIndicator = regexp.MustCompile(`^[|>][-+]?[1-9]`)

func (c *checker) scalar(s Span, kind Kind, text string) {
	c.Helper()
	slice := string(c.doc.Bytes[s.Start.Offset:s.End.Offset])
	tries := []string{slice}
	switch {
	case withIndicator.MatchString(slice):
		// Read alone, the text stands less deep by an unknown number of spaces.
		for deep := 1; strings.Contains(slice, "\n"+strings.Repeat(" ", deep)); deep++ {
			tries = append(tries, regexp.MustCompile(fmt.Sprintf(`(\n|\r) {0,%d}`, deep)).ReplaceAllString(slice, "$1"))
		}
	case c.ext == ".yaml" && (strings.HasPrefix(slice, "---") || strings.HasPrefix(slice, "...")):
		tries[0] = " " + slice // in the first column this would be a marker
	}
	var got string
	for _, try := range tries {
		doc, err := Read("alone"+c.ext, []byte(try))
		switch {
		case err != nil:
			got = err.Error()
		case doc.Root.Kind == kind && doc.Root.Text == text:
			return
		default:
			got = fmt.Sprintf("%s %q", doc.Root.Kind, doc.Root.Text)
		}
	}
	if c.ext == ".yaml" { // a lone ? or - is text only between brackets
		doc, err := Read("alone.yaml", []byte("["+slice+",]"))
		if err == nil && len(doc.Root.Items) == 1 && doc.Root.Items[0].Kind == kind && doc.Root.Items[0].Text == text {
			return
		}
	}
	c.Fatalf("%d:%d: %s %q is written %q, which read alone gives %s",
		s.Start.Line, s.Start.Column, kind, text, slice, got)
}

func TestDesignSpans(t *testing.T) {
	for name, data := range designs(t) {
		t.Run(name, func(t *testing.T) {
			doc := mustRead(t, name, string(data))
			checkTree(t, doc, ".yaml")
			crlf := bytes.ReplaceAll(data, []byte("\n"), []byte("\r\n"))
			again := mustRead(t, name, "\ufeff"+string(crlf))
			checkTree(t, again, ".yaml")
			if a, b := sketch(doc.Root), sketch(again.Root); a != b {
				t.Errorf("with CRLF and a byte order mark the tree is\n%s\nnot\n%s", b, a)
			}
			comparePlaces(t, doc.Root, again.Root)
		})
	}
}

// comparePlaces wants equal lines and columns, whatever the line breaks.
func comparePlaces(t *testing.T, a, b *Node) {
	t.Helper()
	place := func(s Span) [4]int {
		return [4]int{s.Start.Line, s.Start.Column, s.End.Line, s.End.Column}
	}
	if place(a.Span) != place(b.Span) {
		t.Errorf("%s: places %v and %v", a.Pointer, place(a.Span), place(b.Span))
	}
	for i := range a.Members {
		if place(a.Members[i].KeySpan) != place(b.Members[i].KeySpan) {
			t.Errorf("%s: keys at %v and %v", a.Pointer, place(a.Members[i].KeySpan), place(b.Members[i].KeySpan))
		}
		comparePlaces(t, a.Members[i].Value, b.Members[i].Value)
	}
	for i := range a.Items {
		comparePlaces(t, a.Items[i], b.Items[i])
	}
}
