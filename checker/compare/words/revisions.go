package words

import (
	"cmp"
	"fmt"
	"strings"

	"plumbrule/checker/compare"
	"plumbrule/checker/report/content"
	"plumbrule/checker/result"
)

// Heading names the section of a state.
func Heading(s compare.State) string {
	switch s {
	case compare.New:
		return "new, outside the limits"
	case compare.Revealed:
		return "outside, could not be seen before"
	case compare.Hidden:
		return "outside before, cannot be seen now"
	case compare.StillOpen:
		return "still outside the limits"
	case compare.Asked:
		return "not shown, not asked for before"
	case compare.NotShown:
		return "shown before, not shown now"
	case compare.NowShown:
		return "not shown before, shown now"
	case compare.Dropped:
		return "not shown before, not asked for now"
	case compare.CouldNot, compare.RanAgain, compare.Gone, compare.StillAsked, compare.Excused, compare.Unexcused:
	}
	return string(s)
}

// Way says of a finding what it was and what it is: `was 8", outside by 1/4";
// now 7-7/8", outside by 1/8": better`. Of what is not shown it says what the
// other revision shows.
func Way(m *compare.Matter) string {
	switch m.State {
	case compare.NowShown, compare.NotShown:
		return field(m)
	case compare.StillAsked, compare.Asked, compare.Dropped:
		return asked(m)
	case compare.New, compare.Revealed, compare.Hidden, compare.StillOpen, compare.Gone,
		compare.CouldNot, compare.RanAgain, compare.Excused, compare.Unexcused:
	}
	was, is := Standing(m.Was), Standing(m.Is)
	switch {
	case m.Was == nil && m.Is.Outcome == result.CouldNotRun: // it speaks of the whole check
		was = "able to run"
	case m.Is == nil && m.Was.Outcome == result.CouldNotRun:
		is = "able to run"
	case m.Was == nil:
		was = reason(m)
	case m.Is == nil:
		is = reason(m)
	}
	words := "was " + cmp.Or(was, "not found") + "; now " + cmp.Or(is, "not found")
	if m.Trend != "" {
		words += ": " + string(m.Trend)
	}
	return words
}

// field says what one of the revisions shows.
func field(m *compare.Matter) string {
	line := fmt.Sprintf("%s (line %d)", m.Field.Text, max(m.Field.Span.Start.Line, 1))
	if m.State == compare.NowShown {
		return "now " + line
	}
	return "was " + line
}

// asked says why only one of the revisions is asked for a value.
func asked(m *compare.Matter) string {
	switch {
	case m.State == compare.Asked && m.Reason == compare.NoElement:
		return "the element is new"
	case m.State == compare.Asked && m.Reason == compare.NoNeed:
		return "before, the check did not apply"
	case m.State == compare.Asked && m.Reason == compare.NoRun:
		return "before, the check could not run"
	case m.State == compare.Dropped && m.Reason == compare.NoElement:
		return "the element is gone"
	case m.State == compare.Dropped && m.Reason == compare.NoNeed:
		return "the check does not apply any more"
	}
	return ""
}

// reason says why the revision that has no answer has none.
func reason(m *compare.Matter) string {
	before := m.Was == nil
	switch m.Reason {
	case compare.NoElement:
		if before {
			return "not there, as the element is new"
		}
		return "gone with its element"
	case compare.NoNeed:
		if before {
			return "not checked, as the check did not apply"
		}
		return "not checked, as the check does not apply any more"
	case compare.NothingSeen:
		return "not shown"
	case compare.NoRun:
		return "not to be told, as the check could not run"
	}
	return ""
}

// Standing says how a result stands to its limit, behind "was" or "now": `8",
// outside by 1/4"`. It is "" for nil.
func Standing(r *result.Result) string {
	if r == nil {
		return ""
	}
	stand := content.Margin(r)
	switch r.Outcome {
	case result.Outside, result.Within:
		stand = cmp.Or(stand, string(r.Outcome))
	case result.Excused:
		stand = strings.TrimSuffix("excused, "+stand, ", ")
	case result.DoesNotApply, result.CouldNotRun:
		stand = "not checked"
		if r.Outcome == result.CouldNotRun {
			stand = "not able to run"
		}
		if r.Reason != "" {
			stand += " (" + r.Reason + ")"
		}
	case result.NotShown:
		stand = string(r.Outcome)
	}
	// A bare yes or no answers a question that only the message asks.
	if r.Have != nil && r.Have.Text != "" && r.Have.Text != "yes" && r.Have.Text != "no" {
		stand = r.Have.Text + ", " + stand
	}
	return stand
}

// Message says what was found. Of what is not shown it names the value alone, as
// the state says the rest.
func Message(m *compare.Matter) string {
	words := content.Message(m.Result())
	if m.Result().Outcome == result.NotShown {
		words = strings.TrimSuffix(strings.TrimSuffix(words, " is not shown"), " are not shown")
	}
	return words
}

// Groups joins matters of which the same is said, as where several checks miss
// one value. They keep the order of the first of each.
func Groups(list []*compare.Matter) [][]*compare.Matter {
	return content.GroupBy(list, func(m *compare.Matter) [3]string {
		r := m.Result()
		at := ""
		if len(r.At) > 0 {
			at = r.At[0]
		}
		return [3]string{at, content.Message(r), Way(m)}
	})
}

// Change says what was done to a value: "40 psf -> 50 psf", "not shown -> 36
// in", "added: 12 values".
func Change(c *compare.Change) string {
	switch c.Kind {
	case compare.Added:
		return "added: " + c.Is.Text
	case compare.Removed:
		return "removed: " + c.Was.Text
	case compare.Moved:
		return "moved in its list, from " + c.Was.Text + " to " + c.Is.Text
	case compare.Changed, compare.Shown, compare.NotShownNow:
	}
	return shown(c.Was) + " -> " + shown(c.Is)
}

func shown(p compare.Place) string {
	if p.Missing {
		return "not shown"
	}
	return p.Text
}

// Drawing names a revision as its title block does: "Plover Court back deck,
// revision B".
func Drawing(d *result.Design) string {
	words := d.Title
	if d.Revision != "" {
		words = strings.TrimPrefix(words+", revision "+d.Revision, ", ")
	}
	return cmp.Or(words, "no title, no revision")
}

// Summary counts the states that there are, what weighs most first: "new 2, gone
// 4". It is "" where there is nothing.
func Summary(r *compare.Revisions) []string {
	var parts []string
	for _, s := range compare.States() {
		if list := r.Of(s); len(list) > 0 {
			parts = append(parts, fmt.Sprintf("%s %d%s", s, len(list), trends(list)))
		}
	}
	return parts
}

// trends counts which of some matters came closer to their limits and which did
// not.
func trends(list []*compare.Matter) string {
	var parts []string
	for _, t := range []compare.Trend{compare.Worse, compare.Better, compare.Unchanged} {
		n := 0
		for _, m := range list {
			if m.Trend == t {
				n++
			}
		}
		if n > 0 {
			parts = append(parts, fmt.Sprintf("%d %s", n, t))
		}
	}
	if parts == nil {
		return ""
	}
	return " (" + strings.Join(parts, ", ") + ")"
}

// Nothing is said where two revisions describe the same deck.
const Nothing = "No value differs: both files describe the same deck."

// Disposition gives the stamps of both revisions.
func Disposition(r *compare.Revisions) (was, is string) {
	return content.Disposition(&r.Was), content.Disposition(&r.Is)
}
