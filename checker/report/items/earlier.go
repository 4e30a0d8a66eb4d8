package items

import (
	"path"
	"slices"

	"plumbrule/checker/report/content"
	"plumbrule/checker/result"
)

// Previous is what an earlier report numbered, by design. Nil is a first review.
type Previous []Review

// Review is the items of one design, found or not in that report.
type Review struct {
	File  string
	Items []Earlier
}

// Earlier is an item as an earlier report had it.
type Earlier struct {
	Number                 int
	Outcome                result.Outcome // when it was last found
	At, Mark, See, Message string
	Found                  []Found
	// Closed is set for an item that was closed by then.
	Closed bool
}

// Headline is what was found, with the outcome named in it unless that was
// outside.
func (e *Earlier) Headline() string {
	return content.Headline(&result.Result{Outcome: e.Outcome, Message: e.Message})
}

// Answerable reports whether somebody was asked to do something about it.
func (e *Earlier) Answerable() bool {
	return e.Outcome == result.Outside || e.Outcome == result.NotShown
}

// Found says by what an item was found.
type Found struct{ Check, Set, Fingerprint string }

func (e *Earlier) has(fingerprint string) bool {
	return slices.ContainsFunc(e.Found, func(f Found) bool { return f.Fingerprint == fingerprint })
}

// of gives the earlier items of a design of the report. Designs are told by the
// names of their files. Where each side has only one, it is the same job under
// whatever name: revisions often get files of their own.
func (p Previous) of(report *result.Report, design int) []Earlier {
	name := path.Clean(report.Designs[design].File)
	for i := range p {
		if path.Clean(p[i].File) == name {
			return p[i].Items
		}
	}
	files := 0
	for i := range report.Designs {
		if report.Designs[i].Kind == "" {
			files++
		}
	}
	if len(p) == 1 && files == 1 && report.Designs[design].Kind == "" {
		return p[0].Items
	}
	return nil
}

// keepNumbers gives items the numbers that earlier reports gave to one of their
// fingerprints, and tells which of these were taken. Elements that share a mark
// share fingerprints; their numbers are then taken in order.
func keepNumbers(items []*Item, earlier []Earlier) (taken map[int]bool) {
	numbers := map[string][]int{}
	for i := range earlier {
		for _, found := range earlier[i].Found {
			if found.Fingerprint == "" {
				continue // it would be like any other
			}
			numbers[found.Fingerprint] = append(numbers[found.Fingerprint], earlier[i].Number)
		}
	}
	taken = map[int]bool{}
	for _, item := range items {
		var free []int
		for _, r := range item.Results {
			for _, n := range numbers[r.Fingerprint] {
				if !taken[n] {
					free = append(free, n)
				}
			}
		}
		if len(free) > 0 {
			item.Number = slices.Min(free)
			taken[item.Number] = true
		}
	}
	return taken
}
