package facts

import (
	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
)

// frame is the wood under a platform in its place: beams, joists cut to pieces,
// and how far the boards on top reach. There are no pieces where the joists
// cannot be placed.
type frame struct {
	*surface
	layout layout
	beams  []carrier
	pieces []piece
	boards covering
}

// newFrame places what the platform shows.
func newFrame(s *surface) *frame {
	fr := &frame{surface: s}
	fr.place()
	if s.ring != nil && s.p.Decking != nil {
		fr.boards = s.covering()
	}
	return fr
}

// place lays out the joists, finds the beams and cuts the joists to pieces.
func (fr *frame) place() {
	s := fr.surface
	if s.p.Joists != nil {
		fr.layout = s.layOut()
	}
	if s.ring == nil {
		return
	}
	fr.beams = s.carriers(&fr.layout)
	if fr.placed() {
		ring := fr.layout.plan(s.frame)
		for _, x := range fr.layout.centers {
			fr.pieces = append(fr.pieces, s.pieces(&fr.layout, ring, fr.beams, x)...)
		}
		for i := range fr.pieces {
			s.cut(&fr.pieces[i])
		}
	}
}

// placed reports whether the platform has joists that can be laid out.
func (fr *frame) placed() bool { return fr.p.Joists != nil && fr.layout.missing == "" }

// cut finds where the stick ends: short of what closes the stretch at either
// end, the ledger or header it hangs on or the rim joist nailed over it.
func (s *surface) cut(p *piece) {
	p.stick = p.reach
	if len(p.bearings) == 0 || s.frameMissing != "" {
		return
	}
	from, ok1 := s.cutAt(p, &p.bearings[0], p.reach.From, 1)
	to, ok2 := s.cutAt(p, &p.bearings[len(p.bearings)-1], p.reach.To, -1)
	if ok1 {
		p.stick.From = from
	}
	if ok2 {
		p.stick.To = to
	}
	p.isCut = ok1 && ok2
}

// cutAt is where the stick ends at one edge, inwards being the direction into
// the piece; false where what closes it is not shown.
func (s *surface) cutAt(p *piece, b *bearing, edge measure.Length, inwards measure.Length) (measure.Length, bool) {
	for i := range p.resting {
		if h := &p.resting[i]; h.endsAt(edge) {
			return h.center + inwards*h.half, h.missing == ""
		}
	}
	if b.ends && b.endsAt(edge) {
		return b.center + inwards*b.half, b.missing == ""
	}
	rim := s.p.RimJoist
	if rim == nil || rim.Dimensions() == nil {
		return 0, false
	}
	thickness := rim.Dimensions().V.Thickness
	if rim.Plies != nil {
		thickness *= measure.Length(rim.Plies.V)
	}
	return edge + inwards*thickness, true
}

// endNames tells what a piece ends on: ledger, header, the mark of a flush
// beam, or the rim that closes the frame.
func (p *piece) endNames() (from, to string) {
	const rim = "rim"
	from, to = rim, rim
	for _, list := range [][]bearing{p.resting, p.bearings} {
		for i := range list {
			switch b := &list[i]; {
			case !b.ends:
			case b.endsAt(p.reach.From):
				from = b.name
			case b.endsAt(p.reach.To):
				to = b.name
			}
		}
	}
	return from, to
}

// along turns a stretch of the piece back to the plan as described.
func (p *piece) along(l *layout, stretch geometry.Interval) geometry.Segment {
	return geometry.Segment{
		A: l.point(geometry.Point{X: p.x, Y: stretch.From}),
		B: l.point(geometry.Point{X: p.x, Y: stretch.To}),
	}
}
