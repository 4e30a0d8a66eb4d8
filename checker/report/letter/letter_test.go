package letter_test

import (
	"bytes"
	"errors"
	"fmt"
	"regexp"
	"slices"
	"strings"
	"testing"

	"plumbrule/checker/report/content"
	"plumbrule/checker/report/golden"
	"plumbrule/checker/report/items"
	reportjson "plumbrule/checker/report/json"
	"plumbrule/checker/report/letter"
	"plumbrule/checker/report/reporttest"
	"plumbrule/checker/result"
)

func write(t testing.TB, opts letter.Options, report result.Report) string {
	t.Helper()
	var out bytes.Buffer
	if err := letter.New(opts).Write(&out, report); err != nil {
		t.Fatal(err)
	}
	return out.String()
}

// after gives what a report leaves to the next, by the way a user takes.
func after(t *testing.T, report result.Report, previous items.Previous) items.Previous {
	t.Helper()
	var data bytes.Buffer
	if err := reportjson.New(reportjson.Options{Previous: previous}).Write(&data, report); err != nil {
		t.Fatal(err)
	}
	next, err := reportjson.ReadPrevious(data.Bytes())
	if err != nil {
		t.Fatal(err)
	}
	return next
}

func TestLetters(t *testing.T) {
	canned := reporttest.Canned(t)
	first := after(t, canned, nil)
	one := func(d result.Design) result.Report {
		return result.Report{Sets: canned.Sets, Designs: []result.Design{d}}
	}

	revised := canned.Designs[0]
	revised.Revision = "C"
	revised.Findings = append([]result.Result{{
		Check: "ledger/flashing", Set: "irc-2021", Outcome: result.NotShown, Consequence: result.Durability, At: []string{"/platforms/0"},
		Mark: "A", See: "S1", Needs: "platforms[].ledger.flashing", Message: "flashing of the ledger is not shown", Fingerprint: "dd40ab12cd34",
	}}, revised.Findings[1:5]...)
	revised.Counts = result.Tally(revised.Findings, revised.Readings)
	revised.Disposition = result.Dispose(revised.Findings, revised.Readings)

	torn := canned.Designs[2]
	torn.File = revised.File

	for name, c := range map[string]struct {
		opts   letter.Options
		report result.Report
	}{
		"everything": {letter.Options{}, canned},
		"long":       {letter.Options{Verbose: true}, one(canned.Designs[0])},
		"second":     {letter.Options{Previous: first}, one(revised)},
		"torn":       {letter.Options{Previous: first}, one(torn)},
		"nothing":    {letter.Options{}, result.Report{}},
	} {
		t.Run(name, func(t *testing.T) {
			golden.Equal(t, name+".golden", []byte(write(t, c.opts, c.report)))
		})
	}
}

var itemLine = regexp.MustCompile("(?m)^\\*\\*(\\d+)\\.\\*\\* (.+?)(?: `([^`]+)`)?$")

// TestNumbersAreThoseOfTheJSON reads the numbers of both reports.
func TestNumbersAreThoseOfTheJSON(t *testing.T) {
	canned := reporttest.Canned(t)
	canned.Designs = canned.Designs[:1]
	previous := after(t, canned, nil)
	var got []string
	for _, m := range itemLine.FindAllStringSubmatch(write(t, letter.Options{}, canned), -1) {
		got = append(got, m[1]+" "+m[3])
	}
	var want []string
	for _, item := range previous[0].Items {
		id := item.Found[0].Fingerprint
		want = append(want, fmt.Sprintf("%d %s", item.Number, id[:min(len(id), 8)]))
	}
	slices.Sort(got)
	slices.Sort(want)
	if !slices.Equal(got, want) || len(got) == 0 {
		t.Errorf("the letter has %q, the report %q", got, want)
	}
}

// TestEveryOpenItemCanBeAnswered holds the table of answers against the items.
func TestEveryOpenItemCanBeAnswered(t *testing.T) {
	canned := reporttest.Canned(t)
	canned.Designs = canned.Designs[:1]
	text := write(t, letter.Options{}, canned)
	body, table, ok := strings.Cut(text, "## Response\n")
	if !ok {
		t.Fatal("there is no table")
	}
	body, _, _ = strings.Cut(body, "## Could not run")
	var items, rows []string
	for _, m := range itemLine.FindAllStringSubmatch(body, -1) {
		items = append(items, m[1])
	}
	for _, m := range regexp.MustCompile(`(?m)^\| (\d+) \|`).FindAllStringSubmatch(table, -1) {
		rows = append(rows, m[1])
	}
	if !slices.Equal(items, rows) || len(items) == 0 {
		t.Errorf("items %v, rows %v", items, rows)
	}
}

// TestDesignCannotLayOutThePage puts Markdown and HTML where text of a design
// or a set comes in.
func TestDesignCannotLayOutThePage(t *testing.T) {
	const evil = "x\n# head `c` <b>*b*</b> [l](http://a.invalid) | _u_ \u202e"
	r := result.Result{
		Check: "a/b", Set: evil, Clause: evil, Status: evil, Outcome: result.Outside, Consequence: result.Structure, Message: evil, Why: evil,
		Source: evil, Mark: evil, See: evil, Mend: []string{evil}, Notes: []string{evil}, Have: &result.Value{Text: evil}, Limit: &result.Value{Text: evil},
		Fingerprint: "f0",
	}
	open, failed := r, r
	open.Outcome, open.Needs, open.At = result.NotShown, evil, []string{"/x"}
	failed.Outcome, failed.Reason = result.CouldNotRun, evil
	report := result.Report{
		Sets: []result.Set{{ID: evil, Edition: evil, Title: evil, Publisher: evil, Scope: evil, NotCovered: []string{evil}}},
		Designs: []result.Design{
			{File: evil, Title: evil, Revision: evil, Sheets: evil, ReviewedAgainst: evil, Findings: []result.Result{r, open, failed}},
			{File: evil, Problems: []result.Problem{{Message: evil, Hint: evil}}},
		},
	}
	previous := items.Previous{{File: evil, Items: []items.Earlier{{Number: 9, Mark: evil, See: evil, Message: evil, Found: []items.Found{{Set: "gone"}}}}}}
	spans := regexp.MustCompile("(^|[^\\\\])`[^`]*`")
	for line := range strings.Lines(write(t, letter.Options{Verbose: true, Previous: previous}, report)) {
		if strings.HasPrefix(line, "# head") || strings.ContainsRune(line, '\u202e') {
			t.Errorf("%q", line)
		}
		bare := spans.ReplaceAllString(line, "$1")
		for _, mark := range []string{"<b>", "[l]", "`c`", "*b*", " _u_", "head |", ") |  _"} {
			if i := strings.Index(bare, mark); i > 0 && bare[i-1] != '\\' && !strings.Contains(mark, "|") {
				t.Errorf("%q is not escaped in %q", mark, line)
			}
		}
		if strings.HasPrefix(line, "| ") {
			if n := len(regexp.MustCompile(`(^|[^\\])\|`).FindAllString(line, -1)); n != 3 && n != 4 {
				t.Errorf("%d cells in %q", n-1, line)
			}
		}
	}
}

// TestEveryLetterHasItsCautions covers letters about nothing, too.
func TestEveryLetterHasItsCautions(t *testing.T) {
	canned := reporttest.Canned(t)
	for _, designs := range [][]result.Design{canned.Designs, canned.Designs[4:], canned.Designs[2:3], nil} {
		text := write(t, letter.Options{}, result.Report{Sets: canned.Sets, Designs: designs})
		for _, want := range append(content.Cautions(nil), "irc-2021", "Does not cover: roofs and hot tubs") {
			if !strings.Contains(text, want) {
				t.Errorf("%d designs: no %q", len(designs), want)
			}
		}
	}
}

// TestNobodyIsCalled keeps a design from calling people and threads by its
// title, its marks or what stands in it.
func TestNobodyIsCalled(t *testing.T) {
	canned := reporttest.Canned(t)
	const evil = "# Deck\n@crew https://example.org #12"
	d := &canned.Designs[0]
	d.Title, d.Revision, d.Sheets, d.ReviewedAgainst = evil, evil, evil, evil
	for i := range d.Findings {
		d.Findings[i].Mark, d.Findings[i].See, d.Findings[i].Message = evil, evil, evil
	}
	text := write(t, letter.Options{Verbose: true}, canned)
	if regexp.MustCompile(`@crew|https:|#12|(?m)^# Deck`).MatchString(text) || !strings.Contains(text, `@&#8203;crew https\://example.org #&#8203;12`) {
		t.Errorf("got\n%s", text)
	}
}

// TestWaiversAreNoDesign keeps a file of waivers out of the numbered items.
func TestWaiversAreNoDesign(t *testing.T) {
	canned := reporttest.Canned(t)
	canned.Designs = append(canned.Designs[4:], result.Design{Kind: result.KindWaivers, File: "waivers.yaml", Findings: []result.Result{{
		Check: "waivers/unused", Set: "waivers", Outcome: result.Outside, Consequence: result.Workmanship, Message: "waiver excuses nothing", Fingerprint: "ee50",
	}}})
	text := write(t, letter.Options{}, canned)
	if strings.Contains(text, "Review: waivers") || itemLine.MatchString(text) || !strings.Contains(text, "## Waivers\n\n- `waivers.yaml` line 1: Waiver excuses nothing.\n") {
		t.Errorf("got\n%s", text)
	}
	canned.Designs[1].Disposition = result.CorrectionsNoted
	canned.Designs[1].Findings[0].Have, canned.Designs[1].Findings[0].Limit = &result.Value{Text: "nothing"}, &result.Value{Text: "a finding"}
	if previous := after(t, canned, nil); len(previous) != 1 {
		t.Errorf("the report numbers %v", previous)
	}
}

type full struct{}

var errFull = errors.New("no room")

func (full) Write([]byte) (int, error) { return 0, errFull }

func TestWriterErrorComesOut(t *testing.T) {
	if err := letter.New(letter.Options{}).Write(full{}, reporttest.Canned(t)); !errors.Is(err, errFull) {
		t.Errorf("got %v", err)
	}
}

func BenchmarkWrite(b *testing.B) {
	report := reporttest.Canned(b)
	for range b.N {
		write(b, letter.Options{}, report)
	}
}
