package schema

import (
	"encoding/json"
	"slices"
	"strconv"
	"strings"

	"plumbrule/checker/source"
)

// tree makes nodes without places of a value that was not read from a file.
func tree(v any, pointer string, parent *source.Node) *source.Node {
	n := &source.Node{Pointer: pointer, Parent: parent}
	switch v := v.(type) {
	case map[string]any:
		n.Kind = source.Object
		keys := make([]string, 0, len(v))
		for key := range v {
			keys = append(keys, key)
		}
		slices.Sort(keys)
		for _, key := range keys {
			value := tree(v[key], pointer+"/"+source.Escape(key), n)
			n.Members = append(n.Members, source.Member{Key: key, Value: value})
		}
	case []any:
		n.Kind = source.Array
		for i, item := range v {
			n.Items = append(n.Items, tree(item, pointer+"/"+strconv.Itoa(i), n))
		}
	case string:
		n.Kind, n.Text = source.String, v
	case json.Number:
		n.Kind, n.Text = source.Number, v.String()
	case bool:
		n.Kind, n.Text = source.Bool, strconv.FormatBool(v)
	default:
		n.Kind = source.Null
	}
	return n
}

// find follows plain keys from a node; it is nil where they lead nowhere.
func find(n *source.Node, path []string) *source.Node {
	for _, key := range path {
		if n == nil {
			return nil
		}
		if n.Kind == source.Array {
			i := index(key, len(n.Items))
			if i < 0 {
				return nil
			}
			n = n.Items[i]
			continue
		}
		m := n.Member(key)
		if m == nil {
			return nil
		}
		n = m.Value
	}
	return n
}

// index reads a key as the index of a list of the given length, or gives -1.
func index(key string, length int) int {
	i, err := strconv.Atoi(key)
	if err != nil || i < 0 || i >= length {
		return -1
	}
	return i
}

// start is the empty span at the start of a value.
func start(n *source.Node) source.Span {
	if n == nil {
		return source.Span{}
	}
	return source.Span{Start: n.Span.Start, End: n.Span.Start}
}

// keySpan is where the key of a value stands; the value itself where it has none.
func keySpan(n *source.Node) source.Span {
	if n.Parent != nil {
		for _, m := range n.Parent.Members {
			if m.Value == n {
				return m.KeySpan
			}
		}
	}
	return n.Span
}

// absurdNumbers finds numbers that nobody means. The validator works with exact fractions, to which 1e999999 is a
// number of a million digits, so it must not see them.
func absurdNumbers(n *source.Node) []Problem {
	var found []Problem
	switch n.Kind {
	case source.Number:
		if absurd(n.Text) {
			found = append(found, Problem{
				Span: n.Span, Pointer: n.Pointer,
				Message: "the number " + n.Text + " is out of any range that a deck has",
			})
		}
	case source.Object:
		for _, m := range n.Members {
			found = append(found, absurdNumbers(m.Value)...)
		}
	case source.Array:
		for _, item := range n.Items {
			found = append(found, absurdNumbers(item)...)
		}
	}
	return found
}

const (
	maxDigits   = 40
	maxExponent = 40
)

func absurd(number string) bool {
	mantissa, exponent, has := strings.Cut(strings.ToLower(number), "e")
	if len(mantissa) > maxDigits {
		return true
	}
	if !has {
		return false
	}
	e, err := strconv.Atoi(exponent)
	return err != nil || e > maxExponent || e < -maxExponent
}
