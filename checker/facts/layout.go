package facts

import (
	"slices"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// layout is where the joists of a platform lie. Joists are worked out as if
// they ran out from the house; a plan whose joists run along it is turned over
// its diagonal first.
type layout struct {
	turned    bool
	thickness measure.Length
	marks     []measure.Length // near edges from the start of the layout's width
	centers   []measure.Length // places of all joists on the plan, outside ones of inner edges too
	spacing   *Length
	// missing is the field that the layout waits for, "" when it is complete.
	missing string
}

// layOut places the joists of a platform.
func (s *surface) layOut() layout {
	j := s.p.Joists
	l := layout{turned: words(j.Direction) == "along_house"}
	l.spacing = s.spacing(&l)
	dimensions := j.Dimensions()
	switch {
	case s.frame == nil:
		l.missing = "platforms[].outline"
	case j.Direction == nil:
		l.missing = "platforms[].joists.direction"
	case dimensions == nil:
		l.missing = "platforms[].joists.size"
	case words(s.p.Support) == "ledger" && !slices.ContainsFunc(s.names, isHouse):
		l.missing = "platforms[].outline.edges" // which edge the ledger lies along
	case l.missing == "" && s.frameMissing != "" && words(j.Layout) == "equal":
		l.missing = s.frameMissing
	}
	if l.missing != "" {
		return l
	}
	l.thickness = dimensions.V.Thickness
	l.place(s, j)
	return l
}

// spacing is the distance of joists as the description gives it, or as it
// comes out of an even division.
func (s *surface) spacing(l *layout) *Length {
	j := s.p.Joists
	switch words(j.Layout) {
	case "equal":
		return nil // known once the joists are placed
	case "on_center", "":
		if j.Spacing == nil {
			l.missing = "platforms[].joists.spacing"
			return nil
		}
		return shown(j.Spacing)
	}
	if len(j.Positions) == 0 {
		l.missing = "platforms[].joists.positions"
	}
	return nil
}

// spacingField is the field that would give the spacing; "" where it is shown.
func (s *surface) spacingField(l *layout) string {
	switch {
	case l.spacing != nil:
		return ""
	case s.p.Joists == nil || l.missing == "":
		return "platforms[].joists.spacing"
	}
	switch words(s.p.Joists.Layout) {
	case "on_center", "":
		return "platforms[].joists.spacing"
	case "listed":
		return "platforms[].joists.positions"
	}
	return l.missing // the bays are equal once they can be laid out
}

// place sets the marks and centers.
func (l *layout) place(s *surface, j *model.Joists) {
	ring := l.plan(s.frame)
	box := ring.Bounds()
	width := box.Max.X - box.Min.X
	switch words(j.Layout) {
	case "equal":
		if j.MaxSpacing == nil {
			l.missing = "platforms[].joists.max_spacing"
			return
		}
		bays, err := geometry.EqualBays(width, l.thickness, j.MaxSpacing.V)
		if err != nil {
			l.missing = "platforms[].joists.max_spacing"
			return
		}
		l.marks = bays.Marks()
		l.spacing = of(bays.Pitch.Length(), j.MaxSpacing.At, s.p.Outline.At)
	case "listed":
		l.listed(j, width)
	default:
		l.onCenter(j, width)
	}
	for _, mark := range l.marks {
		l.centers = append(l.centers, box.Min.X+mark+l.thickness/2)
	}
	l.closeInnerEdges(ring, s.edgeNames(l), box)
}

// onCenter lays joists out at the typed spacing.
func (l *layout) onCenter(j *model.Joists, width measure.Length) {
	start, first := geometry.Left, geometry.EdgeMarks
	if w := words(j.Start); w == "right" || w == "front" {
		start = geometry.Right
	}
	if words(j.FirstMark) == "center" {
		first = geometry.CentreMarks
	}
	marks, err := geometry.OnCenter(width, l.thickness, j.Spacing.V, start, first)
	if err != nil {
		l.missing = "platforms[].joists.spacing"
		return
	}
	l.marks = marks
}

// listed takes typed positions; their widest bay is the spacing.
func (l *layout) listed(j *model.Joists, width measure.Length) {
	for _, p := range j.Positions {
		l.marks = append(l.marks, p.V)
	}
	slices.Sort(l.marks)
	for i := 1; i < len(l.marks); i++ {
		if bay := l.marks[i] - l.marks[i-1]; l.spacing == nil || bay > l.spacing.Value {
			l.spacing = of(bay, j.Positions[i].At, j.Positions[i-1].At)
		}
	}
	if n := len(l.marks); n > 0 && l.marks[n-1]+l.thickness > width {
		l.missing = "platforms[].joists.positions"
	}
}

// closeInnerEdges adds the outside joists along edges that run with the joists
// but lie inside the bounds of the plan, as at the inner side of an L.
func (l *layout) closeInnerEdges(ring geometry.Ring, names []string, box geometry.Box) {
	for i := range ring {
		e := ring.Edge(i)
		if e.A.X != e.B.X || e.A.X == box.Min.X || e.A.X == box.Max.X || names[i] == "" {
			continue
		}
		center := e.A.X + l.thickness/2
		if e.A.Y < e.B.Y { // walking out from the house, the surface lies to the left
			center = e.A.X - l.thickness/2
		}
		if !slices.ContainsFunc(l.centers, func(c measure.Length) bool { return apart(c, center) < l.thickness }) {
			l.centers = append(l.centers, center)
		}
	}
	slices.Sort(l.centers)
}

// plan turns a ring over its diagonal where joists run along the house.
func (l *layout) plan(ring geometry.Ring) geometry.Ring {
	if !l.turned {
		return ring
	}
	turned := make(geometry.Ring, len(ring))
	for i, p := range ring {
		turned[len(ring)-1-i] = l.point(p)
	}
	return turned
}

// point turns a place likewise.
func (l *layout) point(p geometry.Point) geometry.Point {
	if l.turned {
		return geometry.Point{X: p.Y, Y: p.X}
	}
	return p
}

// bays gives the first and the last bay, center to center, nil with fewer than
// three joists.
func (l *layout) bays() (first, last measure.Length, ok bool) {
	n := len(l.marks)
	if n < 3 {
		return 0, 0, false
	}
	return l.marks[1] - l.marks[0], l.marks[n-1] - l.marks[n-2], true
}
