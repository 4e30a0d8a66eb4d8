package facts

import (
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// wait names the field that both measures of a landing wait for.
func (l *Landing) wait(field string) { l.DepthField, l.WidthField = field, field }

// describe takes over what the design says of a landing.
func (l *Landing) describe(d *model.Landing, s sides) {
	l.At = []string{d.At}
	l.Depth, l.Width, l.DepthField, l.WidthField = s.depth, s.width, s.depthField, s.widthField
	l.LesserSide, l.GreaterSide, l.WayMissing = s.lesser, s.greater, s.missing
	l.SlopeAlong, l.SlopeOut = ratio(d.SlopeAlong), ratio(d.SlopeOut)
	l.Turn, l.DoorSwings, l.DoorClear = shown(d.Turn), shown(d.DoorSwingsOver), shown(d.ClearOfDoor)
}

// landingField is the field that describes the landing at the foot of flight i.
func (st *stair) landingField(i int) string {
	switch {
	case i < len(st.s.Flights) && st.s.Flights[i].LandingBelow != nil:
		return "stairs[].flights[].landing_below"
	case i < len(st.flights)-1:
		return "stairs[].landing_between"
	}
	return "stairs[].landing_bottom"
}

// doorsApart tells whether all doors on the platform that the stair leaves keep
// clear of it and are not the required exit. One that does not decides, whatever
// is not shown of the others.
func (st *stair) doorsApart() *Flag {
	if st.from == nil || st.deck.House == nil {
		return nil
	}
	var places []string
	open := false
	for i := range st.deck.House.Openings {
		o := &st.deck.House.Openings[i]
		if words(o.Kind) != "door" || opposite(o, []*surface{st.from}).surface == nil {
			continue
		}
		places = append(places, o.At)
		swings, exit := o.SwingsOverDeck, o.RequiredEgressDoor
		slides := o.Sliding != nil && o.Sliding.V
		switch {
		case swings != nil && swings.V && !slides:
			return of(false, swings.At)
		case exit != nil && exit.V:
			return of(false, exit.At)
		case swings == nil && !slides, exit == nil:
			open = true
		}
	}
	if open || len(places) == 0 {
		return nil
	}
	return of(true, places...)
}

// crossFall sets how much lower one side of the landing below flight i lies than
// the other across the width of the stair, and the slope that makes it so. Where
// it is not known which of the two slopes lies across, both are set.
func (st *stair) crossFall(fact *Flight, b *model.Landing, i int) {
	along, out := slopeOf(b.SlopeAlong), slopeOf(b.SlopeOut)
	switch w := st.wayOf(i); {
	case w == outFromHouse:
		fact.CrossSlope, fact.CrossFall = along, st.fallAcross(along)
	case w == alongHouse:
		fact.CrossSlope, fact.CrossFall = out, st.fallAcross(out)
	case along == nil || out == nil:
	default:
		gentle, steep := gentler(along, out)
		fact.CrossSlopeLesser, fact.CrossSlopeGreater = gentle, steep
		fact.CrossFallLesser, fact.CrossFallGreater = st.fallAcross(gentle), st.fallAcross(steep)
		fact.WayMissing = st.wayMissing("stairs[].landing_bottom")
	}
}

// slopeOf is a slope that has a run, nil of one that has none.
func slopeOf(s *model.Slope) *Slope {
	if s == nil || s.V.Run == 0 {
		return nil
	}
	return ratio(s)
}

// gentler orders two slopes by how steep they are, whichever way they fall.
func gentler(a, b *Slope) (gentle, steep *Slope) {
	rise := func(s *Slope) measure.Length { return apart(measure.Length(s.Value.Rise), 0) }
	if steeper(rise(a), measure.Length(a.Value.Run), rise(b), measure.Length(b.Value.Run)) {
		return b, a
	}
	return a, b
}

// fallAcross is the fall of a slope over the width of the stair.
func (st *stair) fallAcross(slope *Slope) *Length {
	if slope == nil || st.s.Width == nil {
		return nil
	}
	fall := share(st.s.Width.V, slope.Value.Rise, slope.Value.Run)
	return of(apart(fall, 0), slope.At[0], st.s.Width.At)
}
