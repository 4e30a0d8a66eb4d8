package draw

import (
	"fmt"

	"plumbrule/checker/draw/paper"
	"plumbrule/checker/facts"
	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
)

// framingPlan is the frame of one platform from above: ledger, joists, beams,
// posts, footings.
func (d *drafter) framingPlan(s pencil, i int) *figure {
	p := &planner{drafter: d, f: d.figure(s, "Framing of "+d.platformName(i)), plan: &d.out.Platforms[i], p: &d.deck.Platforms[i], i: i}
	f := p.f
	p.houseEdges()
	p.footings()
	p.frame()
	p.beams(false)
	p.joists()
	p.beams(true)
	p.ledger()
	p.holes()
	p.posts()
	p.joints()
	p.ties()
	p.loads()
	f.fence()
	p.cutMarks()
	p.postChains()
	p.outwardChain()
	p.sidewaysChain()
	p.spanChain()
	p.wholeChains()
	p.frameWords()
	p.frameAnchors()
	f.settle()
	return f
}

// houseEdges draws the face of the house, without its openings.
func (p *planner) houseEdges() {
	f := p.f
	for i, edge := range p.plan.Edges {
		if !edge.House || words(p.p.Support) != "ledger" && p.p.Ledger == nil && p.deck.House == nil {
			continue
		}
		e := p.plan.Outline.Edge(i)
		f.draw(wallBand(f.at(e.A), f.at(e.B), outward(e))...)
		p.houseWord(f.at(e.A), f.at(e.B), outward(e))
		f.use(symbolWall)
		f.anchor("/house", f.at(middleOf(e)))
	}
}

// frame draws the edge of the frame with its rim, or the outline where the
// frame's edge does not follow from it.
func (p *planner) frame() {
	f := p.f
	if p.plan.Frame == nil {
		f.draw(paper.Path{Points: f.all(p.plan.Outline), Closed: true, Stroke: paper.Open})
		f.use(symbolOpen)
		f.miss(p.plan.FrameMissing)
		f.remark("Dotted: the outline as measured. Where the frame ends behind it is not shown.")
		return
	}
	f.draw(paper.Path{Points: f.all(p.plan.Frame), Closed: true, Stroke: paper.Edge})
	if distinct(p.plan.Frame, p.plan.Outline) {
		f.draw(paper.Path{Points: f.all(p.plan.Outline), Closed: true, Stroke: paper.Faint})
		f.remark("Gray: the outline as measured, to the edge of the " + words(p.p.MeasuredTo) + ".")
	}
	rim := p.p.RimJoist
	if rim == nil || rim.Dimensions() == nil {
		if p.p.Joists != nil {
			f.miss("platforms[].rim_joist.size")
		}
		return
	}
	inwards := make([]measure.Length, len(p.plan.Frame))
	for i, edge := range p.plan.Edges {
		if !edge.House && !p.withJoists(p.plan.Frame.Edge(i)) {
			inwards[i] = rim.Dimensions().V.Thickness
		}
	}
	if inner, _, err := p.plan.Frame.Offset(inwards); err == nil {
		for i := range inner {
			if inwards[i] > 0 {
				f.line(f.at(inner.Edge(i).A), f.at(inner.Edge(i).B), paper.Thin)
			}
		}
	}
	f.anchor(rim.At, f.at(middleOf(p.plan.Frame.Edge(len(p.plan.Frame)/2))))
}

// distinct reports whether two rings differ in any corner.
func distinct(a, b geometry.Ring) bool {
	for i := range a {
		if i >= len(b) || a[i] != b[i] {
			return true
		}
	}
	return len(a) != len(b)
}

// withJoists reports whether an edge runs the way the joists do, so that a
// joist lies along it and no rim.
func (p *planner) withJoists(e geometry.Segment) bool {
	if p.plan.Joists != nil && p.plan.Joists.AlongHouse {
		return e.A.Y == e.B.Y
	}
	return e.A.X == e.B.X
}

// joists draws every joist, or an arrow the way they run where their places
// are not shown.
func (p *planner) joists() {
	f, j := p.f, p.plan.Joists
	if j == nil {
		f.miss("platforms[].joists")
		return
	}
	if j.Missing != "" {
		f.miss(j.Missing)
		p.joistArrow()
		return
	}
	f.use(symbolJoist)
	f.lightly(func() {
		for i := range j.Sticks {
			f.draw(p.bar(j.Sticks[i].Line, j.Thickness, paper.Thin, paper.White)...)
		}
	})
}

// bar is a member on the plan: two sides at its thickness, or a line where the
// scale brings the sides together.
func (p *planner) bar(line geometry.Segment, thickness measure.Length, stroke paper.Stroke, fill paper.Fill) []paper.Item {
	f := p.f
	a, b := f.at(line.A), f.at(line.B)
	half := f.on(thickness) / 2
	const together = 0.5
	if half < together {
		return []paper.Item{paper.Line(a, b, stroke)}
	}
	w := towards(a, b).left()
	return []paper.Item{paper.Path{Points: []paper.Point{moved(a, w, half), moved(b, w, half), moved(b, w, -half), moved(a, w, -half)}, Closed: true, Stroke: stroke, Fill: fill}}
}

// joistArrow stands for joists whose places are not known: a line across them
// the way they run, with a head at either end.
func (p *planner) joistArrow() {
	f := p.f
	c, room := deepest(p.plan.Outline, p.avoid())
	mid, reach := f.at(c), f.on(room)*0.8
	v := vector{0, 1}
	switch {
	case p.p.Joists.Direction == nil:
		return // nobody knows which way
	case p.plan.Joists.AlongHouse:
		v = vector{1, 0}
	}
	f.draw(arrow(mid, moved(mid, v, reach))...)
	f.draw(arrow(mid, moved(mid, v, -reach))...)
	f.remark("Arrow: the way the joists run. Their places follow from what is not shown.")
}

// ledger draws the ledger along the house.
func (p *planner) ledger() {
	f, l := p.f, p.plan.Ledger
	if l == nil {
		return
	}
	if l.Thickness == 0 {
		f.miss("platforms[].ledger.size")
	}
	for i, line := range l.Lines {
		a, b := f.at(line.A), f.at(line.B)
		in := towards(a, b).left()
		deep := f.on(l.Thickness)
		spot := moved(middle(a, b), in, -deep/2)
		if i == 0 {
			f.anchor(l.At, spot)
			f.anchor(p.p.At+"/ledger", spot)
			f.anchor(p.p.At+"/lateral_devices", moved(moved(a, towards(a, b), 20), in, -deep))
		}
		if l.Thickness == 0 {
			f.line(moved(a, in, -2), moved(b, in, -2), paper.Open)
			f.use(symbolOpen)
			continue
		}
		f.draw(paper.Path{Points: []paper.Point{a, b, moved(b, in, -deep), moved(a, in, -deep)}, Closed: true, Stroke: paper.Edge, Fill: paper.Shade})
	}
}

// holes draws openings in the frame with the members round them.
func (p *planner) holes() {
	f := p.f
	for _, h := range p.plan.Holes {
		if len(h.Ring) < 3 {
			f.miss("corners of the opening in the frame")
			continue
		}
		f.use(symbolHole)
		points := f.all(h.Ring)
		f.draw(crossed(points)...)
		f.anchor(h.At, f.at(center(h.Ring)))
		for i := range h.Ring {
			e := h.Ring.Edge(i)
			width := h.Headers
			if p.withJoists(e) {
				width = h.Trimmers
			}
			if width == 0 {
				f.miss("members round the opening in the frame")
				continue
			}
			out := outward(e)
			if !h.Ring.Clockwise() {
				out = vector{-out.x, -out.y}
			}
			a, b, deep := f.at(e.A), f.at(e.B), f.on(width)
			f.draw(paper.Path{Points: []paper.Point{a, b, moved(b, out, deep), moved(a, out, deep)}, Closed: true, Stroke: paper.Edge, Fill: paper.White})
		}
		box := h.Ring.Bounds()
		p.f.note(f.at(center(h.Ring)), "opening "+f.value(box.Max.X-box.Min.X)+" along the house", "by "+f.value(box.Max.Y-box.Min.Y)+" out", "starts "+f.value(box.Min.X)+" along, "+f.value(box.Min.Y)+" out")
	}
}

// ties draws the tension ties whose places are shown.
func (p *planner) ties() {
	f, d, l := p.f, p.p.LateralDevices, p.plan.Ledger
	if l == nil || len(l.Lines) == 0 {
		return
	}
	if d == nil {
		f.miss("ties to the house (lateral devices)")
		return
	}
	line, out := l.Lines[0], outward(l.Lines[0])
	in := vector{-out.x, -out.y}
	put := func(along measure.Length) {
		f.draw(tie(f.at(line.At(along)), in)...)
		f.use(symbolTie)
	}
	spot := line.Length()
	switch {
	case len(d.Positions) > 0:
		for _, at := range d.Positions {
			put(at.V)
		}
		spot = d.Positions[0].V
	case d.DistanceFromEnds != nil:
		put(d.DistanceFromEnds.V)
		put(line.Length() - d.DistanceFromEnds.V)
		spot -= d.DistanceFromEnds.V
		if d.Count != nil && d.Count.V > 2 {
			f.miss(fmt.Sprintf("places of the ties between the outer two (%d in all)", d.Count.V))
		}
	default:
		f.miss("platforms[].lateral_devices.distance_from_ends")
	}
	parts := []string{"ties to the house"}
	if d.Count != nil {
		parts[0] = counted(d.Count.V, "tie") + " to the house"
	}
	if d.Capacity != nil {
		parts = append(parts, d.Capacity.V.Text(f.system)+" each")
	}
	if d.DistanceFromEnds != nil {
		parts = append(parts, f.value(d.DistanceFromEnds.V)+" from the ends")
	}
	f.note(moved(f.at(line.At(spot)), in, 6), parts...)
}

// frameAnchors gives spots to what has no symbol of its own.
func (p *planner) frameAnchors() {
	f := p.f
	c, _ := deepest(p.plan.Outline, nil)
	if p.plan.Joists != nil {
		f.anchor(p.plan.Joists.At, p.joistSpot())
	}
	f.anchor(p.p.At, f.at(c))
}

// joistSpot is a place on a joist somewhere in the middle.
func (p *planner) joistSpot() paper.Point {
	if s := p.governing(); s != nil {
		return p.f.at(geometry.Segment{A: s.Line.A, B: s.Line.B}.At(s.Line.Length() / 3))
	}
	c, _ := deepest(p.plan.Outline, nil)
	return p.f.at(c)
}

// governing is the joist with the longest span between two supports, nil where
// there is none.
func (p *planner) governing() *facts.StickPlan {
	if p.plan.Joists == nil {
		return nil
	}
	var best *facts.StickPlan
	most := measure.Length(0)
	sticks := p.plan.Joists.Sticks
	for i := range sticks {
		s := &sticks[i]
		for k := 1; k < len(s.Supports); k++ {
			// Of joists alike the one nearest the middle of the layout is taken.
			span := s.Supports[k].Center.To(s.Supports[k-1].Center)
			if span > most || span == most && i <= len(sticks)/2 {
				best, most = s, span
			}
		}
	}
	return best
}
