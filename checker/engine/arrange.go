package engine

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"github.com/maruel/natural"

	"plumbrule/checker/result"
)

// arrange puts findings before readings: findings by consequence, gravest
// first, then as they stand in the design; readings by check, then set. What
// remains equal is ordered by its texts, so that the order of checks and of
// rows never shows.
func arrange(results []result.Result) []result.Result {
	slices.SortFunc(results, func(a, b result.Result) int {
		if c := cmp.Compare(group(a), group(b)); c != 0 {
			return c
		}
		order := []int{
			cmp.Compare(a.Consequence.Rank(), b.Consequence.Rank()), position(a, b),
			strings.Compare(a.Check, b.Check), strings.Compare(a.Set, b.Set),
		}
		if group(a) > 0 {
			order = []int{strings.Compare(a.Check, b.Check), strings.Compare(a.Set, b.Set), position(a, b)}
		}
		order = append(order, slices.Compare(a.At, b.At), strings.Compare(a.Needs, b.Needs), strings.Compare(a.Message, b.Message),
			strings.Compare(a.Reason, b.Reason), strings.Compare(a.Clause, b.Clause), value(a.Have, b.Have), value(a.Limit, b.Limit),
			slices.Compare(a.Notes, b.Notes))
		return cmp.Or(order...)
	})
	tellApart(results)
	return results
}

// tellApart numbers results that one check of one set has on one place, as on
// each of the posts that share one description. Findings and readings are
// numbered together, in the order of what they say, so that mending one leaves
// the others' fingerprints alone.
func tellApart(results []result.Result) {
	alike := map[[2]string][]int{}
	for i := range results {
		key := [2]string{results[i].Set, results[i].Fingerprint}
		alike[key] = append(alike[key], i)
	}
	for _, list := range alike {
		slices.SortStableFunc(list, func(a, b int) int { return natural.Compare(results[a].Message, results[b].Message) })
		for n, i := range list[1:] {
			results[i].Fingerprint = digest(results[i].Fingerprint, strconv.Itoa(n+2))
		}
	}
}

// group is 0 for findings and 1 for readings.
func group(r result.Result) int {
	if r.Outcome == result.Within || r.Outcome == result.DoesNotApply {
		return 1
	}
	return 0
}

func position(a, b result.Result) int {
	return cmp.Or(cmp.Compare(a.Span.Start.Offset, b.Span.Start.Offset), cmp.Compare(a.Span.End.Offset, b.Span.End.Offset))
}

func value(a, b *result.Value) int {
	if a == nil || b == nil {
		switch {
		case a != nil:
			return 1
		case b != nil:
			return -1
		}
		return 0
	}
	return strings.Compare(a.Text, b.Text)
}
