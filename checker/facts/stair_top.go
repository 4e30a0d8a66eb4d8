package facts

import (
	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
)

// topLanding is the one described, or else the platform inwards from the edge
// that the stair leaves.
func (st *stair) topLanding() Landing {
	fact := Landing{
		At: []string{st.s.At}, Stair: st.label, Where: "top", StairWidth: st.width(), Use: shown(st.s.Use),
		Risers: st.flights[0].risers, DoorsApart: st.doorsApart(),
	}
	if l := st.s.LandingTop; l != nil {
		const field = "stairs[].landing_top"
		fact.describe(l, sidesOf(l, st.leaves(), st.wayMissing(field), field))
		return fact
	}
	if st.leaves() == anyWay {
		fact.wait("stairs[].landing_top")
		return fact
	}
	from := st.s.From
	fact.At = []string{from.At}
	fact.Width = of(st.from.ring.EdgeLength(st.edge), from.At, st.from.p.Outline.At)
	switch {
	case from.Along == nil:
		fact.DepthField = "stairs[].from.at"
	case st.s.Width == nil:
		fact.DepthField = "stairs[].width"
	default:
		if fact.Depth = st.depthBehind(); fact.Depth == nil {
			fact.DepthField = "stairs[].landing_top"
		}
	}
	return fact
}

// depthBehind is how far the platform reaches inwards from the middle of the
// stair: to the other side of the outline, or to an opening that the stair is
// walked from or to before that. Nil where the stair stands off the platform.
func (st *stair) depthBehind() *Length {
	edge, along, width := st.from.ring.Edge(st.edge), st.s.From.Along.V, st.s.Width.V
	lane := laneBetween(edge.At(along), edge.At(along+width), st.leaves())
	middle := lane.turn(edge.At(along + width/2))
	var depth *Length
	for _, stretch := range st.from.ring.Scan(lane.fixed, middle.X) {
		if stretch.From == middle.Y || stretch.To == middle.Y {
			depth = of(stretch.Length(), st.s.From.Along.At, st.from.p.Outline.At)
			lane.from, lane.inwards = middle.Y, stretch.From == middle.Y
		}
	}
	if depth == nil || st.from.p.Joists == nil {
		return depth
	}
	for i := range st.from.p.Joists.Openings {
		o := &st.from.p.Joists.Openings[i]
		if o.Covered != nil && o.Covered.V {
			continue
		}
		if free, ok := lane.freeOf(openingRing(o)); ok && free < depth.Value {
			depth = of(free, st.s.From.Along.At, o.At)
		}
	}
	return depth
}

// lane is the strip of a platform that is as wide as a stair and lies straight
// behind it. Its plan is turned so that it runs along Y.
type lane struct {
	fixed   geometry.Axis // held while walking along it
	across  geometry.Interval
	from    measure.Length // where the stair starts
	inwards bool           // true where the platform lies towards greater Y
}

// laneBetween is the lane behind a stair between two points of an edge.
func laneBetween(a, b geometry.Point, w way) lane {
	l := lane{fixed: geometry.X}
	if w == alongHouse {
		l.fixed = geometry.Y
	}
	a, b = l.turn(a), l.turn(b)
	l.across = geometry.Interval{From: min(a.X, b.X), To: max(a.X, b.X)}
	return l
}

// turn gives a point of the platform as the lane has it.
func (l *lane) turn(p geometry.Point) geometry.Point {
	if l.fixed == geometry.Y {
		return geometry.Point{X: p.Y, Y: p.X}
	}
	return p
}

// freeOf is the length of the lane up to an opening; false where the opening
// lies beside it or behind the edge.
func (l *lane) freeOf(opening geometry.Ring) (free measure.Length, ok bool) {
	var ends []measure.Length // along the lane, of the part of the opening in it
	low, high := false, false // whether the opening reaches over a side of the lane
	for _, corner := range opening {
		p := l.turn(corner)
		low, high = low || p.X < l.across.To, high || p.X > l.across.From
		if p.X >= l.across.From && p.X <= l.across.To {
			ends = append(ends, p.Y)
		}
	}
	if !low || !high {
		return 0, false
	}
	for _, side := range []measure.Length{l.across.From, l.across.To} {
		for _, cut := range opening.Scan(l.fixed, side) {
			ends = append(ends, cut.From, cut.To)
		}
	}
	for _, y := range ends {
		away := y - l.from
		if !l.inwards {
			away = -away
		}
		if away >= 0 && (!ok || away < free) {
			free, ok = away, true
		}
	}
	return free, ok
}
