package facts

import (
	"plumbrule/checker/model"
)

// addStatedHeight compares the height of a surface above grade, where it is
// written down, with the ground shown below it.
func (f *Facts) addStatedHeight(s *surface) {
	stated, depths := shown(s.p.SurfaceAboveGrade), s.depths(true)
	if stated == nil || len(depths) == 0 {
		return
	}
	least, greatest := extent(depths)
	entry := StatedHeight{At: stated.At, Platform: s.label, Stated: *stated, Derived: *stated}
	places := stated.At
	switch {
	case stated.Value < least.Value:
		entry.Derived, entry.Missing = *least, s.higherGround(least.Value == greatest.Value)
		places = append([]string{stated.At[0]}, least.At...)
	case stated.Value > greatest.Value:
		entry.Derived, entry.Missing = *greatest, s.dropsMissing()
		places = append([]string{stated.At[0]}, greatest.At...)
	}
	entry.Difference = *of(apart(stated.Value, entry.Derived.Value), places...)
	f.StatedHeights = append(f.StatedHeights, entry)
}

// levelDrop is the drop at an edge of which nothing is shown, where one height
// of the surface is stated for all of it. Ground that is said to fall, that is
// shown at points of the plan or that lies lower anywhere else than that height
// tells that it does not stand for every edge; then the drop is not known.
func (s *surface) levelDrop(e *model.Edge) *Length {
	if s.p.SurfaceAboveGrade == nil || e.Drop != nil || e.DropWithin36 != nil || e.DropWithin1200 != nil ||
		len(s.p.GradeAt) > 0 || s.sloped() {
		return nil
	}
	shownBelow := s.depths(true)
	for i := range s.p.Edges {
		if further := s.p.Edges[i].Value.DropWithin1200; further != nil {
			shownBelow = append(shownBelow, further)
		}
	}
	for _, depth := range shownBelow {
		if depth.V > s.p.SurfaceAboveGrade.V {
			return nil
		}
	}
	return shown(s.p.SurfaceAboveGrade)
}

// higherGround lists the fields that would tell whether the ground lies higher
// anywhere than it is shown. Toward the house it may rise above all drops,
// unless it is shown along the house too, or is level.
func (s *surface) higherGround(level bool) []string {
	missing := s.dropsMissing()
	if len(missing) > 0 || s.houseGroundShown() || level && !s.sloped() {
		return missing
	}
	return []string{"platforms[].grade_at"}
}

// dropsMissing lists the drops that are not shown, of all edges off the house.
func (s *surface) dropsMissing() []string {
	if len(s.names) == 0 {
		return []string{"platforms[].outline"}
	}
	var missing []string
	for _, name := range s.names {
		if e, ok := s.p.Edges.Get(name); !isHouse(name) && (!ok || e.Drop == nil) {
			missing = append(missing, "platforms[].edges.<"+name+">.drop")
		}
	}
	return missing
}

// depths lists the ground shown below the surface, wherever it is shown, and
// near the edges too if that counts.
func (s *surface) depths(near bool) []*model.Length {
	var list []*model.Length
	add := func(depth *model.Length) {
		if depth != nil {
			list = append(list, depth)
		}
	}
	for i := range s.p.Edges {
		add(s.p.Edges[i].Value.Drop)
		if near {
			add(s.p.Edges[i].Value.DropWithin36)
		}
	}
	for i := range s.p.GradeAt {
		add(s.p.GradeAt[i].BelowSurface)
	}
	if s.p.Posts != nil {
		for i := range s.p.Posts.Each {
			add(s.p.Posts.Each[i].GroundBelowSurface)
		}
	}
	return list
}

// sloped reports whether the ground of the site is said to fall.
func (s *surface) sloped() bool {
	site := s.deck.Site
	return site != nil && site.GradeFall != nil && (site.GradeFall.Slope == nil || site.GradeFall.Slope.V.Rise != 0)
}

// houseGroundShown reports whether the ground is shown somewhere along every
// edge against the house.
func (s *surface) houseGroundShown() bool {
	for i, name := range s.names {
		if isHouse(name) && !s.groundAlong(i, name) {
			return false
		}
	}
	return true
}

func (s *surface) groundAlong(edge int, name string) bool {
	if e, ok := s.p.Edges.Get(name); ok && e.Drop != nil {
		return true
	}
	for i := range s.p.GradeAt {
		g := &s.p.GradeAt[i]
		if s.ring != nil && g.Place != nil && g.BelowSurface != nil && s.ring.Edge(edge).Distance(at(g.Place)) == 0 {
			return true
		}
	}
	return false
}
