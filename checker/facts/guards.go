package facts

import (
	"slices"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// addGuards works out the guards and where on the platforms they stand.
func (f *Facts) addGuards(deck *model.Deck) {
	for i := range deck.Guards {
		g := &deck.Guards[i]
		fact := Guard{
			At: []string{g.At}, Footholds: []Length{}, Mark: words(g.Mark),
			Height: shown(g.Height), HeightAboveSeat: shown(g.AboveSeat),
			ListedLoad: shown(g.ListedLoad), InfillLoad: shown(g.InfillLoad),
		}
		if in := g.Infill; in != nil {
			fact.InfillKind, fact.Opening = shown(in.Kind), shown(in.Opening)
			fact.BottomGap, fact.Climbable = shown(in.BottomGap), shown(in.Climbable)
			fact.BalusterWidth = shown(in.BalusterWidth)
			for _, height := range in.Footholds {
				fact.Footholds = append(fact.Footholds, *shown(height))
			}
		}
		if p := g.Posts; p != nil {
			fact.PostSize = sizeWords(deck, &p.Member)
			fact.PostSpacing, fact.PostNotched, fact.PostFixing = shown(p.MaxSpacing), shown(p.Notched), shown(p.Fixing)
		}
		f.stand(&fact)
		fact.balusters(g)
		f.Guards = append(f.Guards, fact)
	}
}

// stand finds the edges that a guard is named for, the greatest drops there and
// the highest seat along it.
func (f *Facts) stand(g *Guard) {
	g.Drops = []DropOut{}
	var stood []*Edge
	for i := range f.Edges {
		e := &f.Edges[i]
		if !e.Guarded || e.Guard != g.Mark {
			continue
		}
		stood = append(stood, e)
		g.Edges = append(g.Edges, e.Name)
		if e.BenchSeat == nil || g.Height == nil {
			continue
		}
		above := of(g.Height.Value-e.BenchSeat.Value, g.Height.At[0], e.BenchSeat.At[0])
		if g.HeightAboveSeat == nil || above.Value < g.HeightAboveSeat.Value {
			g.HeightAboveSeat = above
		}
	}
	for i := range f.PlatformOpenings {
		if o := &f.PlatformOpenings[i]; o.Guarded && o.Guard == g.Mark {
			stood = append(stood, o.standsOn())
			g.Edges = append(g.Edges, o.Name)
		}
	}
	g.overGround(stood)
}

// overGround takes the greatest drops and the steepest ground of the edges that
// a guard stands on.
func (g *Guard) overGround(edges []*Edge) {
	if len(edges) == 0 {
		return
	}
	g.Drops = slices.Clone(edges[0].Drops)
	g.GroundSlope = edges[0].GroundSlope
	for i := range g.Drops {
		for _, e := range edges {
			d := e.Drops[i].Drop
			g.Drops[i].Partial = g.Drops[i].Partial || d == nil
			if longer(d, g.Drops[i].Drop) {
				g.Drops[i].Drop, g.Drops[i].Level = d, e.Drops[i].Level
			}
		}
	}
	for _, e := range edges {
		if g.GroundSlope == nil || e.GroundSlope == nil {
			g.GroundSlope = nil
			return
		}
		if steeperGround(e.GroundSlope.Value, g.GroundSlope.Value) {
			g.GroundSlope = e.GroundSlope
		}
	}
}

// steeperGround reports whether the first of two slopes is the steeper one.
func steeperGround(a, b Ratio) bool { return a.Rise*b.Run > b.Rise*a.Run }

// The distances out from an edge for which a description may show the greatest
// drop.
const (
	within36   = 36 * measure.Inch
	within1200 = 1200 * measure.Millimetre
)

// drops lists what is shown of the ground below an edge, the nearest first.
func drops(e *model.Edge) []DropOut {
	return []DropOut{
		{Field: "drop", Drop: shown(e.Drop)},
		{Out: within36, Field: "drop_within_36_in", Drop: shown(e.DropWithin36)},
		{Out: within1200, Field: "drop_within_1200_mm", Drop: shown(e.DropWithin1200)},
	}
}

// balusters sets out balusters in the widest bay between posts: at the drawn
// opening from the near post, and divided evenly.
func (g *Guard) balusters(described *model.Guard) {
	bay, at, ok := widestBay(described)
	if !ok {
		return
	}
	g.BayClear = of(bay, at)
	if g.BalusterWidth == nil || g.Opening == nil || g.BalusterWidth.Value <= 0 || g.Opening.Value <= 0 {
		return
	}
	width, opening := g.BalusterWidth.Value, g.Opening.Value
	places := []string{g.Opening.At[0], at}
	g.LastGap = of(bay%(opening+width), places...)
	if even, err := geometry.EqualBalusters(bay, width, opening); err == nil {
		g.EvenGap, g.EvenCount = of(even.Gap.Length(), places...), of(int64(even.Count), places...)
	}
}

// widestBay is the clear distance between posts where they stand furthest apart.
func widestBay(g *model.Guard) (bay measure.Length, at string, ok bool) {
	for _, b := range g.Bays {
		if b.V > bay {
			bay, at, ok = b.V, b.At, true
		}
	}
	if ok || g.Posts == nil || g.Posts.MaxSpacing == nil || g.Posts.Dimensions() == nil {
		return bay, at, ok
	}
	bay = g.Posts.MaxSpacing.V - g.Posts.Dimensions().V.Thickness
	return bay, g.Posts.MaxSpacing.At, bay > 0
}
