package compare

import (
	"cmp"
	"slices"

	"plumbrule/checker/source"
)

// ChangeKind says what was done to a value or an element.
type ChangeKind string

// The kinds of change.
const (
	Changed     ChangeKind = "changed"
	Shown       ChangeKind = "now shown"     // a value that was not shown before
	NotShownNow ChangeKind = "not shown now" // one that was
	Added       ChangeKind = "added"         // an entry of a list
	Removed     ChangeKind = "removed"
	Moved       ChangeKind = "moved" // stands elsewhere in its list, and nothing else
)

// Change is one difference between two revisions.
type Change struct {
	Kind ChangeKind
	Name string // in the design's words: "stair ST1: total rise"
	// Was and Is are the places in the old and the new revision.
	Was, Is Place
}

// Place is where a value stands in one revision. Of one that is missing there it
// is the start of what lacks it.
type Place struct {
	Pointer string
	Span    source.Span
	// Text is the value as typed; of a large element how many values it has, of
	// one that moved its number in the list.
	Text    string
	Missing bool
}

// changes lists what differs, in the order of the new revision.
func (p *pairs) changes(was, is *source.Document) []Change {
	c := collector{pairs: p}
	c.visit(was.Root, is.Root)
	slices.SortStableFunc(c.found, func(a, b Change) int {
		return cmp.Compare(a.Is.Span.Start.Offset, b.Is.Span.Start.Offset)
	})
	return c.found
}

type collector struct {
	*pairs
	found []Change
}

// visit compares two values that belong together.
func (c *collector) visit(was, is *source.Node) {
	switch {
	case was.Kind == source.Object && is.Kind == source.Object:
		for _, key := range keys(was, is) {
			c.member(was, is, key)
		}
	case was.Kind == source.Array && is.Kind == source.Array && !isPoint(was):
		c.entries(was, is)
	case !same(was, is):
		c.found = append(c.found, Change{Changed, name(is), at(was), at(is)})
	}
}

func (c *collector) member(was, is *source.Node, key string) {
	a, b := shown(was, key), shown(is, key)
	switch {
	case a != nil && b != nil:
		c.visit(a, b)
	case a != nil && elements(a):
		for _, item := range a.Items {
			c.found = append(c.found, Change{Removed, name(item), at(item), missing(is)})
		}
	case a != nil:
		c.found = append(c.found, Change{NotShownNow, name(a), at(a), missing(is)})
	case elements(b):
		for _, item := range b.Items {
			c.found = append(c.found, Change{Added, name(item), missing(was), at(item)})
		}
	default:
		c.found = append(c.found, Change{Shown, name(b), missing(was), at(b)})
	}
}

// elements reports whether a value is a list of elements, as beams are, rather
// than one of values.
func elements(n *source.Node) bool {
	return n.Kind == source.Array && slices.ContainsFunc(n.Items, func(item *source.Node) bool { return item.Kind == source.Object })
}

func (c *collector) entries(was, is *source.Node) {
	for _, item := range was.Items {
		if c.next[item] == nil {
			c.found = append(c.found, Change{Removed, name(item), at(item), missing(is)})
		}
	}
	for _, item := range is.Items {
		match := c.prev[item]
		if match == nil {
			c.found = append(c.found, Change{Added, name(item), missing(was), at(item)})
			continue
		}
		if c.moved[item] {
			c.found = append(c.found, Change{Moved, name(item), standing(match), standing(item)})
		}
		c.visit(match, item)
	}
}

func at(n *source.Node) Place {
	return Place{Pointer: n.Pointer, Span: n.Span, Text: typed(n)}
}

// standing is the place of an entry that moved, by its number in the list.
func standing(n *source.Node) Place {
	return Place{Pointer: n.Pointer, Span: n.Span, Text: "number " + number(n)}
}

// missing is the place of what an element lacks.
func missing(n *source.Node) Place {
	return Place{Pointer: n.Pointer, Span: source.Span{Start: n.Span.Start, End: n.Span.Start}, Missing: true}
}
