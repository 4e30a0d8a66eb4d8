package facts

import (
	"math"

	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// footing works out the footing of one post.
func (g *girder) footing(post *Post, d *model.Footing) Footing {
	fact := Footing{
		At: []string{d.At}, Platform: g.label, Beam: g.c.name, N: post.N, Corner: post.Corner,
		Freestanding: post.Freestanding, BeamSpan: post.BeamSpan, JoistSpan: post.JoistSpan,
		Kind: shown(d.Kind), Shape: shown(d.Shape), Diameter: shown(d.Diameter), Side: shown(d.Side),
		Thickness: shown(d.Thickness), Depth: shown(d.Depth), DepthInSoil: shown(d.DepthInUndisturbedSoil),
		NearHouseDepth: shown(d.NearHouseDepth), FrostProtected: shown(d.FrostProtected), Soil: shown(d.Soil),
		TributaryArea: post.TributaryArea, Missing: post.Missing,
	}
	fact.LiveLoad, fact.GroundSnowLoad = g.loads()
	if site := g.deck.Site; site != nil {
		fact.FrostDepth, fact.SoilBearing = shown(site.FrostDepth), shown(site.SoilBearing)
	}
	if house := g.deck.House; house != nil {
		fact.FoundationDepth = shown(house.FoundationDepth)
	}
	half := fact.plan(d)
	fact.toHouse(d, post, half)
	fact.spread(g, d, half)
	if post.Load != nil && fact.PlanArea != nil && fact.PlanArea.Value > 0 {
		const perMicronewton = 1e6
		pressure := float64(post.Load.Value.Statics) * perMicronewton / float64(fact.PlanArea.Value)
		fact.Pressure = of(measure.Pressure(rounded(pressure)), append(append([]string{}, fact.PlanArea.At...), post.Load.At...)...)
	}
	fact.Engineered = g.engineer.footingSize(words(d.Shape), g.postWidth(), post.TributaryArea)
	return fact
}

// plan sets the area at the bottom and gives half the lesser width; 0 where
// the size is not shown.
func (f *Footing) plan(d *model.Footing) (half measure.Length) {
	area := func(a, b measure.Length, factor float64, at ...string) {
		f.PlanArea = of(rounded(float64(a)*float64(b)*factor/squareMillimetre), at...)
	}
	switch {
	case d.Diameter != nil:
		area(d.Diameter.V, d.Diameter.V, math.Pi/4, d.Diameter.At)
		half = d.Diameter.V / 2
	case d.Side != nil:
		area(d.Side.V, d.Side.V, 1, d.Side.At)
		half = d.Side.V / 2
	case d.Along != nil && d.Out != nil:
		area(d.Along.V, d.Out.V, 1, d.Along.At, d.Out.At)
		f.Side = of(min(d.Along.V, d.Out.V), d.Along.At, d.Out.At)
		half = f.Side.Value / 2
	}
	if f.PlanArea != nil && d.Thickness != nil {
		const cubicCentimetre = 1000 // cubic millimetres
		volume := float64(f.PlanArea.Value) * float64(d.Thickness.V) / float64(measure.Millimetre) / cubicCentimetre
		f.Volume = of(rounded(volume), append(append([]string{}, f.PlanArea.At...), d.Thickness.At)...)
	}
	return half
}

// toHouse sets how near to the house the footing comes.
func (f *Footing) toHouse(d *model.Footing, post *Post, half measure.Length) {
	switch {
	case d.DistanceFromHouse != nil:
		f.ToHouse = shown(d.DistanceFromHouse)
	case half > 0 && post.Y != nil:
		f.ToHouse = of(post.Y.Value-half, post.Y.At...)
	}
}

// spread sets how far the footing reaches past the post or pier on it.
func (f *Footing) spread(g *girder, d *model.Footing, half measure.Length) {
	switch width := g.postWidth(); {
	case half == 0:
	case d.PierDiameter != nil:
		f.Projection = of(half-d.PierDiameter.V/2, d.PierDiameter.At)
	case width > 0:
		f.Projection = of(half-width/2, append([]string{}, f.PlanArea.At...)...)
	}
}

// beside gives the spans that meet over a support: the longest bay of the beam
// and the longest span of the joists that bear there.
func (g *girder) beside(i int) (bay, joists *Length) {
	if i == notPlaced {
		return nil, nil
	}
	for _, k := range []int{i - 1, i + 1} {
		if k < 0 || k >= len(g.supports) {
			continue
		}
		if next := of(apart(g.supports[k].along, g.supports[i].along), g.supports[i].at, g.supports[k].at); longer(next, bay) {
			bay = next
		}
	}
	low, high := g.reach.From, g.reach.To
	if i > 0 {
		low = g.supports[i-1].along
	}
	if i < len(g.supports)-1 {
		high = g.supports[i+1].along
	}
	for k := range g.crossings {
		x := &g.crossings[k]
		if x.along >= low && x.along <= high && longer(of(x.center), joists) {
			joists = of(x.center, g.p.Joists.At)
		}
	}
	return bay, joists
}
