package facts

import (
	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// addOpenings works out the doors and windows of the house against the
// platforms in front of them.
func (f *Facts) addOpenings(deck *model.Deck, surfaces []*surface) {
	if deck.House == nil {
		return
	}
	for i := range deck.House.Openings {
		o := &deck.House.Openings[i]
		front := opposite(o, surfaces)
		switch words(o.Kind) {
		case "door":
			f.Doors = append(f.Doors, door(o, front))
		case "window":
			f.Windows = append(f.Windows, window(o, front))
		}
	}
}

// opposite finds the platform in front of an opening: the one it names, or the
// one whose house edge lies there.
func opposite(o *model.Opening, surfaces []*surface) *surface {
	for _, s := range surfaces {
		if o.Platform != nil {
			if s.label == o.Platform.V {
				return s
			}
			continue
		}
		if _, ok := s.inFront(o); ok {
			return s
		}
	}
	return nil
}

// inFront is the stretch of the platform straight out from the middle of an
// opening, from the house edge.
func (s *surface) inFront(o *model.Opening) (geometry.Interval, bool) {
	if s.ring == nil || o.Along == nil {
		return geometry.Interval{}, false
	}
	middle := o.Along.V
	if o.ClearWidth != nil {
		middle += o.ClearWidth.V / 2
	}
	for i, name := range s.names {
		if !isHouse(name) {
			continue
		}
		y, ok := s.ring.Edge(i).CrossX(middle)
		if !ok {
			continue
		}
		for _, stretch := range s.ring.Scan(geometry.X, middle) {
			if stretch.From == y {
				return stretch, true
			}
		}
	}
	return geometry.Interval{}, false
}

func door(o *model.Opening, front *surface) Door {
	d := Door{
		At: []string{o.At}, StepDown: shown(o.ThresholdAboveDecking), SwingsOver: shown(o.SwingsOverDeck),
		RequiredExit: shown(o.RequiredEgressDoor), ClearWidth: shown(o.ClearWidth),
		LandingDepth: shown(o.LandingDepth), LandingWidth: shown(o.LandingAlong),
	}
	if front == nil {
		return d
	}
	d.Platform = front.label
	if above := front.p.SurfaceAboveGrade; above != nil && d.StepDown != nil {
		d.AboveGrade = of(above.V+d.StepDown.Value, append([]string{above.At}, d.StepDown.At...)...)
	}
	stretch, ok := front.inFront(o)
	if ok && d.LandingDepth == nil {
		d.LandingDepth = of(stretch.Length(), o.At, front.p.Outline.At)
	}
	if ok && d.LandingWidth == nil && o.ClearWidth != nil {
		d.LandingWidth = front.widthBefore(o, stretch.From)
	}
	return d
}

// widthBefore is how much of the opening's width the platform lies in front of,
// seen just off the house; the whole stretch of the platform where it covers it.
func (s *surface) widthBefore(o *model.Opening, house measure.Length) *Length {
	for _, stretch := range s.ring.Scan(geometry.Y, house+measure.Inch) {
		from, to := max(stretch.From, o.Along.V), min(stretch.To, o.Along.V+o.ClearWidth.V)
		if from < to {
			return of(to-from, o.Along.At, s.p.Outline.At)
		}
	}
	return nil
}

func window(o *model.Opening, front *surface) Window {
	w := Window{
		At: []string{o.At}, Egress: shown(o.Egress),
		PathHeight: shown(o.ClearPathHeight), PathWidth: shown(o.ClearPathWidth), WellToFrame: shown(o.WellTopBelowFraming),
	}
	if front != nil {
		w.Platform = front.label
	}
	return w
}
