package facts

import "plumbrule/checker/model"

// describe takes over what the design says of a landing.
func (l *Landing) describe(st *stair, d *model.Landing) {
	l.At = []string{d.At}
	l.Depth, l.Width = st.travel(d)
	l.SlopeAlong, l.SlopeOut = ratio(d.SlopeAlong), ratio(d.SlopeOut)
	l.Turn, l.DoorSwings, l.DoorClear = shown(d.Turn), shown(d.DoorSwingsOver), shown(d.ClearOfDoor)
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
