package fieldsheet

import (
	"fmt"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
)

// setOut adds the sides, diagonals, the 3-4-5, the sliding move and the tapes.
func (p *platform) setOut() {
	s := Section{Title: "Square" + p.of}
	switch {
	case !p.framed():
		p.missing("frame inside the outline", p.plan.FrameMissing)
		s.Notes = append(s.Notes, "The frame cannot be told from "+p.drawnTo()+": corners and sides here are those of the outline as drawn.")
	case p.moved():
		s.Notes = append(s.Notes, "Drawn to the "+word(p.m.MeasuredTo)+"; all else here is the frame behind it.")
	}
	s.add(p.sides())
	s.add(p.diagonals())
	s.add(p.triangles())
	s.add(p.slides())
	p.section(s)
	p.tapes()
}

// drawnTo says what the outline was measured to.
func (p *platform) drawnTo() string {
	if p.m.MeasuredTo == nil {
		return "an outline that does not say what it is measured to"
	}
	return "an outline drawn to the " + word(p.m.MeasuredTo)
}

// moved reports whether the frame lies elsewhere than the outline as drawn.
func (p *platform) moved() bool {
	if len(p.frame) != len(p.plan.Outline) {
		return true
	}
	for i, q := range p.plan.Outline {
		if p.frame[i] != q {
			return true
		}
	}
	return false
}

func (p *platform) sides() Table {
	t := list("Sides")
	if p.framed() && p.moved() {
		t.Columns = append(t.Columns, Column{"Frame", Length})
		t.Columns[1].Head = "As drawn"
		for i := range p.frame {
			drawn := Cell{Kind: Words}
			for k := range p.plan.Edges {
				if p.plan.Edges[k].Name == p.edges[i].Name {
					drawn = length(p.plan.Outline.EdgeLength(k))
				}
			}
			t.row(text(p.edgeName(i)), drawn, length(p.frame.EdgeLength(i)))
		}
	} else {
		for i := range p.frame {
			t.row(text(p.edgeName(i)), length(p.frame.EdgeLength(i)))
		}
	}
	if c := p.plan.Closure; c != nil && c.Miss != 0 {
		t.Notes = append(t.Notes, fmt.Sprintf("The outline as walked misses its start by %s: the last side here takes that up.", c.Miss.Text(p.sys)))
	}
	return t
}

// maxCorners is the number of corners up to which every pair is listed; the
// pairs grow with its square, and the tapes fix all corners by themselves.
const maxCorners = 8

// diagonals are those of a rectangle, or of the string box round any other
// outline with whatever lies between corners that are no neighbors.
func (p *platform) diagonals() Table {
	t := list("Diagonals")
	if along, out, ok := p.rectangle(); ok {
		t.row(text("both diagonals"), length(geometry.Diagonal(along, out)))
		t.Notes = append(t.Notes, "Equal diagonals alone do not make a rectangle: measure opposite sides first.")
		return t
	}
	box := p.frame.Bounds()
	along, out := box.Max.X-box.Min.X, box.Max.Y-box.Min.Y
	t.row(text("string box, along the house"), length(along))
	t.row(text("string box, out from the house"), length(out))
	t.row(text("string box, both diagonals"), length(geometry.Diagonal(along, out)))
	ring := p.frame
	n := len(ring)
	if n > maxCorners {
		t.Notes = append(t.Notes, fmt.Sprintf("Corner to corner is left out for more than %d corners; the tapes fix them all.", maxCorners))
		return t
	}
	for i := range n {
		for k := i + 2; k < n; k++ {
			if i == 0 && k == n-1 || p.onBase(ring[i]) || p.onBase(ring[k]) {
				continue // neighbors, or among the tapes
			}
			t.row(text(p.cornerName(i)+" to "+p.cornerName(k)), length(ring[i].To(ring[k])))
		}
	}
	return t
}

// onBase reports whether a point is one of the ends that tapes are held at.
func (p *platform) onBase(q geometry.Point) bool { return q == p.base.A || q == p.base.B }

// triangles are the largest 3-4-5 that fit into the square corners at the ends
// of the base.
func (p *platform) triangles() Table {
	unit, t := measure.Foot, list("Largest 3-4-5 that fits, in whole feet")
	if p.sys == measure.Metric {
		unit, t = 100*measure.Millimetre, list("Largest 3-4-5 that fits, in whole 100 mm")
	}
	ring, n := p.frame, len(p.frame)
	left, right := p.base.edge, (p.base.edge+1)%n
	sides := map[int]int{left: (left + n - 1) % n, right: right} // the other edge at each corner
	at := func(corner int, end string) {
		house, side := ring.EdgeLength(p.base.edge), ring.EdgeLength(sides[corner])
		k, err := geometry.Largest345(house, side, unit)
		if err != nil || k == 0 {
			return
		}
		alongHouse, along := int64(3), int64(4)
		if house >= side {
			alongHouse, along = 4, 3
		}
		t.row(text(end+" corner, along the house"), length(unit*measure.Length(k*alongHouse)))
		t.row(text(end+" corner, out"), length(unit*measure.Length(k*along)))
		t.row(text(end+" corner, across"), length(unit*measure.Length(k*5)))
	}
	switch {
	case p.square(left) && p.square(right) && ring.EdgeLength(sides[left]) == ring.EdgeLength(sides[right]):
		at(left, "either")
	default:
		if p.square(left) {
			at(left, "left")
		}
		if p.square(right) {
			at(right, "right")
		}
	}
	return t
}

// slides is the move that squares a rectangle, for the differences of its
// diagonals that a tape shows.
func (p *platform) slides() Table {
	along, out, ok := p.rectangle()
	if !ok {
		return Table{}
	}
	steps := []measure.Length{measure.Inch / 8, measure.Inch / 4, measure.Inch / 2, 3 * measure.Inch / 4, measure.Inch}
	if p.sys == measure.Metric {
		steps = []measure.Length{2 * measure.Millimetre, 5 * measure.Millimetre, 10 * measure.Millimetre, 20 * measure.Millimetre}
	}
	front := p.edgeName(p.base.edge + 2)
	t := Table{
		Title:   "Sliding move, opposite sides equal",
		Columns: []Column{{"Diagonals differ by", Words}, {"Slide " + front + " by", Length}},
		Notes:   []string{"Slide " + front + " along itself, toward the house corner where the longer diagonal starts."},
	}
	diagonal := geometry.Diagonal(along, out)
	for _, step := range steps {
		slide, err := geometry.Slide(along, diagonal+step/2, diagonal-step/2)
		if err != nil {
			continue
		}
		t.row(text(step.Text(p.sys)), length(slide))
	}
	return t
}

// tapes locate corners, posts and footings from both ends of the base.
func (p *platform) tapes() {
	t := Table{Columns: []Column{{"To", Words}, {"From left end", Length}, {"From right end", Length}}}
	to := func(name string, q geometry.Point) {
		left, right := geometry.Tapes(p.base.A, p.base.B, q)
		t.row(text(name), length(left), length(right))
	}
	for i, q := range p.frame {
		if !p.onBase(q) {
			to(p.cornerName(i), q)
		}
	}
	for _, post := range p.postPlaces() {
		to(post.name, post.at)
	}
	s := Section{Title: "Tapes from both ends of the " + p.base.name + p.of}
	s.Notes = append(s.Notes, "Hold both tapes on the house face. "+p.centered())
	s.add(t)
	p.section(s)
}

// centered says what a tape to a post finds besides.
func (p *platform) centered() string {
	if p.m.Footings == nil {
		return "Posts are located by their centers."
	}
	return "Posts are located by their centers; each footing is centered below its post."
}
