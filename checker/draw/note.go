package draw

import (
	"math"

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

// place finds room for lines of words near a spot: the nearest place where they
// meet no other words, unless a place a little further has fewer lines running
// through it. near and far bound how far they stand from the spot.
func (f *figure) place(spot paper.Point, near, far, size float64, lines []string) []paper.Text {
	width := 0.0
	for _, words := range lines {
		width = max(width, f.fonts.Width(words, size, false))
	}
	height := size * leading * float64(len(lines))
	best, bestCost := []paper.Text(nil), math.Inf(1)
	for reach := far; best == nil; reach *= 2 { // words that find no room go further out
		for _, p := range around(spot, near, reach) {
			// The block stands on the far side of p, seen from the spot.
			at := p.Plus(-width/2, -height/2)
			v := towards(spot, p)
			at = at.Plus(v.x*width/2, v.y*height/2)
			texts := f.block(at, size, lines)
			room := boxes(texts)
			if !f.free(room...) {
				continue
			}
			cost := distance(spot, p) + 9*float64(f.crossings(room...))
			if cost < bestCost {
				best, bestCost = texts, cost
			}
		}
	}
	return best
}

// note sets words near a spot and draws a line from them to it.
func (f *figure) note(spot paper.Point, lines ...string) { f.noteFrom(spot, 14, lines...) }

// noteFrom is note with a least distance.
func (f *figure) noteFrom(spot paper.Point, near float64, lines ...string) {
	if len(lines) == 0 {
		return
	}
	texts := f.place(spot, near, max(90, near+40), normal, lines)
	e := paper.NoExtent()
	for _, t := range texts {
		box := t.Box()
		e = e.With(box.Corners[:]...)
	}
	end := paper.Point{X: min(max(spot.X, e.Min.X), e.Max.X), Y: min(max(spot.Y, e.Min.Y), e.Max.Y)}
	f.dims = append(f.dims, paper.Group{Kind: "leader", Items: []paper.Item{
		paper.Line(spot, end, paper.Fine), paper.Circle(spot, 1.3, paper.Fine, paper.Solid),
	}})
	for _, t := range texts {
		f.write(t)
	}
}

// label sets words at a spot, or as near to it as there is room, without a line.
func (f *figure) label(spot paper.Point, size float64, lines ...string) {
	for _, t := range f.place(spot, 0, 60, size, lines) {
		f.write(t)
	}
}

// along writes words along a line, on its left as it runs if distance is above
// zero, else on its right; nothing where they do not fit or the room is taken.
func (f *figure) along(a, b paper.Point, gap, size float64, words string) bool {
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
		if f.free(t.Box()) {
			f.write(t)
			return true
		}
	}
	return false
}
