package facts

import (
	"slices"
	"strings"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// addStair writes a stair down with its flights, handrail, guard and landings.
func (f *Facts) addStair(st *stair) {
	fact := st.fact()
	for i := range st.flights {
		f.Flights = append(f.Flights, st.flights[i].fact(st, i))
	}
	st.compare(&fact)
	f.addStatedRuns(st)
	f.Stairs = append(f.Stairs, fact)
	f.Handrails = append(f.Handrails, st.handrail())
	f.StairGuards = append(f.StairGuards, st.guard(&fact))
	f.Landings = append(f.Landings, st.landings()...)
}

func (st *stair) fact() Stair {
	s := st.s
	fact := Stair{
		At: []string{s.At}, Mark: words(s.Mark), Width: st.width(), WidthAtRails: st.widthAtRails(),
		TotalRise: st.total, Risers: st.risers(), Flights: int64(len(st.flights)), DropAtTop: st.dropAtTop(),
		NosingRadius: shown(s.NosingRadius), RisersCarry: shown(s.RisersCarry),
	}
	if h := s.Headroom; h != nil {
		fact.Headroom, fact.OpenToSky = shown(h.Length), h.Length == nil
	}
	if l := s.Lighting; l != nil {
		fact.Lighting = shown(l.Present)
	}
	if t := s.Tread; t != nil {
		fact.TreadMaterial, fact.TreadThickness = shown(t.Material), shown(t.Thickness)
		fact.TreadListed, fact.TreadSlope, fact.SlipClass = shown(t.ListedMaxSpacing), ratio(t.Slope), shown(t.SlipClass)
	}
	if o := s.RiserOpening; o != nil {
		fact.RisersClosed = of(o.Length == nil, o.At)
	}
	if w := s.Winders; w != nil && (w.Count != nil || w.DepthAtWalkline != nil || w.Narrowest != nil) {
		fact.Winders, fact.WinderAtWalkline, fact.WinderNarrowest = true, shown(w.DepthAtWalkline), shown(w.Narrowest)
		fact.WinderCount, fact.WinderTurn = shown(w.Count), shown(w.Turn)
	}
	if s.Handrail != nil {
		fact.RailSides = shown(s.Handrail.Sides)
	}
	st.stringers(&fact)
	return fact
}

// width is the clear width where that is shown, else the width.
func (st *stair) width() *Length {
	if st.s.ClearWidth != nil {
		return shown(st.s.ClearWidth)
	}
	return shown(st.s.Width)
}

// widthAtRails is the width left at the handrails, as stated or as their
// projections leave it.
func (st *stair) widthAtRails() *Length {
	if st.s.WidthAtRails != nil {
		return shown(st.s.WidthAtRails)
	}
	width, h := st.width(), st.s.Handrail
	if width == nil || h == nil || h.Sides == nil {
		return nil
	}
	if h.Sides.V == 0 {
		return width
	}
	out := projection(h)
	if out == nil {
		return nil
	}
	return of(width.Value-out.Value*measure.Length(h.Sides.V), append(append([]string{}, width.At...), out.At...)...)
}

// projection is how far a handrail stands into the stair: as stated, or the
// clear space behind it and the rail itself.
func projection(h *model.Handrail) *Length {
	if h.Projection != nil {
		return shown(h.Projection)
	}
	if h.Clearance == nil || h.Profile == nil {
		return nil
	}
	for _, across := range []*model.Length{h.Profile.Diameter, h.Profile.Width} {
		if across != nil {
			return of(h.Clearance.V+across.V, h.Clearance.At, across.At)
		}
	}
	return nil
}

// stringers sets kind, count and spacing.
func (st *stair) stringers(fact *Stair) {
	if k := st.s.Stringers; k != nil {
		fact.StringerKind, fact.StringerCount, fact.StringerSpacing = shown(k.Kind), shown(k.Count), st.stringerSpacing()
		fact.StringersHeld = shown(k.SupportedAlong)
		if d := k.Dimensions(); d != nil {
			fact.StringerDepth, fact.StringerThick = of(d.V.Depth, d.At), of(d.V.Thickness, d.At)
		}
	}
}

// stringerSpacing is as stated, or as count and width give it.
func (st *stair) stringerSpacing() *Length {
	k := st.s.Stringers
	if k == nil {
		return nil
	}
	d := k.Dimensions()
	if k.Spacing != nil || k.Count == nil || k.Count.V < 2 || d == nil || st.s.Width == nil || st.s.Width.V <= d.V.Thickness {
		return shown(k.Spacing)
	}
	spacing := geometry.Pitch{Over: st.s.Width.V - d.V.Thickness, Parts: k.Count.V - 1}
	return of(spacing.Length(), k.Count.At, st.s.Width.At)
}

// compare sets the stated rise against the derived one, and the risers as
// measured against either.
func (st *stair) compare(fact *Stair) {
	if st.derived != nil {
		fact.DerivedRise = st.derived
		fact.RiseDifference = of(apart(st.total.Value, st.derived.Value), append(slices.Clone(st.total.At), st.derived.At...)...)
	}
	fact.MeasuredSum = st.measured()
	if fact.MeasuredSum != nil && st.total != nil {
		fact.SumDifference = of(apart(fact.MeasuredSum.Value, st.total.Value), append(slices.Clone(fact.MeasuredSum.At), st.total.At...)...)
	}
}

func (st *stair) handrail() Handrail {
	h := st.s.Handrail
	fact := Handrail{At: []string{st.s.At}, Stair: st.label, Risers: st.longestFlight(), Rise: st.built(), Width: st.width()}
	if h == nil {
		return fact
	}
	fact.At, fact.Present = []string{h.At}, h.Sides == nil || h.Sides.V > 0
	fact.Sides, fact.Height = shown(h.Sides), shown(h.Height)
	fact.Clearance, fact.Projection = shown(h.Clearance), projection(h)
	fact.Continuous, fact.Returns = shown(h.Continuous), shown(h.Returns)
	if least, greatest := extent(h.MeasuredHeights); least != nil {
		fact.Height, fact.HeightMax = least, greatest
	}
	if st.stopsShort(h) {
		fact.Continuous = of(false, h.At)
	}
	if fact.Returns == nil && h.Ends != nil {
		fact.Returns = of(h.Ends.V != "free end", h.Ends.At)
	}
	if p := h.Profile; p != nil {
		fact.Profile, fact.Diameter = shown(p.Type), shown(p.Diameter)
		fact.SectionWidth, fact.Perimeter = shown(p.Width), shown(p.Perimeter)
		fact.AboveRecess = shown(p.WidthAboveRecess)
		if r := p.FingerRecess; r != nil {
			fact.RecessStart, fact.RecessDepth = shown(r.StartBelowTop), shown(r.Depth)
			fact.RecessReach = shown(r.DepthReachedAt)
		}
	}
	return fact
}

// extent gives the least and the greatest of measured lengths, nil of none.
func extent(list []*model.Length) (least, greatest *Length) {
	for _, l := range list {
		if least == nil || l.V < least.Value {
			least = shown(l)
		}
		if greatest == nil || l.V > greatest.Value {
			greatest = shown(l)
		}
	}
	return least, greatest
}

// stopsShort reports whether a handrail begins above the lowest riser or ends
// below the topmost.
func (st *stair) stopsShort(h *model.Handrail) bool {
	if h.StartRiser != nil && h.StartRiser.V > 1 {
		return true
	}
	risers := st.risers()
	return h.EndRiser != nil && risers != nil && h.EndRiser.V < risers.Value
}

// longestFlight is the greatest number of risers in one flight; nil unless
// every flight shows them.
func (st *stair) longestFlight() *Count {
	var most *Count
	for i := range st.flights {
		r := st.flights[i].risers
		if r == nil {
			return nil
		}
		if most == nil || r.Value > most.Value {
			most = r
		}
	}
	return most
}

func (st *stair) guard(fact *Stair) StairGuard {
	g := st.s.Guard
	out := StairGuard{At: []string{st.s.At}, Stair: st.label, Drop: fact.DropAtTop}
	if g == nil {
		return out
	}
	out.At, out.Present = []string{g.At}, !g.None
	out.Height, out.Opening, out.TriangleOpening = shown(g.Height), shown(g.Opening), shown(g.TriangleOpening)
	if out.Opening == nil && g.Infill != nil {
		out.Opening = shown(g.Infill.Opening)
	}
	if g.Like != nil {
		st.like(&out, g.Like.V)
	}
	return out
}

// like takes over what the guard of that mark shows and the stair's own does not.
func (st *stair) like(out *StairGuard, mark string) {
	for i := range st.deck.Guards {
		g := &st.deck.Guards[i]
		if words(g.Mark) != mark {
			continue
		}
		if out.Height == nil {
			out.Height = shown(g.Height)
		}
		if out.Opening == nil && g.Infill != nil {
			out.Opening = shown(g.Infill.Opening)
		}
	}
}

// landings lists the top landing, those between flights and the one below.
func (st *stair) landings() []Landing {
	list := []Landing{st.topLanding()}
	for i := range st.flights {
		where := "between"
		if i == len(st.flights)-1 {
			where = "bottom"
		}
		fact := Landing{At: []string{st.s.At}, Stair: st.label, Where: where, StairWidth: st.width(), Use: shown(st.s.Use)}
		fact.wait("stairs[].landing_" + where)
		if l := st.landingBelow(i); l != nil {
			fact.describe(l, st.sides(i))
		}
		list = append(list, fact)
	}
	return list
}

func ratio(s *model.Slope) *Slope {
	if s == nil {
		return nil
	}
	return of(Ratio{Rise: s.V.Rise, Run: s.V.Run}, s.At)
}

// parent is the pointer of what holds a value.
func parent(pointer string) string { return pointer[:strings.LastIndexByte(pointer, '/')] }
