package facts

import (
	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// flight is one flight as described, with its risers as built.
type flight struct {
	at             string
	risers, treads *Count
	total          *Length // its own rise where that is shown
	depth          *Length // of a tread
	flush          bool
	first, last    *Length
	measuredRisers []*model.Length
	measuredTreads []*model.Length

	unit    *Length
	heights []Length // every riser from the bottom, as built
}

// split takes the description of the flights; a stair that lists none is one.
func (st *stair) split() {
	s := st.s
	if len(s.Flights) == 0 {
		st.flights = []flight{{
			at: s.At, risers: shown(s.Risers), treads: shown(s.Treads), depth: shown(s.TreadDepth),
			flush: s.FlushTopTread != nil && s.FlushTopTread.V, first: shown(s.FirstRiser), last: shown(s.LastRiser),
			measuredRisers: s.MeasuredRisers, measuredTreads: s.MeasuredTreads,
		}}
	}
	for i := range s.Flights {
		d := &s.Flights[i]
		st.flights = append(st.flights, flight{
			at: d.At, risers: shown(d.Risers), treads: shown(d.Treads), total: shown(d.TotalRise), depth: shown(d.TreadDepth),
			flush: d.FlushTopTread != nil && d.FlushTopTread.V, first: shown(d.FirstRiser), last: shown(d.LastRiser),
			measuredRisers: d.MeasuredRisers, measuredTreads: d.MeasuredTreads,
		})
	}
	for i := range st.flights {
		f := &st.flights[i]
		if f.risers == nil && len(f.measuredRisers) > 0 {
			f.risers = of(int64(len(f.measuredRisers)), f.measuredRisers[0].At)
		}
	}
}

// expected is the number of treads that the risers ask for: one fewer, since
// the landing or the decking is the last step, or as many under a flush top tread.
func (f *flight) expected() *Count {
	if f.risers == nil || f.risers.Value < 1 {
		return nil
	}
	if f.flush {
		return f.risers
	}
	return of(f.risers.Value-1, f.risers.At...)
}

// run is the horizontal length of the flight.
func (f *flight) run() *Length {
	if len(f.measuredTreads) > 0 {
		return sum(f.measuredTreads)
	}
	treads := f.treads
	if treads == nil {
		treads = f.expected()
	}
	if treads == nil || f.depth == nil || treads.Value > geometry.MaxParts {
		return nil
	}
	return of(f.depth.Value*measure.Length(treads.Value), append(append([]string{}, f.depth.At...), treads.At...)...)
}

func sum(list []*model.Length) *Length {
	total := measure.Length(0)
	for _, l := range list {
		total += l.V
	}
	return of(total, list[0].At)
}

// build works out every riser: as measured, or else alike but for a first and
// a last one that are shown apart.
func (f *flight) build(st *stair) {
	f.unit = f.unitRise(st)
	switch {
	case len(f.measuredRisers) > 0:
		for _, r := range f.measuredRisers {
			f.heights = append(f.heights, *shown(r))
		}
	case f.unit != nil && f.risers.Value <= geometry.MaxParts:
		for range f.risers.Value {
			f.heights = append(f.heights, *f.unit)
		}
		if f.first != nil {
			f.heights[0] = *f.first
		}
		if f.last != nil {
			f.heights[len(f.heights)-1] = *f.last
		}
	}
}

// unitRise divides the flight's own rise, or the stair's over all flights.
func (f *flight) unitRise(st *stair) *Length {
	rise, risers := f.total, f.risers
	if rise == nil {
		rise, risers = st.total, st.risers()
	}
	if rise == nil || risers == nil || risers.Value < 1 || f.risers == nil {
		return nil
	}
	unit := geometry.Pitch{Over: rise.Value, Parts: risers.Value}
	return of(unit.Length(), append(append([]string{}, f.risers.At...), rise.At...)...)
}

// extremes finds the least and the greatest of a list, and the place of each,
// counted from 1; 0 where all are alike.
func extremes(list []Length) (least, greatest *Length, leastN, greatestN int64) {
	for i := range list {
		l := &list[i]
		if least == nil || l.Value < least.Value {
			least, leastN = l, int64(i+1)
		}
		if greatest == nil || l.Value > greatest.Value {
			greatest, greatestN = l, int64(i+1)
		}
	}
	if least != nil && least.Value == greatest.Value {
		return least, greatest, 0, 0
	}
	return least, greatest, leastN, greatestN
}

// rise is what its steps add up to, else what is stated for it, which of a
// stair of one flight is the rise of the stair; or the field that it waits for.
func (f *flight) rise(st *stair, steps *Length) (rise *Length, field string) {
	switch {
	case steps != nil:
		return steps, ""
	case f.total != nil:
		return f.total, ""
	case st.total == nil && len(st.s.Flights) == 0:
		return nil, "stairs[].total_rise"
	case len(st.flights) == 1:
		return st.total, ""
	case st.total == nil || f.risers != nil: // another flight keeps the stair's rise from being shared out
		return nil, "stairs[].flights[].total_rise"
	}
	return nil, "stairs[].flights[].risers"
}

// fact writes the flight down.
func (f *flight) fact(st *stair, i int) Flight {
	s := st.s
	fact := Flight{
		At: []string{f.at}, Stair: st.label, N: int64(i + 1), Of: int64(len(st.flights)),
		Risers: f.risers, Treads: f.treads, TreadsExpected: f.expected(), Run: f.run(), UnitRise: f.unit,
		Nosing: shown(s.Nosing), TreadDepth: f.depth, Use: shown(s.Use), Attached: st.attached(), AttachedField: st.attachedField(),
	}
	least, greatest, m, n := extremes(f.heights)
	fact.RiserMin, fact.RiserMax, fact.RiserMinN, fact.RiserMaxN = least, greatest, m, n
	for _, h := range f.heights {
		fact.RiserHeights = append(fact.RiserHeights, h.Value)
	}
	if least != nil {
		fact.RiserSpread = of(greatest.Value-least.Value, append(append([]string{}, greatest.At...), least.At...)...)
		total := measure.Length(0)
		for _, h := range f.heights {
			total += h.Value
		}
		if f.unit != nil && len(f.measuredRisers) == 0 && f.first == nil && f.last == nil {
			total = f.divided(st, total)
		}
		fact.Rise = of(total, greatest.At...)
	}
	fact.Rise, fact.RiseField = f.rise(st, fact.Rise)
	f.depths(&fact)
	f.steps(&fact)
	f.comfort(&fact)
	f.openings(st, &fact)
	f.slope(st, &fact)
	fact.Engineered = st.engineer.stringerSpan(st.s.Stringers, fact.Throat, st.stringerSpacing())
	if b := st.landingBelow(i); b != nil {
		st.crossFall(&fact, b, i)
	}
	return fact
}

// divided is the rise that the risers are equal parts of, where it is the
// flight's alone, and not the rounded parts added up.
func (f *flight) divided(st *stair, sum measure.Length) measure.Length {
	switch {
	case f.total != nil:
		return f.total.Value
	case len(st.flights) == 1:
		return st.total.Value
	}
	return sum
}

// depths sets the least and greatest tread.
func (f *flight) depths(fact *Flight) {
	var list []Length
	for _, t := range f.measuredTreads {
		list = append(list, *shown(t))
	}
	if len(list) == 0 && f.depth != nil {
		list = []Length{*f.depth}
	}
	least, greatest, m, n := extremes(list)
	fact.TreadMin, fact.TreadMax, fact.TreadMinN, fact.TreadMaxN = least, greatest, m, n
	if least != nil {
		fact.TreadSpread = of(greatest.Value-least.Value, greatest.At...)
		fact.TreadStep = widestStep(list)
	}
}

// openings sets what is open between the treads and how high above the ground.
// The highest opening ends below the decking, so the rise of the stair down to
// its flight's top bounds it.
func (f *flight) openings(st *stair, fact *Flight) {
	o := st.s.RiserOpening
	if o == nil {
		return
	}
	fact.RisersClosed = of(o.Length == nil, o.At)
	fact.RiserOpening = shown(o.Length)
	built := st.built()
	if o.Length == nil || built == nil {
		return
	}
	above := built.Value
	for i := range st.flights {
		if &st.flights[i] == f {
			break
		}
		for _, h := range st.flights[i].heights {
			above -= h.Value
		}
	}
	fact.OpeningAbove = of(above, built.At...)
}

// slope sets pitch, stringer line and throat, first drop and bottom cut.
func (f *flight) slope(st *stair, fact *Flight) {
	if k := st.s.Stringers; k != nil {
		fact.StringerKind, fact.StringerSize = shown(k.Kind), sizeWords(st.deck, &k.Member)
		fact.Throat = shown(k.Throat)
	}
	f.cuts(st, fact)
	fact.StringerRun = st.stringerRun(f)
	if f.unit == nil || f.depth == nil {
		return
	}
	places := append(append([]string{}, f.depth.At...), f.unit.At...)
	if fact.Run != nil && f.depth.Value > 0 {
		step := geometry.Diagonal(f.unit.Value, f.depth.Value)
		fact.StringerLine = of(share(fact.Run.Value, int64(step), int64(f.depth.Value)), places...)
	}
	if pitch, err := geometry.Incline(f.unit.Value, f.depth.Value); err == nil {
		fact.Pitch = of(degrees(pitch), places...)
	}
	if k := st.s.Stringers; k != nil && fact.Throat == nil && words(k.Kind) == "cut" && k.Dimensions() != nil {
		if throat, err := geometry.Throat(k.Dimensions().V.Depth, f.unit.Value, f.depth.Value); err == nil {
			fact.Throat = of(throat, append([]string{k.Dimensions().At}, places...)...)
		}
	}
}

// cuts sets where the first level cut lies below the decking and how high the
// lowest riser is cut: a tread on top of every cut makes the first drop one
// tread deeper and the bottom riser one tread lower.
func (f *flight) cuts(st *stair, fact *Flight) {
	tread := st.s.Tread
	if f.unit == nil || tread == nil || tread.Thickness == nil {
		return
	}
	places := append(append([]string{}, f.unit.At...), tread.Thickness.At)
	if !f.flush {
		fact.FirstDrop = of(f.unit.Value+tread.Thickness.V, places...)
	}
	bottom := f.unit.Value - tread.Thickness.V
	if b := st.s.LandingBottom; b != nil && b.FinishToCome != nil && &st.flights[len(st.flights)-1] == f {
		bottom += b.FinishToCome.V
		places = append(places, b.FinishToCome.At)
	}
	fact.BottomCut = of(bottom, places...)
}
