package draw

import (
	"fmt"
	"math"

	"plumbrule/checker/draw/paper"
	"plumbrule/checker/facts"
	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
)

// flight draws one flight: treads and risers, stringer, handrail, guard. It
// starts at start; the first riser stands further out where the top tread lies
// level with the surface above.
func (c *climber) flight(i int, flight *facts.Flight, steps []step, start measure.Length) {
	f := c.f
	stroke := paper.Edge
	if !consistent(flight) {
		stroke = paper.Open
		f.use(symbolOpen)
		f.remark(unevenCount(flight))
	}
	c.stringer(flight, steps, start, stroke)
	c.treads(steps, start, stroke)
	c.flightAnchors(i, flight, steps)
	c.rails(flight, steps)
}

// unevenCount says why the steps of a flight are dotted.
func unevenCount(flight *facts.Flight) string {
	return fmt.Sprintf("Dotted steps of stair %s: %d risers ask for %d treads, the design states %d.",
		flight.Stair, flight.Risers.Value, flight.TreadsExpected.Value, flight.Treads.Value)
}

// treads draws tread after tread, with risers where they are closed.
func (c *climber) treads(steps []step, start measure.Length, stroke paper.Stroke) {
	f := c.f
	nosing, thick := c.nosing(), measure.Length(0)
	if c.s.Nosing == nil {
		f.miss("stairs[].nosing")
	}
	if t := c.s.Tread; t != nil && t.Thickness != nil {
		thick = t.Thickness.V
	} else {
		f.miss("tread thickness of stair " + c.label)
	}
	riser := paper.Open
	switch o := c.s.RiserOpening; {
	case o == nil:
		f.miss("whether the risers of stair " + c.label + " are closed")
		f.use(symbolOpen)
	case o.Length == nil:
		riser = paper.Thin
	default:
		riser = paper.NoStroke
	}
	flush := steps[0].across > start
	if flush {
		f.draw(paper.Rectangle(c.at(start, steps[0].top), c.at(steps[0].across, steps[0].top+thick), stroke, paper.White))
	}
	for k, s := range steps {
		face := s.across - nosing
		under := s.top // underside of what is above the riser
		if k > 0 || flush {
			under += thick
		}
		if riser != paper.NoStroke {
			f.line(c.at(face, under), c.at(face, s.foot), riser)
		}
		if s.tread == 0 {
			continue
		}
		end := s.across + s.tread
		if thick == 0 {
			f.line(c.at(face, s.foot), c.at(end, s.foot), stroke)
			continue
		}
		f.draw(paper.Rectangle(c.at(face, s.foot), c.at(end, s.foot+thick), stroke, paper.White))
	}
}

// stringer draws a cut stringer by its notches and the throat below them, a
// solid one by its depth.
func (c *climber) stringer(flight *facts.Flight, steps []step, start measure.Length, stroke paper.Stroke) {
	f, k := c.f, c.s.Stringers
	if k == nil || k.Dimensions() == nil {
		f.miss(f.say("stringers") + " of stair " + c.label)
		return
	}
	if flight.Throat == nil || words(k.Kind) != "cut" {
		f.remark("Stair " + c.label + ": " + spaced(words(k.Kind), c.f.say("stringers"), c.size(&k.Member)) + "; their height against the treads is not shown, and they are not drawn.")
		return
	}
	nosing, thick := c.nosing(), measure.Length(0)
	if c.s.Tread != nil && c.s.Tread.Thickness != nil {
		thick = c.s.Tread.Thickness.V
	}
	var notches, inner []paper.Point
	if first := steps[0]; first.across > start {
		corner := c.at(start, first.top+thick)
		inner, notches = append(inner, corner), append(notches, corner, c.at(first.across-nosing, first.top+thick))
	}
	for _, s := range steps {
		if s.tread == 0 {
			continue
		}
		corner := c.at(s.across-nosing, s.foot+thick)
		inner = append(inner, corner)
		notches = append(notches, corner, c.at(s.across-nosing+s.tread, s.foot+thick))
	}
	if len(inner) < 2 {
		return
	}
	v := towards(inner[0], inner[len(inner)-1])
	down := vector{-v.left().x, -v.left().y}
	deep := f.on(flight.Throat.Value)
	last := steps[len(steps)-1]
	floor := c.at(0, last.foot).Y
	a, b := moved(inner[0], down, deep), moved(inner[len(inner)-1], down, deep)
	a = onX(a, v, inner[0].X)
	b = onY(b, v, floor)
	end := c.at(last.across-nosing, last.foot)
	area := append([]paper.Point{a, inner[0]}, notches[1:]...)
	area = append(area, end, b)
	f.draw(paper.Path{Points: area, Closed: true, Stroke: stroke, Fill: paper.White})
	f.anchor(k.At, paper.Point{X: a.X + (b.X-a.X)*0.7, Y: a.Y + (b.Y-a.Y)*0.7})
	mid := inner[len(inner)/2]
	f.beside(stretch{from: mid, to: moved(mid, down, deep), value: flight.Throat.Value, after: "throat", aside: true}, 0)
	// The line of the nosings, where it starts at the edge and the treads are
	// alike.
	slope := geometry.Diagonal(last.across-start, last.top-steps[0].top)
	if flight.StringerLine != nil && consistent(flight) && near(slope, flight.StringerLine.Value) {
		first, low := c.at(start, steps[0].top), c.at(last.across, last.top)
		f.beside(stretch{from: first, to: low, value: flight.StringerLine.Value, after: "on the slope"}, -f.on(k.Dimensions().V.Depth)-24)
	}
	f.note(middle(a, middle(a, b)), c.stringerWords()...)
}

// onX runs along a direction to a given x, onY to a given y.
func onX(p paper.Point, v vector, x float64) paper.Point {
	if math.Abs(v.x) < 1e-9 {
		return p
	}
	return moved(p, v, (x-p.X)/v.x)
}

func onY(p paper.Point, v vector, y float64) paper.Point {
	if math.Abs(v.y) < 1e-9 {
		return p
	}
	return moved(p, v, (y-p.Y)/v.y)
}

func (c *climber) stringerWords() []string {
	k := c.s.Stringers
	line := spaced(words(k.Kind), c.f.say("stringers"), c.size(&k.Member))
	if k.Count != nil {
		line = spaced(fmt.Sprint(k.Count.V), line)
	} else {
		c.f.miss("stairs[].stringers.count")
	}
	return []string{line}
}

// rails draws handrail and guard over the line of the nosings.
func (c *climber) rails(flight *facts.Flight, steps []step) {
	f := c.f
	first, last := steps[0], steps[len(steps)-1]
	a, b := c.at(first.across, first.top), c.at(last.across, last.top)
	if flight.Pitch != nil {
		t := fmt.Sprintf("%.1f degrees", float64(flight.Pitch.Value)/1e6)
		f.line(a, b, paper.Center)
		f.use(symbolCenter)
		f.sooner(func() { f.along(a, b, 4, t) })
	}
	rise := func(h measure.Length) (p, q paper.Point) { return a.Plus(0, -f.on(h)), b.Plus(0, -f.on(h)) }
	part := func(p, q paper.Point, at float64) paper.Point {
		return paper.Point{X: p.X + (q.X-p.X)*at, Y: p.Y + (q.Y-p.Y)*at}
	}
	if g := c.s.Guard; g != nil && g.Height != nil {
		p, q := rise(g.Height.V)
		f.line(p, q, paper.Thin)
		f.anchor(g.At, part(p, q, 0.65))
		f.note(part(p, q, 0.8), f.say("guard on the stair")+", "+f.value(g.Height.V)+" high")
	}
	h := c.s.Handrail
	if h == nil || h.Sides != nil && h.Sides.V == 0 {
		return
	}
	if h.Height == nil {
		f.miss("stairs[].handrail.height")
		return
	}
	p, q := rise(h.Height.V)
	f.anchor(h.At, part(p, q, 0.35))
	if h.Continuous != nil && !h.Continuous.V {
		f.line(p, part(p, q, 0.46), paper.Bold)
		f.line(part(p, q, 0.54), q, paper.Bold)
		f.remark("The handrail of stair " + c.label + " is not continuous; where it is broken is not shown.")
	} else {
		f.line(p, q, paper.Bold)
	}
	at := part(p, q, 0.2)
	f.beside(stretch{from: at.Plus(0, f.on(h.Height.V)), to: at, value: h.Height.V, after: "handrail"}, 0)
}

// flightAnchors gives spots to the parts of a flight.
func (c *climber) flightAnchors(i int, flight *facts.Flight, steps []step) {
	f := c.f
	base := flight.At[0]
	mid := steps[len(steps)/2]
	face := func(s step) paper.Point { return c.at(s.across-c.nosing(), (s.top+s.foot)/2) }
	f.anchor(base+"/risers", face(mid))
	f.anchor(base+"/measured_risers", face(mid))
	lower := steps[min(len(steps)*3/4, max(len(steps)-2, 0))]
	f.anchor(base+"/tread_depth", c.at(lower.across+lower.tread/2, lower.foot))
	f.anchor(base+"/treads", c.at(lower.across+lower.tread/2, lower.foot))
	if len(c.s.Flights) > 0 {
		f.anchor(base, c.at(mid.across, mid.top))
	}
	if i > 0 {
		return
	}
	f.anchor(c.s.At+"/total_rise", c.at(steps[0].across, steps[0].top))
	f.anchor(c.s.At+"/riser_opening", face(steps[0]))
	f.anchor(c.s.At+"/nosing", c.at(steps[0].across, steps[0].top))
	f.anchor(c.s.At+"/tread", c.at(steps[0].across+steps[0].tread/3, steps[0].foot))
	third := steps[len(steps)/3]
	f.anchor(c.s.At+"/headroom", c.at(third.across, third.top))
	for _, s := range steps {
		if s.pointer != "" {
			f.anchor(s.pointer, face(s))
		}
		if s.treadPlace != "" {
			f.anchor(s.treadPlace, c.at(s.across+s.tread/2, s.foot))
		}
	}
}
