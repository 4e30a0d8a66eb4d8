package compare

import (
	"math"

	"plumbrule/checker/result"
)

// become names what became of a matter, by what it was and what it is. What is
// said of the way there is said the other way round of the way back, so that
// comparing in the other order tells the same story backwards. Where a waiver or
// a check that failed stands on one side, it does not: see the table in the test.
func (m *Matter) become() (State, Trend) {
	was, is := outcome(m.Was), outcome(m.Is)
	switch {
	case is == result.Excused:
		return Excused, ""
	case was == result.Outside && is == result.Outside:
		return StillOpen, trend(m.Was, m.Is)
	case is == result.Outside:
		if m.blind() {
			return Revealed, ""
		}
		return New, ""
	case was == result.Outside || was == result.Excused:
		if m.blind() { // a waiver excuses what was seen, and not what cannot be seen
			return Hidden, ""
		}
		if was == result.Excused {
			return Unexcused, ""
		}
		return Gone, ""
	case is == result.CouldNotRun:
		return CouldNot, ""
	case was == result.CouldNotRun:
		return RanAgain, ""
	}
	return m.asked(), ""
}

// asked names what became of something that is not shown in one revision at
// least.
func (m *Matter) asked() State {
	switch {
	case m.Was != nil && m.Is != nil:
		return StillAsked
	case m.Is != nil && m.Field != nil:
		return NotShown
	case m.Is != nil:
		return Asked
	case m.Reason == NoRun: // nobody knows whether it is still asked for
		return CouldNot
	case m.Field != nil:
		return NowShown
	}
	return Dropped
}

// blind reports whether one of the revisions cannot tell.
func (m *Matter) blind() bool { return m.Reason == NothingSeen || m.Reason == NoRun }

func outcome(r *result.Result) result.Outcome {
	if r == nil {
		return ""
	}
	return r.Outcome
}

// trend compares two margins, which are negative outside of a limit. Where there
// are none, what is said alike of both did not change.
func trend(was, is *result.Result) Trend {
	if was.Margin == nil || is.Margin == nil || was.Margin.Unit == "" || was.Margin.Unit != is.Margin.Unit {
		if was.Message != "" && was.Message == is.Message {
			return Unchanged
		}
		return ""
	}
	// Numbers are rounded for print to six decimals; what differs by less is the
	// same value in another unit.
	const rounding = 2e-6
	switch by := is.Margin.Number - was.Margin.Number; {
	case math.Abs(by) <= rounding:
		return Unchanged
	case by < 0:
		return Worse
	}
	return Better
}
