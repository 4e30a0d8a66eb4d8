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

// even steps off the spacing from the left end. A place behind a joist or hanger
// goes back to the nearest free one before it, and the next is stepped off from
// there, so that the spacing holds everywhere. That also takes the fewest. ok is
// false where a stretch without a free place is wider than the spacing.
func (r *fastenerRun) even() (spots []spot, ok bool) {
	last := r.length - r.end
	if last <= r.end || r.spacing <= 0 {
		return nil, false
	}
	_, first := r.free(r.end)
	final, _ := r.free(last)
	if final <= first {
		return nil, false
	}
	spots = []spot{{first, first != r.end}}
	for at := first; final-at > r.spacing; {
		if len(spots) > geometry.MaxParts {
			return nil, false
		}
		next, _ := r.free(at + r.spacing)
		if next <= at {
			return nil, false
		}
		spots = append(spots, spot{next, next != at+r.spacing})
		at = next
	}
	spots = append(spots, spot{final, final != last})
	r.relax(spots)
	return spots, true
}

// relax moves the last but one back to about the middle of its neighbors where
// the last bay has come out less than half as wide as the spacing: fasteners side
// by side split the wood.
func (r *fastenerRun) relax(spots []spot) {
	n := len(spots)
	if n < 3 || 2*(spots[n-1].at-spots[n-2].at) >= r.spacing {
		return
	}
	before, after := spots[n-3].at, spots[n-1].at
	low, high := r.free(before + (after-before)/2)
	for _, at := range []measure.Length{low, high} {
		if at > before && at < after && at-before <= r.spacing && after-at <= r.spacing {
			spots[n-2] = spot{at, true}
			return
		}
	}
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
func (r *fastenerRun) settle(places []measure.Length) (spots []spot, ok bool) {
	for i, place := range places {
		before, behind := r.free(place)
		best, found := spot{}, false
		for _, at := range []measure.Length{before, behind} {
			if at < r.end || at > r.length-r.end || i > 0 && !r.follows(spots[i-1].at, at) {
				continue
			}
			if !found || apart(at, place) < apart(best.at, place) {
				best, found = spot{at, at != place}, true
			}
		}
		if !found {
			return nil, false
		}
		spots = append(spots, best)
	}
	return spots, len(spots) > 0
}

// follows reports whether a fastener may be the next one.
func (r *fastenerRun) follows(before, at measure.Length) bool {
	return at > before && (r.spacing == 0 || at-before <= r.spacing)
}

// free gives the nearest free places at or before, and at or behind, a place.
func (r *fastenerRun) free(place measure.Length) (before, behind measure.Length) {
	before, behind = place, place
	// Stretches may overlap, so look again until both sides are free.
	for moved := true; moved; {
		moved = false
		for _, t := range r.taken {
			if t.From < before && before < t.To {
				before, moved = t.From, true
			}
			if t.From < behind && behind < t.To {
				behind, moved = t.To, true
			}
		}
	}
	return before, behind
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
