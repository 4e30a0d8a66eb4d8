package facts

import (
	"strconv"

	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// Derive works out what the deck is. The deck must have been read without
// problems; what it does not show stays out of the result. The problems are
// outlines that enclose no surface, and parts that contradict each other; with
// any of them the facts are nil.
func Derive(deck *model.Deck) (*Facts, []Problem) {
	f := &Facts{Units: deck.System.String(), Site: site(deck)}
	if deck.House != nil {
		f.House.At, f.House.Stories = []string{deck.House.At}, shown(deck.House.Stories)
	}
	var problems []Problem
	engineer := newEngineer(deck)
	surfaces := make([]*surface, len(deck.Platforms))
	for i := range deck.Platforms {
		s := newSurface(deck, engineer, i)
		surfaces[i] = s
		problems = append(problems, s.problems...)
	}
	if len(problems) == 0 {
		problems = contradictions(deck, surfaces)
	}
	if len(problems) > 0 {
		return nil, problems
	}
	for _, s := range surfaces {
		f.Platforms = append(f.Platforms, s.platform())
		f.Corners = append(f.Corners, s.corners()...)
		f.Edges = append(f.Edges, s.edges()...)
		fr := f.addFrame(s)
		f.addDecking(s)
		f.addBeams(fr)
		f.addLedger(fr)
		f.addJoined(fr)
	}
	f.addSpecials(deck)
	f.addGuards(deck)
	for i := range deck.Stairs {
		f.addStair(newStair(deck, engineer, surfaces, i))
	}
	f.addOpenings(deck, surfaces)
	f.addMeasured(deck, surfaces)
	return f, nil
}

// Problem is a part of the design that cannot be drawn.
type Problem struct {
	At      string // JSON pointer
	Message string
	Hint    string
}

func site(deck *model.Deck) Site {
	s := deck.Site
	if s == nil {
		return Site{}
	}
	return Site{
		At:             []string{s.At},
		LiveLoad:       shown(s.LiveLoad),
		DeadLoad:       shown(s.DeadLoad),
		GroundSnowLoad: shown(s.GroundSnowLoad),
		RoofSnowLoad:   shown(s.RoofSnowLoad),
		SoilBearing:    shown(s.SoilBearing),
		FrostDepth:     shown(s.FrostDepth),
		SoilClass:      shown(s.SoilClass),
	}
}

// shown carries a typed value over with its place; nil stays nil.
func shown[T any](v *model.Value[T]) *Of[T] {
	if v == nil {
		return nil
	}
	return &Of[T]{Value: v.V, At: []string{v.At}}
}

// of makes a derived value from the places it came from.
func of[T any](v T, at ...string) *Of[T] { return &Of[T]{Value: v, At: at} }

// label is an element's mark, or its number on the list when it has none.
func label(mark *model.Words, i int) string {
	if mark != nil {
		return mark.V
	}
	return strconv.Itoa(i + 1)
}

// words gives the text of a field, "" when it is not shown.
func words(w *model.Words) string {
	if w == nil {
		return ""
	}
	return w.V
}

// apart is the distance between two lengths, never negative.
func apart(a, b measure.Length) measure.Length {
	if a > b {
		return a - b
	}
	return b - a
}

// size is a member's size as words: nominal where it has such a name, else its
// thickness and depth.
func (s *surface) size(m *model.Member) *Words {
	return sizeWords(s.deck, m)
}

func sizeWords(deck *model.Deck, m *model.Member) *Words {
	d := m.Dimensions()
	if d == nil {
		return nil
	}
	if d.V.Nominal != "" {
		return of(d.V.Nominal, d.At)
	}
	return of(d.V.Thickness.Text(deck.System)+" x "+d.V.Depth.Text(deck.System), d.At)
}

// lumber is the material of a member.
func lumber(deck *model.Deck, m *model.Member) Lumber {
	if m == nil {
		return Lumber{}
	}
	return lumberNamed(deck, m.Lumber)
}

// lumberNamed is the material that the description lists under a name.
func lumberNamed(deck *model.Deck, name *model.Words) Lumber {
	if name == nil {
		return Lumber{}
	}
	material, _ := deck.Lumber.Get(name.V)
	return Lumber{Species: shown(material.Species), Grade: shown(material.Grade)}
}
