package facts

import (
	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// front is a door or window of the house with the platform in front of it.
type front struct {
	opening *model.Opening
	surface *surface // nil where no platform lies there
	// stretch is the platform straight out from the middle of the opening, from
	// the house edge, where before is true.
	stretch geometry.Interval
	before  bool
}

// findFronts finds the platform in front of every opening of the house.
func findFronts(deck *model.Deck, surfaces []*surface) []front {
	if deck.House == nil {
		return nil
	}
	list := make([]front, len(deck.House.Openings))
	for i := range list {
		list[i] = opposite(&deck.House.Openings[i], surfaces)
	}
	return list
}

// opposite finds the platform in front of an opening: the one it names, or the
// one whose house edge lies there.
func opposite(o *model.Opening, surfaces []*surface) front {
	for _, s := range surfaces {
		if o.Platform != nil && s.label != o.Platform.V {
			continue
		}
		stretch, ok := s.inFront(o)
		if ok || o.Platform != nil {
			return front{opening: o, surface: s, stretch: stretch, before: ok}
		}
	}
	return front{opening: o}
}

// addOpenings works out the doors and windows of the house against the
// platforms in front of them.
func (f *Facts) addOpenings(fronts []front) {
	for i := range fronts {
		switch words(fronts[i].opening.Kind) {
		case "door":
			f.Doors = append(f.Doors, fronts[i].door())
		case "window":
			f.Windows = append(f.Windows, fronts[i].window())
		}
	}
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

func (f *front) door() Door {
	o, s := f.opening, f.surface
	d := Door{
		At: []string{o.At}, StepDown: shown(o.ThresholdAboveDecking), SwingsOver: shown(o.SwingsOverDeck),
		RequiredExit: shown(o.RequiredEgressDoor), ClearWidth: shown(o.ClearWidth),
		LandingDepth: shown(o.LandingDepth), LandingWidth: shown(o.LandingAlong),
	}
	if s == nil {
		return d
	}
	d.Platform = s.label
	if above := s.p.SurfaceAboveGrade; above != nil && d.StepDown != nil {
		d.AboveGrade = of(above.V+d.StepDown.Value, append([]string{above.At}, d.StepDown.At...)...)
	}
	if f.before && d.LandingDepth == nil {
		d.LandingDepth = of(f.stretch.Length(), o.At, s.p.Outline.At)
	}
	if f.before && d.LandingWidth == nil && o.ClearWidth != nil {
		d.LandingWidth = s.widthBefore(o, f.stretch.From)
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

func (f *front) window() Window {
	o := f.opening
	w := Window{
		At: []string{o.At}, Egress: shown(o.Egress),
		PathHeight: shown(o.ClearPathHeight), PathWidth: shown(o.ClearPathWidth), WellToFrame: shown(o.WellTopBelowFraming),
	}
	if f.surface != nil {
		w.Platform = f.surface.label
	}
	return w
}
