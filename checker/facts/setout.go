package facts

import (
	"slices"

	"plumbrule/checker/geometry"
	"plumbrule/checker/model"
)

// SetOut works out where everything lies. The deck must have been derived
// without problems.
func SetOut(deck *model.Deck) *SettingOut {
	out := &SettingOut{}
	engineer := newEngineer(deck)
	surfaces := make([]*surface, len(deck.Platforms))
	for i := range deck.Platforms {
		s := newSurface(deck, engineer, i)
		surfaces[i] = s
		out.Platforms = append(out.Platforms, s.setOut())
	}
	for i := range deck.Stairs {
		out.Stairs = append(out.Stairs, newStair(deck, engineer, surfaces, i).setOut(surfaces))
	}
	out.wall(deck, surfaces)
	return out
}

func (s *surface) setOut() PlatformPlan {
	p := PlatformPlan{At: s.p.At, Label: s.label, Outline: s.ring, FrameMissing: s.frameMissing, surface: s}
	if s.frameMissing == "" {
		p.Frame = s.frame
	}
	for _, name := range s.names {
		edge := EdgePlan{At: s.p.Outline.At, Name: name, House: isHouse(name)}
		if described, ok := s.p.Edges.Get(name); ok {
			edge.At = described.At
		}
		p.Edges = append(p.Edges, edge)
	}
	if s.ring == nil {
		return p
	}
	// Beams have their place on the plan whether or not joists can be laid out.
	upright := layout{}
	for _, c := range s.carriers(&upright) {
		p.Beams = append(p.Beams, s.beamPlan(&c))
	}
	for i := range s.p.Beams {
		b := &s.p.Beams[i]
		if name := beamLabel(b, i); !slices.ContainsFunc(p.Beams, func(q BeamPlan) bool { return q.Mark == name }) {
			p.Unplaced = append(p.Unplaced, name)
		}
	}
	p.Ledger = s.ledgerPlan()
	if s.p.Joists != nil {
		p.Joists = s.joistPlan()
		for i := range s.p.Joists.Openings {
			p.Holes = append(p.Holes, holePlan(&s.p.Joists.Openings[i]))
		}
	}
	return p
}

func (s *surface) beamPlan(c *carrier) BeamPlan {
	b := BeamPlan{At: c.beam.At, Mark: c.name, Flush: c.flush, Lines: c.lines}
	if c.missing == "" {
		b.Width = c.width
	}
	if s.frameMissing != "" && len(c.beam.Line) == 0 {
		b.OpenStart, b.OpenEnd = c.beam.Start == nil, c.beam.End == nil
	}
	for i, p := range c.beam.PostsAt {
		b.Posts = append(b.Posts, SpotPlan{At: p.At, N: i + 1, Along: p.V, Place: c.base.At(p.V)})
	}
	for i, p := range c.beam.PlyJointsAt {
		b.Joints = append(b.Joints, SpotPlan{At: p.At, N: i + 1, Along: p.V, Place: c.base.At(p.V)})
	}
	return b
}

// ledgerPlan runs the ledger along the house edges, from its start to its end
// where those are shown.
func (s *surface) ledgerPlan() *LedgerPlan {
	if words(s.p.Support) != "ledger" && s.p.Ledger == nil {
		return nil
	}
	plan := &LedgerPlan{At: s.p.At}
	ledger := s.p.Ledger
	if ledger != nil {
		plan.At = ledger.At
		if d := ledger.Dimensions(); d != nil {
			plan.Thickness = d.V.Thickness
		}
	}
	for i, name := range s.names {
		if !isHouse(name) {
			continue
		}
		line := s.ring.Edge(i)
		if left := s.ring.Bounds().Min.X; ledger != nil && line.A.Y == line.B.Y && line.A.X < line.B.X {
			if ledger.Start != nil {
				line.A.X = max(line.A.X, left+ledger.Start.V)
			}
			if ledger.End != nil {
				line.B.X = min(line.B.X, left+ledger.End.V)
			}
			if line.A.X >= line.B.X {
				continue
			}
		}
		plan.Lines = append(plan.Lines, line)
	}
	return plan
}

// joistPlan lays the joists out and cuts them to sticks.
func (s *surface) joistPlan() *JoistPlan {
	l := s.layOut()
	plan := &JoistPlan{At: s.p.Joists.At, AlongHouse: l.turned, Thickness: l.thickness, Missing: l.missing}
	if plan.Missing == "" && s.frameMissing != "" {
		plan.Missing = s.frameMissing
	}
	if plan.Missing != "" {
		return plan
	}
	ring, beams, g := l.plan(s.frame), s.carriers(&l), gathering{s: s, l: &l}
	for _, x := range l.centers {
		for _, p := range s.pieces(&l, ring, beams, x) {
			plan.Sticks = append(plan.Sticks, g.stickPlan(&p))
		}
	}
	return plan
}

// stickPlan turns a piece back from the layout's plan to the one on paper.
func (g *gathering) stickPlan(p *piece) StickPlan {
	from, to := p.reach.From, p.reach.To
	if n := len(p.bearings); n > 0 {
		if cut, ok := g.end(p, &p.bearings[0], from, 1); ok {
			from = cut
		}
		if cut, ok := g.end(p, &p.bearings[n-1], to, -1); ok {
			to = cut
		}
	}
	stick := StickPlan{Line: geometry.Segment{
		A: g.l.point(geometry.Point{X: p.x, Y: from}),
		B: g.l.point(geometry.Point{X: p.x, Y: to}),
	}}
	for i := range p.bearings {
		b := &p.bearings[i]
		support := SupportPlan{Name: b.name, At: b.at, Center: g.l.point(geometry.Point{X: p.x, Y: b.center})}
		if b.missing == "" {
			support.Half = b.half
		}
		stick.Supports = append(stick.Supports, support)
	}
	return stick
}

func holePlan(o *model.FrameOpening) HolePlan {
	hole := HolePlan{At: o.At, Ring: openingRing(o)}
	if o.Headers != nil {
		hole.Headers, _ = breadth(o.Headers, "")
	}
	if o.Trimmers != nil {
		hole.Trimmers, _ = breadth(o.Trimmers, "")
	}
	return hole
}
