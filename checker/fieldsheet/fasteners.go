package fieldsheet

import (
	"slices"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
)

// spot is one fastener along the ledger, or one over the other in both rows.
type spot struct {
	at    measure.Length
	moved bool
}

// fastenerRun is a ledger to be fastened.
type fastenerRun struct {
	length  measure.Length
	end     measure.Length      // from either end to the outermost fastener, at least
	spacing measure.Length      // from one to the next, at most; 0 where it is not shown
	taken   []geometry.Interval // where no fastener may go; their ends are free
	drawn   []measure.Length    // places as drawn one by one
}

// even divides the run evenly, moves what meets a joist or hanger, and checks
// the spacing again; where it has become too wide it starts anew with one more.
// ok is false where no number of them will do.
func (r *fastenerRun) even() (spots []spot, ok bool) {
	between := r.length - 2*r.end
	if between <= 0 || r.spacing <= 0 {
		return nil, false
	}
	fewest := int64((between + r.spacing - 1) / r.spacing)
	// Twice as many put every second one where it suits; more can only crowd.
	for parts := fewest; parts <= 2*fewest+2 && parts <= geometry.MaxParts; parts++ {
		pitch := geometry.Pitch{Over: between, Parts: parts}
		var places []measure.Length
		for i := range parts + 1 {
			places = append(places, r.end+pitch.Times(i))
		}
		if spots, ok = r.settle(places); ok {
			return spots, true
		}
	}
	return nil, false
}

// asDrawn moves the places that a drawing gives one by one.
func (r *fastenerRun) asDrawn() (spots []spot, ok bool) {
	places := slices.Clone(r.drawn)
	slices.Sort(places)
	r.end = min(places[0], r.length-places[len(places)-1])
	return r.settle(places)
}

// settle moves each place to the nearest free one from which the spacing still
// holds, from the left on.
func (r *fastenerRun) settle(places []measure.Length) ([]spot, bool) {
	var spots []spot
	for i, place := range places {
		var best *spot
		for _, at := range r.choices(place) {
			if at < r.end || at > r.length-r.end {
				continue
			}
			if i > 0 {
				step := at - spots[i-1].at
				if step <= 0 || r.spacing > 0 && step > r.spacing {
					continue
				}
			}
			if best == nil || apart(at, place) < apart(best.at, place) {
				best = &spot{at: at, moved: at != place}
			}
		}
		if best == nil {
			return nil, false
		}
		spots = append(spots, *best)
	}
	// The last may have come in from its end by less than one spacing.
	last := spots[len(spots)-1].at
	return spots, r.spacing == 0 || r.length-r.end-last < r.spacing
}

// choices are the place itself if it is free, else the nearest free ones on
// both sides.
func (r *fastenerRun) choices(place measure.Length) []measure.Length {
	low, high := place, place
	// Stretches may overlap, so look again until both sides are free.
	for moved := true; moved; {
		moved = false
		for _, t := range r.taken {
			if t.From < low && low < t.To {
				low, moved = t.From, true
			}
			if t.From < high && high < t.To {
				high, moved = t.To, true
			}
		}
	}
	if low == place {
		return []measure.Length{place}
	}
	return []measure.Length{low, high}
}

// widest is the greatest distance from one fastener to the next.
func widest(spots []spot) measure.Length {
	most := measure.Length(0)
	for i := 1; i < len(spots); i++ {
		most = max(most, spots[i].at-spots[i-1].at)
	}
	return most
}

func apart(a, b measure.Length) measure.Length { return max(a-b, b-a) }
