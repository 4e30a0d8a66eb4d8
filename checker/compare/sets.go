package compare

import (
	"cmp"
	"slices"
	"strings"

	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

// Difference says in what rule sets differ on one subject.
type Difference string

// The differences, what weighs most first.
const (
	InOutcome Difference = "outcome"
	InLimit   Difference = "limit" // with the same outcome
	InCheck   Difference = "check" // some of the sets do not have the check at all
	None      Difference = "none"
)

// Given is what a set gives one check.
type Given struct {
	Check, Title string
	Figures      []Figure
}

// Figure is one figure of a check in one set.
type Figure struct {
	Name, Text, Clause, Status string
	Relation                   result.Relation // "" for one that is no limit itself
	// Value tells figures apart that differ: equal values are one figure, in
	// whatever unit the sets print them.
	Value string
}

// Sets is what rule sets make of one design beside each other.
type Sets struct {
	Design result.Design
	// Sets are the rule sets in the order in which they were named.
	Sets []result.Set
	// Rows are the subjects on which the sets differ, by difference.
	Rows []Row
	// Same counts the subjects on which they do not.
	Same int
	// Gaps lists for each set, in their order, the checks that another one has
	// and it has not.
	Gaps [][]Given
	// Waivers are files of waivers with entries that excuse nothing, or have run
	// out.
	Waivers []result.Design
}

// Row is one subject of one check under all sets.
type Row struct {
	Difference   Difference
	Check, Title string
	Consequence  result.Consequence
	Name         string // of the subject, in the design's words; "" for the whole design
	Mark, See    string
	Pointer      string
	Span         source.Span
	// Count is the number of subjects at the place of which the same is said, as
	// of posts that share one description.
	Count int
	Cells []Cell // in the order of the sets
}

// Cell is what one set makes of a subject.
type Cell struct {
	// Result is nil where the set has no check for it, or says nothing of the
	// subject.
	Result *result.Result
	// Has is set where the set has the check.
	Has bool
	// Elsewhere are the places of which the set speaks instead, where it says
	// nothing of the subject.
	Elsewhere []source.Position
	// Figures are those by which the sets differ, where a value is not shown that
	// could be held against them.
	Figures []Figure
}

// Beside compares what sets make of a design that was held against all of them.
// The figures that each set gives its checks stand in the order of the sets.
func Beside(d result.Design, sets []result.Set, given [][]Given) *Sets {
	s := &Sets{Design: d, Sets: sets}
	if len(d.Problems) > 0 {
		return s
	}
	s.Gaps = gaps(given)
	lines := tabulate(&s.Design, sets)
	for _, l := range lines {
		row := l.finish(given)
		row.refer(lines)
		s.take(row)
	}
	order := []Difference{InOutcome, InLimit, InCheck}
	slices.SortStableFunc(s.Rows, func(a, b Row) int {
		return cmp.Or(
			cmp.Compare(slices.Index(order, a.Difference), slices.Index(order, b.Difference)),
			cmp.Compare(a.Consequence.Rank(), b.Consequence.Rank()),
			strings.Compare(a.Check, b.Check),
			cmp.Compare(a.Span.Start.Offset, b.Span.Start.Offset),
		)
	})
	return s
}

// take counts a row, or keeps it where the sets differ.
func (s *Sets) take(row Row) {
	if row.Difference == None {
		s.Same++
		return
	}
	for i := range s.Rows {
		if s.Rows[i].alike(&row) {
			s.Rows[i].Count++
			return
		}
	}
	s.Rows = append(s.Rows, row)
}

// Count gives the number of subjects of a difference.
func (s *Sets) Count(d Difference) int {
	if d == None {
		return s.Same
	}
	n := 0
	for _, row := range s.Of(d) {
		n += row.Count
	}
	return n
}

// Of gives the rows of a difference.
func (s *Sets) Of(d Difference) []*Row {
	var list []*Row
	for i := range s.Rows {
		if s.Rows[i].Difference == d {
			list = append(list, &s.Rows[i])
		}
	}
	return list
}

// Worse reports whether a set behind the first finds something of a class or
// graver outside that the first does not. With notShown, what only they ask for
// counts too, of whatever class.
func (s *Sets) Worse(class result.Consequence, notShown bool) bool {
	for i := range s.Rows {
		first := outcome(s.Rows[i].Cells[0].Result)
		for _, cell := range s.Rows[i].Cells[1:] {
			now := outcome(cell.Result)
			if now == result.Outside && first != result.Outside && s.Rows[i].Consequence.AtLeast(class) ||
				now == result.NotShown && first != result.NotShown && notShown {
				return true
			}
		}
	}
	return false
}

// gaps lists the checks that each set lacks and another one has, by check.
func gaps(given [][]Given) [][]Given {
	all := map[string]Given{}
	for _, checks := range given {
		for _, g := range checks {
			if _, known := all[g.Check]; !known {
				all[g.Check] = Given{Check: g.Check, Title: g.Title}
			}
		}
	}
	list := make([][]Given, len(given))
	for i, checks := range given {
		for _, g := range all {
			if !slices.ContainsFunc(checks, func(own Given) bool { return own.Check == g.Check }) {
				list[i] = append(list[i], g)
			}
		}
		slices.SortFunc(list[i], func(a, b Given) int { return strings.Compare(a.Check, b.Check) })
	}
	return list
}
