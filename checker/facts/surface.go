package facts

import (
	"cmp"
	"errors"
	"fmt"
	"slices"
	"strings"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// surface is a platform with its plan worked out.
type surface struct {
	deck     *model.Deck
	engineer *engineer
	problems []Problem
	p        *model.Platform
	label    string
	names    []string // of the edges, in walking order
	ring     geometry.Ring
	// closure is set for a walked outline.
	closure *geometry.Closure
	// frame is the outline of the frame. Where that cannot be told from what the
	// outline was measured to, it is the outline itself and frameMissing names
	// the field that would tell.
	frame        geometry.Ring
	frameMissing string
	// frameFrom tells for each edge of a frame that was moved which edge of the
	// outline it was, -1 for a step between two; nil where nothing was moved.
	frameFrom []int
}

func newSurface(deck *model.Deck, engineer *engineer, i int) *surface {
	p := &deck.Platforms[i]
	s := &surface{deck: deck, engineer: engineer, p: p, label: label(p.Mark, i)}
	if p.Outline == nil {
		return s
	}
	s.names = p.Outline.Names()
	ring, closure, err := plan(p.Outline)
	if err == nil && ring != nil {
		err = sound(ring, s.names)
	}
	if err != nil {
		s.problems = append(s.problems, Problem{At: p.Outline.At, Message: err.Error()})
		return s
	}
	s.ring, s.closure, s.frame = ring, closure, ring
	if ring != nil {
		s.setFrame()
	}
	return s
}

// sound refuses an outline that encloses no surface or is walked the wrong way
// round, which would put every named edge in another place.
func sound(ring geometry.Ring, names []string) error {
	var fault *geometry.RingError
	if err := ring.Check(); errors.As(err, &fault) {
		var edges []string
		for _, e := range fault.Edges {
			edges = append(edges, fmt.Sprintf("%q", names[e]))
		}
		switch len(edges) {
		case 0:
			return fmt.Errorf("the outline cannot be drawn: %s", fault.Problem)
		case 1:
			return fmt.Errorf("the outline cannot be drawn: edge %s %s", edges[0], fault.Problem)
		}
		return fmt.Errorf("the outline cannot be drawn: edges %s %s", strings.Join(edges, " and "), fault.Problem)
	}
	if !ring.Clockwise() {
		return errors.New("the outline runs the wrong way round: list it from the house's left end along the house, then out")
	}
	return nil
}

// plan draws the outline in whichever of the three spellings it is typed.
func plan(o *model.Outline) (geometry.Ring, *geometry.Closure, error) {
	switch {
	case len(o.Walk) > 0:
		legs := make([]geometry.Leg, len(o.Walk))
		for i, leg := range o.Walk {
			if leg.Go == nil || leg.Turn == nil {
				return nil, nil, nil
			}
			legs[i] = geometry.Leg{Go: leg.Go.V, Turn: leg.Turn.V}
		}
		ring, closure, err := geometry.Walk(legs)
		if err != nil {
			return nil, nil, fmt.Errorf("the outline cannot be walked: %w", err)
		}
		return ring, &closure, nil
	case len(o.Corners) > 0:
		ring := make(geometry.Ring, len(o.Corners))
		for i, c := range o.Corners {
			ring[i] = geometry.Point{X: c.X, Y: c.Y}
		}
		return ring, nil, nil
	case o.AlongHouse != nil && o.OutFromHouse != nil:
		a, b := o.AlongHouse.V, o.OutFromHouse.V
		return geometry.Ring{{}, {X: a}, {X: a, Y: b}, {Y: b}}, nil, nil
	}
	return nil, nil, nil
}

// isHouse reports whether an edge lies against the house. A deck that wraps
// round a corner of the house has several such edges: "house", "house left".
func isHouse(name string) bool {
	return name == model.HouseEdge || strings.HasPrefix(name, model.HouseEdge+" ")
}

// setFrame moves the outline in from the fascia or the decking to the frame.
func (s *surface) setFrame() {
	in, missing := s.inset()
	if missing != "" {
		s.frameMissing = missing
		return
	}
	if err := s.moveIn(in); err != nil {
		s.frameMissing = outlineField
	}
}

// moveIn sets the frame behind the outline on all edges but those of the house.
// The error says that the outline has no room for it.
func (s *surface) moveIn(in measure.Length) error {
	if in == 0 {
		return nil
	}
	inwards := make([]measure.Length, len(s.ring))
	for i, name := range s.names {
		if !isHouse(name) {
			inwards[i] = in
		}
	}
	frame, from, err := s.ring.Offset(inwards)
	if err != nil {
		return fmt.Errorf("moving the outline in to the frame: %w", err)
	}
	s.frame, s.frameFrom = frame, from
	return nil
}

// outlineField is what waits for another outline: the one that is shown cannot
// be moved in to the frame.
const outlineField = "platforms[].outline"

// edgeMissing is the field without which it is not known how far behind the
// outline the frame ends where the line of joists at x does, "" where it ends
// there: along the house, or anywhere once it is shown what the outline is.
func (s *surface) edgeMissing(l *layout, x, y measure.Length) string {
	if s.frameMissing == "" {
		return ""
	}
	ring := l.plan(s.frame)
	for i, name := range s.edgeNames(l) {
		if !isHouse(name) {
			continue
		}
		if at, ok := ring.Edge(i).CrossX(x); ok && at == y {
			return ""
		}
	}
	return s.frameMissing
}

// frameNames gives for each edge of the frame the name of the outline's edge
// that it was, "" for a step that lies between two.
func (s *surface) frameNames() []string {
	if s.frameFrom == nil {
		return s.names
	}
	names := make([]string, len(s.frameFrom))
	for i, from := range s.frameFrom {
		if from >= 0 {
			names[i] = s.names[from]
		}
	}
	return names
}

// inset is how far the frame lies behind the outline, or the field that is
// needed to tell.
func (s *surface) inset() (in measure.Length, missing string) {
	fascia := measure.Length(0)
	if s.p.Fascia != nil {
		if s.p.Fascia.Thickness == nil {
			return 0, "platforms[].fascia.thickness"
		}
		fascia = s.p.Fascia.Thickness.V
	}
	switch words(s.p.MeasuredTo) {
	case "frame":
		return 0, ""
	case "fascia":
		if s.p.Fascia == nil {
			return 0, "platforms[].fascia.thickness"
		}
		return fascia, ""
	case "decking":
		if s.p.Decking == nil || s.p.Decking.Overhang == nil {
			return 0, "platforms[].decking.overhang"
		}
		return fascia + s.p.Decking.Overhang.V, ""
	}
	return 0, "platforms[].measured_to"
}

// platform is the fact of the walking surface itself.
func (s *surface) platform() Platform {
	f := Platform{
		At:                []string{s.p.At},
		Mark:              words(s.p.Mark),
		Support:           words(s.p.Support),
		SurfaceAboveGrade: shown(s.p.SurfaceAboveGrade),
		GreatestHeight:    s.greatestHeight(),
		MeasuredTo:        shown(s.p.MeasuredTo),
	}
	if s.p.Outline == nil {
		return f
	}
	at := s.p.Outline.At
	switch o := s.p.Outline; {
	case len(o.Walk) > 0:
		f.Outline = "walk"
	case len(o.Corners) > 0:
		f.Outline = "corners"
	default:
		f.Outline = "rectangle"
	}
	if s.ring != nil {
		f.Area = of(s.ring.Area(), at)
		f.Perimeter = of(s.ring.Perimeter(), at)
	}
	if s.closure != nil {
		walk := at + "/walk"
		total := measure.Length(0)
		for _, leg := range s.p.Outline.Walk {
			total += leg.Go.V
		}
		f.Closure, f.WalkLength = of(s.closure.Miss, walk), of(total, walk)
	}
	return f
}

// edges lists every edge of the outline with what the description says of it.
func (s *surface) edges() []Edge {
	list := make([]Edge, 0, len(s.names))
	for i, name := range s.names {
		e := Edge{At: []string{s.p.Outline.At}, Platform: s.label, Name: name, House: isHouse(name)}
		if s.ring != nil {
			e.Length = of(s.ring.EdgeLength(i), s.p.Outline.At)
		}
		described, ok := s.p.Edges.Get(name)
		e.Drops = drops(&described)
		if ok {
			e.At = []string{described.At}
			e.GroundSlope = ratio(described.SlopeWithin1200)
			if g := described.Guard; g != nil && g.V != model.NoGuard {
				e.Guarded, e.Guard = true, g.V
				if open := s.unguarded(i, &described); open > 0 {
					e.Guarded, e.Unguarded = false, of(open, described.At)
				}
			}
			if b := described.Bench; b != nil && (b.Fixed == nil || b.Fixed.V) {
				e.BenchSeat = shown(b.SeatHeight)
			}
		}
		if level := s.levelDrop(&described); level != nil && !e.House {
			level.At = append(level.At, e.At...)
			e.Drops[0].Drop, e.Drops[0].Level = level, true
		}
		list = append(list, e)
	}
	return list
}

// unguarded is the length of an edge that neither its guard nor a stair closes,
// for a guard that is shown to run along a part of it only.
func (s *surface) unguarded(edge int, e *model.Edge) measure.Length {
	if s.ring == nil || e.GuardFrom == nil && e.GuardTo == nil {
		return 0
	}
	whole := geometry.Interval{To: s.ring.EdgeLength(edge)}
	closed := whole
	if e.GuardFrom != nil {
		closed.From = e.GuardFrom.V
	}
	if e.GuardTo != nil {
		closed.To = e.GuardTo.V
	}
	covered := append([]geometry.Interval{closed}, s.stairsOn(edge)...)
	slices.SortFunc(covered, func(a, b geometry.Interval) int { return cmp.Compare(a.From, b.From) })
	open, reached := measure.Length(0), measure.Length(0)
	for _, c := range covered {
		if c.From > reached {
			open += c.From - reached
		}
		reached = max(reached, c.To)
	}
	return open + max(whole.To-reached, 0)
}

// stairsOn lists the stretches of an edge that stairs leave from.
func (s *surface) stairsOn(edge int) []geometry.Interval {
	var list []geometry.Interval
	for i := range s.deck.Stairs {
		stair := &s.deck.Stairs[i]
		from := stair.From
		if from == nil || from.Edge == nil || from.Along == nil || stair.Width == nil || from.Edge.V != s.names[edge] ||
			from.Platform != nil && from.Platform.V != s.label {
			continue
		}
		list = append(list, geometry.Interval{From: from.Along.V, To: from.Along.V + stair.Width.V})
	}
	return list
}

// corners gives the angle at every corner and the miter for it.
func (s *surface) corners() []Corner {
	if s.ring == nil {
		return nil
	}
	angles := s.ring.InteriorAngles()
	list := make([]Corner, len(angles))
	for i, interior := range angles {
		before := s.names[(i+len(angles)-1)%len(angles)]
		list[i] = Corner{
			At:       []string{s.p.Outline.At},
			Platform: s.label,
			Between:  before + " and " + s.names[i],
			Interior: of(degrees(interior), s.p.Outline.At),
		}
		if setting, err := geometry.Miter(interior); err == nil {
			list[i].Miter = of(degrees(setting), s.p.Outline.At)
		}
	}
	return list
}
