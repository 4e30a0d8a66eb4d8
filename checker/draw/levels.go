package draw

import (
	"plumbrule/checker/draw/paper"
	"plumbrule/checker/facts"
	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
)

// levels are heights under the walking surface, which is zero, downwards. What
// the design does not show leaves ok false.
type levels struct {
	boards  measure.Length // underside of the boards, top of the joists
	joists  measure.Length // underside of the joists
	boardOK bool
	joistOK bool
}

func (p *planner) levels() levels {
	var l levels
	if d := p.p.Decking; d != nil && d.Thickness != nil {
		l.boards, l.boardOK = d.Thickness.V, true
	} else {
		p.f.miss("platforms[].decking.thickness")
	}
	if j := p.p.Joists; j != nil && j.Dimensions() != nil {
		l.joists, l.joistOK = l.boards+j.Dimensions().V.Depth, l.boardOK
	} else {
		p.f.miss("platforms[].joists.size")
	}
	return l
}

// beamLevels gives top and underside of a beam; ok is false where the design
// does not show what they follow from.
func (p *planner) beamLevels(b *facts.BeamPlan, l levels) (top, under measure.Length, ok bool) {
	m := b.Beam
	switch {
	case m.Dimensions() == nil:
		p.f.miss(p.f.say("size of beam") + " " + b.Mark)
		return 0, 0, false
	case m.Kind == nil:
		p.f.miss(p.f.say("kind of beam") + " " + b.Mark + " (dropped or flush)")
		return 0, 0, false
	case !l.joistOK:
		return 0, 0, false
	case b.Flush:
		return l.boards, l.boards + m.Dimensions().V.Depth, true
	}
	return l.joists, l.joists + m.Dimensions().V.Depth, true
}

// post is the fact of one post.
func (p *planner) post(b *facts.BeamPlan, s *facts.SpotPlan) *facts.Post {
	for i := range p.facts.Posts {
		q := &p.facts.Posts[i]
		if q.Platform == p.plan.Label && q.Beam == b.Mark && q.X != nil && q.Y != nil && q.X.Value == s.Place.X && q.Y.Value == s.Place.Y {
			return q
		}
	}
	return nil
}

// at is a point of an elevation: a distance across, and how far down.
func (p *planner) at(across, down measure.Length) paper.Point {
	return paper.Point{X: p.f.on(across), Y: p.f.on(down)}
}

// upright draws a post with its footing at a distance across, from the
// underside of its beam down, and gives the height of the post, or nil.
func (p *planner) upright(b *facts.BeamPlan, s *facts.SpotPlan, across measure.Length, l levels) *facts.Length {
	f := p.f
	_, under, ok := p.beamLevels(b, l)
	if !ok {
		return nil
	}
	fact, size := p.post(b, s), p.postSize(b, s)
	top := p.at(across, under)
	f.anchor(s.At, top.Plus(0, 14))
	f.anchor(p.ownAt(b, s), top.Plus(0, 14))
	half := measure.Length(0)
	if size != nil {
		half = min(size.V.Thickness, size.V.Depth) / 2
	} else {
		f.miss("platforms[].posts.size")
	}
	if fact == nil || fact.HeightAboveGrade == nil {
		f.miss(f.say("ground below the posts of beam") + " " + b.Mark)
		end := top.Plus(0, 30)
		p.shaft(top, end, f.on(half))
		f.draw(breakMark(end, vector{0, 1}, f.on(half)))
		f.use(symbolBreak)
		return nil
	}
	if p.plan.GroundOnSlope(s.Place) == nil {
		f.remark("Posts: where no slope is shown, the ground below them is taken level, at the nearest point or the greatest drop that is shown.")
	}
	ground := fact.HeightAboveGrade.Value
	foot := ground
	if fact.Height != nil {
		foot = under + fact.Height.Value
	}
	p.below(b, s, across, ground, foot)
	if foot > under {
		p.shaft(top, p.at(across, foot), f.on(half))
	}
	return fact.Height
}

// shaft draws a post, dotted where its width is not shown.
func (p *planner) shaft(top, foot paper.Point, half float64) {
	f := p.f
	if half == 0 {
		f.line(top, foot, paper.Open)
		f.use(symbolOpen)
		return
	}
	f.draw(paper.Rectangle(top.Plus(-half, 0), foot.Plus(half, 0), paper.Edge, paper.White))
}

// below draws a footing hidden in the ground, as far as it is shown.
func (p *planner) below(b *facts.BeamPlan, s *facts.SpotPlan, across, ground, foot measure.Length) {
	f, d := p.f, p.footing(b, s)
	if d == nil {
		f.miss("platforms[].footings")
		return
	}
	f.anchor(d.At, p.at(across, ground).Plus(0, 10))
	wide := measure.Length(0)
	switch {
	case d.Diameter != nil:
		wide = d.Diameter.V
	case d.Side != nil:
		wide = d.Side.V
	case d.Along != nil && d.Out != nil:
		wide = min(d.Along.V, d.Out.V)
	}
	if wide == 0 || d.Depth == nil {
		if wide == 0 {
			f.miss("size of the footings")
		}
		if d.Depth == nil {
			f.miss("platforms[].footings.depth")
		}
		f.line(p.at(across, foot), p.at(across, ground).Plus(0, 24), paper.Open)
		f.use(symbolOpen)
		return
	}
	bottom := ground + d.Depth.V
	top := foot
	if d.Thickness != nil {
		top = bottom - d.Thickness.V
		if top > foot { // what stands between footing and post is not described
			f.line(p.at(across, foot), p.at(across, top), paper.Hidden)
		}
	} else {
		f.miss("platforms[].footings.thickness")
	}
	f.draw(paper.Rectangle(p.at(across-wide/2, top), p.at(across+wide/2, bottom), paper.Hidden, paper.NoFill))
	f.use(symbolHidden)
}

// groundLine draws the ground through places where it is known. through gives
// its depth at a place on the plan, nil where it is not known.
func (p *planner) groundLine(points []paper.Point, solid bool) {
	f := p.f
	if len(points) < 2 {
		return
	}
	if !solid {
		f.draw(paper.Path{Points: points, Stroke: paper.Open})
		f.use(symbolOpen)
		return
	}
	f.draw(ground(points)...)
	f.use(symbolGrade)
}

// groundAt is the depth of the ground at a corner of the plan: carried there
// from known points, or else as stated for the corner at the house's left end.
func (p *planner) groundAt(place geometry.Point) *measure.Length {
	if g := p.plan.GroundOnSlope(place); g != nil {
		return &g.Value
	}
	if h := p.p.SurfaceAboveGrade; h != nil && place == p.plan.Outline[0] {
		return &h.V
	}
	return nil
}
