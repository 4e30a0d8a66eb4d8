package facts

import (
	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// addGuards works out the guards and where on the platforms they stand.
func (f *Facts) addGuards(deck *model.Deck) {
	for i := range deck.Guards {
		g := &deck.Guards[i]
		fact := Guard{
			At: []string{g.At}, Mark: words(g.Mark),
			Height: shown(g.Height), HeightAboveSeat: shown(g.AboveSeat),
			ListedLoad: shown(g.ListedLoad), InfillLoad: shown(g.InfillLoad),
		}
		if in := g.Infill; in != nil {
			fact.InfillKind, fact.Opening = shown(in.Kind), shown(in.Opening)
			fact.BottomGap, fact.Climbable = shown(in.BottomGap), shown(in.Climbable)
			fact.BalusterWidth = shown(in.BalusterWidth)
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

// stand finds the edges that a guard is named for, the greatest drop there and
// the highest seat along it.
func (f *Facts) stand(g *Guard) {
	for i := range f.Edges {
		e := &f.Edges[i]
		if !e.Guarded || e.Guard != g.Mark {
			continue
		}
		g.Edges = append(g.Edges, e.Name)
		g.DropPartial = g.DropPartial || e.Drop == nil || e.DropWithin36 == nil
		for _, drop := range []*Length{e.Drop, e.DropWithin36} {
			if longer(drop, g.Drop) {
				g.Drop = drop
			}
		}
		if e.BenchSeat == nil || g.Height == nil {
			continue
		}
		above := of(g.Height.Value-e.BenchSeat.Value, g.Height.At[0], e.BenchSeat.At[0])
		if g.HeightAboveSeat == nil || above.Value < g.HeightAboveSeat.Value {
			g.HeightAboveSeat = above
		}
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
