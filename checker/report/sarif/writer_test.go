package sarif_test

import (
	"bytes"
	"encoding/json"
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v5"

	"plumbrule/checker/report/content"
	"plumbrule/checker/report/golden"
	"plumbrule/checker/report/reporttest"
	"plumbrule/checker/report/sarif"
	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

func write(t testing.TB, report result.Report) []byte {
	t.Helper()
	var out bytes.Buffer
	if err := sarif.New().Write(&out, report); err != nil {
		t.Fatal(err)
	}
	return out.Bytes()
}

// published compiles the schema that OASIS publishes with the standard: version
// 2.1.0, errata 01, https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/.
func published(t *testing.T) *jsonschema.Schema {
	t.Helper()
	data, err := os.ReadFile(filepath.Join("testdata", "sarif-schema-2.1.0.json"))
	if err != nil {
		t.Fatal(err)
	}
	compiler := jsonschema.NewCompiler()
	compiler.Draft = jsonschema.Draft4
	compiler.AssertFormat = true
	if err := compiler.AddResource("sarif.json", bytes.NewReader(data)); err != nil {
		t.Fatal(err)
	}
	schema, err := compiler.Compile("sarif.json")
	if err != nil {
		t.Fatal(err)
	}
	return schema
}

func decode(t testing.TB, data []byte) any {
	t.Helper()
	var v any
	if err := json.Unmarshal(data, &v); err != nil {
		t.Fatal(err)
	}
	return v
}

func TestLogs(t *testing.T) {
	canned := reporttest.Canned(t)
	schema := published(t)
	for name, report := range map[string]result.Report{
		"everything": canned,
		"unread":     {Sets: canned.Sets[1:], Designs: canned.Designs[2:4]},
		"nothing":    {},
	} {
		t.Run(name, func(t *testing.T) {
			got := write(t, report)
			golden.Equal(t, name+".golden", got)
			if err := schema.Validate(decode(t, got)); err != nil {
				t.Errorf("it does not fit the published schema: %#v", err)
			}
			if strings.Contains(string(got), "null") {
				t.Error("it holds a null")
			}
		})
	}
}

// TestSchemaIsHeeded makes sure that fitting the schema means something.
func TestSchemaIsHeeded(t *testing.T) {
	schema := published(t)
	for _, change := range [][2]string{
		{`"level": "warning"`, `"level": "grave"`},
		{`"columnKind": "unicodeCodePoints"`, `"columnKind": "cells"`},
		{`"startLine": 22`, `"startLine": 0`},
		{`"executionSuccessful": false`, `"successful": false`},
		{`"uri": "jobs/m%C3%B6wenweg.deck.yaml"`, `"uri": "jobs/%zz"`},
	} {
		broken := strings.Replace(string(write(t, reporttest.Canned(t))), change[0], change[1], 1)
		if schema.Validate(decode(t, []byte(broken))) == nil {
			t.Errorf("%s fits", change[1])
		}
	}
}

// log is what a reader of the format sees.
type log struct {
	Runs []struct {
		Tool struct {
			Driver struct {
				Rules []struct {
					ID                   string
					DefaultConfiguration struct{ Level string }
					Help                 struct{ Text, Markdown string }
				}
				Notifications []struct{ ID string }
			}
		}
		AutomationDetails struct{ ID string }
		ColumnKind        string
		Invocations       []struct {
			ExecutionSuccessful        bool
			ToolExecutionNotifications []struct {
				Descriptor struct {
					ID    string
					Index int
				}
				AssociatedRule struct{ ID string }
				Message        struct{ Text string }
				Locations      []location
			}
		}
		Artifacts []struct{ Location struct{ URI string } }
		Results   []res
	}
}

type location struct {
	ID               int
	PhysicalLocation struct {
		ArtifactLocation struct {
			URI   string
			Index int
		}
		Region struct{ StartLine, StartColumn, EndLine, EndColumn int }
	}
	Message struct{ Text string }
}

type res struct {
	RuleID              string
	RuleIndex           int
	Level, Kind         string
	Message             struct{ Text string }
	Locations           []location
	RelatedLocations    []location
	PartialFingerprints map[string]string
	Suppressions        []struct{ Kind, Status, Justification string }
	Properties          struct{ Outcome, Consequence, Set string }
}

func read(t *testing.T, report result.Report) log {
	t.Helper()
	var l log
	if err := json.Unmarshal(write(t, report), &l); err != nil {
		t.Fatal(err)
	}
	return l
}

// TestResults holds each result against the finding that it is of.
func TestResults(t *testing.T) {
	canned := reporttest.Canned(t)
	run := read(t, canned).Runs[0]
	if run.ColumnKind != "unicodeCodePoints" || run.AutomationDetails.ID != "plumbrule/irc-2021+common-practice/" {
		t.Errorf("columns %q, id %q", run.ColumnKind, run.AutomationDetails.ID)
	}
	levels := map[string]string{
		"outside life safety": "error", "outside structure": "error", "outside durability": "warning", "outside workmanship": "note",
		"not shown life safety": "warning", "not shown structure": "warning", "excused life safety": "note",
	}
	next := 0
	for i, d := range canned.Designs {
		for range d.Problems {
			if got := run.Results[next]; got.RuleID != "cannot-read" || got.Level != "error" {
				t.Errorf("%s: %+v", d.File, got)
			}
			next++
		}
		for _, f := range d.Findings {
			if f.Outcome == result.CouldNotRun {
				continue
			}
			got := run.Results[next]
			next++
			at := got.Locations[0].PhysicalLocation
			if got.RuleID != f.Check || run.Tool.Driver.Rules[got.RuleIndex].ID != f.Check || got.Properties.Set != f.Set || got.Kind != "" ||
				at.ArtifactLocation.Index != i || at.Region.StartLine != f.Span.Start.Line || at.Region.StartColumn != f.Span.Start.Column {
				if f.Span.Start.Line > 0 {
					t.Errorf("%s %s: %+v", f.Set, f.Check, got)
				}
			}
			if want := levels[string(f.Outcome)+" "+string(f.Consequence)]; got.Level != want {
				t.Errorf("%s %s: level %q, want %q", f.Outcome, f.Consequence, got.Level, want)
			}
			if !strings.HasPrefix(got.Message.Text, content.Sentence(content.Headline(&f))) {
				t.Errorf("message %q", got.Message.Text)
			}
			if got.PartialFingerprints["plumbruleFinding/v1"] != f.Fingerprint || len(got.RelatedLocations) != len(f.Related) {
				t.Errorf("%s: fingerprints %v, %d related", f.Check, got.PartialFingerprints, len(got.RelatedLocations))
			}
			if excused := f.Outcome == result.Excused; excused != (len(got.Suppressions) == 1) ||
				excused && (got.Suppressions[0].Status != "accepted" || got.Suppressions[0].Justification != f.Reason) {
				t.Errorf("%s: suppressions %+v", f.Check, got.Suppressions)
			}
		}
	}
	if next != len(run.Results) {
		t.Errorf("%d results, want %d", len(run.Results), next)
	}
}

func TestAlertsAreToldApart(t *testing.T) {
	seen := map[string]bool{}
	for _, r := range read(t, reporttest.Canned(t)).Runs[0].Results {
		if r.RuleID == "cannot-read" {
			continue
		}
		key := r.Locations[0].PhysicalLocation.ArtifactLocation.URI + r.RuleID + r.PartialFingerprints["primaryLocationLineHash"]
		if seen[key] {
			t.Errorf("two results are %s", key)
		}
		seen[key] = true
	}
}

func TestFailuresAreNotified(t *testing.T) {
	canned := reporttest.Canned(t)
	run := read(t, canned).Runs[0]
	invocation := run.Invocations[0]
	if len(run.Invocations) != 1 || invocation.ExecutionSuccessful {
		t.Errorf("invocations %+v", run.Invocations)
	}
	var got []string
	for _, n := range invocation.ToolExecutionNotifications {
		if run.Tool.Driver.Notifications[n.Descriptor.Index].ID != n.Descriptor.ID {
			t.Errorf("the descriptor of %+v", n)
		}
		at := n.Locations[0].PhysicalLocation
		got = append(got, strings.TrimSpace(strings.Join([]string{n.Descriptor.ID, n.AssociatedRule.ID, at.ArtifactLocation.URI, n.Message.Text}, " ")))
	}
	want := []string{
		`could-not-run layout/right-angle jobs/m%C3%B6wenweg.deck.yaml Could not run: Right angle. A town's own check asked for more time than it may have.`,
		`cannot-read  jobs/torn.deck.yaml Cannot read: a stair has no "raisers". Hint: risers.`,
		`cannot-read  jobs/torn.deck.yaml Cannot read: a length carries its unit. Hint: 56 in, 56 ft or 56 mm.`,
		`cannot-read  jobs/gone.deck.yaml Cannot read: the file does not exist.`,
	}
	if strings.Join(got, "\n") != strings.Join(want, "\n") {
		t.Errorf("got\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
	canned.Designs = canned.Designs[4:]
	if clean := read(t, canned).Runs[0]; !clean.Invocations[0].ExecutionSuccessful || len(clean.Results) != 0 {
		t.Errorf("of a design without findings: %+v", clean)
	}
}

func TestRules(t *testing.T) {
	rules := read(t, reporttest.Canned(t)).Runs[0].Tool.Driver.Rules
	byID := map[string]int{}
	for i, rule := range rules {
		if _, twice := byID[rule.ID]; twice || i > 1 && rules[i-1].ID > rule.ID {
			t.Errorf("rule %s is out of order", rule.ID)
		}
		byID[rule.ID] = i
		if rule.Help.Text == "" || rule.Help.Markdown == "" || rule.DefaultConfiguration.Level == "" {
			t.Errorf("%s: %+v", rule.ID, rule)
		}
	}
	// This one found nothing; its rule tells a service that it was run.
	if _, ok := byID["stairs/width"]; !ok {
		t.Error("no rule for a check that found nothing")
	}
	help := rules[byID["stairs/riser-height"]].Help.Markdown
	for _, want := range []string{"People fall", "- more risers: each becomes lower", "`plumbrule explain stairs/riser-height`", "building department"} {
		if !strings.Contains(help, want) {
			t.Errorf("no %q in %q", want, help)
		}
	}
}

func TestFileNames(t *testing.T) {
	for _, c := range [][2]string{
		{"jobs/a b#1.deck.yaml", "jobs/a%20b%231.deck.yaml"},
		{"ä:b.deck.yaml", "./%C3%A4:b.deck.yaml"},
		{"/home/somebody/a.deck.yaml", "a.deck.yaml"},
		{`C:\jobs\a.deck.yaml`, "a.deck.yaml"},
		{`jobs\100%.deck.yaml`, "jobs/100%25.deck.yaml"},
		{"../a.deck.yaml", "../a.deck.yaml"},
		{"-", "-"},
	} {
		l := read(t, result.Report{Designs: []result.Design{{File: c[0], Problems: []result.Problem{{Message: "torn"}}}}})
		if got := l.Runs[0].Artifacts[0].Location.URI; got != c[1] {
			t.Errorf("%q becomes %q, want %q", c[0], got, c[1])
		}
		if got := l.Runs[0].Results[0].Locations[0].PhysicalLocation; got.ArtifactLocation.URI != c[1] || got.Region.StartLine != 1 {
			t.Errorf("%q is placed at %+v", c[0], got)
		}
	}
}

func TestMessagesAreEscaped(t *testing.T) {
	r := result.Result{Check: "a/b", Outcome: result.NotShown, Needs: "guards[].height", Message: "{0}\n[x](http://a.invalid)", Span: source.Span{}}
	plain := r
	plain.Message = "plain"
	results := read(t, result.Report{Designs: []result.Design{{File: "x", Findings: []result.Result{r, plain}}}}).Runs[0].Results
	if want := `Not shown: {{0}} \[x\](http://a.invalid). To be shown: guards\[\].height. Rule set .`; results[0].Message.Text != want {
		t.Errorf("got %q, want %q", results[0].Message.Text, want)
	}
	if want := `Not shown: plain. To be shown: guards[].height. Rule set .`; results[1].Message.Text != want {
		t.Errorf("got %q, want %q", results[1].Message.Text, want)
	}
}

func TestSameBytesEveryTime(t *testing.T) {
	want := write(t, reporttest.Canned(t))
	for range 20 {
		if !bytes.Equal(write(t, reporttest.Canned(t)), want) {
			t.Fatal("two logs of the same run differ")
		}
	}
}

type full struct{}

var errFull = errors.New("no room")

func (full) Write([]byte) (int, error) { return 0, errFull }

func TestWriterErrorComesOut(t *testing.T) {
	if err := sarif.New().Write(full{}, reporttest.Canned(t)); !errors.Is(err, errFull) {
		t.Errorf("got %v", err)
	}
}

func BenchmarkWrite(b *testing.B) {
	report := reporttest.Canned(b)
	for range b.N {
		write(b, report)
	}
}
