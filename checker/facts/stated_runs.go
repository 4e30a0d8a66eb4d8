package facts

import (
	"slices"

	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// addStatedRuns compares the lengths written down for a stair, its flights and
// its stringers with those that the steps give.
func (f *Facts) addStatedRuns(st *stair) {
	if stated := st.s.TotalRun; stated != nil {
		f.StatedRuns = append(f.StatedRuns, st.statedRun(stated, st.lengths(), st.flights))
	}
	for i := range st.s.Flights {
		if stated := st.s.Flights[i].TotalRun; stated != nil {
			f.StatedRuns = append(f.StatedRuns, st.statedRun(stated, st.flights[i].lengths(), st.flights[i:i+1]))
		}
	}
	if k := st.s.Stringers; k != nil && k.StatedSpan != nil {
		var spans []*Length
		for i := range st.flights {
			spans = append(spans, st.stringerRun(&st.flights[i]))
		}
		f.StatedStringers = append(f.StatedStringers, st.statedRun(k.StatedSpan, spans, st.flights))
	}
}

// statedRun holds a length against the nearest of those that it may mean. The
// flights are those that have to show their steps.
func (st *stair) statedRun(written *model.Length, derived []*Length, flights []flight) StatedRun {
	entry := StatedRun{At: []string{written.At}, Stair: st.label, Stated: *shown(written)}
	if entry.Derived = nearest(entry.Stated.Value, derived); entry.Derived != nil {
		entry.Difference = of(apart(entry.Derived.Value, written.V), append([]string{written.At}, entry.Derived.At...)...)
		return entry
	}
	for i := range flights {
		if missing := st.runNeeds(&flights[i]); missing != "" && !slices.Contains(entry.Missing, missing) {
			entry.Missing = append(entry.Missing, missing)
		}
	}
	return entry
}

// nearest picks the length that lies nearest to a value, nil of none.
func nearest(to measure.Length, list []*Length) *Length {
	var found *Length
	for _, l := range list {
		if l != nil && (found == nil || apart(l.Value, to) < apart(found.Value, to)) {
			found = l
		}
	}
	return found
}

// runNeeds is the field without which the run of a flight does not follow, ""
// where it does.
func (st *stair) runNeeds(f *flight) string {
	path := "stairs[]."
	if len(st.s.Flights) > 0 {
		path = "stairs[].flights[]."
	}
	switch {
	case f.run() != nil:
		return ""
	case f.depth == nil:
		return path + "tread_depth"
	}
	return path + "risers"
}

// lengths lists what the length of a flight may be told as: all its treads, or
// without the one that lies flush with the decking, past the last riser.
func (f *flight) lengths() []*Length {
	run := f.run()
	if run == nil || !f.flush || f.depth == nil {
		return []*Length{run}
	}
	return []*Length{run, of(run.Value-f.depth.Value, run.At...)}
}

// lengths lists what the length of the stair may be told as: of its flights
// with the landings between them, as it lies on the ground, or without.
func (st *stair) lengths() []*Length {
	if len(st.flights) == 1 {
		return st.flights[0].lengths()
	}
	steps, places := measure.Length(0), []string(nil)
	for i := range st.flights {
		run := st.flights[i].run()
		if run == nil {
			return nil
		}
		steps, places = steps+run.Value, append(places, run.At...)
	}
	list := append(st.runs(), of(steps, places...))
	if top := &st.flights[0]; top.flush && top.depth != nil {
		for _, l := range slices.Clone(list) {
			list = append(list, of(l.Value-top.depth.Value, l.At...))
		}
	}
	return list
}

// stringerRun is the longest stretch of a flight between supports of its
// stringers: its ends, and what is shown to carry them in between. Supports are
// told from the top of the stair, so those of a lower flight count only where
// it is shown how far down the flight starts.
func (st *stair) stringerRun(f *flight) *Length {
	run, k := f.run(), st.s.Stringers
	if run == nil || k == nil || len(k.SupportsAt) == 0 {
		return run
	}
	start, ok := st.startOf(f)
	if !ok {
		return run
	}
	cuts, places := []measure.Length{0, run.Value}, slices.Clone(run.At)
	for _, s := range k.SupportsAt {
		if at := s.V - start; at > 0 && at < run.Value {
			cuts, places = append(cuts, at), append(places, s.At)
		}
	}
	slices.Sort(cuts)
	longest := measure.Length(0)
	for i := 1; i < len(cuts); i++ {
		longest = max(longest, cuts[i]-cuts[i-1])
	}
	return of(longest, places...)
}

// startOf is how far out from the top of the stair a flight starts.
func (st *stair) startOf(f *flight) (measure.Length, bool) {
	start := measure.Length(0)
	for i := range st.flights {
		if &st.flights[i] == f {
			return start, true
		}
		run := st.flights[i].run()
		depth := st.sides(i).depth
		if run == nil || depth == nil {
			break
		}
		start += run.Value + depth.Value
	}
	return 0, false
}
