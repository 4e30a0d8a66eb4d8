package wood

import (
	"errors"
	"fmt"
	"math"
	"slices"

	"plumbrule/checker/measure"
)

// Layout is where a straight member begins and ends and what it lies on, all measured along it from one point.
type Layout struct {
	From, To measure.Length
	Supports []measure.Length // rising; at least two
}

// Simple is a member over one span.
func Simple(span measure.Length) Layout {
	return Layout{To: span, Supports: []measure.Length{0, span}}
}

// Overhang is a member over a back span that goes on beyond its second support.
func Overhang(backSpan, cantilever measure.Length) Layout {
	return Layout{To: backSpan + cantilever, Supports: []measure.Length{0, backSpan}}
}

// Equal is a member over a number of equal spans.
func Equal(spans int, span measure.Length) Layout {
	l := Layout{To: measure.Length(spans) * span}
	for i := range spans + 1 {
		l.Supports = append(l.Supports, measure.Length(i)*span)
	}
	return l
}

// maxSupports keeps the working of one member small; no deck beam has nearly as many posts.
const maxSupports = 200

// girder checks the layout and turns it into inches.
func (l Layout) girder() (girder, error) {
	switch {
	case len(l.Supports) < 2:
		return girder{}, fmt.Errorf("%d supports: a member needs two", len(l.Supports))
	case len(l.Supports) > maxSupports:
		return girder{}, fmt.Errorf("%d supports: more than %d", len(l.Supports), maxSupports)
	case l.Supports[0] < l.From || l.Supports[len(l.Supports)-1] > l.To:
		return girder{}, errors.New("a support lies beyond the member")
	}
	g := girder{from: inches(l.From), to: inches(l.To)}
	for i, s := range l.Supports {
		if i > 0 && s <= l.Supports[i-1] {
			return girder{}, errors.New("the supports do not rise")
		}
		g.supports = append(g.supports, inches(s))
	}
	return g, nil
}

// Action is a load on a member: a line load between two places, or a force at one if Force is not zero.
type Action struct {
	From, To measure.Length
	Line     float64       // lb per foot, down; not used for a force
	Force    measure.Force // at From, down
	// Permanent is always there. Other loads are there or not, span by span, whatever is worse.
	Permanent bool
}

// Range is the least and the greatest of a number over the load patterns.
type Range struct{ Least, Most float64 }

// Envelope holds what a member meets over all load patterns: each span and overhang loaded or not, each force there or
// not.
type Envelope struct {
	Reactions []Range // by support, lb, up above zero
	Sagging   float64 // greatest moment, lb·in, at SaggingAt
	Hogging   float64 // least moment, lb·in, at HoggingAt
	Shear     float64 // greatest in size, lb, with its sign, at ShearAt
	// Deflections are those of the left overhang, each span and the right overhang, in inches, down above zero. An
	// overhang that is not there has zeros.
	Deflections                   []Range
	SaggingAt, HoggingAt, ShearAt measure.Length
}

// Envelope solves the layout for a stiffness E′I in lb·in². The error says that the layout does not stand, or that a
// load lies beyond it or is not finite.
func (l Layout) Envelope(stiffness float64, actions []Action) (Envelope, error) {
	g, err := l.girder()
	if err != nil {
		return Envelope{}, err
	}
	if !(stiffness > 0) || math.IsInf(stiffness, 0) {
		return Envelope{}, errors.New("the stiffness is not above zero")
	}
	permanent, variable, err := l.loadings(actions)
	if err != nil {
		return Envelope{}, err
	}
	e := g.envelope(permanent, variable)
	out := Envelope{
		Sagging: e.sagging.value, SaggingAt: lengthOf(e.sagging.at),
		Hogging: e.hogging.value, HoggingAt: lengthOf(e.hogging.at),
		Shear: e.shear.value, ShearAt: lengthOf(e.shear.at),
	}
	for _, r := range e.reactions {
		out.Reactions = append(out.Reactions, Range{r.least, r.most})
	}
	for _, d := range e.drops {
		out.Deflections = append(out.Deflections, Range{d.least / stiffness, d.most / stiffness})
	}
	return out, nil
}

// loadings sorts the actions by whether they are permanent, in lb and in.
func (l Layout) loadings(actions []Action) (permanent, variable loading, err error) {
	for i, a := range actions {
		into := &variable
		if a.Permanent {
			into = &permanent
		}
		switch {
		case a.From < l.From || a.From > l.To:
			return permanent, variable, fmt.Errorf("load %d lies beyond the member", i+1)
		case a.Force != 0:
			into.points = append(into.points, point{inches(a.From), pounds(a.Force)})
		case a.To <= a.From || a.To > l.To:
			return permanent, variable, fmt.Errorf("load %d does not end on the member", i+1)
		case math.IsNaN(a.Line) || math.IsInf(a.Line, 0):
			return permanent, variable, fmt.Errorf("load %d is not a number", i+1)
		default:
			into.patches = append(into.patches, patch{inches(a.From), inches(a.To), a.Line / 12})
		}
	}
	return permanent, variable, nil
}

// pieces cuts the layout at joints of a ply. Each joint lies on a support, on which both pieces bear.
func (l Layout) pieces(joints []measure.Length) ([]Layout, error) {
	var cut []Layout
	from := l.From
	for _, at := range append(slices.Clone(joints), l.To) {
		if at != l.To && !slices.Contains(l.Supports, at) {
			return nil, fmt.Errorf("a joint at %s, where there is no support", at.Sixteenths())
		}
		if at <= from {
			return nil, errors.New("the joints do not rise along the member")
		}
		piece := Layout{From: from, To: at}
		for _, s := range l.Supports {
			if s >= from && s <= at {
				piece.Supports = append(piece.Supports, s)
			}
		}
		cut = append(cut, piece)
		from = at
	}
	return cut, nil
}
