package facts

import (
	"cmp"
	"math"
	"slices"
	"strconv"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// bearing is one thing that carries a joist, seen along that joist.
type bearing struct {
	name   string
	at     string // pointer of what places it
	center measure.Length
	half   measure.Length // half its width along the joist
	ends   bool           // joists end at it: a flush beam, a ledger, a header
	header bool
	beam   *carrier // nil for a ledger or a header
	// missing is the field without which its width is not known.
	missing string
}

func (b *bearing) near() measure.Length { return b.center - b.half }
func (b *bearing) far() measure.Length  { return b.center + b.half }

// endsAt reports whether joists that reach to the edge end on the bearing.
func (b *bearing) endsAt(edge measure.Length) bool {
	return b.far() >= edge && b.near() <= edge || apart(b.center, edge) <= 2*b.half
}

// carrier is a beam on the plan, ready to be crossed by joist lines.
type carrier struct {
	beam     *model.Beam
	name, at string
	// base is the line that posts and joints are measured along, from its A.
	base    geometry.Segment
	drawn   []geometry.Segment  // where the beam lies
	lines   []geometry.Segment  // the same, in the layout's plan
	reach   []geometry.Interval // the same, along the base
	width   measure.Length
	flush   bool
	missing string
	// unplaced is the field without which the beam has no place, "" where it has
	// one. What is described of it is told all the same.
	unplaced string
}

// carriers lists the beams of a platform that show their place.
func (s *surface) carriers(l *layout) []carrier {
	list := make([]carrier, 0, len(s.p.Beams))
	for i := range s.p.Beams {
		b := &s.p.Beams[i]
		c := carrier{beam: b, name: beamLabel(b, i), flush: words(b.Kind) == "flush"}
		switch {
		case len(b.Line) == 2:
			c.at = b.At + "/line"
			c.base = geometry.Segment{A: at(b.Line[0]), B: at(b.Line[1])}
			c.drawn = []geometry.Segment{c.base}
		case b.FromHouse != nil:
			c.at = b.FromHouse.At
			c.base, c.drawn = s.alongHouse(b)
		default:
			continue
		}
		for _, line := range c.drawn {
			c.reach = append(c.reach, geometry.Interval{From: c.base.Along(line.A), To: c.base.Along(line.B)})
			c.lines = append(c.lines, geometry.Segment{A: l.point(line.A), B: l.point(line.B)})
		}
		c.width, c.missing = breadth(&b.Member, "platforms[].beams[]")
		list = append(list, c)
	}
	return list
}

// unplaced is a beam whose place is not shown.
func (s *surface) unplaced(b *model.Beam, i int) *carrier {
	c := &carrier{beam: b, name: beamLabel(b, i), at: b.At, flush: words(b.Kind) == "flush", unplaced: "platforms[].beams[].from_house"}
	if s.ring == nil {
		c.unplaced = "platforms[].outline"
	}
	c.width, c.missing = breadth(&b.Member, "platforms[].beams[]")
	return c
}

// alongHouse places a beam that lies along the house: from outline to outline,
// or from its start to its end where those are shown. Its base runs from the
// left end of the outline as described.
func (s *surface) alongHouse(b *model.Beam) (base geometry.Segment, lines []geometry.Segment) {
	y, left := b.FromHouse.V, s.ring.Bounds().Min.X
	base = geometry.Segment{A: geometry.Point{X: left, Y: y}, B: geometry.Point{X: left + measure.Metre, Y: y}}
	for _, line := range s.frame.ClipLine(base) {
		if b.Start != nil {
			line.A.X = max(line.A.X, left+b.Start.V)
		}
		if b.End != nil {
			line.B.X = min(line.B.X, left+b.End.V)
		}
		if line.A.X < line.B.X {
			lines = append(lines, line)
		}
	}
	return base, lines
}

func beamLabel(b *model.Beam, i int) string {
	if b.Mark != nil {
		return b.Mark.V
	}
	return "beam " + strconv.Itoa(i+1)
}

func at(p *model.Point) geometry.Point { return geometry.Point{X: p.X, Y: p.Y} }

// breadth is the width of a built-up member over all its plies, or the field
// that it waits for.
func breadth(m *model.Member, path string) (measure.Length, string) {
	d := m.Dimensions()
	switch {
	case d == nil:
		return 0, path + ".size"
	case m.Plies == nil:
		// A single stick thicker than the stock of built-up beams is one ply.
		if d.V.Thickness > 2*measure.Inch {
			return d.V.Thickness, ""
		}
		return 0, path + ".plies"
	}
	return d.V.Thickness * measure.Length(m.Plies.V), ""
}

// cross gives the bearing of a carrier on the joist line at x.
func (c *carrier) cross(x measure.Length) (bearing, bool) {
	for _, line := range c.lines {
		y, ok := line.CrossX(x)
		if !ok {
			continue
		}
		return bearing{
			name: c.name, at: c.at, center: y, ends: c.flush, missing: c.missing, beam: c,
			half: scaled(c.width, slant(line)/2),
		}, true
	}
	return bearing{}, false
}

// slant is how much longer the way across a member is along a joist that it
// does not meet square.
func slant(line geometry.Segment) float64 {
	dx, dy := float64(line.B.X-line.A.X), float64(line.B.Y-line.A.Y)
	return math.Hypot(dx, dy) / math.Abs(dx)
}

// piece is one stick of joist: a stretch of a joist line between openings,
// flush beams and the frame's edges, with what carries it.
type piece struct {
	x        measure.Length
	reach    geometry.Interval
	bearings []bearing
	// resting are headers that lie on a beam: the beam carries, but the stick
	// ends at them all the same.
	resting []bearing
	// stick is the stretch from cut to cut; an end whose cut does not follow
	// from what is shown is that of reach, and isCut is false then.
	stick geometry.Interval
	isCut bool
}

// unsupported reports whether fewer than two supports carry the piece.
func (p *piece) unsupported() bool { return len(p.bearings) < 2 }

// pieces cuts the joist line at x.
func (s *surface) pieces(l *layout, ring geometry.Ring, beams []carrier, x measure.Length) []piece {
	var list []piece
	holes := s.holes(l, x)
	for _, stretch := range geometry.Without(ring.Scan(geometry.X, x), holes) {
		p := piece{x: x, reach: stretch}
		if b, ok := s.ledgerAt(l, ring, x, stretch.From); ok {
			p.bearings = append(p.bearings, b)
		}
		for i := range beams {
			if b, ok := beams[i].cross(x); ok && b.far() >= stretch.From && b.near() <= stretch.To {
				p.bearings = append(p.bearings, b)
			}
		}
		p.bearings = append(p.bearings, s.headers(l, holes, x, stretch)...)
		p.settle()
		list = append(list, p.split()...)
	}
	return list
}

// settle orders the bearings and drops a header that rests on a beam: there the
// beam carries.
func (p *piece) settle() {
	slices.SortStableFunc(p.bearings, func(a, b bearing) int { return cmp.Compare(a.center, b.center) })
	all := slices.Clone(p.bearings)
	p.bearings = slices.DeleteFunc(p.bearings, func(h bearing) bool {
		rests := h.header && slices.ContainsFunc(all, func(b bearing) bool {
			return !b.header && b.near() < h.far() && h.near() < b.far()
		})
		if rests {
			p.resting = append(p.resting, h)
		}
		return rests
	})
}

// split cuts a piece at the flush beams inside it.
func (p *piece) split() []piece {
	var list []piece
	from, first := p.reach.From, 0
	for i, b := range p.bearings {
		if b.ends && b.near() > from && b.far() < p.reach.To && i > 0 && i < len(p.bearings)-1 {
			list = append(list, piece{x: p.x, reach: geometry.Interval{From: from, To: b.near()}, bearings: p.bearings[first : i+1], resting: p.resting})
			from, first = b.far(), i
		}
	}
	return append(list, piece{x: p.x, reach: geometry.Interval{From: from, To: p.reach.To}, bearings: p.bearings[first:], resting: p.resting})
}

// ledgerAt is the ledger's bearing where a stretch starts at a house edge that
// runs across the joists.
func (s *surface) ledgerAt(l *layout, ring geometry.Ring, x, from measure.Length) (bearing, bool) {
	if words(s.p.Support) != "ledger" && s.p.Ledger == nil {
		return bearing{}, false
	}
	for i, name := range s.edgeNames(l) {
		if !isHouse(name) {
			continue
		}
		if y, ok := ring.Edge(i).CrossX(x); !ok || y != from || !s.onLedger(x) {
			continue
		}
		b := bearing{name: "ledger", at: s.p.At, ends: true}
		if s.p.Ledger == nil {
			b.missing = "platforms[].ledger.size"
			b.center = from
			return b, true
		}
		b.at = s.p.Ledger.At
		if d := s.p.Ledger.Dimensions(); d != nil {
			b.half = d.V.Thickness / 2
		} else {
			b.missing = "platforms[].ledger.size"
		}
		b.center = from + b.half
		return b, true
	}
	return bearing{}, false
}

// onLedger reports whether the ledger reaches to x; one that shows no ends runs
// along the whole house edge.
func (s *surface) onLedger(x measure.Length) bool {
	ledger := s.p.Ledger
	if ledger == nil {
		return true
	}
	left := s.ring.Bounds().Min.X
	return (ledger.Start == nil || x >= left+ledger.Start.V) && (ledger.End == nil || x <= left+ledger.End.V)
}

// edgeNames gives the names of the frame's edges in the order of the layout's plan.
func (s *surface) edgeNames(l *layout) []string {
	names := s.frameNames()
	if !l.turned {
		return names
	}
	// Turned, edge i of the new ring runs between the images of corners n-1-i
	// and n-2-i, which is the old edge n-2-i.
	n := len(names)
	turned := make([]string, n)
	for i := range turned {
		turned[i] = names[(2*n-2-i)%n]
	}
	return turned
}

// holes are the parts of the joist line at x that lie in openings of the frame.
func (s *surface) holes(l *layout, x measure.Length) []geometry.Interval {
	var list []geometry.Interval
	for i := range s.p.Joists.Openings {
		ring := l.plan(openingRing(&s.p.Joists.Openings[i]))
		box := ring.Bounds()
		if x <= box.Min.X || x >= box.Max.X {
			continue // along the side of the opening runs a trimmer
		}
		list = append(list, ring.Scan(geometry.X, x)...)
	}
	slices.SortFunc(list, func(a, b geometry.Interval) int { return cmp.Compare(a.From, b.From) })
	return list
}

func openingRing(o *model.FrameOpening) geometry.Ring {
	ring := make(geometry.Ring, len(o.Corners))
	for i, c := range o.Corners {
		ring[i] = at(c)
	}
	return ring
}

// headers are the bearings where a stretch starts or ends at an opening.
func (s *surface) headers(l *layout, holes []geometry.Interval, x measure.Length, stretch geometry.Interval) []bearing {
	var list []bearing
	for _, hole := range holes {
		if hole.To != stretch.From && hole.From != stretch.To {
			continue
		}
		o := s.openingAt(l, x, hole)
		b := bearing{name: "header", at: o.At, ends: true, header: true, missing: "platforms[].joists.openings[].headers"}
		if o.Headers != nil {
			width, missing := breadth(o.Headers, b.missing)
			b.half, b.missing = width/2, missing
		}
		b.center = stretch.To - b.half
		if hole.To == stretch.From {
			b.center = stretch.From + b.half
		}
		list = append(list, b)
	}
	return list
}

// openingAt finds the opening that a hole in the joist line at x belongs to.
func (s *surface) openingAt(l *layout, x measure.Length, hole geometry.Interval) *model.FrameOpening {
	list := s.p.Joists.Openings
	for i := range list {
		if slices.Contains(l.plan(openingRing(&list[i])).Scan(geometry.X, x), hole) {
			return &list[i]
		}
	}
	return &list[0]
}
