package wood

import (
	"errors"
	"math"

	"plumbrule/checker/measure"
)

// Group is a column of species that the deck tables of the model residential code treat alike.
type Group uint8

// The groups.
const (
	GroupSouthernPine Group = iota
	GroupFirs               // Douglas fir-larch, hem-fir and spruce-pine-fir, incised
	GroupCedars             // redwood, western cedars, ponderosa pine and red pine, not incised
)

// members are the lumber that a group's printed spans hold for: No. 2, wet, and incised where treatment needs it.
func (g Group) members() []Lumber {
	wet := func(s Species, grade Grade, incised bool) Lumber {
		return Lumber{Species: s, Grade: grade, Wet: true, Incised: incised}
	}
	switch g {
	case GroupFirs:
		return []Lumber{wet(DouglasFirLarch, No2, true), wet(HemFir, No2, true), wet(SprucePineFir, No2, true)}
	case GroupCedars:
		return []Lumber{
			wet(Redwood, No2OpenGrain, false), wet(WesternCedars, No2, false),
			wet(WesternWoods, No2, false), wet(NorthernSpecies, No2, false),
		}
	}
	return []Lumber{wet(SouthernPine, No2, false)}
}

// least finds the shortest of what a computation gives for the members of a group.
func (g Group) least(compute func(Lumber) (Span, error)) (Span, error) {
	return shortest(g.members(), compute)
}

func shortest(members []Lumber, compute func(Lumber) (Span, error)) (Span, error) {
	var least Span
	for i, l := range members {
		s, err := compute(l)
		if err != nil {
			return Span{}, err
		}
		if i == 0 || s.Length < least.Length {
			least = s
		}
	}
	return least, nil
}

// nearest rounds a span to the nearest inch and says so in its report.
func (s Span) nearest() Span { return s.rounded("round", 0.5) }

// down rounds a span down to an inch and says so in its report.
func (s Span) down() Span { return s.rounded("floor", 1e-9) }

func (s Span) rounded(how string, add float64) Span {
	exact := inches(s.Length)
	w := (&working{s.Report}).fork()
	w.put("x", exact, "in", Computed, "as above, in whole nanometers")
	value := w.find("x_t", how+"(x)", math.Floor(exact+add), "in")
	s.Length, s.Report = lengthOf(value), w.report()
	return s
}

var errNoGroup = errors.New("no such group of species")

func (g Group) check() error {
	if g > GroupCedars {
		return errNoGroup
	}
	return nil
}

// codeCap is the longest joist span that the tables print.
const codeCap = 18 * measure.Foot
