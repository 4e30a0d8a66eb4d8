package fieldsheet

import (
	"slices"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// cut is a number of joists of one length.
type cut struct {
	joists []int
	n      int
	length measure.Length
	known  bool
	ends   string
}

// cuts lists what is cut to length: joists, ledger, rims, headers, beam plies.
func (p *platform) cuts() {
	s := Section{Title: "Cut lengths" + p.of}
	s.add(p.joistCuts())
	s.add(p.otherCuts())
	p.section(s)
}

func (p *platform) joistCuts() Table {
	var list []cut
	skewed := false
	for _, j := range p.joists {
		for _, stick := range j.sticks {
			c := cut{joists: []int{j.number}, n: 1, known: stick.IsCut, ends: stick.From + " to " + stick.To}
			if c.known {
				c.length = stick.Line.Length()
			}
			if j.doubled {
				c.n = 2
			}
			skewed = skewed || p.skewed(stick.Reach.A) || p.skewed(stick.Reach.B)
			list = takeCut(list, c)
		}
	}
	t := Table{
		Title:   named("Joists", p.joistSize()),
		Columns: []Column{{"Joists", Words}, {"Ends", Words}, {"No.", Count}, {"Length", Length}},
	}
	for _, c := range list {
		cell := unknown()
		if c.known {
			cell = length(c.length)
			p.tally.stock.add(p.joistSize(), p.stock(c.length), int64(c.n))
		} else {
			p.missing("cut length of joists", p.cutNeeds())
			p.tally.stock.add(p.joistSize(), 0, int64(c.n))
		}
		t.row(text(ranges(c.joists)), text(c.ends), count(c.n), cell)
	}
	if skewed {
		t.Notes = append(t.Notes, "Lengths run along the center line of the joist. An end on a skewed edge is cut to the angle of that edge, longer on one face and shorter on the other.")
	}
	return t
}

func (p *platform) joistSize() string {
	if p.m.Joists == nil {
		return ""
	}
	return p.size(&p.m.Joists.Member)
}

// takeCut adds a stick to those of its length and ends.
func takeCut(list []cut, c cut) []cut {
	for i := range list {
		like := &list[i]
		if like.length == c.length && like.known == c.known && like.ends == c.ends {
			if !slices.Contains(like.joists, c.joists[0]) {
				like.joists = append(like.joists, c.joists[0])
			}
			like.n += c.n
			return list
		}
	}
	return append(list, c)
}

// skewed reports whether a stick ends on an edge that it does not meet square.
func (p *platform) skewed(end geometry.Point) bool {
	for i := range p.frame {
		e := p.frame.Edge(i)
		if e.A.X != e.B.X && e.A.Y != e.B.Y && p.meets(end, i) {
			return true
		}
	}
	return false
}

// cutNeeds is the field that cut lengths wait for.
func (p *platform) cutNeeds() string {
	switch {
	case p.m.RimJoist == nil || p.m.RimJoist.Dimensions() == nil:
		return "platforms[].rim_joist.size"
	case p.m.Ledger != nil && p.m.Ledger.Dimensions() == nil:
		return "platforms[].ledger.size"
	}
	return "platforms[].beams"
}

// otherCuts lists ledger, rims, headers and beams.
func (p *platform) otherCuts() Table {
	t := Table{Title: "Ledger, rims, beams", Columns: []Column{{"Piece", Words}, {"No.", Count}, {"Length", Length}}}
	if p.m.Ledger != nil && p.framed() {
		t.row(text(named("ledger", p.size(&p.m.Ledger.Member))), count(1), length(p.base.Length()))
	}
	if rim := p.m.RimJoist; rim != nil && p.framed() {
		for i := range p.frame {
			if p.rimmed(i) {
				t.row(text(named("rim, "+p.edgeName(i), p.size(rim))), count(plies(rim)), length(p.frame.EdgeLength(i)))
			}
		}
	}
	p.headers(&t)
	for i := range p.plan.Beams {
		b := &p.plan.Beams[i]
		name := text(named("beam "+b.Mark+", each ply", p.size(&b.Beam.Member)))
		n := unknown()
		switch {
		case b.Beam.Plies != nil:
			n = count(b.Beam.Plies.V)
		case b.Width > 0:
			n = count(1)
		default:
			p.missing("plies of beam "+b.Mark, "platforms[].beams[].plies")
		}
		if b.OpenStart || b.OpenEnd {
			p.missing("length of beam "+b.Mark, p.plan.FrameMissing)
			t.row(name, n, unknown())
			continue
		}
		for _, line := range b.Lines {
			t.row(name, n, length(line.Length()))
		}
	}
	if len(t.Rows) > 0 {
		t.Notes = append(t.Notes, "Outer faces, end to end; splices are not taken off.")
	}
	return t
}

// rimmed reports whether some joist ends on a rim at an edge of the frame.
func (p *platform) rimmed(edge int) bool {
	for _, j := range p.joists {
		for _, stick := range j.sticks {
			if stick.From == "rim" && p.meets(stick.Reach.A, edge) || stick.To == "rim" && p.meets(stick.Reach.B, edge) {
				return true
			}
		}
	}
	return false
}

// plies is the number of pieces side by side; one where it is not shown, since
// a member is at least that.
func plies(m *model.Member) int64 {
	if m.Plies != nil {
		return m.Plies.V
	}
	return 1
}

// headers lists the members across an opening, two of them, each so many plies.
func (p *platform) headers(t *Table) {
	if p.m.Joists == nil {
		return
	}
	for i := range p.m.Joists.Openings {
		o := &p.m.Joists.Openings[i]
		if o.Headers == nil || len(o.Corners) == 0 {
			continue
		}
		low, high := p.openingReach(o)
		name := "header, each ply"
		if what := word(o.What); what != "" {
			name = "header at " + what + ", each ply"
		}
		n := unknown()
		if o.Headers.Plies != nil {
			n = count(2 * o.Headers.Plies.V)
		}
		t.row(text(named(name, p.size(o.Headers))), n, length(high-low))
	}
}

// openingReach is how far an opening reaches across the joists.
func (p *platform) openingReach(o *model.FrameOpening) (low, high measure.Length) {
	for i, c := range o.Corners {
		u := c.X
		if p.turned() {
			u = c.Y
		}
		if i == 0 {
			low, high = u, u
		}
		low, high = min(low, u), max(high, u)
	}
	return low, high
}
