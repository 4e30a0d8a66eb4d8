package compare

import (
	"cmp"
	"slices"
	"strings"

	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

// subject is a result with what it is about.
type subject struct {
	*result.Result
	set   string         // among whose results a counterpart is looked for; "" for any
	nodes []*source.Node // at its pointers
	keys  []string       // what they are called in both revisions
}

// subjects gives the results of a design, findings first. Keys come from name.
func subjects(d *result.Design, name func(*source.Node) string) []*subject {
	var list []*subject
	for _, results := range [][]result.Result{d.Findings, d.Readings} {
		for i := range results {
			s := &subject{Result: &results[i], set: results[i].Set}
			for _, pointer := range results[i].At {
				if n := d.Document.Find(pointer); n != nil {
					s.nodes = append(s.nodes, n)
					s.keys = append(s.keys, name(n))
				}
			}
			list = append(list, s)
		}
	}
	return list
}

// kind keeps apart what can never be one result: values, what is not shown, and
// what is said of the design as a whole.
func (s *subject) kind() string {
	switch {
	case s.Outcome == result.NotShown:
		return "not shown\x00" + s.Needs
	case s.whole():
		return "whole"
	}
	return ""
}

// whole reports whether a check spoke of the design as a whole, as one does that
// does not apply.
func (s *subject) whole() bool {
	return s.Outcome != result.NotShown && (len(s.keys) == 0 || s.keys[0] == "")
}

// family is the key of the results among which a counterpart is looked for.
func (s *subject) family() string {
	return strings.Join([]string{s.Check, s.set, s.kind()}, "\x00")
}

func (s *subject) places() string { return strings.Join(s.keys, "\x00") }

func (s *subject) first() string {
	if len(s.keys) == 0 {
		return ""
	}
	return s.keys[0]
}

// matched finds for each result its counterpart on the other side: at the same
// places with the same fingerprint, at the same places, at the same first place,
// and last the one nearest in the same element.
func matched(was, is []*subject, name func(*source.Node) string) map[*subject]*subject {
	found := map[*subject]*subject{}
	for _, by := range []func(*subject) string{
		func(s *subject) string { return s.places() + "\x00\x00" + s.Fingerprint },
		(*subject).places,
		(*subject).first,
	} {
		waiting := map[string][]*subject{}
		for _, s := range was {
			if found[s] == nil {
				key := s.family() + "\x00\x00" + by(s)
				waiting[key] = append(waiting[key], s)
			}
		}
		for _, s := range is {
			key := s.family() + "\x00\x00" + by(s)
			if list := waiting[key]; found[s] == nil && len(list) > 0 {
				found[s], found[list[0]] = list[0], s
				waiting[key] = list[1:]
			}
		}
	}
	matchNear(was, is, found, name)
	return found
}

// matchNear pairs what is left within one element, nearest first: a riser height
// is about one stair, whether the rise was typed in or taken from the ground.
func matchNear(was, is []*subject, found map[*subject]*subject, name func(*source.Node) string) {
	type candidate struct {
		a, b  *subject
		depth int
		sum   int // of their numbers, so that equals are paired in order
	}
	families := map[string][]*subject{}
	numbers := map[*subject]int{}
	for _, s := range was {
		if found[s] == nil && s.kind() == "" {
			numbers[s] = len(families[s.family()])
			families[s.family()] = append(families[s.family()], s)
		}
	}
	var near []candidate
	count := map[string]int{}
	for _, b := range is {
		if found[b] != nil || b.kind() != "" {
			continue
		}
		for _, a := range families[b.family()] {
			if depth := common(a, b, name); depth > 0 {
				near = append(near, candidate{a, b, depth, numbers[a] + count[b.family()]})
			}
		}
		count[b.family()]++
	}
	slices.SortStableFunc(near, func(x, y candidate) int {
		return cmp.Or(cmp.Compare(y.depth, x.depth), cmp.Compare(x.sum, y.sum))
	})
	for _, c := range near {
		if found[c.a] == nil && found[c.b] == nil {
			found[c.a], found[c.b] = c.b, c.a
		}
	}
}

// common counts the steps that the ways to two places share; 0 where they part
// before the element that either is in.
func common(a, b *subject, name func(*source.Node) string) int {
	if len(a.nodes) == 0 || len(b.nodes) == 0 {
		return 0
	}
	x, y := stepsTo(a.nodes[0]), stepsTo(b.nodes[0])
	depth := 0
	for depth < len(x) && depth < len(y) && name(x[depth]) == y[depth].Pointer {
		depth++
	}
	if depth < elementDepth(x) || depth < elementDepth(y) {
		return 0
	}
	return depth
}

// elementDepth is the number of steps to the innermost element of a list; 1
// where there is none.
func elementDepth(steps []*source.Node) int {
	for i := len(steps) - 1; i >= 0; i-- {
		if inList(steps[i]) {
			return i + 1
		}
	}
	return 1
}

// inList reports whether a value is an element of a list.
func inList(n *source.Node) bool {
	return n.Kind == source.Object && n.Parent != nil && n.Parent.Kind == source.Array
}

// holds reports whether the place called outer is that called inner, or around
// it.
func holds(outer, inner string) bool {
	return outer == "" || inner == outer || strings.HasPrefix(inner, outer+"/")
}
