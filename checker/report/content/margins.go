package content

import (
	"cmp"
	"math"
	"slices"

	"plumbrule/checker/result"
)

// Closest gives up to n readings that are within their limits with the least to
// spare, tightest first. Margins in different units are compared by their share
// of the limit. A subject that several sets judge is named once, by the set
// that leaves it the least.
func Closest(readings []result.Result, n int) []*result.Result {
	type candidate struct {
		reading *result.Result
		share   float64
	}
	var tightest []candidate
	for i := range readings {
		if share, ok := marginShare(&readings[i]); ok {
			tightest = append(tightest, candidate{&readings[i], share})
		}
	}
	slices.SortStableFunc(tightest, func(a, b candidate) int { return cmp.Compare(a.share, b.share) })

	var closest []*result.Result
	seen := map[key]bool{}
	for _, c := range tightest {
		if len(closest) >= n {
			break
		}
		if k := sameSubject(c.reading); !seen[k] {
			seen[k] = true
			closest = append(closest, c.reading)
		}
	}
	return closest
}

// marginShare gives the margin as a share of the limit, and false for what has
// none: words, limits of zero, of which nothing is a share, and counts, which
// are drawn at their limit on purpose.
func marginShare(r *result.Result) (float64, bool) {
	if r.Outcome != result.Within || r.Margin == nil || r.Limit == nil {
		return 0, false
	}
	if r.Margin.Unit == "" || r.Margin.Unit == "count" || r.Margin.Unit != r.Limit.Unit || r.Limit.Number == 0 {
		return 0, false
	}
	return math.Abs(r.Margin.Number / r.Limit.Number), true
}
