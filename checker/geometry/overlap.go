package geometry

// OverlapArea is the area in square millimetres that the ring shares with a
// convex window, such as the rectangle that one post carries. The ring may be
// concave, the window may walk either way.
//
// The ring is cut by one edge of the window after the other (Sutherland and
// Hodgman, Reentrant Polygon Clipping, 1974). A concave ring that falls apart
// leaves pieces joined by bridges along the window's edge; they enclose nothing,
// so the area is right although the cut outline would not be, which is why only
// the area is offered. Cuts are rounded to the nanometre: along an outline of a
// hundred metres that is a tenth of a square millimetre. Rational cuts would be
// exact and take nine times as long.
//
// The error, a *RingError, says that the window is not convex.
func (r Ring) OverlapArea(window Ring) (int64, error) {
	if err := window.checkConvex(); err != nil {
		return 0, err
	}
	clockwise := window.Clockwise()
	cut := r
	for i := range window {
		e := window.Edge(i)
		if !clockwise {
			e = e.Reverse()
		}
		cut = cut.rightOf(e)
	}
	return cut.Area(), nil
}

// checkConvex reports whether the ring encloses an area and never turns both
// left and right.
func (r Ring) checkConvex() error {
	if err := r.Check(); err != nil {
		return err
	}
	way := r.AreaTwice().Sign()
	for i := range r {
		next := (i + 1) % len(r)
		if turned(r[i], r[next], r[(i+2)%len(r)]).sign()*way < 0 {
			return &RingError{Problem: "turn outwards where the window must be convex", Edges: []int{i, next}}
		}
	}
	return nil
}

// rightOf is the part of the ring to the right of the line through e as seen on
// the page, with bridges along the line where it falls apart.
func (r Ring) rightOf(e Segment) Ring {
	var kept Ring
	for i, p := range r {
		way := r.Edge(i)
		here, there := cross(e.A, e.B, p), cross(e.A, e.B, way.B)
		if here.sign() >= 0 {
			kept = append(kept, p)
		}
		if here.sign()*there.sign() < 0 {
			kept = append(kept, between(way, here, there))
		}
	}
	return kept
}
