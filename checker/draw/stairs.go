package draw

import (
	"fmt"

	"plumbrule/checker/draw/paper"
	"plumbrule/checker/facts"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// climber draws the section of one stair: across is out from the edge that it
// leaves, down from the surface that it leaves.
type climber struct {
	*planner // of the platform that it leaves; its plan is nil where that is not shown
	k        int
	s        *model.Stair
	label    string
}

// step is one riser of the section: the edge of the tread above it and how far
// down it reaches.
type step struct {
	across     measure.Length // of the nosing above
	top, foot  measure.Length
	tread      measure.Length // depth of the tread at its foot; 0 for a landing
	pointer    string
	treadPlace string
}

// stairSection cuts through one stair and looks at it from the side.
func (d *drafter) stairSection(s pencil, k int) *figure {
	plan := &d.out.Stairs[k]
	c := &climber{planner: &planner{drafter: d, f: d.figure(s, "Section of stair "+plan.Label), i: plan.Platform}, k: k, s: &d.deck.Stairs[k], label: plan.Label}
	if plan.Platform >= 0 {
		c.plan, c.p = &d.out.Platforms[plan.Platform], &d.deck.Platforms[plan.Platform]
	}
	f := c.f
	c.top()
	across, down := measure.Length(0), measure.Length(0)
	var runs, treads []stretch
	drawn := false
	for i, flight := range d.flightsOf(plan.Label) {
		steps, ok := c.steps(i, flight, across, down)
		if !ok {
			break
		}
		drawn = true
		last := steps[len(steps)-1]
		c.flight(i, flight, steps, across)
		run := last.across - across
		treads = append(treads, c.treadChain(steps, flight)...)
		if consistent(flight) {
			runs = append(runs, stretch{from: c.at(across, down), to: c.at(last.across, last.foot), value: run, after: c.treadWords(steps, flight), stub: stub})
		}
		across, down = last.across, last.foot
		depth, more := c.landingBelow(flight, across, down)
		if depth > 0 {
			runs = append(runs, stretch{from: c.at(across, down), to: c.at(across+depth, down), value: depth, after: "landing", stub: stub})
		}
		if !more {
			break
		}
		across += depth
	}
	c.ground(across, down, drawn)
	f.anchor(c.s.At, c.at(across/2, down/2))
	f.fence()
	f.chain(below, treads)
	f.chain(below, runs)
	c.riseChain(across, down)
	c.remarks()
	f.settle()
	return f
}

// top draws the end of the platform that the stair leaves.
func (c *climber) top() {
	f := c.f
	const back = 30 * measure.Inch
	f.line(c.at(-back, 0), c.at(0, 0), paper.Cut)
	f.draw(breakMark(c.at(-back, 6*measure.Inch), vector{1, 0}, f.on(8*measure.Inch)))
	f.use(symbolBreak)
	if c.plan == nil {
		f.miss("platform that the stair leaves")
		return
	}
	f.anchor(c.s.At+"/from", c.at(-back/4, 0))
	l := c.levels()
	if l.boardOK {
		f.draw(paper.Rectangle(c.at(-back, 0), c.at(0, l.boards), paper.Edge, paper.Shade))
	}
	if l.joistOK {
		f.draw(paper.Rectangle(c.at(-back, l.boards), c.at(-c.nosing(), l.joists), paper.Thin, paper.NoFill))
	}
	f.label(c.at(-back*3/4, 0).Plus(0, -9), normal, c.platformName(c.i))
}

// nosing is how far treads reach over the risers; 0 where that is not shown.
func (c *climber) nosing() measure.Length {
	if c.s.Nosing == nil {
		return 0
	}
	return c.s.Nosing.V
}

// steps lays the risers of a flight out from where it starts. ok is false where
// the design does not show what they follow from.
func (c *climber) steps(i int, flight *facts.Flight, across, down measure.Length) ([]step, bool) {
	n := len(flight.RiserHeights)
	depths := c.measuredTreads(i)
	switch {
	case n == 0:
		c.f.miss("rise and risers of stair " + c.label)
		return nil, false
	case flight.TreadDepth == nil && len(depths) == 0 && n > 1:
		c.f.miss(c.f.say("tread depth") + " of stair " + c.label)
		return nil, false
	}
	treads := n - 1
	if flight.TreadsExpected != nil {
		treads = int(flight.TreadsExpected.Value)
	}
	depth := func(fromTop int) measure.Length {
		if k := treads - 1 - fromTop; len(depths) == treads && k >= 0 {
			return depths[k].V
		}
		if flight.TreadDepth == nil {
			return 0
		}
		return flight.TreadDepth.Value
	}
	var list []step
	used := 0
	if treads == n { // the top tread lies level with the decking
		across += depth(0)
		used = 1
	}
	risers := c.measuredRisers(i)
	for k := range n {
		h := flight.RiserHeights[n-1-k]
		s := step{across: across, top: down, foot: down + h}
		if len(risers) == n {
			s.pointer = risers[n-1-k].At
		}
		if used < treads && k < n-1 {
			s.tread = depth(used)
			if fromBottom := treads - 1 - used; len(depths) == treads {
				s.treadPlace = depths[fromBottom].At
			}
			used++
		}
		list = append(list, s)
		across, down = across+s.tread, s.foot
	}
	return list, true
}

func (c *climber) measuredRisers(i int) []*model.Length {
	if i < len(c.s.Flights) {
		return c.s.Flights[i].MeasuredRisers
	}
	return c.s.MeasuredRisers
}

func (c *climber) measuredTreads(i int) []*model.Length {
	if i < len(c.s.Flights) {
		return c.s.Flights[i].MeasuredTreads
	}
	return c.s.MeasuredTreads
}

// consistent reports whether the treads stated are those that the risers ask for.
func consistent(flight *facts.Flight) bool {
	return flight.Treads == nil || flight.TreadsExpected == nil || flight.Risers == nil || flight.Treads.Value == flight.TreadsExpected.Value
}

// landingBelow draws the landing at the foot of a flight and gives its depth;
// more is true where another flight follows and can be drawn.
func (c *climber) landingBelow(flight *facts.Flight, across, down measure.Length) (depth measure.Length, more bool) {
	f := c.f
	l := c.landing(c.k, flight)
	between := flight.N < flight.Of
	name := "landing_bottom"
	if between {
		name = "landing_between"
	}
	f.anchor(c.s.At+"/"+name, c.at(across, down).Plus(14, 0))
	if l == nil || l.Depth == nil {
		f.miss("landing at the foot of stair " + c.label)
		f.line(c.at(across, down), c.at(across, down).Plus(40, 0), paper.Open)
		f.use(symbolOpen)
		return 0, false
	}
	f.anchor(l.At[0], c.at(across+l.Depth.Value/2, down))
	f.line(c.at(across, down), c.at(across+l.Depth.Value, down), paper.Cut)
	if b := c.s.LandingBottom; b != nil && !between {
		var parts []string
		if b.SlopeOut != nil || b.SlopeAlong != nil {
			parts = append(parts, "landing: "+joined(slopes(b)))
		}
		if b.FinishToCome != nil && b.FinishToCome.V > 0 {
			parts = append(parts, f.value(b.FinishToCome.V)+" of finish to come")
		}
		f.note(c.at(across+l.Depth.Value*2/3, down), parts...)
	}
	return l.Depth.Value, between
}

// slopes says how a landing falls.
func slopes(l *model.Landing) []string {
	var parts []string
	for _, fall := range []struct {
		slope *model.Slope
		way   string
	}{{l.SlopeOut, "out"}, {l.SlopeAlong, "along the house"}} {
		switch {
		case fall.slope == nil:
		case fall.slope.V.Rise == 0:
			parts = append(parts, "level "+fall.way)
		default:
			parts = append(parts, fmt.Sprintf("falls 1 in %g %s", float64(fall.slope.V.Run)/float64(fall.slope.V.Rise), fall.way))
		}
	}
	return parts
}

// ground draws the ground from below the edge to where the stair lands.
func (c *climber) ground(across, down measure.Length, drawn bool) {
	f := c.f
	to := words(c.s.To)
	if to != "" && to != model.ToGrade {
		f.remark("The stair lands on platform " + to + ".")
		return
	}
	var edge *model.Edge
	if c.plan != nil && c.out.Stairs[c.k].Edge >= 0 {
		if e, ok := c.p.Edges.Get(c.plan.Edges[c.out.Stairs[c.k].Edge].Name); ok {
			edge = &e
		}
	}
	if !drawn {
		if edge != nil && edge.Drop != nil {
			c.groundLine([]paper.Point{c.at(-12*measure.Inch, edge.Drop.V), c.at(0, edge.Drop.V)}, true)
		}
		return
	}
	foot := c.s.GradeAtFoot
	if foot != nil && foot.FromEdge != nil && foot.BelowSurface != nil {
		at := c.at(foot.FromEdge.V, foot.BelowSurface.V)
		f.draw(spot(at)...)
		f.use(symbolKnownGrade)
		f.anchor(foot.At, at)
		f.noteBeside(at, 5, "ground "+f.value(foot.BelowSurface.V)+" below the surface,", f.value(foot.FromEdge.V)+" from the edge")
	}
	if edge == nil || edge.Drop == nil {
		f.miss("ground below the edge that stair " + c.label + " leaves")
		return
	}
	level := near(edge.Drop.V, down)
	c.groundLine([]paper.Point{c.at(0, edge.Drop.V), c.at(across, down)}, level)
	if !level {
		f.remark("Dotted ground: known below the edge and where the stair lands; how it runs between them is not shown.")
	}
}

// remarks says what the section cannot show.
func (c *climber) remarks() {
	f := c.f
	switch h := c.s.Headroom; {
	case h == nil:
		f.miss("stairs[].headroom")
	case h.Length == nil:
		f.remark("Headroom of stair " + c.label + ": " + h.Word + ".")
	default:
		f.remark("Headroom of stair " + c.label + ": " + f.value(h.Length.V) + ".")
	}
	if c.s.Handrail == nil {
		f.miss("handrail of stair " + c.label)
	}
	if c.s.Lighting == nil {
		f.miss("lighting of stair " + c.label)
	}
	if c.s.Width == nil {
		f.miss("width of stair " + c.label)
	}
}
