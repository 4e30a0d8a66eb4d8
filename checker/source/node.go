package source

import (
	"encoding/json"
	"strconv"
	"strings"
)

// Kind says what a value is.
type Kind uint8

// The six kinds of value, as in JSON.
const (
	Object Kind = iota + 1
	Array
	String
	Number
	Bool
	Null
)

// String gives the kind's name for a message: "object", "array", "string",
// "number", "boolean", "null".
func (k Kind) String() string {
	switch k {
	case Object:
		return "object"
	case Array:
		return "array"
	case String:
		return "string"
	case Number:
		return "number"
	case Bool:
		return "boolean"
	case Null:
		return "null"
	}
	return "unknown kind " + strconv.Itoa(int(k))
}

// Member is one key of an object with its value.
type Member struct {
	Key     string // as text, unquoted
	KeySpan Span   // the key as written, quotes included
	Value   *Node
}

// Node is one value with its place.
type Node struct {
	Kind Kind
	// Text is a string's content, a number as it was written, "true" or
	// "false", and "" for every other kind.
	Text    string
	Members []Member // of an Object, in the file's order; keys are unique
	Items   []*Node  // of an Array
	// Span holds the value as written: quotes, brackets and a block text's
	// header included. It encloses the spans of everything inside it. The span
	// of a value left empty is the empty place where it would stand.
	Span    Span
	Pointer string // RFC 6901, "" for the root
	Parent  *Node  // nil for the root
}

// Member gives the member with the key, or nil where there is none and where n
// is nil or no Object.
func (n *Node) Member(key string) *Member {
	if n == nil {
		return nil
	}
	for i := range n.Members {
		if n.Members[i].Key == key {
			return &n.Members[i]
		}
	}
	return nil
}

// Interface gives the value as the untyped tree that encoding/json would make
// of it: map[string]any, []any, string, json.Number with the literal as
// written, bool, or nil. Numbers are not evaluated, so that a huge exponent
// costs nothing.
func (n *Node) Interface() any {
	if n == nil {
		return nil
	}
	switch n.Kind {
	case Object:
		members := make(map[string]any, len(n.Members))
		for _, m := range n.Members {
			members[m.Key] = m.Value.Interface()
		}
		return members
	case Array:
		items := make([]any, len(n.Items))
		for i, item := range n.Items {
			items[i] = item.Interface()
		}
		return items
	case String:
		return n.Text
	case Number:
		return json.Number(n.Text)
	case Bool:
		return n.Text == "true"
	}
	return nil
}

// add appends a member to an object.
func (n *Node) add(key string, keySpan Span, value *Node) {
	n.Members = append(n.Members, Member{Key: key, KeySpan: keySpan, Value: value})
}

// child makes an empty node at a member's key or an item's index.
func (n *Node) child(token string) *Node {
	return &Node{Parent: n, Pointer: n.Pointer + "/" + Escape(token)}
}

// item makes an empty node for the next item of an array.
func (n *Node) item() *Node {
	return n.child(strconv.Itoa(len(n.Items)))
}

// Escape writes a key as one token of a JSON pointer: ~ as ~0 and / as ~1.
func Escape(token string) string {
	if !strings.ContainsAny(token, "~/") {
		return token
	}
	return strings.NewReplacer("~", "~0", "/", "~1").Replace(token)
}
