package items

import (
	"fmt"
	"slices"
	"strings"

	"plumbrule/checker/result"
)

// Past is an earlier item that is not found under its number now.
type Past struct {
	Earlier
	// Reason says, of an item that is still open, why nobody can tell.
	Reason string
	// Now is the item that stands for it now; 0 if none does.
	Now int
}

// settle says what became of the earlier items whose numbers nothing has taken.
func settle(sets []result.Set, d *result.Design, items []*Item, earlier []Earlier, taken map[int]bool) []Past {
	var past []Past
	for i := range earlier {
		if taken[earlier[i].Number] {
			continue
		}
		p := Past{Earlier: earlier[i]}
		// What was closed once is not opened again by a run that tells less.
		if !p.Closed {
			p.Reason, p.Now = unsettled(sets, d, items, earlier, i)
			p.Closed = p.Reason == ""
		}
		past = append(past, p)
	}
	slices.SortStableFunc(past, func(a, b Past) int { return a.Number - b.Number })
	return past
}

// unsettled says why the earlier item at an index cannot be closed though it
// was not found, and which item stands for it; "" if it can.
func unsettled(sets []result.Set, d *result.Design, items []*Item, earlier []Earlier, index int) (reason string, now int) {
	e := &earlier[index]
	if len(d.Problems) > 0 {
		return "the design could not be read", 0
	}
	for _, found := range e.Found {
		if !slices.ContainsFunc(sets, func(s result.Set) bool { return s.ID == found.Set }) {
			return fmt.Sprintf("the rule set %s was not run", found.Set), 0
		}
	}
	for _, item := range items {
		for _, r := range item.Results {
			switch {
			case !slices.ContainsFunc(e.Found, func(f Found) bool { return f.Check == r.Check }):
			case e.has(r.Fingerprint) && !had(earlier, item.Number, r.Fingerprint):
				return fmt.Sprintf("it is part of item %d now", item.Number), item.Number
			case r.Outcome == result.CouldNotRun && sameElement(e, r):
				return fmt.Sprintf("the check %s could not run, see item %d", r.Check, item.Number), item.Number
			case r.Outcome == result.NotShown && sameElement(e, r):
				return fmt.Sprintf("what it rests on is not shown any more, see item %d", item.Number), item.Number
			}
		}
	}
	return "", 0
}

// had reports whether the item of that number had a fingerprint before. If so,
// two elements with one mark have it, and it says nothing of either.
func had(earlier []Earlier, number int, fingerprint string) bool {
	return slices.ContainsFunc(earlier, func(e Earlier) bool { return e.Number == number && e.has(fingerprint) })
}

// sameElement reports whether a result may be about the element of an earlier
// item: one that holds it, or has the same mark, or without marks the same
// place. A check that failed as a whole is about all elements.
func sameElement(e *Earlier, r *result.Result) bool {
	if len(r.At) == 0 {
		return true
	}
	if strings.HasPrefix(e.At, r.At[0]+"/") {
		return true
	}
	if e.Mark != "" && r.Mark != "" {
		return e.Mark == r.Mark // another element may have moved up to the place
	}
	return e.At == r.At[0]
}
