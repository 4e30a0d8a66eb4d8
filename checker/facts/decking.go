package facts

import (
	"math"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// addDecking works out the boards of a platform over the joists found before.
func (f *Facts) addDecking(s *surface) {
	d := s.p.Decking
	if d == nil {
		return
	}
	fact := Decking{
		At: []string{d.At}, Platform: s.label,
		Lumber: lumberNamed(s.deck, d.Lumber), Material: shown(d.Material), Nominal: shown(d.Nominal), Thickness: shown(d.Thickness),
		BoardWidth: shown(d.BoardWidth), Gap: shown(d.Gap), BoardAngle: shown(d.BoardAngle),
		ListedStraight: shown(d.ListedStraight), ListedDiagonal: shown(d.ListedDiagonal),
		FastenersPerJoist: shown(d.FastenersPerJoist), Overhang: shown(d.Overhang),
		JoistsPerBoard: shown(d.JoistsPerBoard),
	}
	if frame := d.PictureFrame; frame != nil {
		fact.PictureFrame, fact.FrameBlocking = true, shown(frame.Blocking)
	}
	if n := len(f.Joists); s.p.Joists != nil && n > 0 {
		under := f.Joists[n-1]
		fact.JoistSpacing, fact.JoistCount = under.Spacing, under.Count
	}
	if spacing, angle := fact.JoistSpacing, fact.BoardAngle; spacing != nil && angle != nil {
		if cos := math.Cos(radians(angle.Value)); cos > 0 {
			fact.SpanAlongBoard = of(scaled(spacing.Value, 1/cos), append(append([]string{}, angle.At...), spacing.At...)...)
		}
	}
	s.rows(&fact, d)
	f.Decking = append(f.Decking, fact)
}

// rows counts the rows of boards that run square across the joists of a
// rectangle without a border, and the width left for the last of them. A rip
// that the description states is taken instead.
func (s *surface) rows(fact *Decking, d *model.Decking) {
	if depth, ok := s.deckedDepth(); ok && fact.BoardAngle != nil && fact.BoardAngle.Value == 0 &&
		!fact.PictureFrame && d.BoardWidth != nil && d.Gap != nil {
		if rows, err := geometry.BoardRows(depth, d.BoardWidth.V, d.Gap.V); err == nil {
			fact.Rows = of(int64(rows.Count), d.At)
			fact.LastRip = of(rows.Last, d.BoardWidth.At, d.Gap.At)
		}
	}
	if d.LastRip != nil {
		fact.LastRip = shown(d.LastRip)
	}
}

// deckedDepth is the depth that rows of boards cover, across their run, edge
// to edge of the decking; false where it does not follow from what is shown.
func (s *surface) deckedDepth() (measure.Length, bool) {
	if s.ring == nil || s.p.Joists == nil || len(s.ring) != 4 || s.p.Joists.Direction == nil {
		return 0, false
	}
	for _, interior := range s.ring.InteriorAngles() {
		if degrees(interior) != 90*perDegree {
			return 0, false
		}
	}
	turned := words(s.p.Joists.Direction) == "along_house"
	ring := s.ring
	if turned {
		l := layout{turned: true}
		ring = l.plan(ring)
	}
	overhang, ok := s.deckingPast()
	if !ok {
		return 0, false
	}
	ends := measure.Length(2)
	if !turned && isHouse(s.names[0]) {
		ends = 1 // boards stop at the house
	}
	return depthOf(ring) + ends*overhang, true
}

// deckingPast is how far the decking reaches past the outline as described.
func (s *surface) deckingPast() (measure.Length, bool) {
	switch words(s.p.MeasuredTo) {
	case "decking":
		return 0, true
	case "frame", "fascia":
		overhang := s.p.Decking.Overhang
		if overhang == nil {
			return 0, false
		}
		if words(s.p.MeasuredTo) == "frame" && s.p.Fascia != nil {
			if s.p.Fascia.Thickness == nil {
				return 0, false
			}
			return s.p.Fascia.Thickness.V + overhang.V, true
		}
		return overhang.V, true
	}
	return 0, false
}
