package ruleset

import (
	"slices"
	"strings"

	"plumbrule/checker/catalog"
	"plumbrule/checker/caution"
	"plumbrule/checker/remedy"
	"plumbrule/checker/source"
	"plumbrule/checker/wording"
	"plumbrule/schema"
)

// Word is what a set says in place of a phrase of the checks.
type Word struct{ Phrase, Says string }

// words reads what the set calls things, over the words of the set below, and
// describes its checks so. A phrase that nothing under the set says, and that is
// no field which may not be shown, is a mistake: it was misspelt, or the checks
// have changed.
func (l *loader) words(set *Set, root *source.Node, base *Set) {
	phrases := map[string]string{}
	if base != nil {
		for _, w := range base.Words {
			phrases[w.Phrase] = w.Says
		}
	}
	own := root.Member("words")
	if own != nil {
		for _, m := range own.Value.Members {
			phrases[m.Key] = m.Value.Text
		}
	}
	for phrase, says := range phrases {
		set.Words = append(set.Words, Word{phrase, says})
	}
	slices.SortFunc(set.Words, func(a, b Word) int { return strings.Compare(a.Phrase, b.Phrase) })
	set.words = wording.New(phrases)
	set.worded = map[string]*catalog.Check{}
	said := map[string]bool{}
	note := func(replaced []string) {
		for _, phrase := range replaced {
			said[phrase] = true
		}
	}
	for i := range set.Checks {
		check, replaced := l.checks.Find(set.Checks[i].ID).In(set.words)
		set.worded[check.ID] = set.Checks[i].classed(check)
		note(replaced)
	}
	if own == nil {
		return
	}
	set.replaced(note)
	for _, m := range own.Value.Members {
		if !said[m.Key] && !schema.HasField("design", strings.ReplaceAll(m.Key, " ", "_")) {
			l.problems.add(m.KeySpan, "no check of the set says %q, no caution and no remedy, or a longer phrase of these always takes its place", m.Key)
		}
	}
}

// replaced notes the phrases that the set says otherwise in what is said beside
// its checks: the cautions, and the changes that mend what these find.
func (s *Set) replaced(note func(phrases []string)) {
	for _, line := range caution.All() {
		note(line.Replaced(s.words))
	}
	for i := range s.Checks {
		for _, text := range remedy.Says(s.Checks[i].ID) {
			_, phrases := s.words.Replace(text)
			note(phrases)
		}
	}
}

// classed gives a check the class that the set gives it.
func (c *Check) classed(check *catalog.Check) *catalog.Check {
	if c.Class == "" {
		return check
	}
	own := *check
	own.Consequence = c.Class
	return &own
}
