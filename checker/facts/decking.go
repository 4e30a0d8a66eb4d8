package facts

import (
	"math"

	"plumbrule/checker/geometry"
	"plumbrule/checker/measure"
	"plumbrule/checker/model"
)

// covering is how far the boards of a platform reach; nil where it does not
// follow from what is shown.
type covering struct {
	past  *measure.Length // decking past the outline as described
	depth *measure.Length // that rows of boards cover, across their run, on a rectangle
}

// listedAngle is what listed_max_spacing_diagonal means by the diagonal.
const listedAngle = 45 * perDegree

// addDecking works out the boards of a platform over the joists found before.
func (f *Facts) addDecking(fr *frame) {
	d := fr.p.Decking
	if d == nil {
		return
	}
	fact := Decking{
		At: []string{d.At}, Platform: fr.label,
		Lumber: lumberNamed(fr.deck, d.Lumber, "platforms[].decking"), Material: shown(d.Material), Nominal: shown(d.Nominal), Thickness: shown(d.Thickness),
		BoardWidth: shown(d.BoardWidth), Gap: shown(d.Gap), BoardAngle: shown(d.BoardAngle),
		ListedStraight: shown(d.ListedStraight), ListedDiagonal: shown(d.ListedDiagonal),
		FastenersPerJoist: shown(d.FastenersPerJoist), Overhang: shown(d.Overhang),
		JoistsPerBoard: shown(d.JoistsPerBoard),
	}
	if frame := d.PictureFrame; frame != nil {
		fact.PictureFrame, fact.FrameBlocking = true, shown(frame.Blocking)
	}
	if d.ListedDiagonal != nil {
		fact.ListedAngle = of(measure.Angle(listedAngle), d.ListedDiagonal.At)
	}
	fact.SpacingField = fr.spacingField(&fr.layout)
	if n := len(f.Joists); fr.p.Joists != nil && n > 0 {
		under := f.Joists[n-1]
		fact.JoistSpacing, fact.JoistCount = under.Spacing, under.Count
	}
	if spacing, angle := fact.JoistSpacing, fact.BoardAngle; spacing != nil && angle != nil {
		if cos := math.Cos(radians(angle.Value)); cos > 0 {
			fact.SpanAlongBoard = of(scaled(spacing.Value, 1/cos), append(append([]string{}, angle.At...), spacing.At...)...)
		}
	}
	fr.boards.rows(&fact, d)
	if fact.LastRip == nil {
		fact.RowFields = fr.rowFields(&fact)
	}
	f.Decking = append(f.Decking, fact)
}

// rows counts the rows of boards that run square across the joists of a
// rectangle without a border, and the width left for the last of them. A rip
// that the description states is taken instead.
func (c *covering) rows(fact *Decking, d *model.Decking) {
	if c.depth != nil && fact.BoardAngle != nil && fact.BoardAngle.Value == 0 &&
		!fact.PictureFrame && d.BoardWidth != nil && d.Gap != nil {
		if rows, err := geometry.BoardRows(*c.depth, d.BoardWidth.V, d.Gap.V); err == nil {
			fact.Rows = of(int64(rows.Count), d.At)
			fact.LastRip = of(rows.Last, d.BoardWidth.At, d.Gap.At)
		}
	}
	if d.LastRip != nil {
		fact.LastRip = shown(d.LastRip)
	}
}

// rowFields lists what the width of the last row waits for. Where boards cover
// no plain rectangle, only the drawing can tell it.
func (fr *frame) rowFields(fact *Decking) []string {
	if fact.PictureFrame || fr.ring != nil && !fr.rectangular() {
		return []string{"platforms[].decking.last_rip"}
	}
	var missing []string
	need := func(absent bool, field string) {
		if absent {
			missing = append(missing, "platforms[]."+field)
		}
	}
	need(fr.ring == nil, "outline")
	need(fr.p.Joists == nil || fr.p.Joists.Direction == nil, "joists.direction")
	need(fact.BoardWidth == nil, "decking.board_width")
	need(fact.Gap == nil, "decking.gap")
	switch words(fr.p.MeasuredTo) {
	case "":
		need(true, "measured_to")
	case "decking":
	default:
		need(fr.p.Decking.Overhang == nil, "decking.overhang")
		need(words(fr.p.MeasuredTo) == "frame" && fr.p.Fascia != nil && fr.p.Fascia.Thickness == nil, "fascia.thickness")
	}
	return missing
}

// covering works out how far the boards reach, edge to edge of the decking.
func (s *surface) covering() covering {
	past, ok := s.deckingPast()
	if !ok {
		return covering{}
	}
	c := covering{past: &past}
	if s.p.Joists == nil || s.p.Joists.Direction == nil || !s.rectangular() {
		return c
	}
	l := layout{turned: words(s.p.Joists.Direction) == "along_house"}
	ends := measure.Length(2)
	if !l.turned && isHouse(s.names[0]) {
		ends = 1 // boards stop at the house
	}
	depth := depthOf(l.plan(s.ring)) + ends*past
	c.depth = &depth
	return c
}

// rectangular reports whether the outline has four square corners.
func (s *surface) rectangular() bool {
	if len(s.ring) != 4 {
		return false
	}
	for _, interior := range s.ring.InteriorAngles() {
		if degrees(interior) != 90*perDegree {
			return false
		}
	}
	return true
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
