package draw

import (
	"strconv"

	"plumbrule/checker/draw/paper"
	"plumbrule/checker/facts"
	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// beams draws the beams of a kind: those that lie below the joists are hidden
// by them and are drawn first.
func (p *planner) beams(flush bool) {
	f := p.f
	for i := range p.plan.Beams {
		b := &p.plan.Beams[i]
		if b.Flush != flush {
			continue
		}
		stroke, sign := paper.Hidden, symbolDropped
		switch {
		case b.Flush:
			stroke, sign = paper.Edge, symbolFlush
		case b.Beam.Kind == nil: // below the joists or between them
			stroke, sign = paper.Open, symbolOpen
		}
		f.use(sign)
		for k, line := range b.Lines {
			line = p.shown(b, line, k == 0, k == len(b.Lines)-1)
			f.draw(p.bar(line, b.Width, stroke, paper.NoFill)...)
			f.line(f.at(line.A), f.at(line.B), paper.Center)
			f.use(symbolCenter)
			if k == 0 {
				f.anchor(b.Beam.At, f.at(line.At(line.Length()/4)))
			}
		}
		if b.Width == 0 {
			f.miss(f.say("size or plies of beam") + " " + b.Mark)
		}
	}
	if flush {
		return
	}
	for _, mark := range p.plan.Unplaced {
		f.miss(f.say("place of beam") + " " + mark)
	}
	if len(p.p.Beams) == 0 {
		f.miss("platforms[].beams")
	}
}

// shown cuts a beam off behind its outer posts where the frame that it runs to
// is not known, and marks the break.
func (p *planner) shown(b *facts.BeamPlan, line geometry.Segment, first, last bool) geometry.Segment {
	f := p.f
	const past = 6 * measure.Inch
	if !b.OpenStart && !b.OpenEnd {
		return line
	}
	out := line
	low, high := line.Length(), measure.Length(0)
	for _, post := range b.Posts {
		low, high = min(low, line.Along(post.Place)), max(high, line.Along(post.Place))
	}
	v := towards(f.at(line.A), f.at(line.B))
	if b.OpenStart && first && len(b.Posts) > 0 && low > 0 {
		out.A = line.At(max(low-past, 0))
		f.draw(breakMark(f.at(out.A), v, f.on(b.Width)/2))
	}
	if b.OpenEnd && last && len(b.Posts) > 0 {
		out.B = line.At(min(high+past, line.Length()))
		f.draw(breakMark(f.at(out.B), v, f.on(b.Width)/2))
	}
	f.use(symbolBreak)
	return out
}

// posts draws the posts; where their size is not shown, a dotted ring.
func (p *planner) posts() {
	f := p.f
	for i := range p.plan.Beams {
		b := &p.plan.Beams[i]
		for _, post := range b.Posts {
			c := f.at(post.Place)
			f.anchor(post.At, c)
			f.anchor(p.ownAt(b, &post), c)
			d := p.postSize(b, &post)
			if d == nil {
				f.draw(paper.Circle(c, 4, paper.Open, paper.NoFill))
				f.use(symbolOpen)
				f.miss("platforms[].posts.size")
				continue
			}
			f.use(symbolPost)
			half := max(f.on(min(d.V.Thickness, d.V.Depth))/2, 1.2)
			f.draw(paper.Rectangle(c.Plus(-half, -half), c.Plus(half, half), paper.Bold, paper.Shade))
		}
		if len(b.Posts) > 0 {
			f.anchor(p.p.At+"/posts", f.at(b.Posts[0].Place))
		} else {
			f.miss(f.say("posts of beam") + " " + b.Mark)
		}
	}
}

// joints marks where the plies of beams are cut.
func (p *planner) joints() {
	f := p.f
	for i := range p.plan.Beams {
		b := &p.plan.Beams[i]
		for _, j := range b.Joints {
			if len(b.Lines) > 0 {
				f.draw(joint(f.at(j.Place), towards(f.at(b.Lines[0].A), f.at(b.Lines[0].B)), f.on(b.Width)/2)...)
				f.use(symbolJoint)
				f.anchor(j.At, f.at(j.Place))
			}
		}
	}
}

// own is the entry of a post that is described by itself, nil for none.
func (p *planner) own(b *facts.BeamPlan, post *facts.SpotPlan) *model.Post {
	if p.p.Posts == nil {
		return nil
	}
	for i := range p.p.Posts.Each {
		e := &p.p.Posts.Each[i]
		if words(e.Beam) == b.Mark && e.Along != nil && e.Along.V == post.Along {
			return e
		}
	}
	return nil
}

func (p *planner) ownAt(b *facts.BeamPlan, post *facts.SpotPlan) string {
	if own := p.own(b, post); own != nil {
		return own.At
	}
	return post.At
}

func (p *planner) postSize(b *facts.BeamPlan, post *facts.SpotPlan) *model.Value[measure.Size] {
	if own := p.own(b, post); own != nil && own.Dimensions() != nil {
		return own.Dimensions()
	}
	if p.p.Posts == nil {
		return nil
	}
	return p.p.Posts.Dimensions()
}

// footing is what stands below a post, nil where none is described.
func (p *planner) footing(b *facts.BeamPlan, post *facts.SpotPlan) *model.Footing {
	if own := p.own(b, post); own != nil && own.Footing != nil {
		return own.Footing
	}
	return p.p.Footings
}

// footings draws the footings, hidden below the ground.
func (p *planner) footings() {
	f := p.f
	for i := range p.plan.Beams {
		b := &p.plan.Beams[i]
		for _, post := range b.Posts {
			c, d := f.at(post.Place), p.footing(b, &post)
			if d == nil {
				f.miss("platforms[].footings")
				continue
			}
			f.anchor(d.At, c.Plus(5, 5))
			switch {
			case d.Diameter != nil:
				f.draw(paper.Circle(c, f.on(d.Diameter.V)/2, paper.Hidden, paper.NoFill))
			case d.Side != nil:
				h := f.on(d.Side.V) / 2
				f.draw(paper.Rectangle(c.Plus(-h, -h), c.Plus(h, h), paper.Hidden, paper.NoFill))
			case d.Along != nil && d.Out != nil:
				h, v := f.on(d.Along.V)/2, f.on(d.Out.V)/2
				f.draw(paper.Rectangle(c.Plus(-h, -v), c.Plus(h, v), paper.Hidden, paper.NoFill))
			default:
				f.draw(paper.Circle(c, 9, paper.Open, paper.NoFill))
				f.use(symbolOpen)
				f.miss("size of the footings")
				continue
			}
			f.use(symbolFooting)
		}
	}
}

// frameWords names the members.
func (p *planner) frameWords() {
	f := p.f
	for i := range p.plan.Beams {
		b := &p.plan.Beams[i]
		if len(b.Lines) == 0 {
			continue
		}
		line := b.Lines[0]
		f.note(f.at(line.At(line.Length()*3/8)), p.beamWords(b)...)
	}
	if posts := p.postWords(); len(posts) > 0 && len(p.plan.Beams) > 0 && len(p.plan.Beams[0].Posts) > 0 {
		last := p.plan.Beams[0].Posts[len(p.plan.Beams[0].Posts)-1]
		f.note(f.at(last.Place), posts...)
	}
	if p.plan.Ledger != nil && len(p.plan.Ledger.Lines) > 0 {
		line := p.plan.Ledger.Lines[0]
		f.note(f.at(line.At(line.Length()/3)), p.ledgerWords()...)
	}
	if p.p.Joists != nil {
		f.note(p.joistSpot(), p.joistWords()...)
	}
}

func (p *planner) beamWords(b *facts.BeamPlan) []string {
	m := b.Beam
	line := p.f.say("beam") + " " + b.Mark + ","
	if m.Plies != nil && m.Plies.V > 1 {
		line += " (" + strconv.FormatInt(m.Plies.V, 10) + ")"
	}
	line = spaced(line, p.size(&m.Member))
	kind := words(m.Kind)
	if kind == "" {
		kind = "dropped or flush: not shown"
		p.f.miss(p.f.say("kind of beam") + " " + b.Mark + " (dropped or flush)")
	}
	return []string{line, kind}
}

func (p *planner) postWords() []string {
	var lines []string
	if p.p.Posts != nil && p.p.Posts.Dimensions() != nil {
		lines = append(lines, "posts "+p.size(&p.p.Posts.Member))
	}
	if d := p.p.Footings; d != nil {
		lines = append(lines, p.footingWords(d))
	}
	return lines
}

func (p *planner) footingWords(d *model.Footing) string {
	f, line := p.f, "footings"
	switch {
	case d.Diameter != nil:
		line += " " + f.value(d.Diameter.V) + " across"
	case d.Side != nil:
		line += " " + f.value(d.Side.V) + " square"
	case d.Along != nil && d.Out != nil:
		line += " " + f.value(d.Along.V) + " by " + f.value(d.Out.V)
	}
	if d.Thickness != nil {
		line += ", " + f.value(d.Thickness.V) + " thick"
	}
	if d.Depth != nil {
		return line + ", " + f.value(d.Depth.V) + " deep"
	}
	f.miss("platforms[].footings.depth")
	return line + ", depth not shown"
}

func (p *planner) ledgerWords() []string {
	f, l := p.f, p.p.Ledger
	if l == nil {
		f.miss("platforms[].ledger")
		return []string{f.say("ledger") + ", not described"}
	}
	lines := []string{spaced(f.say("ledger"), p.size(&l.Member))}
	if d := l.Fasteners; d != nil {
		line := spaced(diameter(f, d.Diameter), words(d.Type)+"s")
		if d.Spacing != nil {
			line += " at " + f.value(d.Spacing.V)
		}
		lines = append(lines, line)
		if d.Rows != nil {
			line = counted(d.Rows.V, "row")
			if d.Staggered != nil && d.Staggered.V {
				line += ", staggered"
			}
			lines = append(lines, line)
		}
	} else {
		f.miss("platforms[].ledger.fasteners")
	}
	return lines
}

func diameter(f *figure, d *model.Length) string {
	if d == nil {
		return ""
	}
	return f.value(d.V)
}

// joistWords says size and spacing of the joists.
func (p *planner) joistWords() []string {
	f := p.f
	lines := []string{spaced("joists", p.size(&p.p.Joists.Member))}
	if fact := p.joistFact(); fact != nil {
		if fact.Spacing != nil {
			line := "at " + f.exact(fact.Spacing.Value) + " " + f.say("on center")
			if text(fact.Layout) == "equal" && fact.Count != nil && fact.Count.Value > 1 {
				line = counted(fact.Count.Value-1, "equal bay") + " of " + f.exact(fact.Spacing.Value)
			}
			lines = append(lines, line)
		}
		if text(fact.Layout) != "equal" && fact.LastBay != nil && fact.Spacing != nil && fact.LastBay.Value != fact.Spacing.Value {
			lines = append(lines, "last bay "+f.value(fact.LastBay.Value))
		}
	}
	if r := p.p.Joists.LateralRestraint; r != nil && r.AtBeams != nil {
		lines = append(lines, r.AtBeams.V+" "+f.say("at beams"))
	}
	return lines
}

func (p *planner) joistFact() *facts.Joists {
	for i := range p.facts.Joists {
		if j := &p.facts.Joists[i]; j.At[0] == p.p.Joists.At {
			return j
		}
	}
	return nil
}

// size is a member's nominal size, or its real one where it has no such name.
func (d *drafter) size(m *model.Member) string {
	s := m.Dimensions()
	switch {
	case s == nil:
		return "of a size not shown"
	case s.V.Nominal != "":
		return s.V.Nominal
	}
	return s.V.Thickness.Text(d.deck.System) + " x " + s.V.Depth.Text(d.deck.System)
}
