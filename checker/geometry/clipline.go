package geometry

import (
	"slices"

	"plumbrule/checker/measure"
)

// ClipLine gives the parts inside the ring of the whole line through s, however
// short s is, in the order and direction in which s runs: a beam drawn without
// ends reaches from outline to outline. As in Scan, a stretch along an edge
// counts as inside and a touch at a corner does not. A segment without length
// has no line and yields nothing.
//
// The ends lie on the line through s, rounded to the nanometre.
func (r Ring) ClipLine(s Segment) []Segment {
	if s.A == s.B {
		return nil
	}
	sides := make([]wide, len(r))
	for i, p := range r {
		sides[i] = cross(s.A, s.B, p)
	}
	// Along the steep axis a crossing is known best, and rounding cannot change
	// the order of crossings.
	axis := s.steep()
	var left, right []measure.Length
	for i := range r {
		a, b := sides[i], sides[(i+1)%len(r)]
		crossesLeft, crossesRight := a.sign() < 0 != (b.sign() < 0), a.sign() > 0 != (b.sign() > 0)
		if !crossesLeft && !crossesRight {
			continue
		}
		v := axis.of(between(r.Edge(i), a, b))
		if crossesLeft {
			left = append(left, v)
		}
		if crossesRight {
			right = append(right, v)
		}
	}
	backwards := axis.of(s.A) > axis.of(s.B)
	var parts []Segment
	for _, v := range union(pairs(left), pairs(right)) {
		part := Segment{A: s.atAxis(axis, v.From), B: s.atAxis(axis, v.To)}
		if backwards {
			part = part.Reverse()
		}
		parts = append(parts, part)
	}
	if backwards {
		slices.Reverse(parts)
	}
	return parts
}

// atAxis is the point on the line through s whose coordinate on the steep axis
// is u.
func (s Segment) atAxis(steep Axis, u measure.Length) Point {
	flat := steep.other()
	run := steep.of(s.B) - steep.of(s.A)
	rise := flat.of(s.B) - flat.of(s.A)
	return steep.point(u, flat.of(s.A)+signedMulDiv(rise, u-steep.of(s.A), run))
}
