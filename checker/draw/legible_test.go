package draw_test

import (
	"fmt"
	"math"
	"strings"

	"plumbrule/checker/draw/paper"
)

// fault is something that makes a sheet hard to read.
type fault struct {
	kind  string // one word, to count by
	words string
}

// Capitals of the Go fonts are 0.723 of their size; of lettering as small as
// 1.8 mm the ISO series of heights starts (from memory).
const (
	capital        = 0.723
	smallestLetter = 1.8 / 25.4 * 72 / capital
)

// replay is a canvas that remembers what was painted, in order.
type replay struct {
	marks []painted
	kinds []string // of the groups that are open
}

// painted is one path or one text of a sheet.
type painted struct {
	path   *paper.Path
	text   *paper.Text
	figure bool
	marker bool
}

func (r *replay) add(m painted) {
	for _, k := range r.kinds {
		m.figure = m.figure || k == "figure"
		m.marker = m.marker || k == "marker"
	}
	r.marks = append(r.marks, m)
}

func (r *replay) Path(p paper.Path) { r.add(painted{path: &p}) }
func (r *replay) Text(t paper.Text) { r.add(painted{text: &t}) }
func (r *replay) Group(kind string, do func()) {
	r.kinds = append(r.kinds, kind)
	do()
	r.kinds = r.kinds[:len(r.kinds)-1]
}

// ink is the room of the letters themselves, without the space round them.
func ink(t *paper.Text) paper.Box { return t.Box().Grown(-0.7) }

// legibility lists the faults of a sheet.
func legibility(s *paper.Sheet) []fault {
	var r replay
	for _, item := range s.Items {
		item.Draw(&r)
	}
	var list []fault
	for i, m := range r.marks {
		if m.text == nil || strings.TrimSpace(m.text.Words) == "" {
			continue
		}
		for _, o := range r.marks[:i] {
			if o.text != nil && o.text.Box().Meets(m.text.Box()) {
				list = append(list, fault{"overlap", fmt.Sprintf("%q stands on %q", m.text.Words, o.text.Words)})
			}
		}
		list = append(list, r.crossed(i)...)
		if !inside(s, &m) {
			list = append(list, fault{"outside", fmt.Sprintf("%q reaches past its room", m.text.Words)})
		}
		if m.text.Size < smallestLetter {
			list = append(list, fault{"small", fmt.Sprintf("%q is %g points high", m.text.Words, m.text.Size)})
		}
	}
	return append(list, markerFaults(s)...)
}

// crossed lists lines that run through the letters of a text: those painted
// before it, unless an area hides them, and those painted after it. A white
// patch of the text's own that hides lines is counted by itself.
func (r *replay) crossed(at int) []fault {
	t := r.marks[at].text
	box := ink(t)
	var list []fault
	patched := false
	for i, m := range r.marks {
		if m.path == nil {
			continue
		}
		if i > at && covers(m.path, box) {
			list = append(list, fault{"covered", fmt.Sprintf("an area lies over %q", t.Words)})
		}
		if !runsThrough(m.path, box) {
			continue
		}
		hidden := false
		for k := i + 1; k < at; k++ {
			if p := r.marks[k].path; p != nil && hides(p, box) {
				hidden = true
				patched = patched || k == at-1 && t.Clear
				break
			}
		}
		if !hidden {
			list = append(list, fault{"crossed", fmt.Sprintf("a line (stroke %d) runs through %q", m.path.Stroke, t.Words)})
		}
	}
	if patched {
		list = append(list, fault{"patch", fmt.Sprintf("%q wipes lines away", t.Words)})
	}
	return list
}

// runsThrough reports whether a stroke of a path passes the box.
func runsThrough(p *paper.Path, box paper.Box) bool {
	if p.Stroke == paper.NoStroke {
		return false
	}
	for i := range p.Points {
		k := (i + 1) % len(p.Points)
		if k == 0 && !p.Closed || p.Points[i] == p.Points[k] {
			continue
		}
		if box.Crosses(p.Points[i], p.Points[k]) {
			return true
		}
	}
	return false
}

// hides reports whether a filled area covers the whole box.
func hides(p *paper.Path, box paper.Box) bool {
	if p.Fill == paper.NoFill {
		return false
	}
	for _, c := range box.Corners {
		if !contains(p.Points, c) {
			return false
		}
	}
	return true
}

// covers reports whether a filled area covers any of the box.
func covers(p *paper.Path, box paper.Box) bool {
	if p.Fill == paper.NoFill {
		return false
	}
	for i, c := range box.Corners {
		d := box.Corners[(i+2)%4]
		if contains(p.Points, c) || contains(p.Points, paper.Point{X: (c.X + d.X) / 2, Y: (c.Y + d.Y) / 2}) {
			return true
		}
	}
	return false
}

// contains reports whether an area holds a point.
func contains(area []paper.Point, p paper.Point) bool {
	in := false
	for i := range area {
		a, b := area[i], area[(i+1)%len(area)]
		if (a.Y > p.Y) != (b.Y > p.Y) && p.X < a.X+(p.Y-a.Y)/(b.Y-a.Y)*(b.X-a.X) {
			in = !in
		}
	}
	return in
}

// inside reports whether words keep to the paper within the border, those of a
// figure above the title block.
func inside(s *paper.Sheet, m *painted) bool {
	const border, strip = 28.0, 46.0
	low, high := border, s.Height-border
	if m.figure {
		high -= strip
	}
	for _, c := range m.text.Box().Corners {
		if c.X < border || c.X > s.Width-border || c.Y < low || c.Y > high {
			return false
		}
	}
	return true
}

// markerFaults lists numbers of findings that lie on a dimension or far off the
// spot that they belong to.
func markerFaults(s *paper.Sheet) []fault {
	var list []fault
	for _, f := range figures(s) {
		for _, item := range f.Items {
			g, ok := item.(paper.Group)
			if !ok || g.Kind != "marker" {
				continue
			}
			numbers := ""
			for _, t := range paper.Texts(g.Items) {
				numbers += t.Words + " "
			}
			e := paper.Bounds(g.Items[2:])
			box := paper.Upright(e.Min, e.Max)
			for _, d := range dimensions(f.Items) {
				if d.Label.Box().Meets(box) || box.Crosses(d.Start, d.End) {
					list = append(list, fault{"marker", fmt.Sprintf("%slie on the dimension %q", numbers, d.Label.Words)})
				}
			}
			spot := g.Items[0].(paper.Path).Points
			if far := math.Hypot(spot[1].X-spot[0].X, spot[1].Y-spot[0].Y); far > 150 {
				list = append(list, fault{"far", fmt.Sprintf("%sstand %.0f points off their spot", numbers, far)})
			}
		}
	}
	return list
}
