package facts

import (
	"slices"

	"plumbrule/checker/geometry"
)

// setOut finds the stretch of the edge that the stair takes up.
func (st *stair) setOut(surfaces []*surface) StairPlan {
	plan := StairPlan{At: st.s.At, Label: st.label, Platform: slices.Index(surfaces, st.from), Edge: st.edge}
	switch {
	case st.from == nil:
		plan.Missing = "stairs[].from.platform"
	case st.from.ring == nil:
		plan.Missing = "platforms[].outline"
	case st.edge < 0:
		plan.Missing = "stairs[].from.edge"
	case st.s.From.Along == nil:
		plan.Missing = "stairs[].from.at"
	case st.s.Width == nil:
		plan.Missing = "stairs[].width"
	default:
		edge, near := st.from.ring.Edge(st.edge), st.s.From.Along.V
		plan.Top = &geometry.Segment{A: edge.At(near), B: edge.At(near + st.s.Width.V)}
	}
	return plan
}

// setOut draws a door or window on the face of the house; false where no
// platform lies in front of it.
func (f *front) setOut() (OpeningPlan, bool) {
	o := f.opening
	if !f.before {
		return OpeningPlan{}, false
	}
	line := geometry.Segment{A: geometry.Point{X: o.Along.V, Y: f.stretch.From}, B: geometry.Point{X: o.Along.V, Y: f.stretch.From}}
	if o.ClearWidth != nil {
		line.B.X += o.ClearWidth.V
	}
	return OpeningPlan{At: o.At, Kind: words(o.Kind), Mark: words(o.Mark), Line: line}, true
}

// GroundOnSlope is how far the ground lies below the surface at a place, where
// points of known ground and a slope, or a second point, carry it there. It is
// nil where the design shows drops at edges only, or one point and no slope.
func (p *PlatformPlan) GroundOnSlope(place geometry.Point) *Length {
	s := p.surface
	known := s.nearestGrade(place)
	if known == nil {
		return nil
	}
	if at(known.Place) == place {
		return shown(known.BelowSurface)
	}
	if ground := s.onSlope(known, place); len(ground.At) > 1 {
		return ground
	}
	return nil
}
