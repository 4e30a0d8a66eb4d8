package facts

import "plumbrule/checker/model"

// greatestHeight is how high the walking surface lies above the ground where
// it lies highest: as stated, or where an edge, a point or a post shows the
// ground further below. What the ground does past the edges is left out.
func (s *surface) greatestHeight() *Length {
	greatest := shown(s.p.SurfaceAboveGrade)
	reach := func(depth *model.Length) {
		if d := shown(depth); longer(d, greatest) {
			greatest = d
		}
	}
	for i := range s.p.Edges {
		reach(s.p.Edges[i].Value.Drop)
	}
	for i := range s.p.GradeAt {
		reach(s.p.GradeAt[i].BelowSurface)
	}
	if s.p.Posts != nil {
		for i := range s.p.Posts.Each {
			reach(s.p.Posts.Each[i].GroundBelowSurface)
		}
	}
	return greatest
}
