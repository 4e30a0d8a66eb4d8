package facts

import "plumbrule/checker/measure"

// steps sets how much the risers of a flight differ from one another and from
// the unit rise. The lowest riser is told apart, since paving and ground that
// come later change it alone.
func (f *flight) steps(fact *Flight) {
	if len(f.heights) == 0 {
		return
	}
	bottom, upper := f.heights[0], f.heights[1:]
	fact.RiserStep, fact.UpperStep = widestStep(f.heights), widestStep(upper)
	if len(upper) < 2 {
		fact.UpperStep = nil
	}
	if f.unit != nil {
		fact.BottomOff = between(bottom, *f.unit)
		for _, riser := range upper {
			if off := between(riser, *f.unit); longer(off, fact.UpperOff) {
				fact.UpperOff = off
			}
		}
	}
	if least, _, _, _ := extremes(upper); least != nil {
		fact.BottomLower = of(least.Value-bottom.Value, append(append([]string{}, bottom.At...), least.At...)...)
	}
}

// widestStep is the greatest difference between neighbors of a list, 0 where
// it has but one entry, nil where it has none.
func widestStep(list []Length) *Length {
	if len(list) == 0 {
		return nil
	}
	widest := of(measure.Length(0), list[0].At...)
	for i := range list[1:] {
		if step := between(list[i+1], list[i]); step.Value > widest.Value {
			widest = step
		}
	}
	return widest
}

// between is how far two lengths are apart, with the places of both.
func between(a, b Length) *Length {
	return of(apart(a.Value, b.Value), append(append([]string{}, a.At...), b.At...)...)
}

// attachedField is the field that would tell whether the platform that the
// stair leaves hangs on the house, "" where that is shown.
func (st *stair) attachedField() string {
	switch {
	case st.from == nil:
		return st.wayMissing("")
	case st.attached() == nil:
		return "platforms[].support"
	}
	return ""
}

// attached tells whether the platform that the stair leaves hangs on the house.
func (st *stair) attached() *Flag {
	if st.from == nil {
		return nil
	}
	switch p := st.from.p; {
	case p.Support != nil:
		return of(p.Support.V != "freestanding", p.Support.At)
	case p.Ledger != nil:
		return of(true, p.Ledger.At)
	}
	return nil
}
