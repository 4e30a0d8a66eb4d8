package checker_test

import (
	"context"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"plumbrule/checker"
	"plumbrule/checker/caution"
	"plumbrule/checker/remedy"
	"plumbrule/checker/report/content"
	"plumbrule/checker/result"
	"plumbrule/checker/ruleset"
)

// TestRemediesInWordsOfTheSet has two sets find the same outside. Each tells
// the change in its own words, and neither touches a mark that reads like one.
func TestRemediesInWordsOfTheSet(t *testing.T) {
	c, err := checker.New(checker.Options{Sets: []string{"england-adk-2013", "irc-2021"}, Remedies: true})
	if err != nil {
		t.Fatal(err)
	}
	in := readInput(t, "../fixtures/designs/karaka-bay.deck.yaml")
	in.Data = regexp.MustCompile(`\bB1\b`).ReplaceAll(in.Data, []byte("guard 1"))
	tried := map[string]string{}
	try := func(check string) {
		for _, f := range c.Check(context.Background(), in).Designs[0].Findings {
			if f.Check == check && len(f.Remedies) > 0 {
				tried[f.Set+" "+f.Check] = f.Remedies[len(f.Remedies)-1].Text
			}
		}
	}
	try("guards/stair-required")
	try("guards/height")
	// Nobody is told to put up another guard that is itself to be mended.
	in.Data = regexp.MustCompile(`height: 1000 mm, infill`).ReplaceAll(in.Data, []byte("height: 1100 mm, infill"))
	try("guards/required")
	for of, want := range map[string]string{
		"england-adk-2013 guards/required":       "left edge with guarding guard 1",
		"england-adk-2013 guards/stair-required": "guarding on the stair 1000 mm high, with openings of 95 mm",
		"england-adk-2013 guards/height":         "guarding height 1100 mm instead of 1000 mm: at the limit",
		"irc-2021 guards/required":               "left edge with guard guard 1",
		"irc-2021 guards/stair-required":         "a guard on the stair 1000 mm high, with openings of 95 mm",
	} {
		if tried[of] != want {
			t.Errorf("%s: %q, want %q", of, tried[of], want)
		}
	}
}

// TestWhatIsNotShownIsOfWhatTheSetCallsIt words the element and the field, but
// neither marks nor names, nor what is to be typed.
func TestWhatIsNotShownIsOfWhatTheSetCallsIt(t *testing.T) {
	in := readInput(t, "../fixtures/designs/karaka-bay.deck.yaml")
	in.Data = regexp.MustCompile(`\bB1\b`).ReplaceAll(in.Data, []byte("guard 1"))
	in.Data = regexp.MustCompile(`surface_above_grade: 300 mm`).ReplaceAll(in.Data, nil) // which would be the drop at the edges
	in.Sets = []string{"england-adk-2013", "australia-ncc-2022", "new-zealand", "canada-nbc-2020"}
	said := map[string]string{} // each message, with its field
	for _, f := range everySet(t).Check(context.Background(), in).Designs[0].Findings {
		said[f.Set+" "+f.Message] = f.Needs
	}
	for want, needs := range map[string]string{
		"england-adk-2013 guarding guard 1: infill load is not shown":      "guards[].infill_load",
		"australia-ncc-2022 barrier guard 1: rated load is not shown":      "guards[].listed_load",
		"australia-ncc-2022 bearer BR1: bearing length is not shown":       "platforms[].beams[].bearing_length",
		"australia-ncc-2022 platform upper: decking timber is not shown":   "platforms[].decking.lumber",
		"new-zealand barrier guard 1: posts fixing is not shown":           "guards[].posts.fixing",
		"canada-nbc-2020 guard guard 1: listed load is not shown":          "guards[].listed_load",
		"canada-nbc-2020 beam BR1: bearing length is not shown":            "platforms[].beams[].bearing_length",
		"england-adk-2013 platform lower: edge front drop is not shown":    "platforms[].edges.front.drop",
		"canada-nbc-2020 stair F1: tread thickness is not shown":           "stairs[].tread.thickness",
		"new-zealand platform lower: edge front drop is not shown":         "platforms[].edges.front.drop",
		"england-adk-2013 stair F1: landing bottom slope out is not shown": "stairs[].landing_bottom.slope_out",
	} {
		if said[want] != needs {
			t.Errorf("%q is not said of %s, but %q", want, needs, said[want])
		}
	}
}

// TestNoCautionIsLost closes a report of every set, and of all of them, with
// each remark; one that several sets say differently names the terms of all.
func TestNoCautionIsLost(t *testing.T) {
	c := everySet(t)
	report := c.Check(context.Background(), readInput(t, "../fixtures/designs/heron-lane.deck.yaml"))
	gap := regexp.MustCompile(`\\\{[^}]*\\\}`)
	for _, set := range append(slices.Clone(report.Sets), result.Set{ID: "all"}) {
		sets := []result.Set{set}
		if set.ID == "all" {
			sets = report.Sets
		}
		said := content.Cautions(sets)
		for i, line := range caution.Closing() {
			form := regexp.MustCompile("^" + gap.ReplaceAllString(regexp.QuoteMeta(string(line)), ".+") + "$")
			if len(said) <= i || !form.MatchString(said[i]) {
				t.Errorf("%s: %q is not in %q", set.ID, line, said)
			}
		}
	}
	all := strings.Join(content.Cautions(report.Sets), "\n")
	for _, who := range []string{
		"the building department", "the building control body", "the building control authority", "the council as building consent authority",
		"the Bauaufsicht", "the authority having jurisdiction", "the council, building surveyor or certifier",
	} {
		if strings.Count(all, who) != 1 {
			t.Errorf("%s is named %d times in %q", who, strings.Count(all, who), all)
		}
	}
}

// TestWordsOfRemediesAndCautions loads sets whose words only a remedy of their
// check says, or only a caution.
func TestWordsOfRemediesAndCautions(t *testing.T) {
	const set = `set: office
title: House rules
edition: "1"
publisher: office
system: metric
scope: Stairs of the office.
not_covered: [all else]
words: {WORDS}
checks:
  stairs/width: {clause: H1, figures: {min: {value: 900 mm, status: recalled}}}
`
	for words, problem := range map[string]string{
		"buried line: cable":              "",
		"the code that it has adopted: x": "",
		"stair clear width: clear flight": `no check of the set says "stair clear width"`, // another check's remedy
		"sides with a handrail: rails":    `no check of the set says "sides with a handrail"`,
		"the authority: nobody":           `no check of the set says "the authority"`,
		"decides: is asked":               `no check of the set says "decides"`,
		"no proof: proof":                 `no check of the set says "no proof"`,
		"licensed practice: anybody":      `no check of the set says "licensed practice"`,
		"guard: rail":                     "",
	} {
		file := filepath.Join(t.TempDir(), "office.yaml")
		if err := os.WriteFile(file, []byte(strings.Replace(set, "WORDS", words, 1)), 0o600); err != nil {
			t.Fatal(err)
		}
		_, err := checker.New(checker.Options{Sets: []string{file}})
		if problem == "" && err != nil || problem != "" && (err == nil || !strings.Contains(err.Error(), problem)) {
			t.Errorf("%s: %v, want %q", words, err, problem)
		}
	}
	only := strings.NewReplacer("WORDS", "stair clear width: clear flight", "stairs/width:", "stairs/width-at-rails:",
		"min: {value: 900 mm, status: recalled}", "one_rail: {value: 900 mm, status: recalled}, two_rails: {value: 800 mm, status: recalled}").Replace(set)
	file := filepath.Join(t.TempDir(), "office.yaml")
	if err := os.WriteFile(file, []byte(only), 0o600); err != nil {
		t.Fatal(err)
	}
	if _, err := checker.New(checker.Options{Sets: []string{file}}); err != nil {
		t.Error(err)
	}
}

// toldBy reports whether a remedy begins with a change that is told in the
// words that remedies of its check have, as its set says them.
func toldBy(c *checker.Checker, f *result.Result, text string) bool {
	i := slices.IndexFunc(c.Sets(), func(s *ruleset.Set) bool { return s.ID == f.Set })
	for _, words := range remedy.Says(f.Check) {
		pattern := strings.ReplaceAll(regexp.QuoteMeta(c.Sets()[i].Wording().Say(words)), `\{\}`, ".+")
		if regexp.MustCompile(`^([\w.]+ )?` + pattern + `($|[ :])`).MatchString(text) {
			return true
		}
	}
	return false
}
