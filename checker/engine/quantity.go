package engine

import (
	"encoding/json"
	"fmt"
	"math/big"
	"strconv"
	"strings"

	"plumbrule/checker/catalog"
	"plumbrule/checker/measure"
)

// quantity is one value of a check, of a kind that prints as one value.
type quantity struct {
	kind  catalog.Kind
	whole int64
	ratio *big.Rat
	words []string // of words and lists; the one word of a flag
}

// newQuantity reads a raw value as a kind.
func newQuantity(kind catalog.Kind, raw any) (quantity, error) {
	q := quantity{kind: kind}
	bad := fmt.Errorf("%s is no %s", show(raw), kind)
	switch {
	case kind.Whole():
		n, ok := integer(raw)
		if !ok {
			return q, fmt.Errorf("%s is no %s, which is a whole number", show(raw), kind)
		}
		q.whole = n
	case kind == catalog.Slope || kind == catalog.Ratio:
		parts, _ := raw.(map[string]any)
		rise, ok1 := integer(parts["rise"])
		run, ok2 := integer(parts["run"])
		if !ok1 || !ok2 || run == 0 || len(parts) != 2 {
			return q, bad
		}
		q.ratio = big.NewRat(rise, run)
	case kind == catalog.Flag:
		b, ok := raw.(bool)
		if !ok {
			return q, bad
		}
		q.words = []string{map[bool]string{true: "yes", false: "no"}[b]}
	default: // words and lists, one or several
		if word, ok := raw.(string); ok {
			q.words = []string{word}
			return q, nil
		}
		list, ok := raw.([]any)
		for _, item := range list {
			word, isText := item.(string)
			ok = ok && isText
			q.words = append(q.words, word)
		}
		if !ok {
			return q, bad
		}
	}
	return q, nil
}

func integer(raw any) (int64, bool) {
	n, ok := raw.(json.Number)
	if !ok {
		return 0, false
	}
	i, err := strconv.ParseInt(string(n), 10, 64)
	return i, err == nil
}

// text prints the value in a system.
func (q quantity) text(sys measure.System) string {
	switch q.kind {
	case catalog.Length:
		return measure.Length(q.whole).Text(sys)
	case catalog.Pressure:
		return measure.Pressure(q.whole).Text(sys)
	case catalog.Force:
		return measure.Force(q.whole).Text(sys)
	case catalog.Angle:
		return measure.Angle(q.whole).Text(sys)
	case catalog.Count:
		return strconv.FormatInt(q.whole, 10)
	case catalog.Slope:
		if s, ok := q.slope(); ok {
			return s.Text(sys)
		}
		return fraction(q.ratio, 4)
	case catalog.Ratio:
		return fraction(q.ratio, 4)
	}
	if n := len(q.words); n > 1 {
		return strings.Join(q.words[:n-1], ", ") + " or " + q.words[n-1]
	}
	return strings.Join(q.words, "")
}

// number gives the value as a number with its unit, which is empty for words.
func (q quantity) number(sys measure.System) (float64, string) {
	switch q.kind {
	case catalog.Length:
		return measure.Length(q.whole).In(sys)
	case catalog.Pressure:
		return measure.Pressure(q.whole).In(sys)
	case catalog.Force:
		return measure.Force(q.whole).In(sys)
	case catalog.Angle:
		return measure.Angle(q.whole).In(sys)
	case catalog.Count:
		return float64(q.whole), "count"
	case catalog.Slope, catalog.Ratio:
		f, _ := strconv.ParseFloat(q.ratio.FloatString(6), 64) // its own output always parses
		return f, "ratio"
	}
	return 0, ""
}

// slope gives a slope in the form that prints as one in so many; not every
// ratio of two lengths has terms small enough.
func (q quantity) slope() (measure.Slope, bool) {
	if !q.ratio.Num().IsInt64() || !q.ratio.Denom().IsInt64() {
		return measure.Slope{}, false
	}
	s, err := measure.NewSlope(q.ratio.Num().Int64(), q.ratio.Denom().Int64())
	return s, err == nil
}

// fraction prints a ratio as people say it, 1/4, where its terms are small, and
// with so many decimals otherwise.
func fraction(r *big.Rat, places int) string {
	if r.IsInt() || r.Denom().Cmp(big.NewInt(12)) <= 0 {
		return r.RatString()
	}
	return decimals(r, places)
}

// decimals prints a ratio with at most so many decimals.
func decimals(r *big.Rat, places int) string {
	return strings.TrimRight(strings.TrimRight(r.FloatString(places), "0"), ".")
}
