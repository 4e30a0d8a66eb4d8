package draw

import (
	"cmp"
	"math"
	"slices"

	"plumbrule/checker/draw/paper"
	"plumbrule/checker/facts"
	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// frontElevation shows a platform as seen from the yard, looking at the house.
func (d *drafter) frontElevation(s pencil, i int) *figure {
	p := &planner{drafter: d, f: d.figure(s, "Front elevation of "+d.platformName(i)), plan: &d.out.Platforms[i], p: &d.deck.Platforms[i], i: i}
	f, l := p.f, p.levels()
	box := p.plan.Outline.Bounds()
	stated := p.frontGround()
	heights := p.frontBeams(l)
	p.frontFrame(l, box)
	p.frontGuards()
	p.frontStairs()
	f.line(p.at(box.Min.X, 0), p.at(box.Max.X, 0), paper.Bold)
	f.anchor(p.p.At, p.at((box.Min.X+box.Max.X)/2, 0))
	f.fence()
	f.chain(below, []stretch{{from: p.at(box.Min.X, 0), to: p.at(box.Max.X, 0), value: box.Max.X - box.Min.X}})
	p.frontHeights(box, stated)
	for _, h := range heights {
		f.note(h.spot, "post "+f.value(h.height)+" "+f.say("to beam")+" "+h.beam)
	}
	f.settle()
	return f
}

// tall is the height of a post with a place to write it.
type tall struct {
	spot   paper.Point
	height measure.Length
	beam   string
}

// frontBeams draws the beams with their posts, those nearer the house first, so
// that what stands before them hides them. It gives the heights to be written,
// equal ones of a beam once.
func (p *planner) frontBeams(l levels) []tall {
	f := p.f
	beams := make([]*facts.BeamPlan, len(p.plan.Beams))
	for i := range beams {
		beams[i] = &p.plan.Beams[i]
	}
	slices.SortStableFunc(beams, func(a, b *facts.BeamPlan) int { return cmp.Compare(outermost(a), outermost(b)) })
	var heights []tall
	for _, b := range beams {
		var seen []measure.Length
		for k := range b.Posts {
			s := &b.Posts[k]
			h := p.upright(b, s, s.Place.X, l)
			if h == nil || slices.ContainsFunc(seen, func(o measure.Length) bool { return near(o, h.Value) }) {
				continue
			}
			seen = append(seen, h.Value)
			_, under, _ := p.beamLevels(b, l)
			heights = append(heights, tall{p.at(s.Place.X, under+h.Value*3/5), h.Value, b.Mark})
		}
		top, under, ok := p.beamLevels(b, l)
		if !ok {
			continue
		}
		for k, line := range b.Lines {
			line = p.shown(b, line, k == 0, k == len(b.Lines)-1)
			from, to := min(line.A.X, line.B.X), max(line.A.X, line.B.X)
			if from == to {
				from, to = from-b.Width/2, to+b.Width/2
			}
			f.draw(paper.Rectangle(p.at(from, top), p.at(to, under), paper.Edge, paper.White))
			if k == 0 {
				f.anchor(b.Beam.At, p.at(from+(to-from)/5, (top+under)/2))
			}
		}
	}
	return heights
}

// outermost is how far out from the house a beam reaches.
func outermost(b *facts.BeamPlan) measure.Length {
	far := measure.Length(math.MinInt64)
	for _, line := range b.Lines {
		far = max(far, line.A.Y, line.B.Y)
	}
	return far
}

// frontFrame draws boards and rim.
func (p *planner) frontFrame(l levels, box geometry.Box) {
	f := p.f
	if l.boardOK {
		f.draw(paper.Rectangle(p.at(box.Min.X, 0), p.at(box.Max.X, l.boards), paper.Thin, paper.White))
		f.anchor(p.p.At+"/decking", p.at(box.Min.X+(box.Max.X-box.Min.X)/8, l.boards/2))
	}
	if !l.joistOK {
		return
	}
	if p.plan.Frame == nil {
		f.draw(paper.Rectangle(p.at(box.Min.X, l.boards), p.at(box.Max.X, l.joists), paper.Open, paper.NoFill))
		f.use(symbolOpen)
		f.miss(p.plan.FrameMissing)
		return
	}
	frame := p.plan.Frame.Bounds()
	f.draw(paper.Rectangle(p.at(frame.Min.X, l.boards), p.at(frame.Max.X, l.joists), paper.Edge, paper.White))
}

// frontGuards draws the guards on edges that look to the front.
func (p *planner) frontGuards() {
	for i, edge := range p.plan.Edges {
		e := p.plan.Outline.Edge(i)
		const sideways = 0.1
		if outward(e).y < sideways {
			continue
		}
		described, ok := p.p.Edges.Get(edge.Name)
		if !ok || described.Guard == nil || described.Guard.V == model.NoGuard {
			continue
		}
		for k := range p.deck.Guards {
			if g := &p.deck.Guards[k]; words(g.Mark) == described.Guard.V {
				from, to := min(e.A.X, e.B.X), max(e.A.X, e.B.X)
				p.guard(g, from, to, p.gapsOnX(i))
			}
		}
	}
}

// gapsOnX are the stretches along the house where stairs leave an edge.
func (p *planner) gapsOnX(edge int) []geometry.Interval {
	var list []geometry.Interval
	for _, s := range p.out.Stairs {
		if s.Platform == p.i && s.Edge == edge && s.Top != nil {
			list = append(list, geometry.Interval{From: min(s.Top.A.X, s.Top.B.X), To: max(s.Top.A.X, s.Top.B.X)})
		}
	}
	return sorted(list)
}

// guard draws a guard over a stretch of the front, open at the gaps.
func (p *planner) guard(g *model.Guard, from, to measure.Length, gaps []geometry.Interval) {
	f := p.f
	if g.Height == nil {
		f.miss(f.say("height of guard") + " " + words(g.Mark))
		return
	}
	f.remark(f.say("Guards: rails and infill are drawn over the whole edge; the places of their posts are not shown."))
	for _, part := range geometry.Without([]geometry.Interval{{From: from, To: to}}, gaps) {
		f.anchor(g.At, p.at(part.From+part.Length()/3, -g.Height.V/2))
		bottom := measure.Length(0)
		if in := g.Infill; in != nil && in.BottomGap != nil {
			bottom = in.BottomGap.V
			f.line(p.at(part.From, -bottom), p.at(part.To, -bottom), paper.Thin)
		}
		p.infill(g, part, bottom)
		f.line(p.at(part.From, -g.Height.V), p.at(part.To, -g.Height.V), paper.Bold)
		for _, x := range []measure.Length{part.From, part.To} {
			f.line(p.at(x, 0), p.at(x, -g.Height.V), paper.Thin)
		}
	}
}

// infill draws balusters at their spacing, or cables.
func (p *planner) infill(g *model.Guard, part geometry.Interval, bottom measure.Length) {
	f, in := p.f, g.Infill
	if in == nil || in.Opening == nil || in.Opening.V <= 0 {
		return
	}
	step := in.Opening.V
	if in.BalusterWidth != nil {
		step += in.BalusterWidth.V
	}
	if f.on(step) < 1.5 {
		return
	}
	switch words(in.Kind) {
	case "balusters":
		for x := part.From + step; x < part.To; x += step {
			f.line(p.at(x, -bottom), p.at(x, -g.Height.V), paper.Faint)
		}
	case "cables":
		for h := bottom + step; h < g.Height.V; h += step {
			f.line(p.at(part.From, -h), p.at(part.To, -h), paper.Faint)
		}
	}
}

// frontStairs draws stairs that come down towards the viewer, tread over tread.
func (p *planner) frontStairs() {
	f := p.f
	for k := range p.out.Stairs {
		s := &p.out.Stairs[k]
		if s.Platform != p.i || s.Top == nil || facing(outward(p.plan.Outline.Edge(s.Edge))) != below {
			continue
		}
		from, to := min(s.Top.A.X, s.Top.B.X), max(s.Top.A.X, s.Top.B.X)
		down := measure.Length(0)
		var rises []measure.Length
		for _, flight := range p.flightsOf(s.Label) {
			for n := range flight.RiserHeights {
				down += flight.RiserHeights[len(flight.RiserHeights)-1-n]
				rises = append(rises, down)
			}
		}
		if len(rises) == 0 {
			f.miss("risers of stair " + s.Label)
			continue
		}
		f.draw(paper.Rectangle(p.at(from, 0), p.at(to, down), paper.Edge, paper.White))
		f.lightly(func() {
			for _, r := range rises[:len(rises)-1] {
				f.line(p.at(from, r), p.at(to, r), paper.Thin)
			}
		})
		f.anchor(s.At, p.at((from+to)/2, down/2))
		f.note(p.at(to-(to-from)/5, down/2), "stair "+s.Label)
	}
}

// frontGround draws the ground below the edges that look to the front. Where it
// is known below none of them, it gives the height that it is dotted at, or nil.
func (p *planner) frontGround() (stated *measure.Length) {
	f := p.f
	known := false
	for i, edge := range p.plan.Edges {
		e := p.plan.Outline.Edge(i)
		if outward(e).y < 0.1 {
			continue
		}
		a, b := p.groundBelow(e.A, edge.Name), p.groundBelow(e.B, edge.Name)
		if a == nil || b == nil {
			f.miss("ground below the edge \"" + edge.Name + "\"")
			continue
		}
		known = true
		points := []paper.Point{p.at(e.A.X, *a), p.at(e.B.X, *b)}
		if e.A.X > e.B.X {
			slices.Reverse(points)
		}
		p.groundLine(points, true)
	}
	if h := p.oneHeight(); !known && h != nil {
		box := p.plan.Outline.Bounds()
		p.groundLine([]paper.Point{p.at(box.Min.X, *h), p.at(box.Max.X, *h)}, false)
		f.remark("Dotted ground: the height is stated for one place only; how the ground runs from there is not shown.")
		return h
	}
	return nil
}

// oneHeight is a height of the surface above the ground that is stated for a
// single place.
func (p *planner) oneHeight() *measure.Length {
	if h := p.p.SurfaceAboveGrade; h != nil {
		return &h.V
	}
	for i := range p.p.GradeAt {
		if g := &p.p.GradeAt[i]; g.BelowSurface != nil {
			return &g.BelowSurface.V
		}
	}
	return nil
}

// groundBelow is the depth of the ground at a corner of an edge: carried there
// from known points, or the drop that the edge shows.
func (p *planner) groundBelow(corner geometry.Point, edge string) *measure.Length {
	var carried *measure.Length
	if g := p.plan.GroundOnSlope(corner); g != nil {
		carried = &g.Value
	}
	described, ok := p.p.Edges.Get(edge)
	if !ok || described.Drop == nil {
		return carried
	}
	// The drop is the greatest along the edge. Ground carried there that comes
	// deeper contradicts it, and what the edge itself shows then counts.
	if carried != nil && *carried <= described.Drop.V {
		return carried
	}
	return &described.Drop.V
}

// frontHeights dimensions, on the right, the ground below the surface, known
// there or stated for one place, and the guard above it.
func (p *planner) frontHeights(box geometry.Box, stated *measure.Length) {
	f := p.f
	var list []stretch
	for i, edge := range p.plan.Edges {
		e := p.plan.Outline.Edge(i)
		if outward(e).y < 0.1 || max(e.A.X, e.B.X) < box.Max.X-measure.Inch {
			continue
		}
		corner := e.A
		if e.B.X > e.A.X {
			corner = e.B
		}
		if g := p.groundBelow(corner, edge.Name); g != nil {
			list = append(list, stretch{from: p.at(box.Max.X, 0), to: p.at(box.Max.X, *g), value: *g})
		}
		if described, ok := p.p.Edges.Get(edge.Name); ok && described.Guard != nil {
			for k := range p.deck.Guards {
				if q := &p.deck.Guards[k]; words(q.Mark) == described.Guard.V && q.Height != nil {
					list = append(list, stretch{from: p.at(box.Max.X, -q.Height.V), to: p.at(box.Max.X, 0), value: q.Height.V, after: f.say("guard"), optional: true})
				}
			}
		}
	}
	if stated != nil {
		list = append(list, stretch{from: p.at(box.Max.X, 0), to: p.at(box.Max.X, *stated), value: *stated, after: "as stated"})
	}
	if len(list) > 0 {
		f.chain(atRight, list)
	}
}
