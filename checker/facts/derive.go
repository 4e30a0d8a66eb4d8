package facts

import (
	"strconv"

	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// Derived is a deck with what follows from it, all of one working out.
type Derived struct {
	Deck *model.Deck
	// Facts is the document that checks read.
	Facts *Facts
	// SettingOut is the shapes behind it, for drawings and field sheets.
	SettingOut SettingOut
}

// Derive works out what the deck is. The deck must have been read without
// problems; what it does not show stays out of the result. The problems are
// outlines that enclose no surface, and parts that contradict each other; with
// any of them the result is nil.
func Derive(deck *model.Deck) (*Derived, []Problem) {
	w, problems := workOut(deck)
	if len(problems) > 0 {
		return nil, problems
	}
	return &Derived{Deck: deck, Facts: w.facts(), SettingOut: w.setOut()}, nil
}

// worked is a deck with every part laid out, once. Facts and setting out are
// written from it, so that they cannot disagree.
type worked struct {
	deck     *model.Deck
	surfaces []*surface
	stairs   []*stair
	frames   []*frame // one for each surface
	fronts   []front
}

// workOut lays the deck out; nothing is placed of one that contradicts itself.
func workOut(deck *model.Deck) (*worked, []Problem) {
	w := &worked{deck: deck}
	var problems []Problem
	engineer := newEngineer(deck)
	for i := range deck.Platforms {
		s := newSurface(deck, engineer, i)
		w.surfaces = append(w.surfaces, s)
		problems = append(problems, s.problems...)
	}
	if len(problems) > 0 {
		return nil, problems
	}
	for i := range deck.Stairs {
		w.stairs = append(w.stairs, newStair(deck, engineer, w.surfaces, i))
	}
	if problems := contradictions(w); len(problems) > 0 {
		return nil, problems
	}
	for _, s := range w.surfaces {
		w.frames = append(w.frames, newFrame(s))
	}
	w.fronts = findFronts(deck, w.surfaces)
	return w, nil
}

// facts writes the document.
func (w *worked) facts() *Facts {
	deck := w.deck
	f := &Facts{Units: deck.System.String(), Site: site(deck)}
	if deck.House != nil {
		f.House.At, f.House.Stories = []string{deck.House.At}, shown(deck.House.Stories)
	}
	for _, fr := range w.frames {
		f.Platforms = append(f.Platforms, fr.platform())
		f.Corners = append(f.Corners, fr.corners()...)
		f.Edges = append(f.Edges, fr.edges()...)
		f.PlatformOpenings = append(f.PlatformOpenings, fr.openings()...)
		f.addStatedHeight(fr.surface)
		f.addJoists(fr)
		f.addDecking(fr)
		f.addBeams(fr)
		f.addLedger(fr)
		f.addJoined(fr)
	}
	f.addOutdoorLumber(deck)
	f.addSpecials(deck)
	f.addGuards(deck)
	for _, st := range w.stairs {
		f.addStair(st)
	}
	f.addOpenings(w.fronts)
	f.addMeasured(deck)
	return f
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

// lumber is the material of the member that stands at a path in the language of
// designs.
func lumber(deck *model.Deck, m *model.Member, path string) Lumber {
	if m == nil {
		return lumberNamed(deck, nil, path)
	}
	return lumberNamed(deck, m.Lumber, path)
}

// lumberNamed is the material that the description lists under the name that
// the part at a path is cut from.
func lumberNamed(deck *model.Deck, name *model.Words, path string) Lumber {
	if name == nil {
		return Lumber{Missing: []string{path + ".lumber"}}
	}
	material, _ := deck.Lumber.Get(name.V)
	l := Lumber{Species: shown(material.Species), Grade: shown(material.Grade)}
	if l.Species == nil {
		l.Missing = append(l.Missing, "lumber.<"+name.V+">.species")
	}
	if l.Grade == nil {
		l.Missing = append(l.Missing, "lumber.<"+name.V+">.grade")
	}
	return l
}
