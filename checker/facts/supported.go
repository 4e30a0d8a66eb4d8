package facts

import "plumbrule/checker/measure"

// What an outline reaches past the frame at most where that is not shown. Boards
// reach an inch or two past what they lie on and a fascia is of one-inch or
// two-inch stock, both common practice; the room above that is for odd decks.
const (
	mostOverhang = measure.Foot
	mostFascia   = 2 * measure.Inch
)

// insetStep is how finely the frames behind an outline are gone through.
const insetStep = measure.Inch

// supportOpen reports whether the joists have their supports below the outline,
// but may end short of one, or start beside one, in a frame that lies behind it.
func (fr *frame) supportOpen() bool {
	if !fr.placed() || fr.frameMissing == "" {
		return false
	}
	if fr.frameMissing == outlineField {
		return true
	}
	least, most := fr.insets()
	for in := least; ; in = min(in+insetStep, most) {
		moved := *fr.surface
		moved.frameMissing = ""
		if err := moved.moveIn(in); err != nil {
			return true
		}
		behind := frame{surface: &moved}
		behind.place()
		if behind.unsupported() {
			return true
		}
		if in == most {
			return false
		}
	}
}

// unsupported reports whether fewer than two supports carry a piece.
func (fr *frame) unsupported() bool {
	for i := range fr.pieces {
		if fr.pieces[i].unsupported() {
			return true
		}
	}
	return false
}

// insets are the least and the most that the frame lies behind the outline.
func (s *surface) insets() (least, most measure.Length) {
	fascia, overhang := [2]measure.Length{0, mostFascia}, [2]measure.Length{0, mostOverhang}
	if f := s.p.Fascia; f != nil && f.Thickness != nil {
		fascia = [2]measure.Length{f.Thickness.V, f.Thickness.V}
	}
	if d := s.p.Decking; d != nil && d.Overhang != nil {
		overhang = [2]measure.Length{d.Overhang.V, d.Overhang.V}
	}
	switch words(s.p.MeasuredTo) {
	case "frame":
		return 0, 0
	case "fascia":
		return fascia[0], fascia[1]
	case "decking":
		if s.p.Fascia == nil {
			return overhang[0], overhang[1]
		}
		return fascia[0] + overhang[0], fascia[1] + overhang[1]
	}
	return 0, fascia[1] + overhang[1]
}
