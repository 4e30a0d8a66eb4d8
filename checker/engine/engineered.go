package engine

import (
	"fmt"

	"plumbrule/checker/catalog"
	"plumbrule/checker/result"
)

// engineered reads what wood engineering allows, as the facts have it; nil where
// the row carries none.
func (d design) engineered(row row) (*result.Engineered, error) {
	raw, ok := row.get("engineered")
	if !ok {
		return nil, nil //nolint:nilnil // no answer is an answer
	}
	fact, ok := raw.(map[string]any)
	if !ok {
		return nil, fmt.Errorf("what engineering allows is %s, not the fact of it", show(raw))
	}
	limit, ok := fact["limit"].(map[string]any)
	if !ok {
		return nil, nil //nolint:nilnil // as above
	}
	length, err := newQuantity(catalog.Length, limit["value"])
	if err != nil {
		return nil, err
	}
	number, unit := length.number(d.system)
	out := &result.Engineered{Limit: result.Value{Number: number, Unit: unit, Text: length.text(d.system)}}
	out.Governs, _ = fact["governs"].(string)
	lines, _ := fact["working"].([]any)
	for _, line := range lines {
		if text, ok := line.(string); ok {
			out.Working = append(out.Working, text)
		}
	}
	return out, nil
}
