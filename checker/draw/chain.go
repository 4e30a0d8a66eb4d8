package draw

import (
	"cmp"
	"math"
	"slices"

	"plumbrule/checker/draw/paper"
	"plumbrule/checker/measure"
)

// stretch is one dimension of a chain: what lies between two points.
type stretch struct {
	from, to paper.Point
	value    measure.Length
	after    string // words behind the figure, as "clear"
	optional bool   // those words are left out where there is no room
	// fromCenter and toCenter are true for the middle of a thing.
	fromCenter, toCenter bool
	// stub is how long extension lines are at most; 0 for all the way.
	stub float64
	// flat writes the figure level beside the dimension line.
	flat bool
	// aside writes the figure where there is room, with a line to it.
	aside bool
}

// rulers are how far out dimension lines have got on each side.
type rulers map[side]float64

const (
	firstLine = 26.0 // from the drawing to the first dimension line
	nextLine  = 19.0 // from one dimension line to the next
)

// fence starts the dimension lines outside of all that is drawn.
func (f *figure) fence() {
	e := paper.Bounds(f.items())
	f.rulers = rulers{above: e.Min.Y - firstLine, below: e.Max.Y + firstLine, atLeft: e.Min.X - firstLine, atRight: e.Max.X + firstLine}
}

// chain draws dimensions on the next free line of a side. Where stretches
// overlap, the later ones get a line of their own; gaps between them are left.
func (f *figure) chain(s side, list []stretch) {
	for len(list) > 0 {
		var rest []stretch
		end := math.Inf(-1)
		list = ordered(s, list)
		drawn := 0
		for _, d := range list {
			low, high := d.reach(s)
			if low < end-0.5 {
				rest = append(rest, d)
				continue
			}
			end = high
			drawn++
			f.onRuler(s, d)
		}
		f.advance(s)
		list = rest
	}
}

func ordered(s side, list []stretch) []stretch {
	list = slices.Clone(list)
	slices.SortStableFunc(list, func(a, b stretch) int {
		low1, _ := a.reach(s)
		low2, _ := b.reach(s)
		return cmp.Compare(low1, low2)
	})
	return list
}

// reach is where a stretch lies along a side.
func (d stretch) reach(s side) (low, high float64) {
	if s == above || s == below {
		return min(d.from.X, d.to.X), max(d.from.X, d.to.X)
	}
	return min(d.from.Y, d.to.Y), max(d.from.Y, d.to.Y)
}

// onRuler draws one dimension on the present line of a side.
func (f *figure) onRuler(s side, d stretch) {
	at := f.rulers[s]
	start, end := paper.Point{X: d.from.X, Y: at}, paper.Point{X: d.to.X, Y: at}
	if s == atLeft || s == atRight {
		start, end = paper.Point{X: at, Y: d.from.Y}, paper.Point{X: at, Y: d.to.Y}
	}
	f.dimension(d, start, end)
}

// advance moves a side's dimension line out, past whatever stands there now.
func (f *figure) advance(s side) {
	e := paper.NoExtent()
	for _, d := range f.dims {
		one := paper.Bounds([]paper.Item{d.Dimension, d.Label})
		e = e.With(one.Min, one.Max)
	}
	at := f.rulers[s]
	switch s {
	case above:
		f.rulers[s] = min(at-nextLine, e.Min.Y-nextLine/2)
	case below:
		f.rulers[s] = max(at+nextLine, e.Max.Y+nextLine/2+4)
	case atLeft:
		f.rulers[s] = min(at-nextLine, e.Min.X-nextLine/2+3)
	case atRight:
		f.rulers[s] = max(at+nextLine, e.Max.X+nextLine/2+3)
	case slanted:
	}
}

// beside draws a dimension along the line from one point to the other, at a
// distance to the left of it, or to the right where that is below zero.
func (f *figure) beside(d stretch, gap float64) {
	out := towards(d.from, d.to).left()
	f.dimension(d, moved(d.from, out, gap), moved(d.to, out, gap))
}

// filled puts dimensions into the gaps between those of a chain, so that it adds
// up; gaps that no tape shows stay.
func (f *figure) filled(s side, list []stretch, low, high paper.Point) []stretch {
	list = ordered(s, list)
	at := low
	var out []stretch
	put := func(from, to paper.Point) {
		a, _ := stretch{from: from, to: from}.reach(s)
		b, _ := stretch{from: to, to: to}.reach(s)
		gap := measure.Length(math.Round((b - a) / f.scale.points()))
		if gap >= measure.Inch/4 {
			out = append(out, stretch{from: from, to: to, value: gap})
		}
	}
	for _, d := range list {
		from, to := d.from, d.to
		if a, b := (stretch{from: from, to: to}).ends(s); a > b {
			from, to = to, from
		}
		put(at, from)
		out = append(out, d)
		at = to
	}
	put(at, high)
	return out
}

// ends are the coordinates along a side of both ends, in their order.
func (d stretch) ends(s side) (from, to float64) {
	if s == above || s == below {
		return d.from.X, d.to.X
	}
	return d.from.Y, d.to.Y
}
