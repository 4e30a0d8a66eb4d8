package rules_test

import (
	"regexp"
	"testing"

	"plumbrule/checker/catalog"
)

// What a check says holds for every standard: figures and their units come from
// the set and the design, so that nobody reads inches of a metric code.
func TestTemplatesHaveNoFigureWithUnit(t *testing.T) {
	unit := regexp.MustCompile(`[0-9][0-9 ./-]*(in|ft|psf|plf|lb|mm|cm|m|kPa|kN)\b|[0-9]["']|\binch(es)?\b|\bsquare (foot|feet)\b|\b[0-9]+x[0-9]+\b`)
	for sample, want := range map[string]bool{
		"within 36 in of the edge": true, `a drop of 30"`: true, "a square foot": true, "of 2x10": true, "in 2 rows": false, "at 45 degrees": false, "3 in a row": true,
	} {
		if unit.MatchString(sample) != want {
			t.Errorf("%q is recognized: %t", sample, !want)
		}
	}
	for _, check := range load(t).Checks() {
		for _, text := range templates(check) {
			if found := unit.FindString(text); found != "" {
				t.Errorf("%s says %q, in %q", check.ID, found, text)
			}
		}
	}
}

// templates lists all that a check says to people.
func templates(check *catalog.Check) []string {
	texts := append([]string{check.Title, check.Description, check.Why, check.AppliesWhen}, check.Mend...)
	for _, lines := range []map[string]catalog.Template{check.Messages, check.Exempt} {
		for _, line := range lines {
			texts = append(texts, line.String())
		}
	}
	for _, figure := range check.Figures {
		texts = append(texts, figure.About)
	}
	return texts
}
