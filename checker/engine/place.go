package engine

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"strconv"
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
}

// step is one token of a pointer with the value that it leads to.
type step struct {
	token string
	node  *source.Node
}

// walk follows a pointer. The error names one that leads nowhere.
func (d design) walk(pointer string) ([]step, error) {
	node := d.doc.Find(pointer)
	if node == nil {
		return nil, fmt.Errorf("the place %q is not in the design", pointer)
	}
	tokens := strings.Split(pointer, "/")[1:]
	if pointer == "" {
		tokens = nil
	}
	steps := make([]step, len(tokens))
	for i := len(tokens) - 1; i >= 0; i-- {
		steps[i] = step{tokens[i], node}
		node = node.Parent
	}
	return steps, nil
}

// place fills the places of a result: where its first pointer leads, marks and
// sheets of the elements around it, and the second places.
func (d design) place(r *result.Result, at []string) error {
	steps, err := d.walk(at[0])
	if err != nil {
		return err
	}
	r.At = at
	r.Span = d.doc.Find(at[0]).Span
	for _, s := range steps { // the innermost wins
		if mark := label(s.node, "mark"); mark != "" {
			r.Mark = mark
		}
		if see := label(s.node, "see"); see != "" {
			r.See = see
		}
	}
	for _, pointer := range at[1:] {
		node := d.doc.Find(pointer)
		if node == nil {
			return fmt.Errorf("the place %q is not in the design", pointer)
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
// lines, changed values and another set.
func (d design) fingerprint(check, pointer, key string) string {
	steps, err := d.walk(pointer)
	if err != nil {
		steps = nil
	}
	parts := []string{check}
	for i, s := range steps {
		token := s.token
		if mark := label(s.node, "mark"); mark != "" && isIndex(token) && i > 0 {
			token = mark
		}
		parts = append(parts, token)
	}
	if key != "" {
		parts = append(parts, key)
	}
	sum := sha256.Sum256([]byte(strings.Join(parts, "\x00")))
	return hex.EncodeToString(sum[:8])
}

func isIndex(token string) bool {
	_, err := strconv.Atoi(token)
	return err == nil
}
