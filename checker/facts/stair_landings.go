package facts

import "plumbrule/checker/model"

// wait names the field that both measures of a landing wait for.
func (l *Landing) wait(field string) { l.DepthField, l.WidthField = field, field }

// describe takes over what the design says of a landing under a field.
func (l *Landing) describe(st *stair, d *model.Landing, field string) {
	l.At = []string{d.At}
	l.Depth, l.Width = st.travel(d)
	l.DepthField, l.WidthField = st.travelFields(d, field)
	l.SlopeAlong, l.SlopeOut = ratio(d.SlopeAlong), ratio(d.SlopeOut)
	l.Turn, l.DoorSwings, l.DoorClear = shown(d.Turn), shown(d.DoorSwingsOver), shown(d.ClearOfDoor)
}

// travelFields are the fields that depth and width of a landing wait for, ""
// for one that is shown.
func (st *stair) travelFields(d *model.Landing, field string) (depth, width string) {
	depth, width = field+".out", field+".along"
	side, known := st.across()
	if known && side {
		depth, width = width, depth
	}
	missing := map[string]bool{field + ".out": d.Out == nil, field + ".along": d.Along == nil}
	if !known { // which of the two is the depth follows from neither alone
		switch {
		case missing[depth]:
			return depth, depth
		case missing[width]:
			return width, width
		}
		return "", ""
	}
	if !missing[depth] {
		depth = ""
	}
	if !missing[width] {
		width = ""
	}
	return depth, width
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
