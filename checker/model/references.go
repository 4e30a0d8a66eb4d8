package model

import (
	"fmt"
	"strings"

	"github.com/agnivade/levenshtein"

	"plumbrule/checker/source"
)

// NoGuard is the word for an edge that deliberately has no guard.
const NoGuard = "none"

// ToGrade is the word for a stair that lands on the ground.
const ToGrade = "grade"

// references finds names that point at nothing and marks given twice.
func references(doc *source.Document, deck *Deck) []Problem {
	r := &resolver{doc: doc}
	platforms := marks(r, "platform", deck.Platforms, func(p *Platform) *Words { return p.Mark })
	guards := marks(r, "guard", deck.Guards, func(g *Guard) *Words { return g.Mark })
	marks(r, "stair", deck.Stairs, func(s *Stair) *Words { return s.Mark })
	for i := range deck.Platforms {
		p := &deck.Platforms[i]
		r.edges(p)
		if p.HungFrom != nil {
			r.known("platform", p.HungFrom, platforms)
		}
		for _, edge := range p.Edges {
			if g := edge.Value.Guard; g != nil && g.V != NoGuard {
				r.known("guard", g, guards)
			}
		}
		r.openings(p, guards)
		for _, name := range lumberOf(p) {
			r.known("lumber", name, deck.Lumber.Names())
		}
	}
	for i := range deck.Stairs {
		s := &deck.Stairs[i]
		r.stair(deck, s, platforms)
		if s.Guard != nil && s.Guard.Like != nil {
			r.known("guard", s.Guard.Like, guards)
		}
	}
	return r.problems
}

// openings refuses guards round openings that no guard is marked with.
func (r *resolver) openings(p *Platform, guards []string) {
	if p.Joists == nil {
		return
	}
	for i := range p.Joists.Openings {
		if g := p.Joists.Openings[i].Guard; g != nil && g.V != NoGuard {
			r.known("guard", g, guards)
		}
	}
}

type resolver struct {
	doc      *source.Document
	problems []Problem
}

func (r *resolver) refuse(at, hint, format string, args ...any) {
	r.problems = append(r.problems, Problem{Node: r.doc.Find(at), Message: fmt.Sprintf(format, args...), Hint: hint})
}

// marks lists the marks of elements and refuses one that is given twice.
func marks[T any](r *resolver, kind string, list []T, mark func(*T) *Words) []string {
	var names []string
	first := map[string]string{}
	for i := range list {
		m := mark(&list[i])
		if m == nil {
			continue
		}
		if at, twice := first[m.V]; twice {
			r.refuse(m.At, "", "two %ss have the mark %q, the other is on line %d", kind, m.V, r.doc.Find(at).Span.Start.Line)
			continue
		}
		first[m.V] = m.At
		names = append(names, m.V)
	}
	return names
}

// known refuses a name that is not among those that exist.
func (r *resolver) known(kind string, name *Words, existing []string) {
	for _, e := range existing {
		if e == name.V {
			return
		}
	}
	r.refuse(name.At, suggestion(name.V, existing), "there is no %s %q in this design", kind, name.V)
}

// suggestion names the nearest existing name, or lists what there is.
func suggestion(name string, existing []string) string {
	if len(existing) == 0 {
		return "none is described"
	}
	nearest, best := "", len(name)/2+1
	for _, e := range existing {
		if d := levenshtein.ComputeDistance(strings.ToLower(name), strings.ToLower(e)); d < best {
			nearest, best = e, d
		}
	}
	if nearest != "" {
		return fmt.Sprintf("did you mean %q?", nearest)
	}
	return "there are: " + strings.Join(existing, ", ")
}

// edges refuses an entry for an edge that the outline does not have.
func (r *resolver) edges(p *Platform) {
	if p.Outline == nil {
		return
	}
	names := p.Outline.Names()
	for _, edge := range p.Edges {
		r.known("edge", &Words{V: edge.Name, At: edge.Value.At}, names)
	}
	if n := len(p.Outline.EdgeNames); n > 0 && n != len(p.Outline.Corners) {
		r.refuse(p.Outline.At+"/edges", "", "%d edge names for an outline of %d corners", n, len(p.Outline.Corners))
	}
}

func (r *resolver) stair(deck *Deck, s *Stair, platforms []string) {
	if s.To != nil && s.To.V != ToGrade {
		r.known("platform", s.To, platforms)
	}
	if s.From == nil {
		return
	}
	if s.From.Platform == nil {
		return
	}
	r.known("platform", s.From.Platform, platforms)
	p := deck.Platform(s.From.Platform.V)
	if p == nil || p.Outline == nil || s.From.Edge == nil {
		return
	}
	r.known("edge", s.From.Edge, p.Outline.Names())
}

// Platform finds a platform by its mark, or nil.
func (d *Deck) Platform(mark string) *Platform {
	for i := range d.Platforms {
		if m := d.Platforms[i].Mark; m != nil && m.V == mark {
			return &d.Platforms[i]
		}
	}
	return nil
}

// LumberNames lists the names of lumber that the members of the frame refer to.
func (p *Platform) LumberNames() []*Words { return lumberOf(p) }

// lumberOf lists the lumber names that a platform's members refer to.
func lumberOf(p *Platform) []*Words {
	var members []*Member
	if p.Ledger != nil {
		members = append(members, &p.Ledger.Member)
	}
	if p.Joists != nil {
		members = append(members, &p.Joists.Member)
	}
	members = append(members, p.RimJoist)
	for i := range p.Beams {
		members = append(members, &p.Beams[i].Member)
	}
	if p.Posts != nil {
		members = append(members, &p.Posts.Member)
		for i := range p.Posts.Each {
			members = append(members, &p.Posts.Each[i].Member)
		}
	}
	var names []*Words
	for _, m := range members {
		if m != nil && m.Lumber != nil {
			names = append(names, m.Lumber)
		}
	}
	return names
}
