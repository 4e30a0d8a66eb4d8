package wood

import (
	"math"
	"slices"
)

// envelope holds the extremes over every way to load or not to load each span and overhang, and each single load.
type envelope struct {
	reactions []extremes // by support, lb
	sagging   peak       // greatest moment, lb·in
	hogging   peak       // least moment, lb·in
	shear     peak       // greatest shear in size, lb
	drops     []extremes // by stretch between supports and beyond, times E′I, lb·in³, down above zero
}

// extremes are the least and the greatest of a number.
type extremes struct{ least, most float64 }

func (e *extremes) take(v float64) {
	e.least, e.most = min(e.least, v), max(e.most, v)
}

// peak is an extreme and its place.
type peak struct{ value, at float64 }

// stretches are the bounds of the left overhang, the spans and the right overhang, empty overhangs included.
func (g girder) stretches() []float64 {
	bounds := append([]float64{g.from}, g.supports...)
	return append(bounds, g.to)
}

// pieces cuts a loading into parts that can be there or not: what lies on one stretch, and each point load.
func (g girder) pieces(l loading) []loading {
	var parts []loading
	bounds := g.stretches()
	for i := range len(bounds) - 1 {
		cut := (loading{patches: l.patches}).within(bounds[i], bounds[i+1], false)
		if len(cut.patches) > 0 {
			parts = append(parts, cut)
		}
	}
	for _, p := range l.points {
		parts = append(parts, loading{points: []point{p}})
	}
	return parts
}

// stations is how many places of a segment are asked which loads act against them.
const stations = 12

// envelope finds the extremes under a permanent loading and a variable one. Which parts of the variable load work for
// or against an effect at a place follows from the sign of what each does alone, so that no more patterns are tried
// than there are places; each pattern found is then searched exactly.
func (g girder) envelope(permanent, variable loading) envelope {
	parts := g.pieces(variable)
	breaks := g.breaks(append(parts, permanent)...)
	always := g.solve(permanent, breaks)
	alone := make([]response, len(parts))
	for i, p := range parts {
		alone[i] = g.solve(p, breaks)
	}
	n := len(g.supports)
	e := envelope{reactions: make([]extremes, n), drops: make([]extremes, n+1)}
	for k := range e.reactions {
		e.reactions[k] = extremes{always.reactions[k], always.reactions[k]}
		for _, r := range alone {
			e.reactions[k].least += min(0, r.reactions[k])
			e.reactions[k].most += max(0, r.reactions[k])
		}
	}
	for i, pattern := range patterns(alone, len(breaks)-1) {
		sum := always
		for k, on := range pattern {
			if on {
				sum = sum.add(alone[k], 1)
			}
		}
		e.search(g, sum, i == 0)
	}
	return e
}

// patterns lists, without repetition, which parts act at each station for the greatest and the least shear, moment and
// deflection. It begins with no part at all.
func patterns(alone []response, segments int) [][]bool {
	effects := [...]func(segment, float64) float64{segment.shearAt, segment.momentAt, segment.dropAt}
	seen := map[string]bool{}
	var found [][]bool
	keep := func(pattern []bool) {
		key := make([]byte, len(pattern))
		for i, on := range pattern {
			if on {
				key[i] = 1
			}
		}
		if !seen[string(key)] {
			seen[string(key)] = true
			found = append(found, slices.Clone(pattern))
		}
	}
	with, against := make([]bool, len(alone)), make([]bool, len(alone))
	keep(with)
	for i := range segments {
		for station := range stations + 1 {
			for _, effect := range effects {
				for k, r := range alone {
					s := r.segments[i]
					v := effect(s, s.length()*float64(station)/stations)
					with[k], against[k] = v > 0, v < 0
				}
				keep(with)
				keep(against)
			}
		}
	}
	return found
}

// search takes the extremes of one response into the envelope.
func (e *envelope) search(g girder, r response, first bool) {
	if first {
		e.sagging, e.hogging, e.shear = peak{value: math.Inf(-1)}, peak{value: math.Inf(1)}, peak{}
	}
	bounds := g.stretches()
	for _, s := range r.segments {
		for _, x := range s.momentPeaks() {
			m := s.momentAt(x)
			if m > e.sagging.value {
				e.sagging = peak{m, s.from + x}
			}
			if m < e.hogging.value {
				e.hogging = peak{m, s.from + x}
			}
		}
		for _, x := range [...]float64{0, s.length()} {
			if v := s.shearAt(x); math.Abs(v) > math.Abs(e.shear.value) {
				e.shear = peak{v, s.from + x}
			}
		}
		k := 0
		for bounds[k+1] <= s.from {
			k++
		}
		for _, x := range s.dropPeaks() {
			e.drops[k].take(s.dropAt(x))
		}
	}
}
