package draw

import (
	"fmt"

	"plumbrule/checker/draw/paper"
	"plumbrule/checker/facts"
	"plumbrule/checker/measure"
)

// stairs draws the stairs that leave the platform, seen from above.
func (p *planner) stairs() {
	for k := range p.out.Stairs {
		s := &p.out.Stairs[k]
		if s.Platform != p.i {
			continue
		}
		if s.Top == nil {
			p.f.miss("place of stair " + s.Label + " (" + fieldWords(s.Missing) + ")")
			continue
		}
		p.stair(k, s)
	}
}

// stair draws one stair: its treads flight by flight, and landings as far as
// their depth is shown.
func (p *planner) stair(k int, s *facts.StairPlan) {
	f := p.f
	a, b := f.at(s.Top.A), f.at(s.Top.B)
	out := outward(p.plan.Outline.Edge(s.Edge))
	start := middle(a, b)
	f.anchor(s.At, moved(start, out, 12))
	done, beside := 0.0, p.widest(k, distance(a, b))/2+14
	for _, flight := range p.flightsOf(s.Label) {
		if flight.Run == nil {
			f.draw(breakMark(moved(start, out, done+18), out, distance(a, b)/2))
			f.line(moved(a, out, done), moved(a, out, done+18), paper.Edge)
			f.line(moved(b, out, done), moved(b, out, done+18), paper.Edge)
			f.use(symbolBreak)
			f.miss("run of stair " + s.Label)
			break
		}
		run := f.on(flight.Run.Value)
		if flight.N > 1 || flight.Of == 1 {
			f.anchor(flight.At[0], moved(start, out, done+run/2))
		}
		p.treads(flight, a, b, out, done, run)
		p.runDimension(a, b, out, done, run, beside, flight.Run.Value)
		done += run
		landing := p.landing(k, flight)
		if landing == nil || landing.Depth == nil {
			if flight.N < flight.Of {
				f.miss("landing between the flights of stair " + s.Label)
				break
			}
			f.miss("landing at the foot of stair " + s.Label)
			continue
		}
		depth := p.pad(landing, a, b, out, done, flight.N < flight.Of)
		p.runDimension(a, b, out, done, depth, beside, landing.Depth.Value)
		done += depth
	}
	f.draw(arrow(moved(start, out, 4), moved(start, out, max(done-6, 16)))...)
	f.note(moved(moved(start, out, min(done/2, 40)), towards(b, a), distance(a, b)/3), p.stairWords(s.Label)...)
}

// treads draws the edge of every tread of a flight, and its run.
func (p *planner) treads(flight *facts.Flight, a, b paper.Point, out vector, from, run float64) {
	f := p.f
	side, tread := paper.Edge, paper.Thin
	if !consistent(flight) {
		side, tread = paper.Open, paper.Open
		f.use(symbolOpen)
		f.remark(unevenCount(flight))
	}
	f.draw(paper.Path{Points: []paper.Point{moved(a, out, from), moved(a, out, from+run), moved(b, out, from+run), moved(b, out, from)}, Stroke: side})
	f.kept = append(f.kept, paper.Box{Corners: [4]paper.Point{moved(a, out, from), moved(b, out, from), moved(b, out, from+run), moved(a, out, from+run)}})
	if flight.TreadDepth != nil {
		depth := f.on(flight.TreadDepth.Value)
		for at := depth; depth > 1 && at < run-0.5; at += depth {
			f.line(moved(a, out, from+at), moved(b, out, from+at), tread)
		}
	}
}

// widest is the width on paper of a stair or of the widest of its landings.
func (p *planner) widest(k int, width float64) float64 {
	for _, flight := range p.flightsOf(p.out.Stairs[k].Label) {
		if l := p.landing(k, flight); l != nil && l.Width != nil {
			width = max(width, p.f.on(l.Width.Value))
		}
	}
	return width
}

// runDimension dimensions a part of a stair's way, on one line for all parts at
// a distance beside the middle of the stair.
func (p *planner) runDimension(a, b paper.Point, out vector, from, run, beside float64, value measure.Length) {
	d := stretch{from: moved(b, out, from), to: moved(b, out, from+run), value: value}
	p.f.beside(d, sideOf(towards(a, b), d)*(beside-distance(a, b)/2))
}

// sideOf is 1 where the direction leads to the left of a stretch, else -1.
func sideOf(v vector, d stretch) float64 {
	left := towards(d.from, d.to).left()
	if left.x*v.x+left.y*v.y > 0 {
		return 1
	}
	return -1
}

// pad draws a landing and gives its depth on paper. One that is wider than the
// stair is dotted: to which side it reaches is not shown.
func (p *planner) pad(l *facts.Landing, a, b paper.Point, out vector, from float64, between bool) float64 {
	f := p.f
	depth, across := f.on(l.Depth.Value), distance(a, b)
	stroke := paper.Thin
	if between {
		stroke = paper.Edge
	}
	if l.Width != nil {
		if wide := f.on(l.Width.Value); wide > across+0.5 || wide < across-0.5 {
			across, stroke = wide, paper.Open
			f.use(symbolOpen)
			f.remark("A landing wider than its stair is drawn in the middle; to which side it reaches is not shown.")
		}
	} else {
		stroke = paper.Open
		f.use(symbolOpen)
	}
	mid, v := middle(a, b), towards(a, b)
	near, far := moved(mid, v, -across/2), moved(mid, v, across/2)
	f.draw(paper.Path{Points: []paper.Point{moved(near, out, from), moved(near, out, from+depth), moved(far, out, from+depth), moved(far, out, from)}, Closed: true, Stroke: stroke})
	f.anchor(l.At[0], moved(moved(mid, out, from+depth/2), v, across/4))
	return depth
}

func (d *drafter) flightsOf(stair string) []*facts.Flight {
	var list []*facts.Flight
	for i := range d.facts.Flights {
		if d.facts.Flights[i].Stair == stair {
			list = append(list, &d.facts.Flights[i])
		}
	}
	return list
}

// landing is the landing below a flight of stair k, nil where none is shown.
func (d *drafter) landing(k int, flight *facts.Flight) *facts.Landing {
	n := int64(0)
	for i := range d.facts.Landings {
		l := &d.facts.Landings[i]
		if l.Stair != d.out.Stairs[k].Label || l.Where == "top" {
			continue
		}
		if n++; n == flight.N {
			return l
		}
	}
	return nil
}

// stairWords sums a stair up.
func (p *planner) stairWords(label string) []string {
	f := p.f
	lines := []string{"stair " + label + ", down"}
	for _, flight := range p.flightsOf(label) {
		line, treads := "", ""
		if flight.Risers != nil {
			line = counted(flight.Risers.Value, "riser")
			if even(flight.RiserHeights) {
				line += " at " + f.exact(flight.RiserHeights[0])
			}
		}
		if flight.TreadDepth != nil {
			treads = "treads " + f.value(flight.TreadDepth.Value)
		}
		if flight.Of > 1 {
			line = fmt.Sprintf("flight %d: %s", flight.N, line)
		}
		for _, words := range []string{line, treads} {
			if words != "" {
				lines = append(lines, words)
			}
		}
	}
	return lines
}

// even reports whether all lengths of a list are alike; false for none.
func even(list []measure.Length) bool {
	for _, l := range list {
		if l != list[0] {
			return false
		}
	}
	return len(list) > 0
}
