package wood

import (
	"fmt"
	"math"

	"plumbrule/checker/measure"
)

// Bracing says how a bending member with a free compression edge is loaded, for its effective length, NDS Table 3.3.3.
type Bracing uint8

// The cases of the table that occur in decks.
const (
	SimpleUniform Bracing = iota
	SimplePointAtCenter
	CantileverUniform
	CantileverPointAtTip
)

// Brace is what holds the compression edge of a bending member against buckling sideways. The zero value is an edge
// held along its whole length, as by decking.
type Brace struct {
	Unbraced measure.Length // lu
	Case     Bracing
}

func (b Brace) free() bool { return b.Unbraced > 0 }

// effective gives the factor on lu and the addition in depths for the effective length le, from memory of NDS Table
// 3.3.3.
func (b Brace) effective(ratio float64) (onLength, onDepth float64) {
	short := ratio < 7
	switch b.Case {
	case SimplePointAtCenter:
		if short {
			return 1.80, 0
		}
		return 1.37, 3
	case CantileverUniform:
		if short {
			return 1.33, 0
		}
		return 0.90, 3
	case CantileverPointAtTip:
		if short {
			return 1.87, 0
		}
		return 1.44, 3
	}
	if short {
		return 2.06, 0
	}
	return 1.63, 3
}

// factor gives the beam stability factor CL of NDS 3.3.3 from Fb* and Emin′ in psi.
func (b Brace) factor(w *working, s Section, starred, emin float64) (float64, error) {
	lu := w.given("lu", inches(b.Unbraced), "in", "unbraced length")
	onLength, onDepth := b.effective(lu / s.Depth)
	le := w.find("le", fmt.Sprintf("%g · lu + %g · d", onLength, onDepth), onLength*lu+onDepth*s.Depth, "in")
	// Nails between plies are no glue: what holds each ply is its own breadth.
	ply := w.given("b_1", s.Breadth, "in", "one ply")
	rb := w.find("RB", "√(le · d / b_1²)", math.Sqrt(le*s.Depth/(ply*ply)), "")
	if rb > 50 {
		return 0, errTooSlender
	}
	fbe := w.find("FbE", "1.2 · Emin′ / RB²", 1.2*emin/(rb*rb), "psi")
	r := w.find("r_b", "FbE / Fb*", fbe/starred, "")
	h := (1 + r) / 1.9
	return w.find("CL", "(1 + r_b) / 1.9 - √(((1 + r_b) / 1.9)² - r_b / 0.95)", r/0.95/(h+math.Sqrt(h*h-r/0.95)), ""), nil
}

// End says how the ends of a column are held, NDS Appendix G.
type End uint8

// The cases of the appendix. The zero value is pinned at both ends.
const (
	PinnedPinned End = iota
	FixedFixed
	FixedPinned
	FixedSliding
	FixedFree
	PinnedSliding
)

// Ke is the effective length factor that the NDS recommends, from memory of Appendix G.
func (e End) Ke() float64 {
	switch e {
	case FixedFixed:
		return 0.65
	case FixedPinned:
		return 0.8
	case FixedSliding:
		return 1.2
	case FixedFree:
		return 2.1
	case PinnedSliding:
		return 2.4
	}
	return 1
}

// columnC is c of NDS 3.7.1 for sawn lumber.
const columnC = 0.8

// columnFactor is CP of NDS 3.7.1 for a ratio r of FcE to Fc*.
func columnFactor(r float64) float64 {
	// The root as a quotient: the difference in the book loses all digits where r is great.
	h := (1 + r) / (2 * columnC)
	return r / columnC / (h + math.Sqrt(h*h-r/columnC))
}
