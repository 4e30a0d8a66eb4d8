package facts

import (
	"slices"

	"plumbrule/checker/measure"
)

// measured is the sum of all risers as they were measured; nil unless those of
// every flight were.
func (st *stair) measured() *Length {
	total, places := measure.Length(0), []string(nil)
	for i := range st.flights {
		list := st.flights[i].measuredRisers
		if len(list) == 0 {
			return nil
		}
		places = append(places, parent(list[0].At))
		for _, r := range list {
			total += r.V
		}
	}
	return of(total, places...)
}

// built is the rise of the stair as built: the sum of its risers where each of
// them was measured, else the total rise. Where that is stated to be greater
// than the sum, one of them is wrong, and the greater stands for what is asked
// for from a height on.
func (st *stair) built() *Length {
	for i := range st.flights {
		f := &st.flights[i]
		if f.risers == nil || f.risers.Value != int64(len(f.measuredRisers)) {
			return st.total
		}
	}
	if sum := st.measured(); !longer(st.total, sum) {
		return sum
	}
	return st.total
}

// dropAtTop is the height of the top tread above the ground below it: the rise
// of the stair less its top riser. Where the ground at the edge that the stair
// leaves from is shown, it is that much higher or lower than the landing as the
// drop there differs from the total rise. A top landing that belongs to the
// stair is higher than its treads by that riser.
func (st *stair) dropAtTop() *Length {
	height := st.built()
	if height != nil && st.ownsTopLanding() {
		return of(height.Value, append(slices.Clone(height.At), st.s.LandingTop.At)...)
	}
	if ground := st.dropAtEdge(); ground != nil {
		height = st.overGround(height, ground)
	}
	if height == nil || len(st.flights) == 0 || len(st.flights[0].heights) == 0 {
		return height
	}
	risers := st.flights[0].heights
	top := risers[len(risers)-1]
	return of(height.Value-top.Value, append(slices.Clone(height.At), top.At...)...)
}

// ownsTopLanding reports whether the stair starts from a landing of its own.
// Where platforms are described it may be one of them, whose edges are judged as
// edges.
func (st *stair) ownsTopLanding() bool {
	return st.s.LandingTop != nil && len(st.deck.Platforms) == 0
}

// overGround is the drop at the edge, and what the stair was built taller than
// drawn besides. One built lower leaves the ground where it is shown.
func (st *stair) overGround(built, ground *Length) *Length {
	if built == nil || st.total == nil || built.Value <= st.total.Value {
		return ground
	}
	return of(ground.Value+built.Value-st.total.Value, append(slices.Clone(built.At), ground.At...)...)
}

// dropAtEdge is the drop at the edge that the stair leaves from, or close to it
// where that is greater. Ground close by alone does not make the stair lower.
func (st *stair) dropAtEdge() *Length {
	e := st.edgeEntry()
	if e == nil {
		return nil
	}
	drop := shown(e.Drop)
	if near := shown(e.DropWithin36); longer(near, drop) && (drop != nil || longer(near, st.total)) {
		return near
	}
	return drop
}
