package wood

import (
	"cmp"
	"slices"
)

// girder is a straight prismatic beam over simple supports that do not settle. Lengths are inches.
type girder struct {
	from, to float64
	supports []float64 // rising, at least two, within from and to
}

// patch is an even load on a stretch, in lb/in, down.
type patch struct{ from, to, load float64 }

// point is a load at a place, in lb, down.
type point struct{ at, load float64 }

// loading is what acts at one time.
type loading struct {
	patches []patch
	points  []point
}

// within cuts a loading to a stretch. A point on a bound belongs to the stretch that it starts, so that none is counted
// twice.
func (l loading) within(from, to float64, last bool) loading {
	var cut loading
	for _, p := range l.patches {
		p.from, p.to = max(p.from, from), min(p.to, to)
		if p.from < p.to {
			cut.patches = append(cut.patches, p)
		}
	}
	for _, p := range l.points {
		if p.at >= from && (p.at < to || last && p.at == to) {
			cut.points = append(cut.points, p)
		}
	}
	return cut
}

// total is the sum of the loads and their moment about a place.
func (l loading) total(about float64) (sum, moment float64) {
	for _, p := range l.patches {
		w := p.load * (p.to - p.from)
		sum += w
		moment += w * ((p.from+p.to)/2 - about)
	}
	for _, p := range l.points {
		sum += p.load
		moment += p.load * (p.at - about)
	}
	return sum, moment
}

// breaks are the places where something begins or ends, rising and without repetition.
func (g girder) breaks(loadings ...loading) []float64 {
	all := append([]float64{g.from, g.to}, g.supports...)
	for _, l := range loadings {
		for _, p := range l.patches {
			all = append(all, p.from, p.to)
		}
		for _, p := range l.points {
			all = append(all, p.at)
		}
	}
	slices.Sort(all)
	return slices.Compact(all)
}

// solve finds what a loading does by the theorem of three moments (Clapeyron). The breaks hold those of the loading.
func (g girder) solve(l loading, breaks []float64) response {
	n := len(g.supports)
	moments := g.supportMoments(l)
	reactions := make([]float64, n)
	left, _ := l.within(g.from, g.supports[0], false).total(0)
	right, _ := l.within(g.supports[n-1], g.to, true).total(0)
	reactions[0] += left
	reactions[n-1] += right
	for i := range n - 1 {
		a, b := g.supports[i], g.supports[i+1]
		sum, moment := l.within(a, b, false).total(a)
		// A sagging moment at an end takes load off that end.
		atRight := (moment + moments[i] - moments[i+1]) / (b - a)
		reactions[i] += sum - atRight
		reactions[i+1] += atRight
	}
	return response{g.integrate(l, breaks, reactions), reactions}
}

// supportMoments are the moments over the supports: those of the overhangs by statics, the others by a tridiagonal
// system that says that the beam has no kinks.
func (g girder) supportMoments(l loading) []float64 {
	n := len(g.supports)
	m := make([]float64, n)
	_, overhang := l.within(g.from, g.supports[0], false).total(g.supports[0])
	m[0] = overhang
	_, overhang = l.within(g.supports[n-1], g.to, true).total(g.supports[n-1])
	m[n-1] = -overhang

	diagonal, right := make([]float64, n), make([]float64, n)
	for i := 1; i < n-1; i++ {
		before, after := g.supports[i]-g.supports[i-1], g.supports[i+1]-g.supports[i]
		_, atEnd := l.endRotations(g.supports[i-1], g.supports[i])
		atStart, _ := l.endRotations(g.supports[i], g.supports[i+1])
		diagonal[i] = (before + after) / 3
		right[i] = -(atEnd + atStart)
		if i == 1 {
			right[i] -= m[0] * before / 6
		}
		if i == n-2 {
			right[i] -= m[n-1] * after / 6
		}
		if i > 1 {
			carried := before / 6 / diagonal[i-1]
			diagonal[i] -= carried * before / 6
			right[i] -= carried * right[i-1]
		}
	}
	for i := n - 2; i >= 1; i-- {
		if i < n-2 {
			right[i] -= (g.supports[i+1] - g.supports[i]) / 6 * m[i+1]
		}
		m[i] = right[i] / diagonal[i]
	}
	return m
}

// endRotations are the rotations times E′I at both ends of a simple beam, each towards the inside.
func (l loading) endRotations(from, to float64) (atStart, atEnd float64) {
	span := to - from
	// A load P at a has P·a·b·(L + b)/6L and P·a·b·(L + a)/6L; a patch is the integral of it over a.
	integral := func(a float64) (start, end float64) {
		return a * a * (span*span - span*a + a*a/4) / (6 * span), a * a * (span*span/2 - a*a/4) / (6 * span)
	}
	cut := l.within(from, to, false)
	for _, p := range cut.patches {
		s1, e1 := integral(p.from - from)
		s2, e2 := integral(p.to - from)
		atStart += p.load * (s2 - s1)
		atEnd += p.load * (e2 - e1)
	}
	for _, p := range cut.points {
		a := p.at - from
		b := span - a
		atStart += p.load * a * b * (span + b) / (6 * span)
		atEnd += p.load * a * b * (span + a) / (6 * span)
	}
	return atStart, atEnd
}

// integrate walks the beam from its left end with all forces known, then turns and lifts the deflected line so that it
// runs through the first and last support; through the others it runs because the moments are right.
func (g girder) integrate(l loading, breaks []float64, reactions []float64) []segment {
	segments := make([]segment, 0, len(breaks)-1)
	at := segment{}
	for i := range len(breaks) - 1 {
		s := segment{from: breaks[i], to: breaks[i+1], shear: at.shear, moment: at.moment, slope: at.slope, drop: at.drop}
		if k, ok := slices.BinarySearchFunc(g.supports, s.from, cmp.Compare[float64]); ok {
			s.shear += reactions[k]
		}
		for _, p := range l.points {
			if p.at == s.from {
				s.shear -= p.load
			}
		}
		for _, p := range l.patches {
			if p.from <= s.from && s.to <= p.to {
				s.load += p.load
			}
		}
		segments = append(segments, s)
		x := s.length()
		at = segment{shear: s.shearAt(x), moment: s.momentAt(x), slope: s.slopeAt(x), drop: s.dropAt(x)}
	}
	first, last := g.supports[0], g.supports[len(g.supports)-1]
	a, b := dropAt(segments, first), dropAt(segments, last)
	turn := -(b - a) / (last - first)
	for i := range segments {
		segments[i].slope += turn
		segments[i].drop += turn*(segments[i].from-first) - a
	}
	return segments
}

// dropAt is the deflection times E′I at a place that is a break.
func dropAt(segments []segment, at float64) float64 {
	for _, s := range segments {
		if s.from == at {
			return s.drop
		}
	}
	last := segments[len(segments)-1]
	return last.dropAt(last.length())
}
