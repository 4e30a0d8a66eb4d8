package facts

import (
	"math"
	"slices"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
)

// crossing is where one joist bears on a beam: how far along the beam's base,
// over what width of deck, and the length of joist that the beam takes there.
type crossing struct {
	along   measure.Length
	half    measure.Length // half the width of the strip, measured along the beam
	width   measure.Length // of the strip, square to the joists
	builder float64        // nanometres of joist
	statics float64
	center  measure.Length // longest span beside it, center to center
	clear   *Length        // the same span, face to face
	past    measure.Length // cantilever past the beam
	sides   int            // spans that reach it
}

// crossings lists where joists bear on a beam, along it.
func (fr *frame) crossings(c *carrier) []crossing {
	var list []crossing
	for i := range fr.pieces {
		p := &fr.pieces[i]
		for k := range p.bearings {
			if p.bearings[k].beam != c {
				continue
			}
			x := fr.cross(c, p, k)
			same := slices.IndexFunc(list, func(o crossing) bool { return o.along == x.along })
			if same < 0 {
				list = append(list, x)
				continue
			}
			list[same].join(&x) // pieces that hang on both sides of a flush beam
		}
	}
	slices.SortFunc(list, func(a, b crossing) int { return int(sign(a.along - b.along)) })
	return list
}

func sign(l measure.Length) measure.Length {
	switch {
	case l < 0:
		return -1
	case l > 0:
		return 1
	}
	return 0
}

// cross works out one crossing.
func (fr *frame) cross(c *carrier, p *piece, k int) crossing {
	b := &p.bearings[k]
	from, to := fr.strip(p.x)
	place := fr.layout.point(geometry.Point{X: p.x, Y: b.center})
	x := crossing{along: c.base.Along(place), width: to - from}
	x.half = scaled(x.width, slantOf(c)/2)
	if k > 0 {
		x.side(b.center-p.bearings[k-1].center, b.near()-p.bearings[k-1].far(), p.bearings[k-1].missing+b.missing)
	}
	if k < len(p.bearings)-1 {
		x.side(p.bearings[k+1].center-b.center, p.bearings[k+1].near()-b.far(), p.bearings[k+1].missing+b.missing)
	}
	if !b.ends && k == len(p.bearings)-1 && b.far() < p.reach.To {
		x.overhang(p.reach.To - b.center)
	}
	if !b.ends && k == 0 && b.near() > p.reach.From {
		x.overhang(b.center - p.reach.From)
	}
	return x
}

// side adds a span beside the beam.
func (x *crossing) side(center, gap measure.Length, missing string) {
	x.sides++
	x.builder += float64(center) / 2
	x.statics += float64(center) / 2
	if center > x.center {
		x.center, x.clear = center, nil
		if missing == "" {
			x.clear = of(gap)
		}
	}
}

// overhang adds the joist past the beam: all of it as builders figure, and by
// statics (L+c)^2/2L over the span L behind it, which is c^2/2L more.
func (x *crossing) overhang(past measure.Length) {
	x.past = max(x.past, past)
	x.builder += float64(past)
	x.statics += float64(past)
	if x.center > 0 {
		x.statics += float64(past) * float64(past) / (2 * float64(x.center))
	}
}

// join adds what hangs on the other side.
func (x *crossing) join(o *crossing) {
	x.builder, x.statics, x.sides = x.builder+o.builder, x.statics+o.statics, x.sides+o.sides
	x.past = max(x.past, o.past)
	if o.center > x.center {
		x.center, x.clear = o.center, o.clear
	}
}

// slantOf is how much longer a strip square to the joists is along the beam.
func slantOf(c *carrier) float64 {
	if len(c.lines) == 0 {
		return 1
	}
	return slant(c.lines[0])
}

// strip is the width of deck that the joist at x carries: half way to its
// neighbors, and to the frame's edge at the outside.
func (fr *frame) strip(x measure.Length) (from, to measure.Length) {
	centers := fr.layout.centers
	box := fr.layout.plan(fr.surface.frame).Bounds()
	i, _ := slices.BinarySearch(centers, x)
	from, to = box.Min.X, box.Max.X
	if i > 0 {
		from = (centers[i-1] + x) / 2
	}
	if i < len(centers)-1 {
		to = (x + centers[i+1]) / 2
	}
	return from, to
}

// shareOut shares the strips of a beam out to its supports, in square
// millimetres: by halves of the bays, as builders do, and by the lever, each
// bay a simple beam with what passes the last support turning about it. What
// that lifts off the support behind is not taken off: the deck may be empty there.
func shareOut(list []crossing, supports []measure.Length, reach geometry.Interval) (builder, statics []float64) {
	builder, statics = make([]float64, len(supports)), make([]float64, len(supports))
	for i := range list {
		x := &list[i]
		from, to := max(x.along-x.half, reach.From), min(x.along+x.half, reach.To)
		if from >= to {
			continue
		}
		perLength := float64(x.width) / float64(to-from) // of deck width per length of beam
		halves(builder, supports, from, to, perLength*x.builder)
		levers(statics, supports, from, to, perLength*x.statics)
	}
	for i := range statics {
		builder[i], statics[i] = builder[i]/squareMillimetre, statics[i]/squareMillimetre
	}
	return builder, statics
}

// squareMillimetre in square nanometres.
const squareMillimetre = 1e12

// halves gives each support the load between the middles of its bays.
func halves(into []float64, supports []measure.Length, from, to measure.Length, load float64) {
	for i := range supports {
		low, high := measure.Length(math.MinInt64), measure.Length(math.MaxInt64)
		if i > 0 {
			low = (supports[i-1] + supports[i]) / 2
		}
		if i < len(supports)-1 {
			high = (supports[i] + supports[i+1]) / 2
		}
		if a, b := max(from, low), min(to, high); a < b {
			into[i] += load * float64(b-a)
		}
	}
}

// levers shares a load per length between the two supports of each bay, and
// what lies past the outer ones by the lever over the bay behind.
func levers(into []float64, supports []measure.Length, from, to measure.Length, load float64) {
	if len(supports) == 1 {
		into[0] += load * float64(to-from)
		return
	}
	cuts := []measure.Length{from}
	for _, s := range supports {
		if s > from && s < to {
			cuts = append(cuts, s)
		}
	}
	cuts = append(cuts, to)
	for k := 1; k < len(cuts); k++ {
		total := load * float64(cuts[k]-cuts[k-1])
		middle := (float64(cuts[k]) + float64(cuts[k-1])) / 2
		i := bayAt(supports, middle)
		low, high := float64(supports[i]), float64(supports[i+1])
		right := total * (middle - low) / (high - low)
		into[i] += max(total-right, 0)
		into[i+1] += max(right, 0)
	}
}

// bayAt is the bay that a place lies in, the nearest one for what lies outside.
func bayAt(supports []measure.Length, place float64) int {
	i := 0
	for i < len(supports)-2 && place > float64(supports[i+1]) {
		i++
	}
	return i
}
