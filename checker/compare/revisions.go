package compare

import (
	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

// Revisions is what lies between two revisions of a design.
type Revisions struct {
	// Was and Is are the reports on the old and the new revision. Where one of
	// them has problems, nothing was compared.
	Was, Is result.Design
	// Sets are the rule sets that both were held against.
	Sets []result.Set
	// Changes are the values that differ, in the order of the new revision.
	Changes []Change
	// Matters are the findings of both revisions, each once, by state.
	Matters []Matter
	// Waivers are files of waivers with entries that excuse nothing in the new
	// revision, or have run out.
	Waivers []result.Design
}

// Between compares two revisions that were held against the same sets.
func Between(was, is result.Design, sets []result.Set) *Revisions {
	r := &Revisions{Was: was, Is: is, Sets: sets}
	if len(was.Problems) > 0 || len(is.Problems) > 0 {
		return r
	}
	p := pair(was.Document, is.Document)
	r.Changes = p.changes(was.Document, is.Document)
	r.Matters = p.matters(&r.Was, &r.Is)
	return r
}

// Of gives the matters in a state.
func (r *Revisions) Of(state State) []*Matter {
	var list []*Matter
	for i := range r.Matters {
		if r.Matters[i].State == state {
			list = append(list, &r.Matters[i])
		}
	}
	return list
}

// Worse reports whether the new revision has something of a class or graver that
// the old one had not: outside a limit, further outside, outside and no longer to
// be seen, or a check that could not run. With notShown, what is not shown now and was not asked for or shown
// before counts too, of whatever class.
func (r *Revisions) Worse(class result.Consequence, notShown bool) bool {
	for i := range r.Matters {
		if r.Matters[i].worse(class, notShown) {
			return true
		}
	}
	return false
}

// side is one revision as seen from the other: its results, and which of its
// values is which of the other's.
type side struct {
	doc     *source.Document
	results []*subject
	match   map[*source.Node]*source.Node // of the other revision, in this one
}

// matters says what became of the findings.
func (p *pairs) matters(was, is *result.Design) []Matter {
	before := side{was.Document, subjects(was, p.key), p.prev}
	after := side{is.Document, subjects(is, pointer), p.next}
	counterpart := matched(before.results, after.results, p.key)
	var matters []Matter
	for _, s := range after.results {
		other := counterpart[s]
		switch {
		case other != nil && (found(s.Result) || found(other.Result)):
			matters = append(matters, Matter{Was: other.Result, Is: s.Result})
		case other == nil && found(s.Result):
			matters = append(matters, Matter{Is: s.Result, Reason: before.absence(s), Field: before.field(s)})
		}
	}
	for _, s := range before.results {
		if counterpart[s] == nil && found(s.Result) {
			matters = append(matters, Matter{Was: s.Result, Reason: after.absence(s), Field: after.field(s)})
		}
	}
	for i := range matters {
		matters[i].State, matters[i].Trend = matters[i].become()
	}
	arrange(matters)
	return matters
}

func pointer(n *source.Node) string { return n.Pointer }

// absence says why this revision has no counterpart of a result.
func (o *side) absence(s *subject) Reason {
	if element := elementOf(s); element != nil && o.match[element] == nil {
		return NoElement
	}
	reason := Reason("")
	answered := false
	for _, other := range o.results {
		if other.Check != s.Check || other.Set != s.Set {
			continue
		}
		answered = answered || other.value()
		switch {
		case !related(s, other):
		case other.Outcome == result.CouldNotRun:
			return NoRun
		case other.Outcome == result.NotShown && s.Outcome != result.NotShown:
			return NothingSeen
		case other.Outcome == result.DoesNotApply:
			reason = NoNeed
		}
	}
	if s.Outcome == result.NotShown && !answered && reason == "" {
		return NoNeed
	}
	return reason
}

// related reports whether two results of one check speak of the same thing,
// though not of the same value of it.
func related(s, o *subject) bool {
	if o.whole() || s.whole() {
		return true
	}
	for _, key := range o.keys {
		if holds(s.first(), key) {
			return true
		}
	}
	for _, key := range s.keys {
		if holds(o.first(), key) {
			return true
		}
	}
	return false
}

// elementOf gives the element of a list that a result is about, or nil where it
// is about none.
func elementOf(s *subject) *source.Node {
	if len(s.nodes) == 0 {
		return nil
	}
	steps := stepsTo(s.nodes[0])
	for i := len(steps) - 1; i >= 0; i-- {
		if inList(steps[i]) {
			return steps[i]
		}
	}
	return nil
}
