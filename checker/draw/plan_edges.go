package draw

import (
	"slices"

	"plumbrule/checker/draw/paper"
	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// openingChain places the doors and windows from the left end of the house.
func (p *planner) openingChain() {
	f := p.f
	var list []stretch
	low := paper.Point{}
	for _, o := range sortedOpenings(p.plan.Openings) {
		if o.Line.A == o.Line.B {
			list = append(list, stretch{from: low, to: f.at(o.Line.A), value: o.Line.A.X})
			continue
		}
		list = append(list, stretch{from: f.at(o.Line.A), to: f.at(o.Line.B), value: o.Line.B.X - o.Line.A.X})
	}
	if len(list) == 0 {
		return
	}
	y := f.at(p.plan.Openings[0].Line.A).Y
	f.chain(above, f.filled(above, list, paper.Point{Y: y}, list[len(list)-1].to))
	f.remark("Along the house, distances start from its left end.")
}

// outlineChains dimensions every edge on the side that it looks to, and the
// whole; a side that would only repeat the one across from it is left out.
func (p *planner) outlineChains() {
	f, ring := p.f, p.plan.Outline
	sides := map[side][]stretch{}
	for i := range p.plan.Edges {
		e := ring.Edge(i)
		d := stretch{from: f.at(e.A), to: f.at(e.B), value: e.Length()}
		s := facing(outward(e))
		if s == slanted {
			gap := firstLine
			if deep := p.stairDepth(i); deep > 0 {
				gap = deep + firstLine + nextLine
			}
			f.beside(d, gap)
			continue
		}
		sides[s] = append(sides[s], d)
	}
	p.stairChains()
	box := ring.Bounds()
	for _, pair := range [][2]side{{below, above}, {atRight, atLeft}} {
		p.sideChain(pair[0], sides[pair[0]], box)
		if !same(sides[pair[0]], sides[pair[1]], wholeOf(pair[1], box)) {
			p.sideChain(pair[1], sides[pair[1]], box)
		}
	}
}

// sideChain draws the edges of one side and, where they are several, the whole.
func (p *planner) sideChain(s side, list []stretch, box geometry.Box) {
	f := p.f
	if len(list) == 0 {
		return
	}
	low, high, whole := f.at(box.Min), f.at(box.Max), wholeOf(s, box)
	corner := list[0].from
	switch s {
	case below, above:
		low.Y, high.Y = corner.Y, corner.Y
	default:
		low.X, high.X = corner.X, corner.X
	}
	full := f.filled(s, list, low, high)
	f.chain(s, full)
	if len(full) > 1 && !slices.ContainsFunc(full, func(d stretch) bool { return near(d.value, whole) }) {
		f.chain(s, []stretch{{from: low, to: high, value: whole}})
	}
}

// wholeOf is the size of a platform along a side.
func wholeOf(s side, box geometry.Box) measure.Length {
	if s == atLeft || s == atRight {
		return box.Max.Y - box.Min.Y
	}
	return box.Max.X - box.Min.X
}

// same reports whether side b would show nothing that side a does not: no edge,
// or one as long as the whole.
func same(a, b []stretch, whole measure.Length) bool {
	return len(b) == 0 || len(a) > 0 && len(b) == 1 && near(b[0].value, whole)
}

// stairChains places stairs along the edges that they leave from.
func (p *planner) stairChains() {
	f := p.f
	for _, s := range p.out.Stairs {
		if s.Platform != p.i || s.Top == nil {
			continue
		}
		e := p.plan.Outline.Edge(s.Edge)
		near := stretch{from: f.at(e.A), to: f.at(s.Top.A), value: e.A.To(s.Top.A)}
		wide := stretch{from: f.at(s.Top.A), to: f.at(s.Top.B), value: s.Top.Length()}
		list := []stretch{wide}
		if near.value > 0 {
			list = append(list, near)
		}
		if to := facing(outward(e)); to != slanted {
			f.chain(to, list)
			continue
		}
		for _, d := range list { // walked the way of the edge, so that out is to the left
			f.beside(d, p.stairDepth(s.Edge)+firstLine)
		}
	}
}

// stairDepth is how far on paper the stairs and landings at an edge reach out.
func (p *planner) stairDepth(edge int) float64 {
	most := 0.0
	for k, s := range p.out.Stairs {
		if s.Platform != p.i || s.Edge != edge || s.Top == nil {
			continue
		}
		deep := 0.0
		for _, flight := range p.flightsOf(s.Label) {
			if flight.Run != nil {
				deep += p.f.on(flight.Run.Value)
			}
			if l := p.landing(k, flight); l != nil && l.Depth != nil {
				deep += p.f.on(l.Depth.Value)
			}
		}
		most = max(most, deep)
	}
	return most
}

// edgeWords writes along the inside of each edge what it is called, how far the
// ground lies below and what guards it.
func (p *planner) edgeWords() {
	f := p.f
	for i, edge := range p.plan.Edges {
		e := p.plan.Outline.Edge(i)
		a, b := f.at(e.A), f.at(e.B)
		parts := []string{edge.Name}
		described, ok := p.p.Edges.Get(edge.Name)
		if ok {
			parts = append(parts, p.edgeParts(&described)...)
		}
		if edge.House {
			continue // its own words say so
		}
		if !ok {
			parts = append(parts, "drop not shown")
			f.miss("drop at the edge \"" + edge.Name + "\"")
		}
		const inside = -11 // right of the walk is inside; clear of the guard
		f.sooner(func() {
			if !f.along(a, b, inside, joined(parts)) {
				f.note(middle(a, b), parts...)
			}
		})
	}
}

// edgeParts says what the description has of an edge.
func (p *planner) edgeParts(e *model.Edge) []string {
	f := p.f
	var parts []string
	switch {
	case e.Drop != nil && e.DropWithin36 != nil:
		parts = append(parts, "drop "+f.value(e.Drop.V)+", "+f.value(e.DropWithin36.V)+" within "+f.value(36*measure.Inch))
	case e.Drop != nil && e.DropWithin1200 != nil:
		parts = append(parts, "drop "+f.value(e.Drop.V)+", "+f.value(e.DropWithin1200.V)+" within "+f.value(1200*measure.Millimetre))
	case e.Drop != nil:
		parts = append(parts, "drop "+f.value(e.Drop.V))
	default:
		parts = append(parts, "drop not shown")
	}
	switch {
	case e.Guard == nil:
		parts = append(parts, f.say("no guard")+" shown")
	case e.Guard.V == model.NoGuard:
		parts = append(parts, f.say("no guard"))
	default:
		parts = append(parts, p.guardWords(e.Guard.V))
	}
	if e.Bench != nil && e.Bench.SeatHeight != nil {
		parts = append(parts, "bench, seat "+f.value(e.Bench.SeatHeight.V))
	}
	return parts
}

func (p *planner) guardWords(mark string) string {
	for i := range p.deck.Guards {
		if g := &p.deck.Guards[i]; words(g.Mark) == mark && g.Height != nil {
			return p.f.say("guard") + " " + mark + ", " + p.f.value(g.Height.V) + " high"
		}
	}
	return p.f.say("guard") + " " + mark + ", height not shown"
}
