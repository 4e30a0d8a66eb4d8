package facts

import (
	"slices"

	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// addLedger works out the ledger of a platform that hangs on one, its
// fasteners and the ties to the house.
func (f *Facts) addLedger(fr *frame) {
	p := fr.p
	if words(p.Support) != "ledger" && p.Ledger == nil {
		return
	}
	fact := Ledger{At: []string{p.At}, Platform: fr.label}
	fact.LiveLoad, fact.GroundSnowLoad = fr.loads()
	fr.house(&fact)
	fr.hangOn(&fact)
	if l := p.Ledger; l != nil {
		fact.At, fact.Described = []string{l.At}, true
		fact.Size, fact.Lumber, fact.AttachedTo = fr.size(&l.Member), lumber(fr.deck, &l.Member, "platforms[].ledger"), shown(l.AttachedTo)
		if d := l.Dimensions(); d != nil {
			fact.Depth = of(d.V.Depth, d.At)
		}
		if l.Lumber != nil {
			material, _ := fr.deck.Lumber.Get(l.Lumber.V)
			fact.TreatedLumber = shown(material.Treated)
		}
		fact.Sheathing, fact.Foam, fact.GapToHouse = shown(l.SheathingThickness), shown(l.FoamThickness), shown(l.GapToHouse)
		if flashing := l.Flashing; flashing != nil {
			fact.FlashingPresent, fact.FlashingMaterial = shown(flashing.Present), shown(flashing.Material)
		}
		fact.fasteners(l)
	}
	fact.Engineered = fr.engineer.ledgerSpacing(p.Ledger, fact.JoistSpan)
	fr.pointLoads(&fact)
	f.Ledgers = append(f.Ledgers, fact)
	f.LateralDevices = append(f.LateralDevices, fr.lateral())
}

// house takes over what is behind the ledger.
func (fr *frame) house(fact *Ledger) {
	h := fr.deck.House
	if h == nil {
		return
	}
	fact.Veneer, fact.CantileveredFloor, fact.Floor = shown(h.Veneer), shown(h.CantileveredFloor), shown(h.Floor)
	fact.CladdingRemoved = shown(h.CladdingRemoved)
	rim := h.HouseRim
	if rim == nil {
		return
	}
	fact.RimMaterial, fact.RimCondition = shown(rim.Material), shown(rim.Condition)
	fact.RimThickness, fact.RimDepth = shown(rim.Thickness), shown(rim.Depth)
	if d := rim.Dimensions(); d != nil {
		if fact.RimThickness == nil {
			fact.RimThickness = of(d.V.Thickness, d.At)
		}
		if fact.RimDepth == nil {
			fact.RimDepth = of(d.V.Depth, d.At)
		}
	}
}

// hangOn sets the joists that hang on the ledger and what it carries of them.
func (fr *frame) hangOn(fact *Ledger) {
	j := fr.p.Joists
	if j == nil {
		fact.Missing = []string{"platforms[].joists"}
		return
	}
	if d := j.Dimensions(); d != nil {
		fact.JoistDepth = of(d.V.Depth, d.At)
	}
	if j.Hangers != nil {
		fact.HangersAtLedger = shown(j.Hangers.AtLedger)
	}
	if fr.layout.missing != "" {
		fact.Missing = []string{fr.layout.missing}
		return
	}
	unplaced := false
	for i := range fr.pieces {
		bearings := fr.pieces[i].bearings
		if len(bearings) == 0 || bearings[0].name != "ledger" {
			continue
		}
		if len(bearings) == 1 {
			unplaced = true
			continue
		}
		a, b := &bearings[0], &bearings[1]
		if a.missing == "" && longer(of(b.center-a.center), fact.JoistSpan) {
			span := b.center - a.center
			fact.JoistSpan = of(span, j.At, b.at)
			fact.Tributary = of(Tributary[int64]{Builder: int64(span) / 2, Statics: int64(span) / 2}, j.At, b.at)
		}
		if a.missing+b.missing == "" && longer(of(b.near()-a.far()), fact.JoistClearSpan) {
			fact.JoistClearSpan = of(b.near()-a.far(), j.At, b.at)
		}
		for _, missing := range []string{a.missing, b.missing} {
			if missing != "" && !slices.Contains(fact.Missing, missing) {
				fact.Missing = append(fact.Missing, missing)
			}
		}
	}
	switch {
	case unplaced:
		fact.Missing = append(fact.Missing, "platforms[].beams")
	case fact.JoistSpan == nil && len(fact.Missing) == 0:
		fact.Missing = []string{"platforms[].joists.direction"} // as described, none hangs on the ledger
	}
}

// fasteners takes over how the ledger is held.
func (f *Ledger) fasteners(l *model.Ledger) {
	d := l.Fasteners
	if d == nil {
		return
	}
	f.FastenersShown = true
	f.FastenerType, f.FastenerListing, f.FastenerDiameter, f.FastenerLength = shown(d.Type), shown(d.Listing), shown(d.Diameter), shown(d.Length)
	f.FastenerSpacing, f.FastenerRows, f.Staggered = shown(d.Spacing), shown(d.Rows), shown(d.Staggered)
	f.WashersBetween, f.Coating = shown(d.WashersBetween), shown(d.Coating)
	f.EdgeTop, f.EdgeBottom, f.EndDistance = shown(d.EdgeDistanceTop), shown(d.EdgeDistanceBottom), shown(d.EndDistance)
	f.RowSpacing, f.RimEdge = shown(d.RowSpacing), shown(d.HouseRimEdgeDistance)
	if f.Depth != nil && f.EdgeBottom != nil {
		f.BottomRowToTop = of(f.Depth.Value-f.EdgeBottom.Value, f.EdgeBottom.At[0], f.Depth.At[0])
	}
	if len(d.Positions) > 1 {
		f.FastenerSpacing = widest(d.Positions)
	}
}

// widest is the greatest distance from one position to the next.
func widest(positions []*model.Length) *Length {
	sorted := slices.Clone(positions)
	slices.SortFunc(sorted, func(a, b *model.Length) int { return int(sign(a.V - b.V)) })
	var most *Length
	for i := 1; i < len(sorted); i++ {
		if gap := of(sorted[i].V-sorted[i-1].V, sorted[i].At, sorted[i-1].At); longer(gap, most) {
			most = gap
		}
	}
	return most
}

// pointLoads lists single loads on the ledger: those described, and beams
// whose end it carries.
func (fr *frame) pointLoads(fact *Ledger) {
	if fr.p.Ledger != nil {
		for i := range fr.p.Ledger.PointLoads {
			l := &fr.p.Ledger.PointLoads[i]
			fact.PointLoads = append(fact.PointLoads, PointLoad{At: []string{l.At}, What: words(l.What)})
		}
	}
	for i := range fr.p.Beams {
		b := &fr.p.Beams[i]
		for _, on := range []*model.Words{b.StartOn, b.EndOn} {
			if words(on) == "ledger" {
				fact.PointLoads = append(fact.PointLoads, PointLoad{At: []string{on.At}, What: "beam"})
			}
		}
	}
}

// lateral is the fact of the ties to the house.
func (fr *frame) lateral() LateralDevices {
	d := fr.p.LateralDevices
	if d == nil {
		return LateralDevices{At: []string{fr.p.At}, Platform: fr.label}
	}
	fact := LateralDevices{
		At: []string{d.At}, Platform: fr.label, Shown: true, Count: shown(d.Count), Capacity: shown(d.Capacity),
		FromEnds: shown(d.DistanceFromEnds), Penetration: shown(d.Penetration),
	}
	if n := len(d.Positions); n > 0 && fact.Count == nil {
		fact.Count = of(int64(n), d.At+"/positions")
	}
	if fact.FromEnds == nil && len(d.Positions) > 0 && fr.ring != nil {
		fact.FromEnds = fr.fromEnds(d.Positions)
	}
	return fact
}

// fromEnds is how far the outer two devices stand from the ends of the deck;
// the greater counts.
func (fr *frame) fromEnds(positions []*model.Length) *Length {
	first, last := positions[0], positions[0]
	for _, p := range positions {
		if p.V < first.V {
			first = p
		}
		if p.V > last.V {
			last = p
		}
	}
	box := fr.ring.Bounds()
	left, right := first.V, box.Max.X-box.Min.X-last.V
	if left > right {
		return of(left, first.At)
	}
	return of(max(right, measure.Length(0)), last.At)
}
