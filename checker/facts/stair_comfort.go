package facts

// comfort sets the least and the greatest sum of two risers and a tread, as
// built: every tread with the riser before it and the one behind it.
func (f *flight) comfort(fact *Flight) {
	treads := f.treadDepths()
	for i := range f.heights {
		riser := step{depth: &f.heights[i]}
		if fact.RiserMaxN > 0 {
			riser.n = int64(i + 1)
		}
		for _, tread := range f.treadsAt(treads, i) {
			sum := comfortSum(riser, tread)
			if fact.ComfortLeast == nil || sum.Value < fact.ComfortLeast.Value {
				fact.ComfortLeast, fact.ComfortLeastRiser, fact.ComfortLeastTread = sum, riser.n, tread.n
			}
			if fact.ComfortMost == nil || sum.Value > fact.ComfortMost.Value {
				fact.ComfortMost, fact.ComfortMostRiser, fact.ComfortMostTread = sum, riser.n, tread.n
			}
		}
	}
}

// step is a riser or a tread with its number from the bottom, 0 where all are
// alike.
type step struct {
	depth *Length
	n     int64
}

// treadDepths lists the treads from the bottom, or one for all of them.
func (f *flight) treadDepths() []step {
	var list []step
	alike := true
	for i, t := range f.measuredTreads {
		list = append(list, step{shown(t), int64(i + 1)})
		alike = alike && t.V == f.measuredTreads[0].V
	}
	if alike && len(list) > 0 {
		return []step{{depth: list[0].depth}}
	}
	if len(list) == 0 && f.depth != nil {
		list = []step{{depth: f.depth}}
	}
	return list
}

// treadsAt picks the treads that lie behind and before riser i.
func (f *flight) treadsAt(treads []step, i int) []step {
	if len(treads) == 1 && treads[0].n == 0 {
		return treads
	}
	return treads[min(max(i-1, 0), len(treads)):min(i+1, len(treads))]
}

// comfortSum adds two risers and a tread, the one first that is told apart.
func comfortSum(riser, tread step) *Length {
	first, second := tread.depth, riser.depth
	if riser.n > 0 {
		first, second = second, first
	}
	return of(2*riser.depth.Value+tread.depth.Value, append(append([]string{}, first.At...), second.At...)...)
}
