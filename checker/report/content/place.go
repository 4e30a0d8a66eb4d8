package content

import (
	"fmt"
	"strconv"
	"strings"

	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

// PlaceName says what stands at a related place: "total_rise: 56 in",
// "measured_risers, number 12: 8-1/4 in", "beams, number 2 (B2)". The document
// may be nil.
func PlaceName(doc *source.Document, place *result.Place) string {
	words := field(place.Pointer)
	if place.Text != "" {
		return words + ": " + place.Text
	}
	if doc == nil {
		return words
	}
	if mark := doc.Find(place.Pointer).Member("mark"); mark != nil && mark.Value.Kind == source.String {
		words += " (" + mark.Value.Text + ")"
	}
	return words
}

// Basis is Clause where common practice counts as one.
func Basis(r *result.Result) string {
	if r.Listing != nil {
		return listing(r.Listing)
	}
	return r.Clause
}

// listing says where in the design a listing is stated, and of which product.
func listing(l *result.Listing) string {
	words := fmt.Sprintf("%s, line %d", field(l.Pointer), max(l.Span.Start.Line, 1))
	if l.Product != "" {
		words = l.Product + ": " + words
	}
	return words
}

// field names what a pointer leads to: the last key, and from 1 the number of
// the item under it.
func field(pointer string) string {
	tokens := strings.Split(pointer, "/")
	last := len(tokens) - 1
	var numbers []string
	for ; last > 0; last-- {
		n, err := strconv.Atoi(tokens[last])
		if err != nil {
			break
		}
		numbers = append([]string{fmt.Sprintf(", number %d", n+1)}, numbers...)
	}
	if last <= 0 {
		return "the file" + strings.Join(numbers, "")
	}
	key := strings.NewReplacer("~1", "/", "~0", "~").Replace(tokens[last])
	return key + strings.Join(numbers, "")
}
