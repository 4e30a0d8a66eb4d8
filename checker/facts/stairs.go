package facts

import (
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// stair is a stair with its flights laid out, before it becomes facts.
type stair struct {
	engineer *engineer
	deck     *model.Deck
	s        *model.Stair
	label    string
	from     *surface // nil where it is not shown or not known
	edge     int      // of from, -1 where it is not shown
	flights  []flight
	total    *Length // rise of the stair
	derived  *Length // what a stated rise is held against
}

func newStair(deck *model.Deck, engineer *engineer, surfaces []*surface, i int) *stair {
	st := &stair{deck: deck, engineer: engineer, s: &deck.Stairs[i], label: label(deck.Stairs[i].Mark, i), edge: -1}
	st.leave(surfaces)
	st.split()
	st.rise()
	for k := range st.flights {
		st.flights[k].build(st)
	}
	return st
}

// leave finds the platform and the edge that the stair leaves from. A stair
// that names no platform leaves the only one.
func (st *stair) leave(surfaces []*surface) {
	from := st.s.From
	if from == nil {
		return
	}
	for _, s := range surfaces {
		if from.Platform != nil && s.label == from.Platform.V || from.Platform == nil && len(surfaces) == 1 {
			st.from = s
		}
	}
	if st.from == nil || from.Edge == nil {
		return
	}
	for i, name := range st.from.names {
		if name == from.Edge.V {
			st.edge = i
		}
	}
}

// edgeEntry is what the platform says of the edge that the stair leaves from.
func (st *stair) edgeEntry() *model.Edge {
	if st.edge < 0 {
		return nil
	}
	if e, ok := st.from.p.Edges.Get(st.from.names[st.edge]); ok {
		return &e
	}
	return nil
}

// risers counts the risers of all flights; nil unless every flight shows them.
func (st *stair) risers() *Count {
	sum, places := int64(0), []string(nil)
	for i := range st.flights {
		r := st.flights[i].risers
		if r == nil {
			return nil
		}
		sum += r.Value
		places = append(places, r.At...)
	}
	return of(sum, places...)
}

// rise takes the total rise as it is stated, for the stair or else for all of
// its flights, and as the ground gives it where it is not. What is stated is
// held against the rest, of which the one further off counts.
func (st *stair) rise() {
	stated, flights, ground := shown(st.s.TotalRise), st.riseOfFlights(), st.riseFromGrade()
	if stated == nil {
		stated, flights = flights, nil
	}
	if stated == nil {
		st.total = ground
		return
	}
	st.total, st.derived = stated, flights
	if flights == nil || ground != nil && apart(ground.Value, stated.Value) > apart(flights.Value, stated.Value) {
		st.derived = ground
	}
}

// riseOfFlights adds up the rises stated for the flights; nil unless all are.
func (st *stair) riseOfFlights() *Length {
	sum, places := measure.Length(0), []string(nil)
	for i := range st.flights {
		rise := st.flights[i].total
		if rise == nil {
			return nil
		}
		sum, places = sum+rise.Value, append(places, rise.At...)
	}
	return of(sum, places...)
}

// riseFromGrade works out the total rise from the ground where the stair
// lands: as far out from the edge as the flights and landings run.
func (st *stair) riseFromGrade() *Length {
	if st.s.To == nil || st.s.To.V != model.ToGrade {
		return st.riseBetweenPlatforms()
	}
	run := st.run()
	if run == nil || st.turns() {
		return nil
	}
	ground := st.groundAt(run)
	if ground == nil {
		return nil
	}
	if b := st.s.LandingBottom; b != nil && b.FinishToCome != nil {
		return of(ground.Value-b.FinishToCome.V, append(ground.At, b.FinishToCome.At)...)
	}
	return ground
}

// riseBetweenPlatforms is the difference of two stated surface heights.
func (st *stair) riseBetweenPlatforms() *Length {
	if st.s.To == nil || st.from == nil || st.from.p.SurfaceAboveGrade == nil {
		return nil
	}
	to := st.deck.Platform(st.s.To.V)
	if to == nil || to.SurfaceAboveGrade == nil || to.SurfaceAboveGrade.V >= st.from.p.SurfaceAboveGrade.V {
		return nil
	}
	return of(st.from.p.SurfaceAboveGrade.V-to.SurfaceAboveGrade.V, st.from.p.SurfaceAboveGrade.At, to.SurfaceAboveGrade.At)
}

// groundAt is the depth of the ground below the surface as far out from the
// edge as the stair runs. Ground shown at the foot counts where the stair
// lands there; elsewhere the ground lies on the slope shown for the site, or
// else on the line from the ground below the edge.
func (st *stair) groundAt(run *Length) *Length {
	foot, edge := st.s.GradeAtFoot, st.edgeEntry()
	var known *Length // ground at distance `out`
	out := measure.Length(0)
	switch {
	case foot != nil && foot.BelowSurface != nil && foot.FromEdge != nil:
		known, out = of(foot.BelowSurface.V, foot.BelowSurface.At, foot.FromEdge.At), foot.FromEdge.V
	case edge != nil && edge.Drop != nil:
		known = shown(edge.Drop)
	default:
		return nil
	}
	further := run.Value - out
	if further == 0 {
		return known
	}
	fall := st.fall()
	if fall == nil && out > 0 && edge != nil && edge.Drop != nil {
		fall = of(measure.Slope{Rise: int64(known.Value - edge.Drop.V), Run: int64(out)}, known.At[0], edge.Drop.At)
	}
	if fall == nil {
		return nil
	}
	lower := share(further, fall.Value.Rise, fall.Value.Run)
	return of(known.Value+lower, append(append([]string{}, known.At...), fall.At...)...)
}

// fall is the slope of the ground in the direction in which the stair descends.
func (st *stair) fall() *Of[measure.Slope] {
	if st.deck.Site == nil || st.deck.Site.GradeFall == nil {
		return nil
	}
	g := st.deck.Site.GradeFall
	way := st.leaves()
	if g.Slope == nil || g.Direction == nil || way == anyWay {
		return nil
	}
	e := st.from.ring.Edge(st.edge)
	descends := "out"
	switch {
	case way == alongHouse && e.A.Y < e.B.Y:
		descends = "right"
	case way == alongHouse:
		descends = "left"
	case e.A.X < e.B.X:
		descends = "in"
	}
	slope := g.Slope.V
	switch opposite := map[string]string{"out": "in", "in": "out", "left": "right", "right": "left"}; g.Direction.V {
	case descends:
	case opposite[descends]:
		slope.Rise = -slope.Rise
	default:
		slope.Rise = 0
	}
	return of(slope, g.Slope.At)
}

// landingBelow is the landing at the foot of flight i.
func (st *stair) landingBelow(i int) *model.Landing {
	if i < len(st.s.Flights) && st.s.Flights[i].LandingBelow != nil {
		return st.s.Flights[i].LandingBelow
	}
	if i < len(st.flights)-1 {
		return st.s.LandingBetween
	}
	return st.s.LandingBottom
}
