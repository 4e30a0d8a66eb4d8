package draw

import (
	"fmt"
	"math"

	"plumbrule/checker/draw/paper"
	"plumbrule/checker/facts"
	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
	"plumbrule/checker/source"
)

// planner draws the plans of one platform.
type planner struct {
	*drafter
	f    *figure
	plan *facts.PlatformPlan
	p    *model.Platform
	i    int
}

// surfacePlan is the plan of the walking surface: outline, boards, guards,
// stairs, doors and windows.
func (d *drafter) surfacePlan(s pencil, i int) *figure {
	p := &planner{drafter: d, f: d.figure(s, "Plan of "+d.platformName(i)), plan: &d.out.Platforms[i], p: &d.deck.Platforms[i], i: i}
	f, ring := p.f, p.plan.Outline
	f.draw(paper.Path{Points: f.all(ring), Closed: true, Stroke: paper.Cut})
	f.use(symbolOutline)
	p.house()
	p.guards()
	p.stairs()
	for _, hole := range p.plan.Holes {
		if len(hole.Ring) < 3 {
			f.miss("corners of the opening in the frame")
			continue
		}
		f.draw(crossed(f.all(hole.Ring))...)
		f.kept = append(f.kept, extentBox(f.all(hole.Ring)))
		f.use(symbolHole)
		f.anchor(hole.At, f.at(center(hole.Ring)))
	}
	p.boards()
	p.loads()
	p.gradePoints()
	f.fence()
	p.openingChain()
	p.outlineChains()
	p.edgeWords()
	p.surfaceWords()
	p.surfaceAnchors()
	f.settle()
	return f
}

// house draws the wall along the edges against the house, with its doors and
// windows, or the side where the house is, if no wall is described.
func (p *planner) house() {
	f := p.f
	for i, edge := range p.plan.Edges {
		if !edge.House {
			continue
		}
		e := p.plan.Outline.Edge(i)
		a, b, out := f.at(e.A), f.at(e.B), outward(e)
		if text := words(p.p.Support); text != "ledger" && p.p.Ledger == nil && p.deck.House == nil {
			f.line(moved(a, out, 6), moved(b, out, 6), paper.Center)
			f.along(moved(a, out, 6), moved(b, out, 6), 3, "side towards the house; the house is not shown")
			continue
		}
		f.use(symbolWall)
		p.wall(e, out)
		f.anchor("/house", middle(a, b))
	}
}

// wall draws one stretch of the house's face with its openings.
func (p *planner) wall(e geometry.Segment, out vector) {
	f := p.f
	a, b := f.at(e.A), f.at(e.B)
	from := a
	for _, o := range p.plan.Openings {
		if o.Line.A.Y != e.A.Y || e.A.Y != e.B.Y || o.Line.A == o.Line.B {
			continue
		}
		start, end := f.at(o.Line.A), f.at(o.Line.B)
		f.draw(wallBand(from, start, out)...)
		const deep = wallDeep
		for _, jamb := range []paper.Point{start, end} {
			f.line(jamb, moved(jamb, out, deep), paper.Bold)
		}
		if o.Kind == "window" {
			f.line(moved(start, out, deep*0.4), moved(end, out, deep*0.4), paper.Thin)
			f.line(moved(start, out, deep*0.6), moved(end, out, deep*0.6), paper.Thin)
		}
		f.line(start, end, paper.Thin)
		from = end
	}
	if v, w := towards(a, b), towards(from, b); v.x*w.x+v.y*w.y > 0 { // a door may reach past the deck
		f.draw(wallBand(from, b, out)...)
	}
	f.keepOff(moved(a, out, 5), moved(b, out, 5)) // the hatch
	p.houseWord(a, b, out)
	for _, o := range p.plan.Openings {
		f.anchor(o.At, f.at(middleOf(o.Line)))
		f.note(moved(f.at(middleOf(o.Line)), out, 4), p.openingWords(&o)...)
	}
}

// houseWord says behind the wall which side the house is on.
func (p *planner) houseWord(a, b paper.Point, out vector) {
	f := p.f
	f.sooner(func() {
		if f.along(moved(a, out, wallDeep), moved(b, out, wallDeep), 2.5, "house") {
			f.kept = append(f.kept, f.taken[len(f.taken)-1].Grown(7)) // it is no part of a note
		}
	})
}

func (p *planner) openingWords(o *facts.OpeningPlan) []string {
	lines := []string{spaced(o.Kind, o.Mark)}
	if o.Line.A == o.Line.B {
		p.f.miss(spaced("clear width of", o.Kind, o.Mark))
	}
	for i := range p.deck.House.Openings {
		d := &p.deck.House.Openings[i]
		if d.At != o.At {
			continue
		}
		if d.ThresholdAboveDecking != nil {
			lines = append(lines, "threshold "+p.f.value(d.ThresholdAboveDecking.V)+" above the decking")
		}
		if d.SwingsOverDeck != nil && d.SwingsOverDeck.V {
			lines = append(lines, "swings over the deck")
		}
		if d.Egress != nil && d.Egress.V {
			lines = append(lines, "escape opening")
		}
	}
	return lines
}

// guards draws a comb along each edge that a guard is named for, open where a
// stair leaves.
func (p *planner) guards() {
	f := p.f
	for i, edge := range p.plan.Edges {
		described, ok := p.p.Edges.Get(edge.Name)
		if !ok || described.Guard == nil || described.Guard.V == model.NoGuard {
			continue
		}
		f.use(symbolGuard)
		e := p.plan.Outline.Edge(i)
		out := outward(e)
		in := vector{-out.x, -out.y}
		from, to := measure.Length(0), e.Length()
		if described.GuardFrom != nil {
			from = described.GuardFrom.V
		}
		if described.GuardTo != nil {
			to = described.GuardTo.V
		}
		for _, gap := range p.gaps(i) {
			p.comb(e, from, min(gap.From, to), in)
			from = max(from, gap.To)
		}
		p.comb(e, from, to, in)
		for k := range p.deck.Guards {
			if g := &p.deck.Guards[k]; words(g.Mark) == described.Guard.V {
				f.anchor(g.At, moved(f.at(e.At(e.Length()*2/3)), in, 4))
			}
		}
	}
}

func (p *planner) comb(e geometry.Segment, from, to measure.Length, in vector) {
	if from >= to {
		return
	}
	a, b := p.f.at(e.At(from)), p.f.at(e.At(to))
	p.f.draw(comb(moved(a, in, 4), moved(b, in, 4), in)...)
}

// gaps are the stretches of an edge that stairs take up, in order.
func (p *planner) gaps(edge int) []geometry.Interval {
	var list []geometry.Interval
	for _, s := range p.out.Stairs {
		if s.Platform == p.i && s.Edge == edge && s.Top != nil {
			e := p.plan.Outline.Edge(edge)
			list = append(list, geometry.Interval{From: e.Along(s.Top.A), To: e.Along(s.Top.B)})
		}
	}
	return sorted(list)
}

// boards draws a round sample of the boards where there is most room.
func (p *planner) boards() {
	f, d := p.f, p.p.Decking
	if d == nil {
		f.miss("platforms[].decking")
		return
	}
	c, room := deepest(p.plan.Outline, p.avoid())
	spot := f.at(c)
	f.anchor(d.At, spot)
	if p.p.Joists == nil || p.p.Joists.Direction == nil || d.BoardAngle == nil {
		f.miss("which way the boards run")
		return
	}
	turn := 0.0
	if p.p.Joists.Direction.V == "along_house" {
		turn = 90
	}
	turn += float64(d.BoardAngle.V) / 1e6
	f.use(symbolBoards)
	radius := min(f.on(room)*0.55, f.on(30*measure.Inch))
	gap := 6.0
	if d.BoardWidth != nil && d.Gap != nil {
		gap = f.on(d.BoardWidth.V + d.Gap.V)
	} else {
		f.miss("width of the boards and their gap")
	}
	circle := make([]paper.Point, 48)
	for i := range circle {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / 48)
		circle[i] = spot.Plus(radius*cos, radius*sin)
	}
	f.draw(paper.Hatch{Area: circle, Turn: turn, Gap: gap, Through: spot, Stroke: paper.Thin}, paper.Circle(spot, radius, paper.Faint, paper.NoFill))
	f.kept = append(f.kept, paper.Upright(spot.Plus(-radius, -radius), spot.Plus(radius, radius)))
	lines := []string{spaced(words(d.Nominal), words(d.Material), "boards")}
	if d.BoardWidth != nil && d.Gap != nil {
		lines = append(lines, f.value(d.BoardWidth.V)+" wide, gaps "+f.value(d.Gap.V))
	}
	if a := d.BoardAngle.V; a == 0 {
		lines = append(lines, "square across the joists")
	} else {
		lines = append(lines, fmt.Sprintf("%g degrees off square across the joists", float64(a)/1e6))
		f.remark("Boards at an angle: to which hand they slant is not shown.")
	}
	if d.PictureFrame != nil {
		lines = append(lines, "border of boards along the edges")
	}
	f.noteBeside(spot, radius, lines...)
}

// avoid lists what the sample of boards keeps off.
func (p *planner) avoid() []geometry.Point {
	var list []geometry.Point
	for _, h := range p.plan.Holes {
		list = append(list, center(h.Ring))
	}
	for i := range p.p.Loads {
		if at := p.p.Loads[i].Place; at != nil {
			list = append(list, geometry.Point{X: at.X, Y: at.Y})
		}
	}
	return list
}

// loads draws heavy things at their place, their size being no part of the
// description.
func (p *planner) loads() {
	f := p.f
	for i := range p.p.Loads {
		l := &p.p.Loads[i]
		what := words(l.Kind)
		if l.Weight != nil {
			pounds, unit := l.Weight.V.In(f.system)
			what += fmt.Sprintf(", %.0f %s", pounds, unit)
		}
		if l.Place == nil {
			f.miss("place of the " + words(l.Kind))
			continue
		}
		c := f.at(geometry.Point{X: l.Place.X, Y: l.Place.Y})
		f.draw(paper.Circle(c, 9, paper.Open, paper.NoFill), paper.Line(c.Plus(-4, -4), c.Plus(4, 4), paper.Edge), paper.Line(c.Plus(-4, 4), c.Plus(4, -4), paper.Edge))
		f.use(symbolOpen)
		f.anchor(l.At, c)
		f.note(c, what)
	}
}

// gradePoints marks where the ground is known.
func (p *planner) gradePoints() {
	f := p.f
	for i := range p.p.GradeAt {
		g := &p.p.GradeAt[i]
		if g.Place == nil || g.BelowSurface == nil {
			continue
		}
		c := f.at(geometry.Point{X: g.Place.X, Y: g.Place.Y})
		f.draw(spot(c)...)
		f.use(symbolKnownGrade)
		f.anchor(g.At, c)
		f.noteBeside(c, 5, "ground "+f.value(g.BelowSurface.V)+" below")
	}
}

// surfaceWords names the surface and its height.
func (p *planner) surfaceWords() {
	f := p.f
	c, _ := deepest(p.plan.Outline, nil)
	lines := []string{capital(p.platformName(p.i))}
	if h := p.p.SurfaceAboveGrade; h != nil {
		lines = append(lines, "surface "+f.value(h.V)+" "+f.say("above grade"))
	} else {
		f.miss("platforms[].surface_above_grade")
	}
	f.label(f.at(c), normal, lines...)
}

// surfaceAnchors gives spots to what has no symbol of its own.
func (p *planner) surfaceAnchors() {
	f := p.f
	c, _ := deepest(p.plan.Outline, nil)
	f.anchor(p.p.At, f.at(c))
	for i, edge := range p.plan.Edges {
		e := p.plan.Outline.Edge(i)
		spot := f.at(e.At(e.Length() / 3))
		if _, described := p.p.Edges.Get(edge.Name); described {
			f.anchor(edge.At, spot)
		} else if !edge.House { // what it lacks belongs on it
			f.anchor(p.p.At+"/edges/"+source.Escape(edge.Name), spot)
		}
	}
	f.anchor(p.p.Outline.At, f.at(p.plan.Outline[len(p.plan.Outline)/2]))
	if w := words(p.p.MeasuredTo); w != "" {
		f.remark("The outline is the edge of the " + w + ".")
	} else {
		f.miss("what the outline is measured to")
	}
}
