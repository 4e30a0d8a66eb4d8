package facts

import (
	"slices"

	"plumbrule/checker/geometry"
	"plumbrule/checker/model"
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

// wall adds the doors and windows of the house to the platforms that lie in
// front of them.
func (out *SettingOut) wall(deck *model.Deck, surfaces []*surface) {
	if deck.House == nil {
		return
	}
	for i := range deck.House.Openings {
		o := &deck.House.Openings[i]
		front := opposite(o, surfaces)
		if front == nil || o.Along == nil {
			continue
		}
		stretch, ok := front.inFront(o)
		if !ok {
			continue
		}
		line := geometry.Segment{A: geometry.Point{X: o.Along.V, Y: stretch.From}, B: geometry.Point{X: o.Along.V, Y: stretch.From}}
		if o.ClearWidth != nil {
			line.B.X += o.ClearWidth.V
		}
		k := slices.Index(surfaces, front)
		out.Platforms[k].Openings = append(out.Platforms[k].Openings, OpeningPlan{At: o.At, Kind: words(o.Kind), Mark: words(o.Mark), Line: line})
	}
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
