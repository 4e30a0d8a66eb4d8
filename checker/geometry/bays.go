package geometry

import (
	"errors"
	"slices"

	"plumbrule/checker/measure"
)

// Bays are joists at an equal spacing between two outside ones.
type Bays struct {
	Count     int            // bays, one less than joists
	Pitch     Pitch          // from a joist's edge to the same edge of the next
	Thickness measure.Length // of a joist
}

// EqualBays divides length, out to out of the outside joists, into the fewest
// equal bays whose spacing does not exceed limit. The error says that a measure
// is not above zero or beyond Reach, that the joists do not fit, or that there
// would be more than MaxParts bays.
func EqualBays(length, thickness, limit measure.Length) (Bays, error) {
	if err := checkLayout(length, thickness, limit); err != nil {
		return Bays{}, err
	}
	n := ceilDiv(length-thickness, limit)
	if err := checkParts(n, "bays"); err != nil {
		return Bays{}, err
	}
	return Bays{Count: int(n), Pitch: Pitch{Over: length - thickness, Parts: n}, Thickness: thickness}, nil
}

func checkLayout(length, thickness, spacing measure.Length) error {
	if err := checkLengths(named{"the length", length}, named{"the thickness", thickness}, named{"the spacing", spacing}); err != nil {
		return err
	}
	if length <= thickness {
		return errors.New("the outside members do not fit into the length")
	}
	return nil
}

// Mark is where the near edge of joist i stands, for i from 0 to Count, measured
// from the end where joist 0 is flush and rounded once from the exact value.
func (b Bays) Mark(i int) measure.Length { return b.Pitch.Times(int64(i)) }

// Marks are the near edges of all joists, ascending, Count+1 of them.
func (b Bays) Marks() []measure.Length {
	marks := make([]measure.Length, b.Count+1)
	for i := range marks {
		marks[i] = b.Mark(i)
	}
	return marks
}

// End is an end of a ledger or rim, as seen on the plan.
type End uint8

// The two ends from which a layout can start.
const (
	Left End = iota
	Right
)

// FirstBay says what the marks of a fixed spacing stand for. The first joist is
// flush with the end either way.
type FirstBay uint8

const (
	// EdgeMarks sets the same edge of every joist on a mark: all bays alike.
	EdgeMarks FirstBay = iota
	// CentreMarks sets the centre of every joist but the flush first one on a
	// mark: the first bay is short by half a thickness.
	CentreMarks
)

// OnCenter lays joists out at a fixed spacing from one end, with a joist flush at
// either end and the last bay whatever remains. The result is the near edges of
// all joists, ascending from the left end whichever end the layout starts from.
//
// Where a joist on its mark would run into the flush last one it is set against
// it instead: leaving it out would make a bay wider than the spacing asked for.
//
// The error says that a measure is not above zero or beyond Reach, that the
// spacing or the length has no room for two joists, or that there would be more
// than MaxParts bays.
func OnCenter(length, thickness, spacing measure.Length, start End, first FirstBay) ([]measure.Length, error) {
	if err := checkLayout(length, thickness, spacing); err != nil {
		return nil, err
	}
	back := measure.Length(0)
	if first == CentreMarks {
		back = thickness / 2
	}
	if spacing-back < thickness {
		return nil, errors.New("the first bay has no room for two joists")
	}
	last := length - thickness
	if err := checkParts(ceilDiv(last, spacing), "bays"); err != nil {
		return nil, err
	}
	marks := []measure.Length{0}
	for mark := spacing - back; mark < last; mark += spacing {
		// Two joists side by side need twice the thickness; on a shorter end
		// there is no room for the one in between at all.
		if fitted := min(mark, last-thickness); fitted >= marks[len(marks)-1]+thickness {
			marks = append(marks, fitted)
		}
	}
	marks = append(marks, last)
	if start == Right {
		slices.Reverse(marks)
		for i := range marks {
			marks[i] = last - marks[i]
		}
	}
	return marks, nil
}

// StringerCount is how many stringers carry treads of the given width, out to
// out of the outside ones, at no more than limit from one to the next. The error
// says that a measure is not above zero or beyond Reach, that they do not fit, or
// that there would be more than MaxParts.
func StringerCount(width, thickness, limit measure.Length) (int, error) {
	bays, err := EqualBays(width, thickness, limit)
	if err != nil {
		return 0, err
	}
	return bays.Count + 1, nil
}
