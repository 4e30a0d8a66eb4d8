package draw

import (
	"strconv"

	"plumbrule/checker/draw/paper"
	"plumbrule/checker/facts"
	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// section cuts a platform out from the house and looks to the right: the house
// stands on the left.
func (d *drafter) section(s pencil, i int) *figure {
	p := &planner{drafter: d, f: d.figure(s, "Section "+cutName(i)+" of "+d.platformName(i)+", out from the house"), plan: &d.out.Platforms[i], p: &d.deck.Platforms[i], i: i}
	f, l := p.f, p.levels()
	x := p.cutAt()
	parts := p.plan.Outline.Scan(geometry.X, x)
	if len(parts) == 0 {
		return f
	}
	p.sectionGround(x, parts)
	p.sectionHouse(x, parts[0])
	for _, part := range parts {
		if l.boardOK {
			f.draw(paper.Rectangle(p.at(part.From, 0), p.at(part.To, l.boards), paper.Thin, paper.White))
		}
		f.line(p.at(part.From, 0), p.at(part.To, 0), paper.Bold)
	}
	heights := p.sectionPosts(x, l)
	p.sectionJoists(x, l)
	p.sectionBeams(x, l)
	p.sectionLedger(x, l)
	front := parts[len(parts)-1].To
	guarded := p.sectionGuard(x, front)
	f.anchor(p.p.At, p.at(front/2, 0))
	f.fence()
	p.sectionChains(x, front, guarded)
	for _, h := range heights {
		f.note(h.spot, "post "+f.value(h.height)+" "+f.say("to beam")+" "+h.beam)
	}
	f.remark("Section: cut " + f.value(x) + " along the house, looking to the right.")
	f.settle()
	return f
}

// cutName is what the section of a platform is called: A-A, B-B.
func cutName(platform int) string {
	letter := cutLetter(platform)
	return letter + "-" + letter
}

func cutLetter(platform int) string {
	if platform < 26 {
		return string(rune('A' + platform))
	}
	return "S" + strconv.Itoa(platform+1)
}

// cutMarks shows on the framing plan where the section is cut, above and below
// the platform and close to it, so that dimensions stand further out.
func (p *planner) cutMarks() {
	f, x := p.f, p.cutAt()
	parts := p.plan.Outline.Scan(geometry.X, x)
	if len(parts) == 0 {
		return
	}
	const near, far = 4.0, 13.0
	top := f.at(geometry.Point{X: x, Y: parts[0].From}).Plus(0, -wallDeep)
	low := f.at(geometry.Point{X: x, Y: parts[len(parts)-1].To})
	for _, mark := range [][2]paper.Point{{top.Plus(0, -near), top.Plus(0, -far)}, {low.Plus(0, near), low.Plus(0, far)}} {
		f.draw(cutMark(mark[0], mark[1])...)
		letter := f.fonts.BoldText(cutLetter(p.i), normal)
		letter.At, letter.Clear = mark[1].Plus(16, 0.36*normal), true
		f.write(letter)
	}
	f.use(symbolSection)
}

// cutAt is where along the house the section is cut: beside the joist that
// spans furthest, or in the middle where joists run along the house.
func (p *planner) cutAt() measure.Length {
	if s := p.governing(); s != nil && !p.plan.Joists.AlongHouse {
		return s.Line.A.X
	}
	return center(p.plan.Outline).X
}

// sectionHouse draws the face of the house where the cut starts at it.
func (p *planner) sectionHouse(x measure.Length, first geometry.Interval) {
	f := p.f
	for i, edge := range p.plan.Edges {
		y, ok := p.plan.Outline.Edge(i).CrossX(x)
		if !edge.House || !ok || y != first.From {
			continue
		}
		if words(p.p.Support) != "ledger" && p.p.Ledger == nil && p.deck.House == nil {
			return
		}
		const up = 30 * measure.Inch
		top, low := p.at(y, -up), p.at(y, p.lowest())
		f.draw(wallBand(low, top, vector{-1, 0})...)
		f.draw(breakMark(top.Plus(-4, 0), vector{0, 1}, 5), breakMark(low.Plus(-4, 0), vector{0, 1}, 5))
		f.use(symbolWall)
		f.use(symbolBreak)
		f.anchor("/house", p.at(y, -up/2))
	}
}

// lowest is how far down the house is drawn: to the ground at the house where
// that is known, else to below the frame.
func (p *planner) lowest() measure.Length {
	if g := p.groundAt(p.plan.Outline[0]); g != nil {
		return *g
	}
	return 36 * measure.Inch
}

// sectionLedger draws the ledger cut through, its top in line with the joists.
func (p *planner) sectionLedger(x measure.Length, l levels) {
	f, ledger := p.f, p.p.Ledger
	if ledger == nil || ledger.Dimensions() == nil || !l.boardOK || p.plan.Ledger == nil {
		return
	}
	for _, line := range p.plan.Ledger.Lines {
		y, ok := line.CrossX(x)
		if !ok {
			continue
		}
		d := ledger.Dimensions().V
		f.draw(paper.Rectangle(p.at(y, l.boards), p.at(y+d.Thickness, l.boards+d.Depth), paper.Cut, paper.Shade))
		f.use(symbolCut)
		spot := p.at(y+d.Thickness/2, l.boards+d.Depth/2)
		f.anchor(ledger.At, spot)
		f.note(spot, spaced(f.say("ledger"), p.size(&ledger.Member)))
		f.remark(f.say("The top of the ledger is drawn in line with the tops of the joists."))
	}
}

// sectionJoists draws the joist beside the cut, or all that it cuts.
func (p *planner) sectionJoists(x measure.Length, l levels) {
	f, j := p.f, p.plan.Joists
	if j == nil || j.Missing != "" || !l.joistOK {
		if j != nil && j.Missing != "" {
			f.miss(j.Missing)
		}
		return
	}
	f.anchor(j.At, p.at(center(p.plan.Outline).Y, (l.boards+l.joists)/2))
	for i := range j.Sticks {
		s := &j.Sticks[i]
		if j.AlongHouse {
			if s.Line.A.X <= x && x <= s.Line.B.X {
				y := s.Line.A.Y
				f.draw(paper.Rectangle(p.at(y-j.Thickness/2, l.boards), p.at(y+j.Thickness/2, l.joists), paper.Edge, paper.Shade))
				f.use(symbolCut)
			}
			continue
		}
		if s.Line.A.X == x {
			f.draw(paper.Rectangle(p.at(s.Line.A.Y, l.boards), p.at(s.Line.B.Y, l.joists), paper.Edge, paper.White))
			p.sectionRim(s, l)
			f.note(p.at(s.Line.A.Y+s.Line.Length()*2/5, (l.boards+l.joists)/2), spaced("joists", p.size(&p.p.Joists.Member)))
		}
	}
}

// sectionRim draws the rim that closes a joist's outer end.
func (p *planner) sectionRim(s *facts.StickPlan, l levels) {
	rim := p.p.RimJoist
	if rim == nil || rim.Dimensions() == nil || p.plan.Frame == nil {
		return
	}
	end, d := s.Line.B.Y, rim.Dimensions().V
	for _, part := range p.plan.Frame.Scan(geometry.X, s.Line.A.X) {
		if gap := part.To - end; gap > 0 && gap <= d.Thickness+measure.Inch/16 {
			p.f.draw(paper.Rectangle(p.at(end, l.boards), p.at(part.To, l.boards+d.Depth), paper.Cut, paper.Shade))
			p.f.use(symbolCut)
			p.f.anchor(rim.At, p.at(part.To, l.boards+d.Depth/2))
		}
	}
}

// sectionBeams draws the beams that the cut meets.
func (p *planner) sectionBeams(x measure.Length, l levels) {
	f := p.f
	for i := range p.plan.Beams {
		b := &p.plan.Beams[i]
		top, under, ok := p.beamLevels(b, l)
		for _, line := range b.Lines {
			y, meets := line.CrossX(x)
			if !meets || !ok {
				continue
			}
			if b.Width == 0 {
				f.miss(f.say("plies of beam") + " " + b.Mark)
				f.line(p.at(y, top), p.at(y, under), paper.Open)
				continue
			}
			f.draw(paper.Rectangle(p.at(y-b.Width/2, top), p.at(y+b.Width/2, under), paper.Cut, paper.Shade))
			if m := b.Beam; m.Plies != nil && m.Plies.V < 8 {
				for n := measure.Length(1); n < measure.Length(m.Plies.V); n++ {
					ply := y - b.Width/2 + b.Width*n/measure.Length(m.Plies.V)
					f.line(p.at(ply, top), p.at(ply, under), paper.Thin)
				}
			}
			f.use(symbolCut)
			f.anchor(b.Beam.At, p.at(y, (top+under)/2))
			f.note(p.at(y+b.Width/3, (top+under)/2), p.beamWords(b)...)
		}
	}
}

// sectionPosts draws, for each beam that the cut meets, the nearest post beyond
// the cut, or before it where there is none beyond.
func (p *planner) sectionPosts(x measure.Length, l levels) []tall {
	var heights []tall
	for i := range p.plan.Beams {
		b := &p.plan.Beams[i]
		meets := false
		for _, line := range b.Lines {
			_, ok := line.CrossX(x)
			meets = meets || ok
		}
		var best *facts.SpotPlan
		for k := range b.Posts {
			s := &b.Posts[k]
			switch {
			case best == nil:
				best = s
			case s.Place.X >= x && (best.Place.X < x || s.Place.X < best.Place.X):
				best = s
			case s.Place.X < x && best.Place.X < x && s.Place.X > best.Place.X:
				best = s
			}
		}
		if !meets || best == nil {
			continue
		}
		if h := p.upright(b, best, best.Place.Y, l); h != nil {
			_, under, _ := p.beamLevels(b, l)
			heights = append(heights, tall{p.at(best.Place.Y, under+h.Value/2), h.Value, b.Mark})
		}
	}
	return heights
}

// sectionGround draws the ground along the cut.
func (p *planner) sectionGround(x measure.Length, parts []geometry.Interval) {
	f := p.f
	near := geometry.Point{X: x, Y: parts[0].From}
	far := geometry.Point{X: x, Y: parts[len(parts)-1].To}
	drop := p.groundBelow(far, p.edgeAt(far))
	if a := p.plan.GroundOnSlope(near); a != nil && drop != nil {
		p.groundLine([]paper.Point{p.at(near.Y, a.Value), p.at(far.Y, *drop)}, true)
		return
	}
	h := p.oneHeight()
	switch {
	case h != nil && drop != nil:
		// Known at the house, though at its left end, and below the edge.
		p.groundLine([]paper.Point{p.at(near.Y, *h), p.at(far.Y, *drop)}, *h == *drop)
		if *h != *drop {
			f.remark("Dotted ground: known at both ends; how it runs between them is not shown.")
		}
	case drop != nil:
		p.groundLine([]paper.Point{p.at(near.Y, *drop), p.at(far.Y, *drop)}, false)
		f.miss("ground at the house")
	case h != nil:
		p.groundLine([]paper.Point{p.at(near.Y, *h), p.at(far.Y, *h)}, false)
		f.miss("ground below the front edge")
	default:
		f.miss("platforms[].surface_above_grade")
	}
}

// edgeAt is the name of the edge on which a place lies.
func (p *planner) edgeAt(place geometry.Point) string {
	for i, edge := range p.plan.Edges {
		if y, ok := p.plan.Outline.Edge(i).CrossX(place.X); ok && y == place.Y {
			return edge.Name
		}
	}
	return ""
}

// sectionGuard draws the guard on the edge where the cut ends, and gives it.
func (p *planner) sectionGuard(x, front measure.Length) *model.Guard {
	for i, edge := range p.plan.Edges {
		y, ok := p.plan.Outline.Edge(i).CrossX(x)
		described, found := p.p.Edges.Get(edge.Name)
		if !ok || y != front || !found || described.Guard == nil {
			continue
		}
		for k := range p.deck.Guards {
			g := &p.deck.Guards[k]
			if words(g.Mark) != described.Guard.V || g.Height == nil {
				continue
			}
			top := p.at(front, -g.Height.V)
			p.f.line(p.at(front, 0), top, paper.Bold)
			p.f.line(top.Plus(-4, 0), top.Plus(4, 0), paper.Bold)
			p.f.anchor(g.At, p.at(front, -g.Height.V/2))
			return g
		}
	}
	return nil
}

// sectionChains dimensions what the cut shows.
func (p *planner) sectionChains(x, front measure.Length, g *model.Guard) {
	f := p.f
	var out []stretch
	from := p.plan.Outline.Bounds().Min.Y
	for _, b := range p.outBeams() {
		if y, ok := b.Lines[0].CrossX(x); ok && y > from {
			out = append(out, stretch{from: p.at(from, 0), to: p.at(y, 0), value: y - from, fromCenter: len(out) > 0, toCenter: true})
			from = y
		}
	}
	if p.plan.Frame != nil {
		if parts := p.plan.Frame.Scan(geometry.X, x); len(parts) > 0 {
			if end := parts[len(parts)-1].To; end-from > measure.Inch/4 {
				out = append(out, stretch{from: p.at(from, 0), to: p.at(end, 0), value: end - from, fromCenter: len(out) > 0})
			}
		}
	}
	if len(out) > 0 {
		f.chain(below, out)
	}
	var high []stretch
	if g != nil {
		high = append(high, stretch{from: p.at(front, -g.Height.V), to: p.at(front, 0), value: g.Height.V, after: f.say("guard"), optional: true})
	}
	far := geometry.Point{X: x, Y: front}
	down := p.groundBelow(far, p.edgeAt(far))
	if down != nil {
		high = append(high, stretch{from: p.at(front, 0), to: p.at(front, *down), value: *down})
	}
	if len(high) > 0 {
		f.chain(atRight, high)
	}
}
