package facts

import (
	"slices"

	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// way is the line on the plan along which a flight descends.
type way uint8

const (
	anyWay way = iota // not shown, or at an angle to the house
	outFromHouse
	alongHouse
)

// across is the way at a right angle.
func (w way) across() way {
	switch w {
	case outFromHouse:
		return alongHouse
	case alongHouse:
		return outFromHouse
	}
	return anyWay
}

// leaves is the way in which the stair leaves its edge.
func (st *stair) leaves() way {
	if st.edge < 0 || st.from.ring == nil {
		return anyWay
	}
	switch e := st.from.ring.Edge(st.edge); {
	case e.A.X == e.B.X:
		return alongHouse
	case e.A.Y == e.B.Y:
		return outFromHouse
	}
	return anyWay
}

// wayOf is the way in which flight i descends: that in which the stair leaves,
// turned on the landings in between. A stair goes on straight where no turn is
// shown.
func (st *stair) wayOf(i int) way {
	w := st.leaves()
	for k := range i {
		switch turn := st.turnBelow(k); {
		case turn%(90*measure.Degree) != 0:
			return anyWay
		case turn%(180*measure.Degree) != 0:
			w = w.across()
		}
	}
	return w
}

// turnBelow is the change of direction on the landing below flight i.
func (st *stair) turnBelow(i int) measure.Angle {
	if l := st.landingBelow(i); l != nil && l.Turn != nil {
		return l.Turn.V
	}
	return 0
}

// turns reports whether the stair changes direction between its flights, so
// that it lands elsewhere than as far out as it is long.
func (st *stair) turns() bool {
	for i := range len(st.flights) - 1 {
		if st.turnBelow(i)%measure.MaxAngle != 0 {
			return true
		}
	}
	return false
}

// wayMissing is the field that would show in which way flight i descends. At an
// angle to the house none does: there it is the landing, whose sides are those
// along the house and out from it.
func (st *stair) wayMissing(landing string) string {
	switch {
	case st.from == nil && st.s.From != nil && st.s.From.Platform == nil && len(st.deck.Platforms) > 1:
		return "stairs[].from.platform"
	case st.from == nil:
		return "stairs[].from.edge"
	case st.from.ring == nil:
		return "platforms[].outline"
	case st.edge < 0:
		return "stairs[].from.edge"
	}
	return landing
}

// sides are the measures of a landing as they are known: depth in the direction
// of travel and width across it, or the lesser and the greater of the two where
// the direction is not known.
type sides struct {
	depth, width           *Length
	depthField, widthField string // the fields that would give them, "" where nothing is missing but the direction
	lesser, greater        *Length
	missing                string // the field that would show which is which
}

// sides gives the measures of the landing below flight i.
func (st *stair) sides(i int) sides {
	field := st.landingField(i)
	return sidesOf(st.landingBelow(i), st.wayOf(i), st.wayMissing(field), field)
}

// sidesOf gives the measures of a landing that stands under a field, reached in
// a way; where that is not known, missing would show it.
func sidesOf(l *model.Landing, w way, missing, field string) sides {
	if l == nil {
		return sides{depthField: field, widthField: field}
	}
	along, alongField := side(l.Along, field+".along")
	out, outField := side(l.Out, field+".out")
	switch {
	case w == alongHouse:
		return sides{depth: along, width: out, depthField: alongField, widthField: outField}
	case w == outFromHouse:
		return sides{depth: out, width: along, depthField: outField, widthField: alongField}
	case out == nil: // which of the two is the depth follows from neither alone
		return sides{depthField: outField, widthField: outField}
	case along == nil:
		return sides{depthField: alongField, widthField: alongField}
	case along.Value == out.Value:
		return sides{depth: out, width: along}
	case along.Value < out.Value:
		return sides{lesser: along, greater: out, missing: missing}
	}
	return sides{lesser: out, greater: along, missing: missing}
}

// side is one side of a landing, or the field that would give it.
func side(l *model.Length, field string) (*Length, string) {
	if l == nil {
		return nil, field
	}
	return shown(l), ""
}

// depths lists what the depth of the landing may be.
func (s sides) depths() []*Length {
	switch {
	case s.depth != nil:
		return []*Length{s.depth}
	case s.lesser != nil:
		return []*Length{s.lesser, s.greater}
	}
	return nil
}

// maxRuns bounds the lengths that a stair of many landings may have.
const maxRuns = 64

// runs lists how long the stair may be on the ground, flights and the landings
// between them; none where that is not shown.
func (st *stair) runs() []*Length {
	list := []*Length{of(measure.Length(0))}
	for i := range st.flights {
		run := st.flights[i].run()
		if run == nil {
			return nil
		}
		list = longerBy(list, []*Length{run})
		if i == len(st.flights)-1 {
			break
		}
		if list = longerBy(list, st.sides(i).depths()); len(list) > maxRuns {
			return nil
		}
	}
	return list
}

// longerBy adds every one of some lengths to every one of a list, each sum once.
func longerBy(list, more []*Length) []*Length {
	var sums []*Length
	for _, a := range list {
		for _, b := range more {
			sum := of(a.Value+b.Value, append(slices.Clone(a.At), b.At...)...)
			if !slices.ContainsFunc(sums, func(l *Length) bool { return l.Value == sum.Value }) {
				sums = append(sums, sum)
			}
		}
	}
	return sums
}

// run is how long the stair is on the ground; how far out from the edge it
// lands, where it goes on straight. Nil where it is not shown, or may be one of
// several.
func (st *stair) run() *Length {
	if list := st.runs(); len(list) == 1 {
		return list[0]
	}
	return nil
}
