package facts

import (
	"fmt"
	"strings"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// contradictions lists what one part of the description says against another,
// so that neither can be believed: a post beyond the end of its beam, a stair
// off its edge. Nothing is derived from such a design.
func contradictions(w *worked) []Problem {
	c := &contradicting{system: w.deck.System}
	for _, s := range w.surfaces {
		c.support(s)
		c.devices(s)
		c.layout(s)
		c.beams(s)
	}
	for _, st := range w.stairs {
		c.stair(st)
	}
	return c.problems
}

type contradicting struct {
	system   measure.System
	problems []Problem
}

func (c *contradicting) say(at, hint, format string, args ...any) {
	c.problems = append(c.problems, Problem{At: at, Message: fmt.Sprintf(format, args...), Hint: hint})
}

func (c *contradicting) text(l measure.Length) string { return l.Text(c.system) }

// support finds a ledger on a platform that is said to stand by itself.
func (c *contradicting) support(s *surface) {
	if words(s.p.Support) == "freestanding" && s.p.Ledger != nil {
		c.say(s.p.Ledger.At, "leave the ledger out, or write `support: ledger`", "the platform is said to be freestanding, and has a ledger")
	}
}

// devices finds a number of ties to the house that their places do not make up.
func (c *contradicting) devices(s *surface) {
	d := s.p.LateralDevices
	if d == nil || d.Count == nil || len(d.Positions) == 0 || d.Count.V == int64(len(d.Positions)) {
		return
	}
	c.say(d.Count.At, "", "%d lateral devices are counted, and places given for %d", d.Count.V, len(d.Positions))
}

// layout finds a spacing that joists cannot be laid out at.
func (c *contradicting) layout(s *surface) {
	if s.p.Joists == nil || s.frame == nil || s.p.Joists.Dimensions() == nil {
		return
	}
	j := s.p.Joists
	for _, spacing := range []*model.Length{j.Spacing, j.MaxSpacing} {
		if spacing == nil {
			continue
		}
		box := s.frame.Bounds()
		width := max(box.Max.X-box.Min.X, box.Max.Y-box.Min.Y)
		if _, err := geometry.EqualBays(width, j.Dimensions().V.Thickness, spacing.V); err != nil {
			c.say(spacing.At, "", "joists cannot be laid out at this spacing: %s", err)
		}
	}
}

// beams finds beams beside the platform, and posts beside their beams.
func (c *contradicting) beams(s *surface) {
	if s.ring == nil {
		return
	}
	for i := range s.p.Beams {
		b := &s.p.Beams[i]
		from, to, where, ok := s.extent(b)
		switch {
		case where == "":
			continue
		case !ok:
			c.say(where, "", "beam %q lies outside the outline", beamLabel(b, i))
			continue
		}
		c.ends(b, from, to)
		c.posts(b, beamLabel(b, i), from, to)
		c.single(s, b, beamLabel(b, i))
	}
}

// extent is where a beam reaches along its base, by the outline as described;
// where is the place of what says so, "" where the beam is not placed.
func (s *surface) extent(b *model.Beam) (from, to measure.Length, where string, ok bool) {
	if len(b.Line) == 2 {
		line := geometry.Segment{A: at(b.Line[0]), B: at(b.Line[1])}
		middle := line.At(line.Length() / 2)
		inside := s.ring.Contains(middle) != geometry.Outside || s.ring.Contains(line.A) != geometry.Outside || s.ring.Contains(line.B) != geometry.Outside
		return 0, line.Length(), b.At + "/line", inside
	}
	if b.FromHouse == nil {
		return 0, 0, "", false
	}
	left := s.ring.Bounds().Min.X
	across := geometry.Segment{A: geometry.Point{X: left, Y: b.FromHouse.V}, B: geometry.Point{X: left + measure.Metre, Y: b.FromHouse.V}}
	stretches := s.ring.ClipLine(across)
	if len(stretches) == 0 {
		return 0, 0, b.FromHouse.At, false
	}
	from, to = stretches[0].A.X-left, stretches[len(stretches)-1].B.X-left
	if b.Start != nil {
		from = max(from, b.Start.V)
	}
	if b.End != nil {
		to = min(to, b.End.V)
	}
	return from, to, b.FromHouse.At, true
}

// ends finds a beam that is said to end beyond the outline, or before it starts.
func (c *contradicting) ends(b *model.Beam, from, to measure.Length) {
	if b.End != nil && b.End.V > to {
		c.say(b.End.At, "", "the beam ends beyond the outline, which ends at %s along it", c.text(to))
	}
	if from >= to && b.Start != nil {
		c.say(b.Start.At, "", "the beam starts where it has ended already")
	}
}

// posts finds posts beyond the ends of their beam and posts listed twice.
func (c *contradicting) posts(b *model.Beam, name string, from, to measure.Length) {
	seen := map[measure.Length]bool{}
	for _, p := range b.PostsAt {
		switch {
		case seen[p.V]:
			c.say(p.At, "", "two posts of beam %q stand at %s", name, c.text(p.V))
		case p.V < from || p.V > to:
			c.say(p.At, "", "this post stands beyond beam %q, which runs from %s to %s", name, c.text(from), c.text(to))
		}
		seen[p.V] = true
	}
}

// single finds descriptions of single posts that no post of the beam answers to.
func (c *contradicting) single(s *surface, b *model.Beam, name string) {
	if s.p.Posts == nil {
		return
	}
	var there []string
	known := map[measure.Length]bool{}
	for _, p := range b.PostsAt {
		known[p.V] = true
		there = append(there, c.text(p.V))
	}
	for i := range s.p.Posts.Each {
		p := &s.p.Posts.Each[i]
		if words(p.Beam) == name && p.Along != nil && !known[p.Along.V] {
			c.say(p.Along.At, "posts stand at "+strings.Join(there, ", "), "beam %q has no post at %s", name, c.text(p.Along.V))
		}
	}
}

// stair finds a stair that leaves the house, or more edge than there is.
func (c *contradicting) stair(st *stair) {
	if r := st.s.Risers; r != nil && r.V > geometry.MaxParts {
		c.say(r.At, "", "%d risers are more than any stair has", r.V)
	}
	if st.edge < 0 || st.from.ring == nil {
		return
	}
	name := st.from.names[st.edge]
	if isHouse(name) {
		c.say(st.s.From.Edge.At, "", "edge %q lies against the house: no stair leaves there", name)
		return
	}
	if from := st.s.From; from.Along != nil && st.s.Width != nil {
		length := st.from.ring.EdgeLength(st.edge)
		if from.Along.V+st.s.Width.V > length {
			c.say(from.Along.At, "", "a stair %s wide does not fit here: edge %q is %s long", c.text(st.s.Width.V), name, c.text(length))
		}
	}
}
