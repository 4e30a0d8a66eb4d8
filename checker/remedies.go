package checker

import (
	"context"
	"slices"

	"plumbrule/checker/catalog"
	"plumbrule/checker/remedy"
	"plumbrule/checker/result"
)

// mend looks for changes of a checked design, the first being 0, that mend what
// is outside in it.
// Changed designs are held against the same sets and waivers.
func (c *Checker) mend(ctx context.Context, design int, in Input, d *result.Design) {
	known := map[string]remedy.About{}
	for _, check := range c.catalog.Checks() {
		known[check.ID] = remedy.About{Tries: check.Tries, Asks: check.Asks, Accepted: c.accepted(check.ID, d.Sets)}
	}
	remedy.Find(ctx, d, remedy.Options{
		Check: func(ctx context.Context, data []byte) result.Design {
			changed := in
			changed.Data = data
			checked, _ := c.design(ctx, changed)
			return checked
		},
		About: func(check string) remedy.About { return known[check] },
		Tried: func(done, most int) { c.trying(design+1, done, most) },
		Say:   c.say,
	})
}

// say says a text in the words of an active set.
func (c *Checker) say(set, text string) string {
	for _, s := range c.sets {
		if s.ID == set {
			return s.Wording().Say(text)
		}
	}
	return text
}

// accepted lists the words that sets accept in answer to a check.
func (c *Checker) accepted(check string, sets []string) []string {
	var words []string
	for _, set := range c.sets {
		given := set.Check(check)
		declared := set.Catalog().Find(check)
		if given == nil || declared == nil || !slices.Contains(sets, set.ID) {
			continue
		}
		for i := range given.Figures {
			f := &given.Figures[i]
			limit := declared.Figure(f.Name)
			list, isList := f.Value.([]any)
			if limit == nil || limit.Relation != result.OneOf || f.Kind != catalog.List || !isList {
				continue
			}
			for _, entry := range list {
				if word, ok := entry.(string); ok && !slices.Contains(words, word) {
					words = append(words, word)
				}
			}
		}
	}
	return words
}
