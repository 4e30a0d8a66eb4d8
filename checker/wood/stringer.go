package wood

import (
	"errors"
	"math"

	"plumbrule/checker/measure"
)

// Stringer carries treads. A cut one has the wood left under its notches, the throat, and nothing more.
type Stringer struct {
	Lumber Lumber
	Throat measure.Length // across the grain; 0 for a solid stringer
	// Width is what one stringer carries of the stair, half of it where there are two.
	Width  measure.Length
	Load   Load // per horizontal area
	Limits Limits
}

// MaxSpan is the longest horizontal span between supports. The member leans, but load and span seen in plan give the
// same moment as on a level one; the deflection, which is greater on the slope, is not looked at. A notched member has a
// depth for which no size factor is printed, so a throat gets 1. The error says that the throat is not smaller than the
// depth, or what Joist says.
func (s Stringer) MaxSpan(p Profile) (Span, error) {
	l := s.Lumber
	if s.Throat < 0 || s.Throat >= l.Size.Depth {
		return Span{}, errors.New("the throat is not smaller than the stringer")
	}
	limits := s.Limits
	limits.Imposed, limits.Total = 0, 0
	f, err := l.flexure("stringer", s.Load, inches(s.Width), "t", "width of stair that it carries", false, limits, p)
	if err != nil {
		return Span{}, err
	}
	f.assume("the stringer leans: load and span are those seen in plan")
	if s.Throat > 0 {
		f.notch(inches(s.Throat))
	}
	return f.maxSpan()
}

// notch leaves the throat of a section, and takes the size factor off again.
func (f *flexure) notch(throat float64) {
	f.assume("the wood above the throat carries nothing, and the notches do not start a split")
	f.section.Depth = f.given("d", throat, "in", "throat")
	f.find("A", "b · d", f.section.Area(), "in²")
	f.find("S", "b · d² / 6", f.section.Modulus(), "in³")
	cf, _ := f.Find("CF")
	f.fb = f.find("Fb′", "Fb′ / max(1, CF)", f.fb/math.Max(1, cf.Value), "psi")
}
