package checker_test

import (
	"context"
	"io/fs"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"plumbrule/checker"
	"plumbrule/checker/catalog"
	"plumbrule/checker/caution"
	"plumbrule/checker/measure"
	"plumbrule/checker/remedy"
	"plumbrule/checker/result"
	"plumbrule/checker/ruleset"
)

// everySet prepares all sets that come with the program in one checker.
func everySet(t *testing.T) *checker.Checker {
	t.Helper()
	if c, ok := checkers.Load("every set"); ok {
		return c.(*checker.Checker)
	}
	library, err := checker.Library()
	if err != nil {
		t.Fatal(err)
	}
	ids, err := library.IDs()
	if err != nil {
		t.Fatal(err)
	}
	c, err := checker.New(checker.Options{Sets: ids})
	if err != nil {
		t.Fatal(err)
	}
	checkers.Store("every set", c)
	return c
}

// countries are the sets in millimetres.
func countries(t *testing.T) []*ruleset.Set {
	t.Helper()
	return slices.DeleteFunc(slices.Clone(everySet(t).Sets()), func(s *ruleset.Set) bool { return s.System != measure.Metric })
}

// underSet checks one design under one set.
func underSet(t *testing.T, file, set string) result.Report {
	t.Helper()
	input := readInput(t, file)
	input.Sets = []string{set}
	report := everySet(t).Check(context.Background(), input)
	report.Sets = slices.DeleteFunc(report.Sets, func(s result.Set) bool { return s.ID != set })
	if d := &report.Designs[0]; len(d.Problems) > 0 || d.Counts.CouldNotRun > 0 {
		t.Errorf("%s under %s: %+v, %d checks could not run", file, set, d.Problems, d.Counts.CouldNotRun)
	}
	return report
}

// tellingFixtures lists the whole designs, and of the small ones those with a
// finding.
func tellingFixtures(t *testing.T) []string {
	t.Helper()
	var files []string
	for _, root := range []string{"../fixtures/checks", "../fixtures/designs"} {
		err := filepath.WalkDir(root, func(file string, entry fs.DirEntry, err error) error {
			telling := strings.HasPrefix(filepath.Base(file), "outside") || strings.HasSuffix(root, "designs")
			if err == nil && !entry.IsDir() && telling && strings.HasSuffix(file, ".deck.yaml") {
				files = append(files, file)
			}
			return err
		})
		if err != nil {
			t.Fatal(err)
		}
	}
	if len(files) < 80 {
		t.Fatalf("%d fixtures", len(files))
	}
	return files
}

// said is all that a result says in the words of its set: not the field that is
// not shown, which is the design's, and not the notes of figures, which the set
// wrote itself.
func said(r *result.Result) []string {
	texts := append([]string{r.Title, r.Why}, r.Mend...)
	switch r.Outcome {
	case result.NotShown:
	case result.DoesNotApply:
		texts = append(texts, r.Reason)
	default:
		texts = append(texts, r.Message)
	}
	return texts
}

// whole finds texts where they stand as words of their own.
func whole(texts []string) *regexp.Regexp {
	if len(texts) == 0 {
		return regexp.MustCompile(`$.`)
	}
	texts = slices.Clone(texts)
	slices.SortFunc(texts, func(a, b string) int { return len(b) - len(a) })
	for i := range texts {
		texts[i] = regexp.QuoteMeta(texts[i])
	}
	return regexp.MustCompile(`(^|[^\w/-])(` + strings.Join(texts, "|") + `)($|[^\w/-])`)
}

// phrases are the words of a set as they may stand in a text, and what it says
// in their place.
func phrases(set *ruleset.Set) (phrases, says []string) {
	capital := func(s string) string { return strings.ToUpper(s[:1]) + s[1:] }
	for _, w := range set.Words {
		for _, end := range []string{"", "s"} {
			says = append(says, w.Says+end, capital(w.Says)+end)
			if w.Phrase != w.Says {
				phrases = append(phrases, w.Phrase+end, capital(w.Phrase)+end)
			}
		}
	}
	return phrases, says
}

// TestCountriesSpeakTheirOwnWords looks in all that countries say of designs for
// phrases that they replace. Names that the design gives its parts,
// and what the set says instead, are taken out first.
func TestCountriesSpeakTheirOwnWords(t *testing.T) {
	type looks struct{ phrases, says *regexp.Regexp }
	by := map[string]looks{}
	var ids []string
	for _, set := range countries(t) {
		ids = append(ids, set.ID)
		from, to := phrases(set)
		by[set.ID] = looks{whole(from), whole(to)}
		if len(set.Words) == 0 {
			t.Errorf("%s has no words of its own", set.ID)
		}
	}
	mark := regexp.MustCompile(`(?:mark|loads: \[\{kind): ([^,}\n]+)`)
	seen := map[string]bool{}
	for _, file := range tellingFixtures(t) {
		input := readInput(t, file)
		input.Sets = ids
		var marks []string
		for _, m := range mark.FindAllStringSubmatch(string(input.Data), -1) {
			marks = append(marks, m[1])
		}
		named := whole(marks)
		d := everySet(t).Check(context.Background(), input).Designs[0]
		for _, list := range [][]result.Result{d.Findings, d.Readings} {
			for i := range list {
				for _, text := range said(&list[i]) {
					look := by[list[i].Set]
					rest := look.says.ReplaceAllString(named.ReplaceAllString(text, "$1#$3"), "$1#$3")
					if found := look.phrases.FindStringSubmatch(rest); found != nil && !seen[list[i].Set+text] {
						seen[list[i].Set+text] = true
						t.Errorf("%s: %s %s says %q in %q", file, list[i].Set, list[i].Check, found[2], text)
					}
				}
			}
		}
	}
}

// foreign gives what nobody says in the country of a set, whether a word of the
// set takes its place or not; empty for a country that nobody thought of.
func foreign(set string) string {
	const (
		spelling = `centers?|centered|stor(y|ies)|neighbors?|colors?|building departments?|licensed engineers?`
		abroad   = spelling + `|treated wood|aluminum|lumber|siding|tread depths?|guards?|sidewalks?|code official`
		islands  = abroad + `|stringers?|line of (the )?nosings|live loads?|listed|total run`
		south    = abroad + `|beams?|ledgers?|wood|listed|listing|rim`
	)
	country, _, _ := strings.Cut(set, "-")
	return map[string]string{
		"canada": spelling, "ca": spelling, "england": islands, "ireland": islands, "germany": islands, "australia": south, "new": south,
	}[country]
}

// ownTexts lists everything that a set says of itself and of its checks, and in
// the cautions and remedies that stand in its words.
func ownTexts(set *ruleset.Set) []string {
	texts := append([]string{set.Scope}, set.NotCovered...)
	for i := range set.Checks {
		given, check := &set.Checks[i], set.Describe(set.Checks[i].ID)
		texts = append(texts, given.Note, check.Title, check.Description, check.Why, check.AppliesWhen)
		texts = append(texts, check.Mend...)
		for _, f := range given.Figures {
			texts = append(texts, f.Note, check.Figure(f.Name).About)
			if f.Table != nil {
				texts = append(texts, f.Table.Title)
			}
		}
		for _, lines := range []map[string]catalog.Template{check.Messages, check.Exempt} {
			for _, line := range lines {
				texts = append(texts, line.String())
			}
		}
		for _, text := range remedy.Says(given.ID) {
			texts = append(texts, set.Wording().Say(text))
		}
	}
	for _, line := range caution.All() {
		texts = append(texts, line.In(set.Wording()))
	}
	return texts
}

// TestCountriesSayNothingForeign holds every text of every country's checks,
// not only those that a fixture calls forth, against what nobody says there.
func TestCountriesSayNothingForeign(t *testing.T) {
	same := strings.NewReplacer("hits a beam", "", "handrail/", "")
	names := regexp.MustCompile(`\{\w+\}|[a-z]+/[a-z-]+`)
	for _, set := range countries(t) {
		words := foreign(set.ID)
		if words == "" {
			t.Errorf("nobody said what %s does not say", set.ID)
			continue
		}
		unsaid := regexp.MustCompile(`(?i)(^|[^\w-])(` + words + `)($|[^\w-])`)
		for _, text := range ownTexts(set) {
			if found := unsaid.FindStringSubmatch(names.ReplaceAllString(same.Replace(text), "#")); found != nil {
				t.Errorf("%s says %q in %q", set.ID, found[2], text)
			}
		}
	}
}

// TestMetricDesignIsToldInMillimetres looks for feet, inches and pounds in all
// that countries say of a design in millimetres. The remarks of a set may quote
// them, as where a metric size is the name of an inch size.
func TestMetricDesignIsToldInMillimetres(t *testing.T) {
	imperial := regexp.MustCompile(`[0-9] ?("|'|in\b|ft\b|psf\b|lb\b)`)
	for _, set := range countries(t) {
		d := underSet(t, "../fixtures/designs/karaka-bay.deck.yaml", set.ID).Designs[0]
		for _, list := range [][]result.Result{d.Findings, d.Readings} {
			for i := range list {
				r := &list[i]
				texts := append(said(r), r.Row)
				for _, v := range []*result.Value{r.Have, r.Limit, r.Margin} {
					if v != nil {
						texts = append(texts, v.Text, v.Standard)
					}
				}
				for _, text := range texts {
					if imperial.MatchString(text) {
						t.Errorf("%s %s says %q", set.ID, r.Check, text)
					}
				}
				if r.Limit != nil && r.Limit.Standard != "" {
					t.Errorf("%s %s prints %s beside %s", set.ID, r.Check, r.Limit.Standard, r.Limit.Text)
				}
			}
		}
	}
}

// TestImperialDesignSeesTheStandardsUnits asks that a limit of the set itself
// stands in its own units beside those of the design, exactly.
func TestImperialDesignSeesTheStandardsUnits(t *testing.T) {
	for _, set := range countries(t) {
		n := 0
		for _, r := range underSet(t, "../fixtures/designs/alder-lane.deck.yaml", set.ID).Designs[0].Readings {
			if r.Limit == nil || r.Limit.Unit != "in" || r.Limit.Standard == "" {
				continue
			}
			n++
			length, system, err := measure.ParseLength(r.Limit.Standard)
			inches, _ := length.In(measure.Imperial)
			if err != nil || system != measure.Metric || inches != r.Limit.Number || length%10_000 != 0 {
				t.Errorf("%s %s prints %s beside %s: %v", set.ID, r.Check, r.Limit.Standard, r.Limit.Text, err)
			}
		}
		if n < 5 {
			t.Errorf("%s prints %d limits in its own units", set.ID, n)
		}
	}
}
