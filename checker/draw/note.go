package draw

import (
	"math"
	"slices"

	"plumbrule/checker/draw/paper"
)

// leading is the distance of lines of words, in parts of their size.
const leading = 1.28

// block lays lines of words out from the upper left corner at.
func (f *figure) block(at paper.Point, size float64, lines []string) []paper.Text {
	list := make([]paper.Text, len(lines))
	for i, words := range lines {
		t := f.fonts.Text(words, size)
		t.At = at.Plus(0, size*(0.8+leading*float64(i)))
		t.Clear = true
		list[i] = t
	}
	return list
}

func boxes(list []paper.Text) []paper.Box {
	b := make([]paper.Box, len(list))
	for i := range list {
		b[i] = list[i].Box()
	}
	return b
}

// leader is the line that a note has to its spot. Beside is how far from the
// spot it starts, at the edge of what the note is about; none is for a label.
type leader struct {
	beside float64
	none   bool
}

// line is the leader of a block of words.
func (l leader) line(spot paper.Point, block paper.Extent) (from, to paper.Point) {
	to = paper.Point{X: min(max(spot.X, block.Min.X), block.Max.X), Y: min(max(spot.Y, block.Min.Y), block.Max.Y)}
	if distance(spot, to) <= l.beside {
		return to, to
	}
	return moved(spot, towards(spot, to), l.beside), to
}

// place finds room for lines of words near a spot: the nearest place where they
// meet no other words, unless one a little further has fewer lines running
// through it. near and far bound how far they stand from the spot.
func (f *figure) place(spot paper.Point, near, far, size float64, l leader, lines []string) []paper.Text {
	lines = f.wrapped(lines, size)
	width := 0.0
	for _, words := range lines {
		width = max(width, f.fonts.Width(words, size, false))
	}
	height := size * leading * float64(len(lines))
	best, bestCost := []paper.Text(nil), math.Inf(1)
	// In points: past the first a leader may run over words, past the second words
	// take the first place there is.
	const crowded, enough = 1000, 1e4
	const furthest = 600                        // where figures are confined
	for reach := far; best == nil; reach *= 2 { // words that find no room go further out
		if f.most != nil && reach > furthest {
			return nil
		}
		for _, p := range around(spot, near, reach, 24, 7) {
			if distance(spot, p) >= bestCost {
				return best // all that follow are further out
			}
			// The block stands on the far side of p, seen from the spot.
			at := p.Plus(-width/2, -height/2)
			v := towards(spot, p)
			if p != spot {
				at = at.Plus(v.x*width/2, v.y*height/2)
			}
			texts := f.block(at, size, lines)
			room := boxes(texts)
			if !f.open(room...) && reach < enough || !f.holds(room...) {
				continue
			}
			const perLine, perLeaderLine = 50, 4
			cost := distance(spot, p) + perLine*f.crossings(room...)
			if !l.none {
				from, to := l.line(spot, extentOf(texts))
				if f.overWords(from, to) && reach < crowded {
					continue
				}
				cost += perLeaderLine * f.crossed(from, to)
			}
			if cost < bestCost {
				best, bestCost = texts, cost
			}
		}
	}
	return best
}

// holds reports whether a confined figure stays as small as it has to with boxes.
func (f *figure) holds(boxes ...paper.Box) bool {
	if f.most == nil {
		return true
	}
	e := f.reached
	for _, b := range boxes {
		e = e.With(b.Corners[:]...)
	}
	return e.Width() <= max(f.most.Width(), f.reached.Width()) && e.Height() <= max(f.most.Height(), f.reached.Height())
}

// wrapped breaks lines of a note that are too long to find room.
func (f *figure) wrapped(lines []string, size float64) []string {
	const widest = 150
	var out []string
	for _, words := range lines {
		out = append(out, f.fonts.Wrap(words, size, widest, false)...)
	}
	return out
}

func extentOf(texts []paper.Text) paper.Extent {
	e := paper.NoExtent()
	for _, t := range texts {
		box := t.Box()
		e = e.With(box.Corners[:]...)
	}
	return e
}

// overWords reports whether a line would run through words.
func (f *figure) overWords(from, to paper.Point) bool {
	return slices.ContainsFunc(f.taken, func(b paper.Box) bool { return b.Crosses(from, to) })
}

// crossed is the weight of the lines that a line would cross.
func (f *figure) crossed(from, to paper.Point) float64 {
	sum := 0.0
	for _, s := range f.strokes {
		switch {
		case meet(from, to, s.a, s.b):
			sum += s.weight
		case alongside(from, to, s.a, s.b): // cannot be told from it
			sum += 20 * s.weight
		}
	}
	return sum
}

// meet reports whether two lines cross.
func meet(a, b, c, d paper.Point) bool {
	turn := func(p, q, r paper.Point) float64 { return (q.X-p.X)*(r.Y-p.Y) - (q.Y-p.Y)*(r.X-p.X) }
	return turn(a, b, c)*turn(a, b, d) < 0 && turn(c, d, a)*turn(c, d, b) < 0
}

// alongside reports whether two lines run over each other for a stretch.
func alongside(a, b, c, d paper.Point) bool {
	const near, stretch = 1.5, 3
	v := towards(a, b)
	across := func(p paper.Point) float64 { return math.Abs((p.X-a.X)*v.y - (p.Y-a.Y)*v.x) }
	along := func(p paper.Point) float64 { return (p.X-a.X)*v.x + (p.Y-a.Y)*v.y }
	if across(c) > near || across(d) > near {
		return false
	}
	low, high := min(along(c), along(d)), max(along(c), along(d))
	return min(high, distance(a, b))-max(low, 0) > stretch
}

// note sets words near a spot and draws a line from them to it, once all else
// has its place.
func (f *figure) note(spot paper.Point, lines ...string) {
	f.kept = append(f.kept, paper.Upright(spot.Plus(-6, -6), spot.Plus(6, 6)))
	f.later(func() { f.noteNow(spot, 17, leader{}, lines) })
}

// noteBeside is note for a thing that reaches some way round the spot.
func (f *figure) noteBeside(spot paper.Point, reach float64, lines ...string) {
	f.later(func() { f.noteNow(spot, reach+9, leader{beside: reach}, lines) })
}

func (f *figure) noteNow(spot paper.Point, near float64, l leader, lines []string) {
	if len(lines) == 0 {
		return
	}
	texts := f.place(spot, near, max(220, near+120), normal, l, lines)
	if texts == nil { // said beside the drawing rather than nowhere
		f.remark("Without room at its place: " + joined(lines) + ".")
		return
	}
	from, to := l.line(spot, extentOf(texts))
	line := []paper.Item{paper.Line(from, to, paper.Fine)}
	if l.beside == 0 {
		line = append(line, paper.Circle(spot, 1.3, paper.Fine, paper.Solid))
	}
	f.leaders = append(f.leaders, paper.Group{Kind: "leader", Items: line})
	f.strokes = append(f.strokes, stroke{from, to, 6}) // words over a leader part it from its note
	for _, t := range texts {
		f.write(t)
	}
}

// label sets words at a spot, or as near to it as there is room, without a
// line, once all else has its place; where there is no room without lines, it is
// a note.
func (f *figure) label(spot paper.Point, size float64, lines ...string) {
	f.later(func() {
		texts := f.place(spot, 0, 60, size, leader{none: true}, lines)
		if room := extentOf(texts); texts == nil || f.crossings(boxes(texts)...) > 0 || !within(room, spot, 70) {
			f.noteNow(spot, 17, leader{}, lines)
			return
		}
		for _, t := range texts {
			f.write(t)
		}
	})
}

// within reports whether a point lies so near to an extent.
func within(e paper.Extent, p paper.Point, near float64) bool {
	to := paper.Point{X: min(max(p.X, e.Min.X), e.Max.X), Y: min(max(p.Y, e.Min.Y), e.Max.Y)}
	return distance(p, to) <= near
}

// along writes words along a line, on its left as it runs if distance is above
// zero, else on its right; nothing where they do not fit, where the room is
// taken or lines run through it.
func (f *figure) along(a, b paper.Point, gap float64, words string) bool {
	const size = small
	t := f.fonts.Text(words, size)
	t.Clear = true
	if t.Width > distance(a, b) {
		return false
	}
	v := towards(a, b)
	t.Turn, t.Align = readable(v.turn()), paper.Middle
	// up is the way the letters point.
	sin, cos := math.Sincos(t.Turn * math.Pi / 180)
	up := vector{-sin, -cos}
	out := v.left()
	off := gap
	if off > 0 {
		off += 0.24 * size
	} else {
		off -= 0.24 * size
	}
	if (up.x*out.x+up.y*out.y > 0) != (gap > 0) { // the base line is the far side
		off += math.Copysign(0.5*size, gap)
	}
	for _, part := range []float64{0.5, 0.3, 0.7, 0.2, 0.8} {
		at := paper.Point{X: a.X + (b.X-a.X)*part, Y: a.Y + (b.Y-a.Y)*part}
		t.At = moved(at, out, off)
		if f.free(t.Box()) && f.crossings(t.Box()) == 0 {
			f.write(t)
			return true
		}
	}
	return false
}
