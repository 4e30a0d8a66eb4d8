package edit

import (
	"bytes"
	"cmp"
	"errors"
	"fmt"
	"slices"
	"strings"

	"plumbrule/checker/source"
)

// Edit puts a value where a pointer leads. Where the object has no such member
// yet, one is added as its first.
type Edit struct {
	Pointer string
	// Value needs kind, text, items and members only; its places are not read.
	Value *source.Node
}

// Replacement is what an edit does to the text: Text stands in the place of
// Span, which is empty where something is added.
type Replacement struct {
	Span source.Span
	Text string

	alone bool // put into empty brackets, where nothing divides it from another
}

// Apply gives the text of a document with the edits made in it. The document
// stays as it is.
func Apply(doc *source.Document, edits []Edit) ([]byte, error) {
	list, err := Replacements(doc, edits)
	if err != nil {
		return nil, err
	}
	var out bytes.Buffer
	at := 0
	for _, r := range list {
		out.Write(doc.Bytes[at:r.Span.Start.Offset])
		out.WriteString(r.Text)
		at = r.Span.End.Offset
	}
	out.Write(doc.Bytes[at:])
	return out.Bytes(), nil
}

// Replacements gives what edits do to the text of a document, in its order. The
// error says which edit has no place in it or meets another.
func Replacements(doc *source.Document, edits []Edit) ([]Replacement, error) {
	list := make([]Replacement, len(edits))
	for i, e := range edits {
		var err error
		if list[i], err = replacement(doc, e); err != nil {
			return nil, fmt.Errorf("edit %s: %w", e.Pointer, err)
		}
	}
	slices.SortStableFunc(list, func(a, b Replacement) int { return cmp.Compare(a.Span.Start.Offset, b.Span.Start.Offset) })
	for i := 1; i < len(list); i++ {
		if list[i].Span.Start.Offset < list[i-1].Span.End.Offset || list[i].Span == list[i-1].Span && list[i].alone {
			return nil, fmt.Errorf("two edits meet in line %d", list[i].Span.Start.Line)
		}
	}
	return list, nil
}

func replacement(doc *source.Document, e Edit) (Replacement, error) {
	if node := doc.Find(e.Pointer); node != nil {
		if node.Span.Start.Offset == node.Span.End.Offset {
			return Replacement{}, errors.New("the value there is left empty")
		}
		return instead(doc, node, e.Value)
	}
	cut := strings.LastIndexByte(e.Pointer, '/')
	if cut < 0 {
		return Replacement{}, errors.New("it is no pointer")
	}
	parent := doc.Find(e.Pointer[:cut])
	if parent == nil || parent.Kind != source.Object {
		return Replacement{}, errors.New("there is no object that it could be added to")
	}
	key := strings.NewReplacer("~1", "/", "~0", "~").Replace(e.Pointer[cut+1:])
	return addition(doc, parent, key, e.Value), nil
}

// instead puts a value in the place of another. A list or object in block style
// begins on a line of its own, where one in brackets could not stand: it is
// taken up to the colon that it hangs on.
// A text in block style ends behind its last line break, which stays. A list or
// object with comments in it is left alone, since they would be lost.
func instead(doc *source.Document, old, value *source.Node) (Replacement, error) {
	r := Replacement{Span: old.Span, Text: write(doc, value, old)}
	written := doc.Bytes[old.Span.Start.Offset:old.Span.End.Offset]
	r.Span.End = doc.Position(old.Span.Start.Offset + len(bytes.TrimRight(written, "\r\n")))
	if isBlock(doc, old) {
		if key := keyOf(old); key != nil {
			colon := bytes.IndexByte(doc.Bytes[key.End.Offset:], ':') + key.End.Offset + 1
			if len(bytes.TrimSpace(doc.Bytes[key.End.Offset:colon-1])) > 0 {
				return r, errors.New("its key is not written beside its colon")
			}
			r.Span.Start = doc.Position(colon)
			r.Text = " " + r.Text
		}
	}
	if old.Kind == source.Object || old.Kind == source.Array {
		// A mark of number, as in "post #2", is taken for a comment: it costs an
		// edit, where the other mistake would cost words.
		if bytes.IndexByte(doc.Bytes[r.Span.Start.Offset:r.Span.End.Offset], '#') >= 0 {
			return r, errors.New("comments stand in the value")
		}
	}
	return r, nil
}

// addition puts a member before the first of an object, where the indentation
// is known and no comment is in the way.
func addition(doc *source.Document, parent *source.Node, key string, value *source.Node) Replacement {
	entry := text(doc, key, "") + ": " + write(doc, value, nil)
	if len(parent.Members) == 0 {
		at := doc.Position(parent.Span.Start.Offset + 1)
		return Replacement{Span: source.Span{Start: at, End: at}, Text: entry, alone: true}
	}
	at := parent.Members[0].KeySpan.Start
	here := source.Span{Start: at, End: at}
	if isBlock(doc, parent) {
		return Replacement{Span: here, Text: entry + lineBreak(doc) + strings.Repeat(" ", at.Column-1)}
	}
	return Replacement{Span: here, Text: entry + ", "}
}

// isBlock reports whether a list or an object is written without brackets.
func isBlock(doc *source.Document, n *source.Node) bool {
	if n.Kind != source.Object && n.Kind != source.Array {
		return false
	}
	start := n.Span.Start.Offset
	return start >= len(doc.Bytes) || doc.Bytes[start] != '{' && doc.Bytes[start] != '['
}

func keyOf(n *source.Node) *source.Span {
	if n.Parent == nil {
		return nil
	}
	for i := range n.Parent.Members {
		if n.Parent.Members[i].Value == n {
			return &n.Parent.Members[i].KeySpan
		}
	}
	return nil
}

func lineBreak(doc *source.Document) string {
	if bytes.Contains(doc.Bytes, []byte("\r\n")) {
		return "\r\n"
	}
	return "\n"
}
