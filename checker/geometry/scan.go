package geometry

import (
	"slices"

	"plumbrule/checker/measure"
)

// Interval is a stretch of a line, From not above To.
type Interval struct{ From, To measure.Length }

// Length is the length of the stretch.
func (v Interval) Length() measure.Length { return v.To - v.From }

// Scan gives the parts of a line that belong to the ring, in ascending order: of
// the line X = c with Axis X, as stretches of Y, or of the line Y = c with Axis
// Y, as stretches of X.
//
// The ring's own edge belongs to it, so a line along an outer edge yields that
// edge: the outside joist lies there. Stretches that touch are one. A mere touch
// at a corner is no stretch.
func (r Ring) Scan(fixed Axis, c measure.Length) []Interval {
	// The closed ring meets the line wherever the ring just before it or the
	// ring just after it does. Taking both limits settles corners and edges on
	// the line without a special case for any of them.
	var before, after []measure.Length
	for i := range r {
		e := r.Edge(i)
		v, ok := e.crossing(fixed, c)
		if !ok {
			continue
		}
		a, b := fixed.of(e.A), fixed.of(e.B)
		if min(a, b) < c {
			before = append(before, v)
		}
		if max(a, b) > c {
			after = append(after, v)
		}
	}
	return union(pairs(before), pairs(after))
}

// pairs joins crossings, sorted along the line, into stretches: first to second,
// third to fourth.
func pairs(crossings []measure.Length) []Interval {
	slices.Sort(crossings)
	var in []Interval
	for i := 0; i+1 < len(crossings); i += 2 {
		in = append(in, Interval{From: crossings[i], To: crossings[i+1]})
	}
	return in
}

// union merges overlapping and touching stretches and drops those without
// length.
func union(a, b []Interval) []Interval {
	all := slices.Concat(a, b)
	slices.SortFunc(all, func(v, w Interval) int {
		if v.From != w.From {
			return compare(v.From, w.From)
		}
		return compare(v.To, w.To)
	})
	var merged []Interval
	for _, v := range all {
		last := len(merged) - 1
		switch {
		case v.From == v.To:
		case last >= 0 && v.From <= merged[last].To:
			merged[last].To = max(merged[last].To, v.To)
		default:
			merged = append(merged, v)
		}
	}
	return merged
}

func compare(a, b measure.Length) int {
	switch {
	case a < b:
		return -1
	case a > b:
		return 1
	default:
		return 0
	}
}

// Without takes the holes out of the stretches: what a joist line loses to an
// opening in the platform. Both are in ascending order and free of overlaps, as
// Scan returns them.
func Without(stretches, holes []Interval) []Interval {
	var left []Interval
	for _, v := range stretches {
		for _, h := range holes {
			if h.To <= v.From || h.From >= v.To {
				continue
			}
			if h.From > v.From {
				left = append(left, Interval{From: v.From, To: h.From})
			}
			v.From = min(h.To, v.To)
		}
		if v.From < v.To {
			left = append(left, v)
		}
	}
	return left
}
