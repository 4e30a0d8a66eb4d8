package draw

import (
	"cmp"
	"slices"

	"plumbrule/checker/draw/paper"
	"plumbrule/checker/facts"
	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
)

// postChains dimensions the posts along each beam: from where the design
// measures them, from post to post, to the end of the beam.
func (p *planner) postChains() {
	f := p.f
	var drawn [][]measure.Length
	for i := range p.plan.Beams {
		b := &p.plan.Beams[i]
		if len(b.Posts) == 0 || len(b.Lines) == 0 {
			continue
		}
		list := p.postStretches(b)
		to := below
		switch {
		case upright(b):
			to = atLeft
		case !level(b):
			for _, d := range list {
				f.beside(d, p.outside(b)*firstLine*0.9)
			}
			continue
		}
		values := make([]measure.Length, len(list))
		for k := range list {
			values[k] = list[k].value
		}
		if slices.ContainsFunc(drawn, func(o []measure.Length) bool { return slices.Equal(o, values) }) {
			continue
		}
		drawn = append(drawn, values)
		f.chain(to, list)
	}
}

// upright reports whether a beam lies straight out from the house.
func upright(b *facts.BeamPlan) bool { return len(b.Lines) > 0 && b.Lines[0].A.X == b.Lines[0].B.X }

// outside is 1 where the left of a beam lies outside of the outline, else -1.
func (p *planner) outside(b *facts.BeamPlan) float64 {
	line := b.Lines[0]
	w := towards(p.f.at(line.A), p.f.at(line.B)).left()
	mid := middleOf(line)
	const off = float64(measure.Foot)
	if p.plan.Outline.Contains(mid.Shift(measure.Length(w.x*off), measure.Length(w.y*off))) == geometry.Outside {
		return 1
	}
	return -1
}

// level reports whether a beam lies along the house.
func level(b *facts.BeamPlan) bool { return len(b.Lines) > 0 && b.Lines[0].A.Y == b.Lines[0].B.Y }

// postStretches lists the dimensions along one beam.
func (p *planner) postStretches(b *facts.BeamPlan) []stretch {
	f := p.f
	posts := slices.Clone(b.Posts)
	slices.SortStableFunc(posts, func(a, c facts.SpotPlan) int { return cmp.Compare(a.Along, c.Along) })
	first, last := posts[0], posts[len(posts)-1]
	var list []stretch
	// Posts are measured from a place that need not be the end of the beam.
	zero := geometry.Segment{A: first.Place, B: b.Lines[len(b.Lines)-1].B}.At(-first.Along)
	if len(posts) > 1 {
		zero = geometry.Segment{A: first.Place, B: last.Place}.At(-first.Along)
	}
	if first.Along > 0 {
		list = append(list, stretch{from: f.at(zero), to: f.at(first.Place), value: first.Along, toCenter: true})
	}
	for k := 1; k < len(posts); k++ {
		list = append(list, stretch{from: f.at(posts[k-1].Place), to: f.at(posts[k].Place), value: posts[k].Along - posts[k-1].Along, fromCenter: true, toCenter: true})
	}
	end := b.Lines[len(b.Lines)-1].B
	if !b.OpenEnd && last.Place.To(end) > measure.Inch/4 && zero.To(end) > zero.To(last.Place) {
		list = append(list, stretch{from: f.at(last.Place), to: f.at(end), value: last.Place.To(end), fromCenter: true})
	}
	return list
}

// outwardChain dimensions how far out beams lie, from the house face on, to
// the edge of the frame.
func (p *planner) outwardChain() {
	f := p.f
	box := p.plan.Outline.Bounds()
	from := geometry.Point{X: box.Max.X, Y: box.Min.Y}
	var list []stretch
	for _, b := range p.outBeams() {
		y := b.Lines[0].A.Y
		if y <= from.Y {
			continue
		}
		to := geometry.Point{X: box.Max.X, Y: y}
		list = append(list, stretch{from: f.at(from), to: f.at(to), value: y - from.Y, fromCenter: len(list) > 0, toCenter: true})
		from = to
	}
	if p.plan.Frame != nil && len(list) > 0 {
		if end := p.plan.Frame.Bounds().Max.Y; end-from.Y > measure.Inch/4 {
			list = append(list, stretch{from: f.at(from), to: f.at(geometry.Point{X: box.Max.X, Y: end}), value: end - from.Y, fromCenter: len(list) > 0})
		}
	}
	if len(list) > 0 {
		f.chain(atRight, list)
	}
}

// sidewaysChain dimensions where along the house beams lie that run out from
// it, from the left end of the outline to the right.
func (p *planner) sidewaysChain() {
	f := p.f
	var beams []*facts.BeamPlan
	for i := range p.plan.Beams {
		if upright(&p.plan.Beams[i]) {
			beams = append(beams, &p.plan.Beams[i])
		}
	}
	slices.SortFunc(beams, func(a, b *facts.BeamPlan) int { return cmp.Compare(a.Lines[0].A.X, b.Lines[0].A.X) })
	box := p.plan.Outline.Bounds()
	at := geometry.Point{X: box.Min.X, Y: box.Max.Y}
	var list []stretch
	for _, b := range beams {
		if x := b.Lines[0].A.X; x > at.X {
			to := geometry.Point{X: x, Y: max(b.Lines[0].A.Y, b.Lines[0].B.Y)}
			list = append(list, stretch{from: f.at(at), to: f.at(to), value: x - at.X, fromCenter: len(list) > 0, toCenter: true})
			at = to
		}
	}
	if p.plan.Frame != nil && len(list) > 0 {
		if end := p.plan.Frame.Bounds().Max.X; end-at.X > measure.Inch/4 {
			to := geometry.Point{X: end, Y: box.Max.Y}
			list = append(list, stretch{from: f.at(at), to: f.at(to), value: end - at.X, fromCenter: true})
		}
	}
	f.chain(below, list)
}

// wholeChains dimensions the whole frame, or the outline where the frame's edge
// is not shown.
func (p *planner) wholeChains() {
	f, ring := p.f, p.plan.Frame
	if ring == nil {
		ring = p.plan.Outline
	}
	box := ring.Bounds()
	low, high := f.at(box.Min), f.at(box.Max)
	f.chain(below, []stretch{{from: paper.Point{X: low.X, Y: high.Y}, to: high, value: box.Max.X - box.Min.X}})
	f.chain(atRight, []stretch{{from: paper.Point{X: high.X, Y: low.Y}, to: high, value: box.Max.Y - box.Min.Y}})
}

// outBeams are the beams along the house, nearest first, each distance once.
func (p *planner) outBeams() []*facts.BeamPlan {
	var list []*facts.BeamPlan
	for i := range p.plan.Beams {
		b := &p.plan.Beams[i]
		if level(b) && !slices.ContainsFunc(list, func(o *facts.BeamPlan) bool { return o.Lines[0].A.Y == b.Lines[0].A.Y }) {
			list = append(list, b)
		}
	}
	slices.SortFunc(list, func(a, b *facts.BeamPlan) int { return cmp.Compare(a.Lines[0].A.Y, b.Lines[0].A.Y) })
	return list
}

// spanChain dimensions the joist that spans furthest: clear from support to
// support, and what passes the last one.
func (p *planner) spanChain() {
	f, s := p.f, p.governing()
	if s == nil {
		return
	}
	along := func(c geometry.Point) measure.Length { return s.Line.Along(c) }
	// The dimension stands beside the frame, so its lines start at the edge.
	box := p.plan.Outline.Bounds()
	at := func(d measure.Length) paper.Point {
		place := s.Line.At(d)
		if p.plan.Joists.AlongHouse {
			return f.at(geometry.Point{X: place.X, Y: box.Min.Y})
		}
		return f.at(geometry.Point{X: box.Min.X, Y: place.Y})
	}
	var list []stretch
	for k := 1; k < len(s.Supports); k++ {
		a, b := &s.Supports[k-1], &s.Supports[k]
		if a.Half == 0 || b.Half == 0 {
			continue
		}
		from, to := along(a.Center)+a.Half, along(b.Center)-b.Half
		if to > from {
			list = append(list, stretch{from: at(from), to: at(to), value: to - from, after: "clear"})
		}
	}
	if len(list) == 0 {
		return
	}
	to := atLeft
	if p.plan.Joists.AlongHouse {
		to = above
	}
	f.chain(to, list)
	f.remark("\"Clear\" is the joist span from face to face of what carries it, where it is longest.")
}
