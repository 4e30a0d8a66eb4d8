package content

import (
	"cmp"
	"slices"
	"strings"

	"plumbrule/checker/result"
)

// Message says what was found; where a check had no words for it, what it is
// about.
func Message(r *result.Result) string {
	return cmp.Or(r.Message, r.Title, r.Check)
}

// Headline is Message with the outcome named in it, unless that is outside: for
// a line that stands without the heading of its section.
func Headline(r *result.Result) string {
	words := Message(r)
	if r.Outcome != result.Outside && !strings.Contains(words, string(r.Outcome)) {
		return string(r.Outcome) + ": " + words
	}
	return words
}

// Title gives the name of a check for people.
func Title(r *result.Result) string {
	return cmp.Or(r.Title, r.Check)
}

// Measured gives the words for the value found: `measured 8"`, or "shown flat
// board" for one that is no quantity. It is "" where there is none.
func Measured(r *result.Result) string {
	switch {
	case r.Have == nil:
		return ""
	case r.Have.Unit == "":
		return "shown " + r.Have.Text
	}
	return "measured " + r.Have.Text
}

// Limit gives the words for the limit and what it rests on: `limit at most
// 7-3/4" (R311.7.5.1; recalled)`. It is "" where there is none.
func Limit(r *result.Result) string {
	if r.Limit == nil {
		return ""
	}
	words := "limit "
	if r.Limit.Unit == "" {
		words = "required "
	}
	words += bound(r)
	var rests []string
	for _, part := range []string{inStandard(r), Basis(r), r.Status} {
		if part != "" && !slices.Contains(rests, part) { // common practice has itself for a clause
			rests = append(rests, part)
		}
	}
	if len(rests) > 0 {
		words += " (" + strings.Join(rests, "; ") + ")"
	}
	return words
}

// Bound gives the limit alone, for formats that have a column for what it rests
// on: `at most 196.85 mm (7-3/4" in the standard)`. It is "" where there is none.
func Bound(r *result.Result) string {
	limit, standard := Limits(r)
	if standard != "" {
		return limit + " (" + standard + ")"
	}
	return limit
}

// Limits gives the parts of what Bound says: the limit, and how the standard
// prints it, "" where that is the same.
func Limits(r *result.Result) (limit, standard string) {
	if r.Limit == nil {
		return "", ""
	}
	return bound(r), inStandard(r)
}

func bound(r *result.Result) string {
	// "required exactly yes" says no more than "required yes".
	if r.Limit.Relation != "" && (r.Limit.Unit != "" || r.Limit.Relation != result.Exactly) {
		return string(r.Limit.Relation) + " " + r.Limit.Text
	}
	return r.Limit.Text
}

// inStandard says how the standard prints the limit, where that differs.
func inStandard(r *result.Result) string {
	if r.Limit.Standard == "" || r.Limit.Standard == r.Limit.Text {
		return ""
	}
	return r.Limit.Standard + " in the standard"
}

// Margin gives the words for the distance from the limit: `outside by 1/4"`,
// `inside by 1/4"`. It is "" where the values cannot be subtracted.
func Margin(r *result.Result) string {
	if r.Margin == nil || r.Margin.Text == "" {
		return ""
	}
	side := "outside"
	if r.Outcome == result.Within {
		side = "inside"
	}
	if r.Margin.Number == 0 {
		return "at the limit itself, which is " + side
	}
	return side + " by " + MarginSize(r)
}

// Clause gives the clause that a result rests on, or the place of the design
// where a listing does in its stead: "listed_max_spacing, line 43". It is ""
// where there is none but common practice.
func Clause(r *result.Result) string {
	if r.Listing != nil {
		return listing(r.Listing)
	}
	if r.Clause == r.Status || r.Clause == commonPractice {
		return ""
	}
	return r.Clause
}

// commonPractice is a clause and a status.
const commonPractice = "common practice"

// Values gives the words for measured value, limit and margin, as far as there
// are any.
func Values(r *result.Result) []string {
	return slices.DeleteFunc([]string{Measured(r), Limit(r), Margin(r)}, func(s string) bool { return s == "" })
}

// MarginSize gives the margin's text without its sign; r must have a margin.
func MarginSize(r *result.Result) string {
	return strings.TrimLeft(r.Margin.Text, "-−")
}

// Engineered gives the words for the answer of wood engineering that stands
// beside a limit: `13'-11" (bending governs)`. It is "" where there is none.
func Engineered(r *result.Result) string {
	if r.Engineered == nil {
		return ""
	}
	return r.Engineered.Limit.Text + " (" + r.Engineered.Governs + " governs)"
}
