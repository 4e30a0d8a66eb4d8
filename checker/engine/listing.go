package engine

import (
	"errors"
	"fmt"
	"slices"

	"plumbrule/checker/catalog"
	"plumbrule/checker/result"
)

// listing reads under "stated_at" where the design states the limit itself, as
// what a product is listed for; nil where a figure of the set is the limit. The
// place must be among those of the row, so that every report points to it.
func (d design) listing(row row, at []string) (*result.Listing, error) {
	raw, ok := row.get("stated_at")
	if !ok {
		return nil, nil //nolint:nilnil // no listing is an answer
	}
	places, ok := raw.([]any)
	if !ok || len(places) == 0 {
		return nil, errors.New(`a row has no list of places under "stated_at"`)
	}
	pointer, ok := places[0].(string)
	if !ok || !slices.Contains(at, pointer) {
		return nil, fmt.Errorf(`the listing is at %s, which is not among the places under "at"`, show(places[0]))
	}
	node, err := d.find(pointer)
	if err != nil {
		return nil, err
	}
	out := &result.Listing{Place: result.Place{Pointer: pointer, Span: node.Span, Text: node.Text}}
	if node.Parent != nil {
		out.Product = label(node.Parent, "product")
	}
	return out, nil
}

// listed is the figure of a row whose limit a listing gives. The set need not
// give it: it says as what the values print and on which side the inside lies.
func (r *run) listed(row row) (*catalog.Figure, error) {
	name, err := row.must("figure")
	if err != nil {
		return nil, err
	}
	declared := r.check.Figure(name)
	switch {
	case declared == nil:
		return nil, fmt.Errorf("the check asks for no figure %q", name)
	case declared.Relation == "" || !declared.Kind.Whole():
		return nil, fmt.Errorf("figure %q is not one that a listing could be in place of", name)
	}
	return declared, nil
}
