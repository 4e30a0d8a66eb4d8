package wood

import (
	"errors"
	"slices"

	"plumbrule/checker/measure"
)

// tableBeam is a beam as the beam tables were evidently made: it carries joists whose cantilever is a quarter of their
// span.
func tableBeam(l Lumber, size measure.Size, plies int, joistSpan measure.Length, load Load) Beam {
	l.Size, l.Plies = size, plies
	return Beam{
		Lumber: l, Tributary: lengthOf(quarterFactor * inches(joistSpan)), Load: load, Limits: CodeLimits(),
	}
}

func tableBeamSpan(members []Lumber, size measure.Size, plies int, joistSpan measure.Length, load Load) (Span, error) {
	return shortest(members, func(l Lumber) (Span, error) {
		return tableBeam(l, size, plies, joistSpan, load).MaxSpan(TableBeams())
	})
}

// TableBeamSpan repeats Table R507.5 of IRC 2015 and 2018, which is Table 3 of DCA 6 (2015 IRC edition), between centers
// of posts and to the nearest inch. Its other species than southern pine are those of GroupCedars; a column of firs it
// has not. Fitted are 1.10 for two plies and half the dead load in the deflection; without the first the two-ply spans
// come out 5 % shorter.
func TableBeamSpan(g Group, size measure.Size, plies int, joistSpan measure.Length, load Load) (Span, error) {
	if g != GroupSouthernPine && g != GroupCedars {
		return Span{}, errors.New("the table has no column for that group")
	}
	span, err := tableBeamSpan(g.members(), size, plies, joistSpan, load)
	if err != nil {
		return Span{}, err
	}
	return span.nearest(), nil
}

// TableBeamSpan2021 repeats Table R507.5(1) of IRC 2021 by effective joist span, as recalled: the same, rounded down.
// The effective joist span already stands for the cantilever, so pass it as it is read from the table. The firs follow
// hem-fir alone: the shear of spruce-pine-fir, which is less, would shorten three of the 42 cells that were held against
// it, all under long joists, by up to 5 in.
func TableBeamSpan2021(g Group, size measure.Size, plies int, joistSpan measure.Length, load Load) (Span, error) {
	if err := g.check(); err != nil {
		return Span{}, err
	}
	members := g.members()
	if g == GroupFirs {
		members = slices.DeleteFunc(members, func(l Lumber) bool { return l.Species != HemFir })
	}
	span, err := tableBeamSpan(members, size, plies, joistSpan, load)
	if err != nil {
		return Span{}, err
	}
	return span.down(), nil
}
