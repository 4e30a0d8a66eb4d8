package text_test

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
	"plumbrule/checker/report/reporttest"
	"plumbrule/checker/report/text"
	"plumbrule/checker/result"
)

func write(t testing.TB, opts text.Options, report result.Report) string {
	t.Helper()
	var out bytes.Buffer
	if err := text.New(opts).Write(&out, report); err != nil {
		t.Fatal(err)
	}
	return out.String()
}

// layouts are the options whose output is kept under testdata.
func layouts() map[string]text.Options {
	return map[string]text.Options{
		"0":         {},
		"40":        {Width: 40},
		"80":        {Width: 80},
		"120":       {Width: 120},
		"80colour":  {Width: 80, Colour: true},
		"100long":   {Width: 100, Verbose: true},
		"0compact":  {Compact: true},
		"40compact": {Width: 40, Compact: true, Colour: true},
	}
}

func TestLayouts(t *testing.T) {
	for name, opts := range layouts() {
		t.Run(name, func(t *testing.T) {
			golden.Equal(t, name+".golden", []byte(write(t, opts, reporttest.Canned(t))))
		})
	}
}

func TestSameBytesEveryTime(t *testing.T) {
	first := write(t, text.Options{Width: 80}, reporttest.Canned(t))
	for range 20 {
		if write(t, text.Options{Width: 80}, reporttest.Canned(t)) != first {
			t.Fatal("two reports of the same run differ")
		}
	}
}

var codes = regexp.MustCompile(`\x1b\[[0-9;]*m`)

// TestColourAddsNothing makes sure that nobody who sees no colour misses
// anything.
func TestColourAddsNothing(t *testing.T) {
	report := reporttest.Canned(t)
	for name, opts := range layouts() {
		opts.Colour = false
		plain := write(t, opts, report)
		if codes.MatchString(plain) {
			t.Errorf("%s: colour without being asked for", name)
		}
		opts.Colour = true
		coloured := write(t, opts, report)
		if coloured == plain {
			t.Errorf("%s: no colour", name)
		}
		if codes.ReplaceAllString(coloured, "") != plain {
			t.Errorf("%s: colour changes the text", name)
		}
	}
}

// TestFirstLines reads every report back by the published expression.
func TestFirstLines(t *testing.T) {
	report := reporttest.Canned(t)
	pattern := regexp.MustCompile(text.FirstLine)
	for name, opts := range layouts() {
		var got []string
		for line := range strings.Lines(write(t, opts, report)) {
			m := pattern.FindStringSubmatch(strings.TrimSuffix(line, "\n"))
			if m == nil {
				continue
			}
			got = append(got, fmt.Sprintf("%s:%s:%s %s [%s %s %s]", m[1], m[2], m[3], m[4], m[6], m[7], m[8]))
			if codes.MatchString(m[5]) {
				t.Errorf("%s: the message %q holds colour codes", name, m[5])
			}
		}
		if want := firstLines(report); !sameMembers(got, want) {
			t.Errorf("%s: first lines are\n%s\nwant in any order\n%s", name, strings.Join(got, "\n"), strings.Join(want, "\n"))
		}
	}
}

func firstLines(report result.Report) []string {
	var lines []string
	for _, d := range report.Designs {
		for _, p := range d.Problems {
			lines = append(lines, fmt.Sprintf("%s:%d:%d cannot read [  ]", d.File, max(p.Span.Start.Line, 1), max(p.Span.Start.Column, 1)))
		}
		for _, r := range d.Findings {
			lines = append(lines, fmt.Sprintf("%s:%d:%d %s [%s %s %s]", d.File, max(r.Span.Start.Line, 1), max(r.Span.Start.Column, 1),
				r.Consequence, r.Set, r.Check, r.Clause))
		}
	}
	return lines
}

func sameMembers(a, b []string) bool {
	count := map[string]int{}
	for _, s := range a {
		count[s]++
	}
	for _, s := range b {
		count[s]--
	}
	for _, n := range count {
		if n != 0 {
			return false
		}
	}
	return len(a) > 0
}

// TestFirstLineOfOddNames tries names and messages that look like other parts of
// the line.
func TestFirstLineOfOddNames(t *testing.T) {
	pattern := regexp.MustCompile(text.FirstLine)
	for _, test := range []struct{ file, message, clause string }{
		{"-", "a", ""},
		{`C:\jobs\a b.deck.yaml`, "a: b: c", "Table R507.5(1)"},
		{"a [b c].yaml", `has no "x [y z]"`, ""},
		{"ä:b.yaml", "ends [one two]", "1 [sic"},
	} {
		for _, colour := range []bool{false, true} {
			r := result.Result{Check: "x/y", Set: "set", Clause: test.clause, Outcome: result.Outside, Consequence: result.Durability, Message: test.message}
			out := write(t, text.Options{Compact: true, Colour: colour}, result.Report{Designs: []result.Design{{File: test.file, Findings: []result.Result{r}}}})
			line, _, _ := strings.Cut(out, "\n")
			m := pattern.FindStringSubmatch(line)
			want := []string{test.file, "1", "1", "durability", test.message, "set", "x/y", test.clause}
			if m == nil || !slices.Equal(m[1:], want) {
				t.Errorf("%q: %q, want %q", line, m, want)
			}
		}
	}
}

func TestOutcomeStandsInEveryFirstLine(t *testing.T) {
	out := write(t, text.Options{Compact: true}, reporttest.Canned(t))
	for _, want := range []string{
		`life safety: excused: guard height is 34"`,
		`life safety: guard 欄干G1: fixing of the posts is not shown [`,
		`structure: not shown: soil bearing [`,
		`workmanship: could not run: Right angle [`,
	} {
		if !strings.Contains(out, want) {
			t.Errorf("no line has %q", want)
		}
	}
}

// TestWidth lets only first lines, and words that are longer than a line by
// themselves, run over the width.
func TestWidth(t *testing.T) {
	pattern := regexp.MustCompile(text.FirstLine)
	cells := text.CellsOf()
	for _, width := range []int{40, 57, 80, 120, 200} {
		for _, verbose := range []bool{false, true} {
			out := write(t, text.Options{Width: width, Verbose: verbose}, reporttest.Canned(t))
			for line := range strings.Lines(out) {
				line = strings.TrimSuffix(line, "\n")
				if pattern.MatchString(line) {
					continue
				}
				one := !strings.Contains(strings.TrimSpace(line), " ")
				if got := cells.StringWidth(line); got > width && !one {
					t.Errorf("width %d: %d cells in %q", width, got, line)
				}
				if strings.TrimRight(line, " ") != line {
					t.Errorf("width %d: blanks at the end of %q", width, line)
				}
			}
		}
	}
}

func TestNarrowWidthsCountAsForty(t *testing.T) {
	report := reporttest.Canned(t)
	want := write(t, text.Options{Width: 40}, report)
	for _, width := range []int{1, 39} {
		if write(t, text.Options{Width: width}, report) != want {
			t.Errorf("width %d differs from 40", width)
		}
	}
	if write(t, text.Options{Width: -1}, report) != write(t, text.Options{}, report) {
		t.Error("a negative width differs from none")
	}
}

// TestEveryReportHasItsCautions covers runs in which nothing was found, or not
// everything read, too.
func TestEveryReportHasItsCautions(t *testing.T) {
	canned := reporttest.Canned(t)
	reports := map[string]result.Report{
		"everything": canned,
		"one clean":  {Sets: canned.Sets, Designs: canned.Designs[4:]},
		"one unread": {Sets: canned.Sets, Designs: canned.Designs[2:5]},
		"no designs": {Sets: canned.Sets},
	}
	for name, report := range reports {
		full := write(t, text.Options{}, report)
		for _, want := range append(content.Cautions(nil), "irc-2021: Model residential code, deck parts, edition 2021", "does not cover: roofs") {
			if !strings.Contains(full, want) {
				t.Errorf("%s: no %q", name, want)
			}
		}
		compact := write(t, text.Options{Compact: true}, report)
		for _, want := range []string{content.Caution(nil), "irc-2021 (edition 2021), common-practice (edition 1)"} {
			if !strings.Contains(compact, want) {
				t.Errorf("%s, compact: no %q", name, want)
			}
		}
	}
	if out := write(t, text.Options{}, result.Report{}); !strings.Contains(out, "  none\n") {
		t.Errorf("a run without sets does not say so:\n%s", out)
	}
}

// TestControlCharacters keeps a design from steering the terminal.
func TestControlCharacters(t *testing.T) {
	const evil = "a\x1b[2Jb\rc\u202ed\u2028e\nZZ"
	r := result.Result{
		Check: "topic/name", Set: "s", Clause: evil, Outcome: result.Outside, Consequence: result.Structure, Message: evil,
		Mark: evil, See: evil, Mend: []string{evil}, Notes: []string{evil}, Have: &result.Value{Text: evil},
		Related: []result.Place{{Pointer: "/" + evil, Text: evil}},
	}
	shown := r
	shown.Outcome, shown.Needs, shown.At = result.NotShown, evil, []string{"/x"}
	report := result.Report{
		Sets: []result.Set{{ID: evil, Title: evil, NotCovered: []string{evil}}},
		Designs: []result.Design{
			{File: evil, Title: evil, Findings: []result.Result{r, shown}},
			{File: evil, Problems: []result.Problem{{Message: evil, Hint: evil}}},
		},
	}
	for name, opts := range layouts() {
		opts.Colour = false
		for line := range strings.Lines(write(t, opts, report)) {
			if strings.ContainsAny(strings.TrimSuffix(line, "\n"), "\x1b\r\u202e\u2028") || strings.HasPrefix(line, "ZZ") {
				t.Errorf("%s: %q", name, line)
			}
		}
	}
}

type full struct{}

var errFull = errors.New("no room")

func (full) Write([]byte) (int, error) { return 0, errFull }

func TestWriterErrorComesOut(t *testing.T) {
	if err := text.New(text.Options{}).Write(full{}, reporttest.Canned(t)); !errors.Is(err, errFull) {
		t.Errorf("got %v", err)
	}
}

func BenchmarkWrite(b *testing.B) {
	report := reporttest.Canned(b)
	for range b.N {
		write(b, text.Options{Width: 80}, report)
	}
}

// BenchmarkWriteMany writes what a large deck with many faults gives.
func BenchmarkWriteMany(b *testing.B) {
	report := reporttest.Canned(b)
	d := &report.Designs[0]
	findings, readings := d.Findings, d.Readings
	for i := range 19 {
		for _, r := range findings {
			r.Needs += fmt.Sprint(i) // or all would be one group
			r.Check += fmt.Sprint(i)
			d.Findings = append(d.Findings, r)
		}
		d.Readings = append(d.Readings, readings...)
	}
	for range b.N {
		write(b, text.Options{Width: 80}, report)
	}
}

// TestNothingChecked lets the reasons be the last that is seen where no file
// could be read, and keeps every caution where one could.
func TestNothingChecked(t *testing.T) {
	report := reporttest.Canned(t)
	report.Designs = slices.DeleteFunc(report.Designs, func(d result.Design) bool { return len(d.Problems) == 0 })
	if len(report.Designs) < 2 {
		t.Fatal("the report has too few designs that cannot be read")
	}
	for _, designs := range [][]result.Design{report.Designs, report.Designs[:1]} {
		for _, opts := range []text.Options{{}, {Compact: true}} {
			one := report
			one.Designs = designs
			out := write(t, opts, one)
			if !strings.HasSuffix(out, "\n"+content.NothingChecked()+"\n") || strings.Count(out, content.NothingChecked()) != 1 {
				t.Errorf("%+v: the report does not end by deferring:\n%s", opts, out)
			}
			for _, caution := range append(content.Cautions(report.Sets), "RULE SETS", "rule sets in use") {
				if strings.Contains(out, caution) {
					t.Errorf("%+v: %q drowns the reasons", opts, caution)
				}
			}
			if !strings.Contains(out, "cannot read: ") {
				t.Errorf("%+v: no reason is given", opts)
			}
		}
	}
	all := write(t, text.Options{}, reporttest.Canned(t))
	for _, caution := range content.Cautions(reporttest.Canned(t).Sets) {
		if !strings.Contains(all, caution) {
			t.Errorf("the report of a run with checked designs lacks %q", caution)
		}
	}
}
