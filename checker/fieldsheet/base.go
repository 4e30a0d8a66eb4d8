package fieldsheet

import (
	"math"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
)

// base is the line that tapes and strings are pulled from: the ledger on the
// house, or the edge against the house.
type base struct {
	geometry.Segment
	name string // ledger, or the name of the edge
	edge int    // of the frame
}

// findBase takes the ledger where one is shown, else the first edge against the
// house, else the first edge.
func (p *platform) findBase() base {
	b := base{name: "first edge"}
	for i, e := range p.edges {
		if e.House {
			b.edge, b.name = i, "house edge"
			break
		}
	}
	b.Segment = p.frame.Edge(b.edge)
	ledger := p.m.Ledger
	if ledger == nil || !p.framed() {
		return b
	}
	b.name = "ledger"
	// A ledger's ends are told from the left end of the outline as described.
	left := p.plan.Outline.Bounds().Min.X
	line := b.Segment
	if ledger.Start != nil {
		b.A = line.At(left + ledger.Start.V - line.A.X)
	}
	if ledger.End != nil {
		b.B = line.At(left + ledger.End.V - line.A.X)
	}
	return b
}

// place gives a point as strings locate it: along the base from its left end,
// and out from it.
func (b *base) place(q geometry.Point) (along, out measure.Length) {
	if b.A.Y == b.B.Y {
		return q.X - b.A.X, q.Y - b.A.Y
	}
	along = b.Along(q)
	ux, uy := float64(b.B.X-b.A.X), float64(b.B.Y-b.A.Y)
	side := (ux*float64(q.Y-b.A.Y) - uy*float64(q.X-b.A.X)) / math.Hypot(ux, uy)
	return along, measure.Length(math.Round(side))
}

// rectangle gives the sides of a frame with four square corners, the one at
// the base first.
func (p *platform) rectangle() (along, out measure.Length, ok bool) {
	ring := p.frame
	if len(ring) != 4 {
		return 0, 0, false
	}
	for i := range ring {
		if !p.square(i) {
			return 0, 0, false
		}
	}
	return ring.EdgeLength(p.base.edge), ring.EdgeLength((p.base.edge + 1) % 4), true
}

// square reports whether a corner of the frame is one of 90 degrees.
func (p *platform) square(corner int) bool {
	const exact = 1e-9 // degrees; corners on the axes come out whole
	return math.Abs(p.frame.InteriorAngles()[corner]-90) < exact
}

// edgeName names an edge of the frame.
func (p *platform) edgeName(i int) string {
	n := len(p.edges)
	if name := p.edges[(i+n)%n].Name; name != "" {
		return name
	}
	return "step"
}

// cornerName names a corner by the edges that meet there.
func (p *platform) cornerName(i int) string { return p.edgeName(i-1) + " / " + p.edgeName(i) }
