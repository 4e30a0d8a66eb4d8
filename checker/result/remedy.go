package result

import (
	"slices"

	"plumbrule/checker/source"
)

// Remedy is a change of the design that was tried: the changed design was
// checked again, its finding is gone, and nothing else of it got worse.
type Remedy struct {
	// Text says the change and what comes of it, in one line.
	Text    string
	Changes []Change
	// Clears lists every finding outside that the change brings inside, the one
	// that it stands with included, in the order of the findings.
	Clears []Cleared
}

// Cleared is a finding that a remedy clears.
type Cleared struct {
	Check, Title, Set string
	At                string // JSON pointer of its primary place
	Mark              string // mark of the nearest element that has one
	Span              source.Span
	Fingerprint       string
}

// Also lists what the remedy clears besides a result that it stands with: each
// check and place once, whatever the number of sets.
func (r *Remedy) Also(with *Result) []Cleared {
	var list []Cleared
	for _, c := range r.Clears {
		own := c.Check == with.Check && len(with.At) > 0 && c.At == with.At[0]
		if !own && !slices.ContainsFunc(list, func(other Cleared) bool { return other.Check == c.Check && other.At == c.At }) {
			list = append(list, c)
		}
	}
	return list
}

// Change is one value of a design that is typed in anew.
type Change struct {
	Pointer string
	// From and To are the values as typed; From is empty where the design has
	// no value there.
	From, To string
	// Span is what is taken out of the text, empty where a value is added, and
	// Text what stands there instead, with all quotes it needs.
	Span source.Span
	Text string
}
