package facts

import (
	"math"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// groundBelow is how far the ground lies below the walking surface at a place
// on the plan. It follows the ground shown at points and the slope shown for
// the site; where a platform shows drops at its edges only, the greatest of
// them stands for all of it, which makes posts taller rather than shorter.
func (s *surface) groundBelow(p geometry.Point) *Length {
	if near := s.nearestGrade(p); near != nil {
		return s.onSlope(near, p)
	}
	var deepest *Length
	if s.p.SurfaceAboveGrade != nil {
		deepest = shown(s.p.SurfaceAboveGrade)
	}
	for _, e := range s.p.Edges {
		for _, drop := range []*model.Length{e.Value.Drop, e.Value.DropWithin36, e.Value.DropWithin1200} {
			if d := shown(drop); longer(d, deepest) {
				deepest = d
			}
		}
	}
	return deepest
}

// nearestGrade is the point of known ground nearest to a place.
func (s *surface) nearestGrade(p geometry.Point) *model.GradePoint {
	var nearest *model.GradePoint
	for i := range s.p.GradeAt {
		g := &s.p.GradeAt[i]
		if g.Place == nil || g.BelowSurface == nil {
			continue
		}
		if nearest == nil || at(g.Place).To(p) < at(nearest.Place).To(p) {
			nearest = g
		}
	}
	return nearest
}

// onSlope carries known ground to another place: by the site's slope, or along
// the line to a second known point; level where neither is shown.
func (s *surface) onSlope(known *model.GradePoint, p geometry.Point) *Length {
	from := at(known.Place)
	dx, dy := float64(p.X-from.X), float64(p.Y-from.Y)
	if site := s.deck.Site; site != nil && site.GradeFall != nil && site.GradeFall.Slope != nil && site.GradeFall.Direction != nil {
		fall := site.GradeFall
		forward := map[string]float64{"out": dy, "in": -dy, "right": dx, "left": -dx}[fall.Direction.V]
		lower := share(measure.Length(math.Round(forward)), fall.Slope.V.Rise, fall.Slope.V.Run)
		return of(known.BelowSurface.V+lower, known.BelowSurface.At, fall.Slope.At)
	}
	for i := range s.p.GradeAt {
		other := &s.p.GradeAt[i]
		if other == known || other.Place == nil || other.BelowSurface == nil {
			continue
		}
		vx, vy := float64(other.Place.X-from.X), float64(other.Place.Y-from.Y)
		square := vx*vx + vy*vy
		if square == 0 {
			continue
		}
		part := (dx*vx + dy*vy) / square
		lower := measure.Length(math.Round(part * float64(other.BelowSurface.V-known.BelowSurface.V)))
		return of(known.BelowSurface.V+lower, known.BelowSurface.At, other.BelowSurface.At)
	}
	return shown(known.BelowSurface)
}
