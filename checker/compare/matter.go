package compare

import (
	"cmp"
	"slices"
	"strings"

	"plumbrule/checker/result"
)

// State says what became of a finding from one revision to the next.
type State string

// The states. First stands what is outside a limit, then what is not shown, then
// the rest.
const (
	New        State = "new"               // outside now, and not before
	Revealed   State = "outside once seen" // outside now; before, nobody could tell
	StillOpen  State = "still outside"
	Hidden     State = "not seen any more" // outside before, excused or not; now nobody can tell
	Gone       State = "gone"              // outside before, and not now
	Asked      State = "newly asked for"   // not shown, of an element or a question that is new
	NotShown   State = "not shown any more"
	StillAsked State = "still not shown"
	NowShown   State = "now shown"
	Dropped    State = "not asked for any more" // not shown before; the element or the question is gone
	Excused    State = "excused"                // outside, and a waiver names it
	Unexcused  State = "not excused any more"   // excused before, and not outside now
	CouldNot   State = "could not run"          // the check failed, or what it asked for before is left open by that
	RanAgain   State = "could run again"
)

// States lists the states, what weighs most first.
func States() []State {
	return []State{New, Revealed, Hidden, StillOpen, Gone, Asked, NotShown, StillAsked, NowShown, Dropped, CouldNot, RanAgain, Excused, Unexcused}
}

// Trend says whether something came closer to its limit.
type Trend string

// The trends; the empty one is for what cannot be told.
const (
	Worse     Trend = "worse"
	Better    Trend = "better"
	Unchanged Trend = "unchanged"
)

// rank orders trends, what weighs most first.
func (t Trend) rank() int { return slices.Index([]Trend{Worse, "", Better, Unchanged}, t) }

// Matter is one finding of either revision with what became of it.
type Matter struct {
	State State
	// Trend is set for what is outside in both revisions and has margins there.
	Trend Trend
	// Was and Is are the results of the old and the new revision; one of them
	// may be within its limit, or nil where there is none.
	Was, Is *result.Result
	// Reason says why one of them is nil, as far as that is known.
	Reason Reason
	// Field is where the other revision shows what this one does not, for the
	// states NowShown and NotShown; else nil.
	Field *Place
}

// Reason says why a revision has no answer where the other one has.
type Reason string

// The reasons; the empty one is for what is not known.
const (
	NoElement   Reason = "element"        // the element is in the other revision only
	NoNeed      Reason = "does not apply" // the check has nothing to say of it there
	NothingSeen Reason = "not shown"      // what the check needs is not shown there
	NoRun       Reason = "could not run"
)

// Result is the finding: the newer one where both are.
func (m *Matter) Result() *result.Result {
	if m.Is != nil && (m.Was == nil || found(m.Is)) {
		return m.Is
	}
	return m.Was
}

// found tells findings from readings.
func found(r *result.Result) bool {
	return r.Outcome != result.Within && r.Outcome != result.DoesNotApply
}

// worse reports whether the matter speaks against the new revision, for
// consequences from a class on. A check that could not run before either is no
// worse for failing again.
func (m *Matter) worse(class result.Consequence, notShown bool) bool {
	if !m.Result().Consequence.AtLeast(class) {
		return notShown && (m.State == Asked || m.State == NotShown)
	}
	switch m.State {
	case New, Revealed, Hidden:
		return true
	case StillOpen:
		return m.Trend == Worse
	case Asked, NotShown:
		return notShown
	case CouldNot:
		return outcome(m.Was) != result.CouldNotRun
	case Gone, StillAsked, NowShown, Dropped, Excused, Unexcused, RanAgain:
	}
	return false
}

// arrange puts matters in the order of reports: by state and class, what got
// worse first, then as they stand in the design.
func arrange(matters []Matter) {
	states := States()
	slices.SortStableFunc(matters, func(a, b Matter) int {
		x, y := a.Result(), b.Result()
		return cmp.Or(
			cmp.Compare(slices.Index(states, a.State), slices.Index(states, b.State)),
			cmp.Compare(x.Consequence.Rank(), y.Consequence.Rank()),
			cmp.Compare(a.Trend.rank(), b.Trend.rank()),
			cmp.Compare(x.Span.Start.Offset, y.Span.Start.Offset),
			strings.Compare(x.Check, y.Check), strings.Compare(x.Set, y.Set),
			strings.Compare(x.Needs, y.Needs), strings.Compare(x.Message, y.Message),
		)
	})
}
