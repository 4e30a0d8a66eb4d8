package engine

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"strings"

	"plumbrule/checker/measure"
	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

// design is what results need to know of the description: where values stand
// and in which system they print.
type design struct {
	doc    *source.Document
	system measure.System
	// walked keeps pointers already followed, as many checks look at the same
	// places. One evaluation owns it.
	walked map[string][]step
	// marks are the names that the description gives its elements.
	marks map[string]bool
}

func newDesign(doc *source.Document, system measure.System) design {
	d := design{doc: doc, system: system, walked: map[string][]step{}, marks: map[string]bool{}}
	d.noteMarks(doc.Root)
	return d
}

func (d design) noteMarks(n *source.Node) {
	if mark := label(n, "mark"); mark != "" {
		d.marks[mark] = true
	}
	for i := range n.Members {
		d.noteMarks(n.Members[i].Value)
	}
	for _, item := range n.Items {
		d.noteMarks(item)
	}
}

// step is one token of a pointer with the value that it leads to.
type step struct {
	token string
	node  *source.Node
}

// walk follows a pointer. The error names one that leads nowhere.
// The first step is the root with an empty token.
func (d design) walk(pointer string) ([]step, error) {
	if steps, ok := d.walked[pointer]; ok {
		return steps, nil
	}
	node := d.doc.Find(pointer)
	if node == nil {
		return nil, fmt.Errorf("the place %q is not in the design", pointer)
	}
	tokens := strings.Split(pointer, "/") // "" splits into the empty token of the root
	steps := make([]step, len(tokens))
	for i := len(tokens) - 1; i >= 0; i-- {
		steps[i] = step{tokens[i], node}
		node = node.Parent
	}
	d.walked[pointer] = steps
	return steps, nil
}

// find gives the value at a pointer that walk has followed.
func (d design) find(pointer string) (*source.Node, error) {
	steps, err := d.walk(pointer)
	if err != nil {
		return nil, err
	}
	return steps[len(steps)-1].node, nil
}

// place fills the places of a result: where its first pointer leads, marks and
// sheets of the elements around it, and the second places.
func (d design) place(r *result.Result, at []string) error {
	steps, err := d.walk(at[0])
	if err != nil {
		return err
	}
	r.At = at
	r.Span = steps[len(steps)-1].node.Span
	for _, s := range steps { // the innermost wins
		if mark := label(s.node, "mark"); mark != "" {
			r.Mark = mark
		}
		if see := label(s.node, "see"); see != "" {
			r.See = see
		}
	}
	for _, pointer := range at[1:] {
		node, err := d.find(pointer)
		if err != nil {
			return err
		}
		r.Related = append(r.Related, result.Place{Pointer: pointer, Span: node.Span, Text: node.Text})
	}
	return nil
}

// opening gives the first character of a value: the place of what is missing
// in it.
func (d design) opening(node *source.Node) source.Span {
	start := node.Span.Start
	end := start
	if text := d.doc.Line(start.Line); start.Column <= len([]rune(text)) {
		end.Column++
		end.Offset += len(string([]rune(text)[start.Column-1]))
	}
	return source.Span{Start: start, End: end}
}

// label gives a member of an element that names it, as text.
func label(node *source.Node, key string) string {
	if node.Kind != source.Object {
		return ""
	}
	if m := node.Member(key); m != nil && (m.Value.Kind == source.String || m.Value.Kind == source.Number) {
		return m.Value.Text
	}
	return ""
}

// fingerprint tells findings apart by what they are about: the check, and the
// path with the marks of elements in place of their indices. It survives moved
// lines, changed values and another set. The key is the field that is not
// shown, in full, so that a value that is filled in and turns out to be outside
// is not taken for the old finding.
func (d design) fingerprint(check, pointer, key string) string {
	steps, err := d.walk(pointer)
	if err != nil {
		steps = nil
	}
	parts := []string{check}
	for i, s := range steps {
		token := s.token
		if mark := label(s.node, "mark"); mark != "" && i > 0 && steps[i-1].node.Kind == source.Array {
			token = mark
		}
		parts = append(parts, token)
	}
	if key != "" {
		parts = append(parts, key)
	}
	return digest(parts...)
}

// digest is a short hash of texts.
func digest(parts ...string) string {
	sum := sha256.Sum256([]byte(strings.Join(parts, "\x00")))
	return hex.EncodeToString(sum[:8])
}
