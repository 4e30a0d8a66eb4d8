package text_test

import (
	"bytes"
	"errors"
	"io"
	"regexp"
	"strings"
	"testing"

	"plumbrule/checker/compare"
	"plumbrule/checker/compare/markdown"
	"plumbrule/checker/compare/text"
	"plumbrule/checker/report/content"
	"plumbrule/checker/report/lines"
	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

// hostile is a mark that tries to steer a terminal and to lay out a page.
const hostile = "\x1b[31m<b>|`P`\u202e"

func design(t *testing.T, name, doc string, results ...result.Result) result.Design {
	t.Helper()
	d, err := source.Read(name, []byte(doc))
	if err != nil {
		t.Fatal(err)
	}
	for i := range results {
		results[i].Span = d.Find(results[i].At[0]).Span
	}
	return result.Design{
		File: name, Title: "Plover Court back deck, with a title that is longer than a narrow line", Revision: hostile, Document: d, Findings: results,
		Disposition: result.ReviseAndResubmit, Counts: result.Counts{Outside: len(results)},
	}
}

func finding(check, at string, n float64) result.Result {
	return result.Result{
		Check: check, Set: "town", Clause: "R1", Outcome: result.Outside, Consequence: result.LifeSafety, At: []string{at}, Mark: hostile, See: "S1",
		Message: "risers of " + hostile + " are high", Fingerprint: check + at,
		Have: &result.Value{Number: 8, Unit: "in", Text: `8"`}, Limit: &result.Value{Number: 7.75, Unit: "in", Text: `7-3/4"`, Relation: result.AtMost},
		Margin: &result.Value{Number: n, Unit: "in", Text: `1/4"`},
	}
}

func sets() []result.Set {
	return []result.Set{{ID: "town", Title: "Town rules", Edition: "2", NotCovered: []string{"docks and piers"}}, {ID: "state", Title: "State rules"}}
}

func revisions(t *testing.T) *compare.Revisions {
	t.Helper()
	r := compare.Between(
		design(t, "was.yaml", "stairs: [{mark: A, risers: 6, width: 3 ft}, {mark: B, risers: 6}]", finding("x/y", "/stairs/0/risers", -0.25), finding("x/z", "/stairs/1/risers", -0.25)),
		design(t, "is.yaml", "stairs: [{mark: A, risers: 7}, {mark: C, risers: 9, note: \"\\e[31m<b>|`P`\"}]", finding("x/y", "/stairs/0/risers", -0.5), finding("x/q", "/stairs/1/risers", -0.5)),
		sets(),
	)
	r.Waivers = []result.Design{{Kind: result.KindWaivers, File: "waivers.yaml", Findings: []result.Result{{Message: "a waiver that excuses nothing"}}}}
	return r
}

func beside(t *testing.T) *compare.Sets {
	t.Helper()
	within := finding("x/y", "/stairs/0/risers", 0.25)
	within.Outcome, within.Set = result.Within, "state"
	d := design(t, "is.yaml", "stairs: [{mark: A, risers: 7}, {mark: B, risers: 7}]", finding("x/y", "/stairs/0/risers", -0.25), finding("x/only", "/stairs/1/risers", -1))
	d.Readings = []result.Result{within}
	return compare.Beside(d, sets(), [][]compare.Given{{{Check: "x/y"}, {Check: "x/only"}}, {{Check: "x/y"}}})
}

// formats are all ways to write both comparisons for people.
func formats(t *testing.T) map[string]func(io.Writer) error {
	r, s := revisions(t), beside(t)
	list := map[string]func(io.Writer) error{
		"markdown, revisions": func(w io.Writer) error { return markdown.Revisions(w, r) },
		"markdown, sets":      func(w io.Writer) error { return markdown.Sets(w, s) },
	}
	for name, o := range map[string]text.Options{"": {}, ", narrow": {Width: 40}, ", wide": {Width: 120, Verbose: true}} {
		list["text, revisions"+name] = func(w io.Writer) error { return text.Revisions(w, r, o) }
		list["text, sets"+name] = func(w io.Writer) error { return text.Sets(w, s, o) }
	}
	return list
}

func written(t *testing.T, write func(io.Writer) error) string {
	t.Helper()
	var out bytes.Buffer
	if err := write(&out); err != nil {
		t.Fatal(err)
	}
	return out.String()
}

func TestWhatAllSay(t *testing.T) {
	verdict := regexp.MustCompile(`(?i)\b(un)?safe(ly|ty)?\b|\bcompl(y|ies|iant|iance)\b|\bpass(es|ed)?\b|\bapprov\w+`)
	for name, write := range formats(t) {
		got := strings.Join(strings.Fields(written(t, write)), " ")
		for _, want := range append(content.Cautions(nil), "Town rules", "docks and piers", "is.yaml") {
			if !strings.Contains(got, want) {
				t.Errorf("%s: no %q", name, want)
			}
		}
		bare := strings.NewReplacer("life safety", "", "LIFE SAFETY", "").Replace(got)
		if words := verdict.FindAllString(bare, -1); words != nil {
			t.Errorf("%s: a verdict: %q", name, words)
		}
		if strings.ContainsAny(got, "\x1b\u202e") {
			t.Errorf("%s lets the design steer the terminal", name)
		}
		if strings.HasPrefix(name, "markdown") && strings.Contains(got, "<b>") && !strings.Contains(got, `\<b\>`) {
			t.Errorf("%s lets the design write HTML", name)
		}
	}
}

func TestWhatBecomes(t *testing.T) {
	got := written(t, formats(t)["text, revisions"])
	for _, want := range []string{
		"CHANGES OF THE DESIGN (4)", "stair A: risers: 6 -> 7", "stair A: width: 3 ft -> not shown", "stair B: removed: {mark: B, risers: 6}", "stair C: added: ",
		"was.yaml:1:28 -> is.yaml:1:28",
		"NEW, OUTSIDE THE LIMITS (1)\n\nis.yaml:1:50: new: life safety: ", "was not there, as the element is new; now 8\", outside by 1/4\"",
		"STILL OUTSIDE THE LIMITS (1)\n\nis.yaml:1:28: still outside: ", `outside by 1/4": worse`,
		"GONE (1)\n\nwas.yaml:1:63: gone: ", "now gone with its element",
		"became of findings: new 1 | still outside 1 (1 worse) | gone 1",
		"WAIVERS\n  waivers.yaml:1:1: a waiver that excuses nothing",
	} {
		if !strings.Contains(got, want) {
			t.Errorf("no %q in\n%s", want, got)
		}
	}
}

// TestFitsTheLine fits what is for people; the lines that programs read, and
// words without a blank, jut out.
func TestFitsTheLine(t *testing.T) {
	cells := lines.NewCells()
	for _, name := range []string{"text, revisions, narrow", "text, sets, narrow"} {
		for line := range strings.SplitSeq(written(t, formats(t)[name]), "\n") {
			machine := regexp.MustCompile(`^\S+:\d+:\d+: `).MatchString(line) || strings.Contains(line, " -> is.yaml:")
			if cells.StringWidth(line) > 40 && !machine && strings.Contains(strings.TrimSpace(line), " ") {
				t.Errorf("%s: %d cells in %q", name, cells.StringWidth(line), line)
			}
		}
	}
}

// TestColumns puts sets in columns where there is room, and one under the other
// where there is none.
func TestColumns(t *testing.T) {
	wide, narrow := written(t, formats(t)["text, sets, wide"]), written(t, formats(t)["text, sets, narrow"])
	if !regexp.MustCompile(`(?m)^    outcome +outside +within$`).MatchString(wide) {
		t.Errorf("no columns in\n%s", wide)
	}
	if !regexp.MustCompile(`(?m)^    state: within \| found`).MatchString(narrow) || !regexp.MustCompile(`(?m)^    state: no such check$`).MatchString(narrow) {
		t.Errorf("not one under the other in\n%s", narrow)
	}
}

// TestColourAddsNothing takes the codes out again.
func TestColourAddsNothing(t *testing.T) {
	r := revisions(t)
	plain := written(t, func(w io.Writer) error { return text.Revisions(w, r, text.Options{}) })
	colour := written(t, func(w io.Writer) error { return text.Revisions(w, r, text.Options{Colour: true}) })
	if colour == plain {
		t.Error("no colour")
	}
	if got := regexp.MustCompile(`\x1b\[[0-9;]*m`).ReplaceAllString(colour, ""); got != plain {
		t.Errorf("without its colour it says\n%s\nnot\n%s", got, plain)
	}
}

type broken struct{}

func (broken) Write([]byte) (int, error) { return 0, errors.New("disk full") }

func TestErrorsOfTheWriter(t *testing.T) {
	for name, write := range formats(t) {
		if err := write(broken{}); err == nil {
			t.Errorf("%s: the error is lost", name)
		}
	}
}
