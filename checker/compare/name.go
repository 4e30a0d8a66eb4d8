package compare

import (
	"strconv"
	"strings"

	"plumbrule/checker/source"
)

// name says in the design's own words what stands at a place: "stair ST1: total
// rise", "platform A, beam B1: posts at, number 2", "site: live load".
func name(n *source.Node) string {
	var elements, rest []string
	steps := stepsTo(n)
	for i, s := range steps {
		switch {
		case s.Parent.Kind != source.Array:
			rest = append(rest, strings.ReplaceAll(keyOf(s), "_", " "))
		case s.Kind == source.Object && i > 0:
			kind := singular(rest[len(rest)-1])
			elements = append(elements, append(rest[:len(rest)-1:len(rest)-1], kind+" "+called(s))...)
			rest = nil
		default:
			rest = append(rest, "number "+number(s))
		}
	}
	if len(elements) == 0 && len(rest) > 1 {
		elements, rest = rest[:1], rest[1:]
	}
	words := strings.Join(elements, ", ")
	switch {
	case words == "":
		return strings.Join(rest, ", ")
	case len(rest) == 0:
		return words
	}
	return words + ": " + strings.Join(rest, ", ")
}

// stepsTo gives the values on the way to n, the root left out and n at the end.
func stepsTo(n *source.Node) []*source.Node {
	var steps []*source.Node
	for ; n.Parent != nil; n = n.Parent {
		steps = append([]*source.Node{n}, steps...)
	}
	return steps
}

// called names an entry of a list by its mark, else by its edge, else by its
// number from one.
func called(n *source.Node) string {
	if name := ownName(n); name != "" {
		_, name, _ = strings.Cut(name, "\x00")
		return name
	}
	return number(n)
}

func number(n *source.Node) string {
	i, err := strconv.Atoi(keyOf(n))
	if err != nil {
		return keyOf(n)
	}
	return strconv.Itoa(i + 1)
}

// keyOf gives the last token of a value's pointer.
func keyOf(n *source.Node) string {
	token := n.Pointer[strings.LastIndex(n.Pointer, "/")+1:]
	return strings.NewReplacer("~1", "/", "~0", "~").Replace(token)
}

// singular names one of a list: beam for beams.
func singular(word string) string {
	if strings.HasSuffix(word, "ss") || strings.HasSuffix(word, "us") {
		return word
	}
	return strings.TrimSuffix(word, "s")
}

// mostValues is how many values of an element are spelled out.
const mostValues = 12

// typed gives a value as it was typed, on one line. Of an element with many
// values it says how many.
func typed(n *source.Node) string {
	if count := leaves(n); count > mostValues {
		return strconv.Itoa(count) + " values"
	}
	switch n.Kind {
	case source.Array:
		var items []string
		for _, item := range n.Items {
			items = append(items, typed(item))
		}
		return "[" + strings.Join(items, ", ") + "]"
	case source.Object:
		var members []string
		for _, m := range n.Members {
			if m.Value.Kind != source.Null {
				members = append(members, m.Key+": "+typed(m.Value))
			}
		}
		return "{" + strings.Join(members, ", ") + "}"
	case source.String, source.Number, source.Bool, source.Null:
	}
	return n.Text
}
