package catalog

import (
	"maps"
	"slices"

	"plumbrule/checker/wording"
)

// In gives the check with all that it says to people in the words of a
// wording, and the phrases that were replaced, each once. Names in braces are
// not texts and stay.
func (c *Check) In(w wording.Wording) (said *Check, phrases []string) {
	if w.Empty() {
		return c, nil
	}
	r := reworder{wording: w, replaced: map[string]bool{}}
	worded := *c
	worded.Title, worded.Description = r.say(c.Title), r.say(c.Description)
	worded.Why, worded.AppliesWhen = r.say(c.Why), r.say(c.AppliesWhen)
	worded.Messages, worded.Exempt = r.templates(c.Messages), r.templates(c.Exempt)
	worded.Mend = r.all(c.Mend)
	worded.Figures = slices.Clone(c.Figures)
	for i := range worded.Figures {
		f := &worded.Figures[i]
		f.About, f.Unit = r.say(f.About), Unit{r.say(f.Unit.One), r.say(f.Unit.Many)}
	}
	return &worded, slices.Sorted(maps.Keys(r.replaced))
}

// reworder notes which phrases it replaced.
type reworder struct {
	wording  wording.Wording
	replaced map[string]bool
}

func (r reworder) say(text string) string {
	said, phrases := r.wording.Replace(text)
	for _, phrase := range phrases {
		r.replaced[phrase] = true
	}
	return said
}

func (r reworder) all(texts []string) []string {
	said := slices.Clone(texts)
	for i := range said {
		said[i] = r.say(said[i])
	}
	return said
}

func (r reworder) templates(lines map[string]Template) map[string]Template {
	said := make(map[string]Template, len(lines))
	for key, line := range lines {
		said[key] = Template{literals: r.all(line.literals), names: line.names}
	}
	return said
}
