package facts

// greatestHeight is how high the walking surface lies above the ground where
// it lies highest: as stated, or where an edge, a point or a post shows the
// ground further below. What the ground does past the edges is left out.
func (s *surface) greatestHeight() *Length {
	greatest := shown(s.p.SurfaceAboveGrade)
	for _, depth := range s.depths(false) {
		if d := shown(depth); longer(d, greatest) {
			greatest = d
		}
	}
	return greatest
}
