package facts

import (
	"slices"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// Plan is where the parts of one platform lie and what they end on. It is what a
// crew's sheet needs beside the document that checks read, from the same
// reckoning.
type Plan struct {
	Platform *model.Platform
	Label    string            // its mark, or its number
	Outline  geometry.Ring     // as described; nil where it cannot be drawn
	Names    []string          // of the outline's edges, in walking order
	Closure  *geometry.Closure // set for a walked outline
	// Frame is the outline of the frame. Where that cannot be told it is the
	// outline itself, and FrameMissing names the field that would tell.
	Frame        geometry.Ring
	FrameMissing string
	FrameEdges   []FrameEdge // of Frame, in walking order

	Turned         bool           // joists run along the house
	JoistThickness measure.Length // 0 where it is not shown
	// Bays is the even division of the layout; its zero value where the layout
	// is another one.
	Bays          geometry.Pitch
	JoistsMissing string // field without which no joist can be placed
	Sticks        []Stick
	Beams         []BeamPlace

	Past   Reckoned // decking past the outline as described
	Decked Reckoned // depth that rows of boards cover, on a rectangle
}

// FrameEdge is one side of the frame.
type FrameEdge struct {
	Name  string // of the outline's edge that it lies behind; "" for a step between two
	House bool   // lies against the house
}

// Reckoned is a length that may not follow from what is shown.
type Reckoned struct {
	Value measure.Length
	Known bool
}

// Stick is one piece of joist.
type Stick struct {
	// Center is its center line inside the frame, from the house or the left end
	// onwards; ledger, rim and headers still lie on it.
	Center   geometry.Segment
	Length   Reckoned // cut length along the center line
	From, To string   // what it ends on: ledger, rim, header or the mark of a flush beam
	Over     []string // marks of the dropped beams below it
}

// BeamPlace is where a beam lies.
type BeamPlace struct {
	Beam  *model.Beam
	Mark  string             // its mark, or its number
	Base  geometry.Segment   // the line that its posts are measured along, from A
	Lines []geometry.Segment // its center line, from outline to outline or as drawn
	Width Reckoned           // over all plies
	Flush bool
}

// rimName is what a joist ends on at an edge of the frame that carries nothing.
const rimName = "rim"

// Plans gives the plan of every platform, in the order of the description. The
// deck must have been derived without problems.
func Plans(deck *model.Deck) []Plan {
	engineer := newEngineer(deck)
	plans := make([]Plan, len(deck.Platforms))
	for i := range deck.Platforms {
		s := newSurface(deck, engineer, i)
		var scratch Facts
		plans[i] = scratch.addFrame(s).plan()
	}
	return plans
}

func (fr *frame) plan() Plan {
	s, l := fr.surface, &fr.layout
	p := Plan{
		Platform: s.p, Label: s.label, Outline: s.ring, Names: s.names, Closure: s.closure,
		Frame: s.frame, FrameMissing: s.frameMissing, Turned: l.turned, JoistsMissing: l.missing,
	}
	for _, name := range s.frameNames() {
		p.FrameEdges = append(p.FrameEdges, FrameEdge{Name: name, House: isHouse(name)})
	}
	switch {
	case s.p.Joists == nil:
		p.JoistsMissing = "platforms[].joists"
	case s.p.Joists.Dimensions() != nil:
		p.JoistThickness = s.p.Joists.Dimensions().V.Thickness
	}
	if n := len(l.marks); n > 1 && words(s.p.Joists.Layout) == "equal" {
		p.Bays = geometry.Pitch{Over: l.marks[n-1], Parts: int64(n - 1)}
	}
	for i := range fr.pieces {
		p.Sticks = append(p.Sticks, fr.stick(&fr.pieces[i]))
	}
	for i := range fr.beams {
		p.Beams = append(p.Beams, fr.beams[i].place(l))
	}
	if s.ring != nil && s.p.Decking != nil {
		p.Past.Value, p.Past.Known = s.deckingPast()
		p.Decked.Value, p.Decked.Known = s.deckedDepth()
	}
	return p
}

// stick writes a piece down in the plan as described.
func (fr *frame) stick(p *piece) Stick {
	l := &fr.layout
	stick := Stick{
		Center: geometry.Segment{
			A: l.point(geometry.Point{X: p.x, Y: p.reach.From}),
			B: l.point(geometry.Point{X: p.x, Y: p.reach.To}),
		},
		From: rimName, To: rimName,
	}
	g := gathering{s: fr.surface, l: l}
	for i := range p.resting {
		switch h := &p.resting[i]; {
		case h.endsAt(p.reach.From):
			stick.From = h.name
		case h.endsAt(p.reach.To):
			stick.To = h.name
		}
	}
	for i := range p.bearings {
		b := &p.bearings[i]
		switch {
		case !b.ends:
			stick.Over = append(stick.Over, b.name)
		case b.endsAt(p.reach.From):
			stick.From = b.name
		case b.endsAt(p.reach.To):
			stick.To = b.name
		}
	}
	if len(p.bearings) > 0 {
		stick.Length.Value, stick.Length.Known = g.cutLength(p)
	}
	return stick
}

func (c *carrier) place(l *layout) BeamPlace {
	lines := slices.Clone(c.lines)
	for i, line := range lines {
		lines[i] = geometry.Segment{A: l.point(line.A), B: l.point(line.B)}
	}
	return BeamPlace{
		Beam: c.beam, Mark: c.name, Base: c.base, Lines: lines, Flush: c.flush,
		Width: Reckoned{Value: c.width, Known: c.missing == ""},
	}
}
