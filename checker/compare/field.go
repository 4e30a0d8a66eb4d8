package compare

import (
	"strings"

	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

// field gives the place where this revision shows what a result of the other one
// lacks, or nil where it does not either.
func (o *side) field(s *subject) *Place {
	if s.Outcome != result.NotShown || len(s.nodes) == 0 {
		return nil
	}
	here, tokens := o.match[s.nodes[0]], strings.Split(strings.ReplaceAll(s.Needs, "[]", ".[]"), ".")
	if rest, ok := within(stepsTo(s.nodes[0]), tokens); ok {
		tokens = rest
	} else {
		here = o.doc.Root // it needs something that stands elsewhere
	}
	if n := follow(here, tokens); n != nil {
		place := at(n)
		return &place
	}
	return nil
}

// within takes the steps to an element off a path of fields, if the path leads
// through it.
func within(steps []*source.Node, tokens []string) ([]string, bool) {
	if len(steps) > len(tokens) {
		return nil, false
	}
	for i, s := range steps {
		if tokens[i] != keyOf(s) && !wildcard(tokens[i]) {
			return nil, false
		}
	}
	return tokens[len(steps):], true
}

// wildcard tells the parts of a path that stand for any element, [] and <edge>.
func wildcard(token string) bool { return token == "[]" || strings.HasPrefix(token, "<") }

// follow gives the first value that a path of fields leads to, or nil.
func follow(n *source.Node, tokens []string) *source.Node {
	if n == nil || n.Kind == source.Null {
		return nil
	}
	if len(tokens) == 0 {
		return n
	}
	if !wildcard(tokens[0]) {
		return follow(shown(n, tokens[0]), tokens[1:])
	}
	for _, item := range n.Items {
		if value := follow(item, tokens[1:]); value != nil {
			return value
		}
	}
	for _, m := range n.Members {
		if value := follow(m.Value, tokens[1:]); value != nil {
			return value
		}
	}
	return nil
}
