package geometry

// Place says where a point lies with respect to a ring.
type Place uint8

// The places of a point.
const (
	Outside Place = iota
	OnEdge
	Inside
)

// Contains tells whether p lies inside the ring, on one of its edges or outside,
// decided exactly.
func (r Ring) Contains(p Point) Place {
	inside := false
	for i := range r {
		e := r.Edge(i)
		side := cross(e.A, e.B, p).sign()
		if e.has(p, side) {
			return OnEdge
		}
		// A ray from p to the right. An edge counts with its upper end only, so
		// that a ray through a corner is not counted twice.
		if (e.A.Y > p.Y) != (e.B.Y > p.Y) && (side > 0) == (e.B.Y > e.A.Y) {
			inside = !inside
		}
	}
	if inside {
		return Inside
	}
	return Outside
}
