package json

import (
	"encoding/json"
	"errors"
	"fmt"
	"slices"

	"plumbrule/checker/report/items"
	"plumbrule/checker/result"
	"plumbrule/schema"
)

// ReadPrevious takes the numbered items out of a report that was written as
// JSON. The error says where the data are no such report.
func ReadPrevious(data []byte) (items.Previous, error) {
	if !json.Valid(data) {
		return nil, errors.New("it is no JSON")
	}
	if err := schema.ValidateValue("report", json.RawMessage(data)); err != nil {
		return nil, fmt.Errorf("it is no report of this program: %w", err)
	}
	var written report
	if err := json.Unmarshal(data, &written); err != nil {
		return nil, fmt.Errorf("read it as a report: %w", err)
	}
	previous := items.Previous{}
	for i := range written.Designs {
		if written.Designs[i].Kind != "" {
			continue
		}
		review, err := readReview(&written.Designs[i])
		if err != nil {
			return nil, fmt.Errorf("%s: %w", written.Designs[i].File, err)
		}
		previous = append(previous, review)
	}
	return previous, nil
}

func readReview(d *design) (items.Review, error) {
	review := items.Review{File: d.File}
	for i := range d.Findings {
		f := &d.Findings[i]
		if f.Item == 0 {
			return review, fmt.Errorf("the finding %q has no item number; write the report anew", f.Message)
		}
		by := items.Found{Check: f.Check, Set: f.Set, Fingerprint: f.Fingerprint}
		at := slices.IndexFunc(review.Items, func(e items.Earlier) bool { return e.Number == f.Item })
		if at >= 0 {
			review.Items[at].Found = append(review.Items[at].Found, by)
			continue
		}
		review.Items = append(review.Items, items.Earlier{
			Number: f.Item, Outcome: result.Outcome(f.Outcome), At: f.At, Mark: f.Mark, See: f.See, Message: f.Message, Found: []items.Found{by},
		})
	}
	for i := range d.Earlier {
		e := &d.Earlier[i]
		item := items.Earlier{
			Number: e.Item, Outcome: result.Outcome(e.Outcome), At: e.At, Mark: e.Mark, See: e.See, Message: e.Message, Closed: e.State == stateClosed,
		}
		for _, f := range e.Found {
			item.Found = append(item.Found, items.Found(f))
		}
		review.Items = append(review.Items, item)
	}
	return review, nil
}
