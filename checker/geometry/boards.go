package geometry

import (
	"errors"

	"plumbrule/checker/measure"
)

// Rows are rows of decking boards.
type Rows struct {
	Count int
	Last  measure.Length // width of the last row, full or ripped
	// Spare is what is left beyond a full last row: less than or exactly one
	// gap, too narrow for wood. It is zero wherever the last row is ripped.
	Spare measure.Length
}

// BoardRows covers depth with boards of one width, a gap between rows and none
// outside. The error says that a measure is not above zero (a gap may be zero) or
// beyond Reach, or that there would be more than MaxParts rows.
func BoardRows(depth, board, gap measure.Length) (Rows, error) {
	if err := checkLengths(named{"the depth", depth}, named{"the board's width", board}); err != nil {
		return Rows{}, err
	}
	if gap < 0 || gap > Reach {
		return Rows{}, errors.New("the gap is below zero or too wide to be reckoned with")
	}
	n := ceilDiv(depth+gap, board+gap)
	if err := checkParts(n, "rows"); err != nil {
		return Rows{}, err
	}
	last := depth - measure.Length(n-1)*(board+gap)
	if last <= 0 {
		// The row before fills the depth up to less than a gap.
		return Rows{Count: int(n - 1), Last: board, Spare: last + gap}, nil
	}
	return Rows{Count: int(n), Last: last}, nil
}

// Balusters stand at equal gaps in a clear opening, with a gap at either end too.
type Balusters struct {
	Count int            // balusters, one less than gaps
	Gap   Pitch          // one clear gap, exact
	Width measure.Length // of a baluster
}

// EqualBalusters divides the clear opening between two posts by the fewest
// balusters that keep every gap at or under limit. Count is zero where the
// opening itself is no wider than limit. The error says that a measure is not
// above zero or beyond Reach, that the balusters would not leave a gap, or that
// there would be more than MaxParts gaps.
func EqualBalusters(opening, width, limit measure.Length) (Balusters, error) {
	if err := checkLengths(named{"the opening", opening}, named{"the baluster's width", width}, named{"the gap", limit}); err != nil {
		return Balusters{}, err
	}
	n := ceilDiv(opening+width, limit+width)
	if err := checkParts(n, "gaps"); err != nil {
		return Balusters{}, err
	}
	free := opening - measure.Length(n-1)*width
	if free <= 0 {
		return Balusters{}, errors.New("the balusters leave no gap in the opening")
	}
	return Balusters{Count: int(n - 1), Gap: Pitch{Over: free, Parts: n}, Width: width}, nil
}

// Mark is where the near edge of baluster i stands, for i from 0 to Count-1,
// measured from the face of the first post and rounded once from the exact value.
func (b Balusters) Mark(i int) measure.Length {
	// A gap and the baluster after it, together, divide the opening and one more
	// baluster evenly.
	both := Pitch{Over: b.Gap.Over + b.Width*measure.Length(b.Gap.Parts), Parts: b.Gap.Parts}
	return both.Times(int64(i+1)) - b.Width
}

// Marks are the near edges of all balusters, ascending from the first post.
func (b Balusters) Marks() []measure.Length {
	marks := make([]measure.Length, b.Count)
	for i := range marks {
		marks[i] = b.Mark(i)
	}
	return marks
}
