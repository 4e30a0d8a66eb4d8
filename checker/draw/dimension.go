package draw

import (
	"math"
	"slices"

	"plumbrule/checker/draw/paper"
)

// dimension is a dimension on a figure whose label can still move.
type dimension struct {
	paper.Dimension
	stretch stretch
}

const (
	overLine   = 2.6 // from a dimension line to the letters above it
	belowLine  = overLine + 0.78*normal
	besideLine = 5.0 // from a dimension line to letters beside it
)

// dimension draws a dimension on the line from start to end. Its figure goes
// where there is room by what is known now, and finds its place when all lines
// are drawn.
func (f *figure) dimension(s stretch, start, end paper.Point) {
	d := &dimension{stretch: s, Dimension: paper.Dimension{
		From: s.from, To: s.to, Start: start, End: end, Value: s.value, FromCenter: s.fromCenter, ToCenter: s.toCenter, Apart: true,
	}}
	if s.stub > 0 {
		d.FromFree, d.ToFree = distance(s.from, start)-s.stub, distance(s.to, end)-s.stub
	}
	d.FromFree = f.beyond(s.from, start, d.FromFree)
	d.ToFree = f.beyond(s.to, end, d.ToFree)
	d.Label = f.fonts.Text(spaced(f.length(s.value), s.after), normal)
	if s.optional && d.Label.Width > distance(start, end)-3 {
		d.Label = f.fonts.Text(f.length(s.value), normal)
	}
	d.Label.Align, d.Label.Clear = paper.Middle, true
	list := d.places()
	first := list[0]
	for _, p := range list[1:] {
		if f.free(first.text.Box()) {
			break
		}
		first = p
	}
	d.Label, d.Leader = first.text, first.leader
	f.taken = append(f.taken, d.Label.Box())
	f.dims = append(f.dims, d)
	f.keepOff(start, end)
	for _, line := range [][2]paper.Point{{s.from, start}, {s.to, end}} {
		free := d.FromFree
		if line[1] == end {
			free = d.ToFree
		}
		if a, b, ok := paper.ExtensionLine(line[0], line[1], free); ok {
			f.strokes = append(f.strokes, stroke{a, b, 0.8 * f.weight}) // a gap in it loses little
			f.extensions = append(f.extensions, stroke{a: a, b: b})
		}
	}
	for _, p := range []paper.Point{start, end} {
		f.kept = append(f.kept, paper.Upright(p.Plus(-3, -3), p.Plus(3, 3)))
	}
	if start != end {
		f.kept = append(f.kept, alongLine(start, end, 1.5))
	}
}

// alongLine is the box round a line.
func alongLine(a, b paper.Point, half float64) paper.Box {
	w := towards(a, b).left()
	return paper.Box{Corners: [4]paper.Point{moved(a, w, -half), moved(b, w, -half), moved(b, w, half), moved(a, w, half)}}
}

// beyond is how much of an extension line is to be left free so that it does not
// run over one that is there already.
func (f *figure) beyond(from, to paper.Point, free float64) float64 {
	const same = 0.2
	v, length := towards(from, to), distance(from, to)
	if length < same {
		return free
	}
	along := func(p paper.Point) float64 { return (p.X-from.X)*v.x + (p.Y-from.Y)*v.y }
	across := func(p paper.Point) float64 { return math.Abs((p.X-from.X)*v.y - (p.Y-from.Y)*v.x) }
	for _, e := range f.extensions {
		low, high := min(along(e.a), along(e.b)), max(along(e.a), along(e.b))
		if across(e.a) < same && across(e.b) < same && low < length && high > free {
			free = min(high, length)
		}
	}
	return free
}

// place is where a label may stand, with the line to its dimension, and how far
// that is from where it would stand best.
type labelPlace struct {
	text   paper.Text
	leader []paper.Point
	cost   float64
}

// places lists where the label of a dimension may stand, better ones first: on
// the dimension line where it fits, past its ends, then further and further off
// with a line to it.
func (d *dimension) places() []labelPlace {
	label := d.Label
	if d.stretch.flat {
		at := middle(d.Start, d.End)
		label.Turn, label.Align, label.At = 0, paper.Left, at.Plus(besideLine, 0.36*normal)
		return []labelPlace{{text: label}}
	}
	v := towards(d.Start, d.End)
	label.Turn = readable(v.turn())
	sin, cos := math.Sincos(label.Turn * math.Pi / 180)
	u, up := vector{cos, -sin}, vector{-sin, -cos}
	mid, length := middle(d.Start, d.End), distance(d.Start, d.End)
	at := func(along, rise float64) paper.Text {
		t := label
		t.At = moved(moved(mid, u, along), up, rise)
		return t
	}
	var list []labelPlace
	if slack := (length - 3 - label.Width) / 2; slack >= 0 && !d.stretch.aside {
		for _, part := range []float64{0, 0.2, -0.2, 0.45, -0.45, 0.7, -0.7, 1, -1} {
			list = append(list,
				labelPlace{text: at(part*slack, overLine), cost: math.Abs(part*slack) / 12},
				labelPlace{text: at(part*slack, -belowLine), cost: math.Abs(part*slack)/12 + 2})
		}
	}
	const levels = 9
	for level := range levels {
		rise := overLine + normal + float64(level)*1.1*normal
		for _, along := range []float64{0, label.Width/2 + 5, -label.Width/2 - 5, label.Width + 8, -label.Width - 8, 1.6*label.Width + 10, -1.6*label.Width - 10} {
			for _, r := range []float64{-rise - normal, rise} {
				t := at(along, r)
				foot := moved(t.At, up, -0.24*normal)
				if r < 0 {
					foot = moved(t.At, up, 0.78*normal)
				}
				list = append(list, labelPlace{text: t, leader: []paper.Point{foot, mid}, cost: 8 + rise/2 + math.Abs(along)/3})
			}
		}
	}
	return list
}

// letter gives the figures of all dimensions their places, now that all lines
// are known: those that fit their line first, since they have less choice.
func (f *figure) letter() {
	for _, d := range f.dims {
		i := slices.Index(f.taken, d.Label.Box())
		f.taken = slices.Delete(f.taken, i, i+1)
	}
	order := slices.Clone(f.dims)
	slices.SortStableFunc(order, func(a, b *dimension) int { return a.rank() - b.rank() })
	for _, d := range order {
		f.letterOne(d)
		f.taken = append(f.taken, d.Label.Box())
		if len(d.Leader) > 1 {
			f.strokes = append(f.strokes, stroke{d.Leader[0], d.Leader[1], 6})
		}
	}
}

// rank orders dimensions by how little choice their labels have.
func (d *dimension) rank() int {
	switch {
	case d.stretch.flat:
		return 0
	case d.stretch.aside:
		return 3
	case len(d.Leader) > 1:
		return 2
	}
	return 1
}

// letterOne finds the place of one label.
func (f *figure) letterOne(d *dimension) {
	const perLine, perLeaderLine, crowded = 60, 4, 60
	best := labelPlace{cost: math.Inf(1)}
	if !d.stretch.aside {
		for _, p := range d.places() {
			if p.cost >= best.cost || !f.free(p.text.Box()) {
				continue
			}
			p.cost += perLine * f.crossings(p.text.Box())
			if len(p.leader) > 1 {
				if f.overWords(p.leader[0], p.leader[1]) {
					continue
				}
				p.cost += perLeaderLine * f.crossed(p.leader[0], p.leader[1])
			}
			if p.cost < best.cost {
				best = p
			}
		}
	}
	if best.cost < crowded || d.stretch.flat && !math.IsInf(best.cost, 1) {
		d.Label, d.Leader = best.text, best.leader
		return
	}
	// Level words somewhere near, with a line to the dimension.
	mid := middle(d.Start, d.End)
	most := f.most
	f.most = nil                                                              // no dimension goes without its figure
	texts := f.place(mid, 16, 220, normal, leader{}, []string{d.Label.Words}) // too short to be broken
	f.most = most
	from, to := leader{}.line(mid, extentOf(texts))
	d.Label, d.Leader = texts[0], []paper.Point{to, from}
}
