package facts

import (
	"slices"

	"plumbrule/checker/geometry"
	"plumbrule/checker/model"
)

// setOut writes down where everything lies.
func (w *worked) setOut() SettingOut {
	var out SettingOut
	for _, fr := range w.frames {
		out.Platforms = append(out.Platforms, fr.setOut())
	}
	for _, st := range w.stairs {
		out.Stairs = append(out.Stairs, st.setOut(w.surfaces))
	}
	for i := range w.fronts {
		if opening, ok := w.fronts[i].setOut(); ok {
			in := &out.Platforms[slices.Index(w.surfaces, w.fronts[i].surface)]
			in.Openings = append(in.Openings, opening)
		}
	}
	return out
}

func (fr *frame) setOut() PlatformPlan {
	s := fr.surface
	p := PlatformPlan{
		Platform: s.p, Label: s.label, Outline: s.ring, Closure: s.closure, FrameMissing: s.frameMissing,
		Past: fr.boards.past, Decked: fr.boards.depth, surface: s,
	}
	for _, name := range s.names {
		p.Edges = append(p.Edges, s.edgePlan(name))
	}
	if s.ring == nil {
		return p
	}
	if s.frameMissing == "" {
		p.Frame = s.frame
		for _, name := range s.frameNames() {
			p.FrameEdges = append(p.FrameEdges, s.edgePlan(name))
		}
	}
	for i := range fr.beams {
		p.Beams = append(p.Beams, fr.beamPlan(&fr.beams[i]))
	}
	for i := range s.p.Beams {
		if c := fr.carrierOf(i); c.unplaced != "" {
			p.Unplaced = append(p.Unplaced, c.name)
		}
	}
	p.Ledger = s.ledgerPlan()
	if s.p.Joists != nil {
		p.Joists = fr.joistPlan()
		for i := range s.p.Joists.Openings {
			p.Holes = append(p.Holes, holePlan(&s.p.Joists.Openings[i]))
		}
	}
	return p
}

// edgePlan leads to the edge's own entry, or to the outline where it has none.
func (s *surface) edgePlan(name string) EdgePlan {
	edge := EdgePlan{At: s.p.Outline.At, Name: name, House: isHouse(name)}
	if described, ok := s.p.Edges.Get(name); ok {
		edge.At = described.At
	}
	return edge
}

func (s *surface) beamPlan(c *carrier) BeamPlan {
	b := BeamPlan{Beam: c.beam, Mark: c.name, Flush: c.flush, Base: c.base, Lines: c.drawn}
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

// joistPlan writes the joists down as sticks.
func (fr *frame) joistPlan() *JoistPlan {
	l := &fr.layout
	plan := &JoistPlan{At: fr.p.Joists.At, AlongHouse: l.turned, Thickness: l.thickness, Missing: l.missing}
	if plan.Missing == "" && fr.frameMissing != "" {
		plan.Missing = fr.frameMissing
	}
	if plan.Missing != "" {
		return plan
	}
	if n := len(l.marks); n > 1 && words(fr.p.Joists.Layout) == "equal" {
		plan.Bays = geometry.Pitch{Over: l.marks[n-1], Parts: int64(n - 1)}
	}
	for i := range fr.pieces {
		plan.Sticks = append(plan.Sticks, fr.pieces[i].plan(l))
	}
	return plan
}

// plan turns a piece back from the layout's plan to the one on paper.
func (p *piece) plan(l *layout) StickPlan {
	stick := StickPlan{Line: p.along(l, p.stick), IsCut: p.isCut, Reach: p.along(l, p.reach)}
	stick.From, stick.To = p.endNames()
	for i := range p.bearings {
		b := &p.bearings[i]
		support := SupportPlan{Name: b.name, At: b.at, Center: l.point(geometry.Point{X: p.x, Y: b.center}), Ends: b.ends}
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
