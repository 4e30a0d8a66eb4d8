package facts

import "plumbrule/checker/model"

// openings lists the openings framed in the platform with what shows whether
// people may fall through them.
func (s *surface) openings() []PlatformOpening {
	if s.p.Joists == nil {
		return nil
	}
	list := make([]PlatformOpening, len(s.p.Joists.Openings))
	for i := range list {
		o := &s.p.Joists.Openings[i]
		list[i] = PlatformOpening{
			At: []string{o.At}, Platform: s.label, Name: "opening",
			Gap: narrowest(o), Drop: s.dropThrough(o), Covered: o.Covered != nil && o.Covered.V,
		}
		if what := words(o.What); what != "" {
			list[i].Name = what + " opening"
		}
		if g := o.Guard; g != nil {
			list[i].Told = true
			if g.V != model.NoGuard {
				list[i].Guarded, list[i].Guard = true, g.V
			}
		}
	}
	return list
}

// narrowest is the lesser side of an opening, of the rectangle round it along
// the house and out from it where it is no rectangle itself.
func narrowest(o *model.FrameOpening) *Length {
	if len(o.Corners) == 0 {
		return nil
	}
	box := openingRing(o).Bounds()
	return of(min(box.Max.X-box.Min.X, box.Max.Y-box.Min.Y), o.At)
}

// dropThrough is the drop below an opening: as stated, else at its lowest corner
// as ground shown at points gives it, else the height of the whole surface.
func (s *surface) dropThrough(o *model.FrameOpening) *Length {
	if o.Drop != nil {
		return shown(o.Drop)
	}
	if len(s.p.GradeAt) == 0 {
		return s.levelDrop(&model.Edge{})
	}
	var deepest *Length
	for _, corner := range openingRing(o) {
		if s.nearestGrade(corner) == nil {
			return nil
		}
		if d := s.groundBelow(corner); longer(d, deepest) {
			deepest = d
		}
	}
	return deepest
}

// standsOn gives the opening as an edge that a guard stands on. What counts
// there is the ground straight below, so it stands for every distance out.
func (o *PlatformOpening) standsOn() *Edge {
	e := &Edge{At: o.At, Platform: o.Platform, Name: o.Name, Guarded: o.Guarded, Guard: o.Guard}
	e.Drops = drops(&model.Edge{})
	for i := range e.Drops {
		e.Drops[i].Drop = o.Drop
	}
	return e
}
