package checker_test

import (
	"context"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"sync"
	"testing"

	"plumbrule/checker"
	"plumbrule/checker/report/content"
	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

const checkFixtures = "../fixtures/checks"

var update = flag.Bool("update", false, "write the expected findings of the fixtures anew")

// checkers are prepared once for each preparation and shared by all tests.
var checkers sync.Map

type preparation struct {
	set      string // "" for the default sets
	remedies bool
}

// checkerFor gives a checker of one set, or of the default sets for "".
func checkerFor(t testing.TB, set string) *checker.Checker {
	t.Helper()
	return prepared(t, preparation{set: set})
}

func prepared(t testing.TB, p preparation) *checker.Checker {
	t.Helper()
	if c, ok := checkers.Load(p); ok {
		return c.(*checker.Checker)
	}
	options := checker.Options{Remedies: p.remedies}
	if p.set != "" {
		options.Sets = []string{p.set}
	}
	c, err := checker.New(options)
	if err != nil {
		t.Fatal(err)
	}
	checkers.Store(p, c)
	return c
}

// limit is an entry of a limits.yaml: a field of a design and values of it
// that lie inside the limit, at it and outside.
type limit struct {
	design, set, field  string
	inside, at, outside []string
	undecided           []string // leave open what the check asks for next
}

// fixture is the folder of one check.
type fixture struct {
	check, dir string
	limits     []limit
}

// set is the set that the fixture's designs are meant for.
func (f *fixture) set() string {
	if len(f.limits) == 0 {
		return ""
	}
	return f.limits[0].set
}

func fixtureFolders(t *testing.T) []fixture {
	t.Helper()
	dirs, err := filepath.Glob(filepath.Join(checkFixtures, "*", "*"))
	if err != nil || len(dirs) == 0 {
		t.Fatal("no fixtures of checks", err)
	}
	var list []fixture
	for _, dir := range dirs {
		f := fixture{check: filepath.ToSlash(strings.TrimPrefix(dir, checkFixtures+"/")), dir: dir}
		f.limits = readLimits(t, dir)
		list = append(list, f)
	}
	return list
}

func readLimits(t *testing.T, dir string) []limit {
	t.Helper()
	name := filepath.Join(dir, "limits.yaml")
	data, err := os.ReadFile(name)
	if os.IsNotExist(err) {
		return nil
	}
	if err != nil {
		t.Fatal(err)
	}
	doc, err := source.Read(name, data)
	if err != nil {
		t.Fatal(err)
	}
	var list []limit
	for _, item := range doc.Root.Items {
		var l limit
		for _, m := range item.Members {
			var texts []string
			for _, v := range m.Value.Items {
				texts = append(texts, v.Text)
			}
			switch m.Key {
			case "design":
				l.design = m.Value.Text
			case "set":
				l.set = m.Value.Text
			case "field":
				l.field = m.Value.Text
			case "inside":
				l.inside = texts
			case "at":
				l.at = texts
			case "outside":
				l.outside = texts
			case "undecided":
				l.undecided = texts
			default:
				t.Fatalf("%s: unknown key %s", name, m.Key)
			}
		}
		if strings.HasSuffix(l.set, ".yaml") {
			l.set = filepath.Join(dir, l.set)
		}
		list = append(list, l)
	}
	return list
}

// outcomes checks a design and gives what became of one check.
func outcomes(t *testing.T, set, check, name string, data []byte) []result.Result {
	t.Helper()
	report := checkerFor(t, set).Check(context.Background(), checker.Input{Name: name, Data: data})
	d := report.Designs[0]
	for _, p := range d.Problems {
		t.Fatalf("%s:%d:%d: %s", name, p.Span.Start.Line, p.Span.Start.Column, p.Message)
	}
	var list []result.Result
	for _, r := range append(d.Findings, d.Readings...) {
		if r.Outcome == result.CouldNotRun {
			t.Errorf("%s: %s could not run: %s", name, r.Check, r.Reason)
		}
		if r.Check == check {
			list = append(list, r)
		}
	}
	return list
}

func has(list []result.Result, outcome result.Outcome) bool {
	return slices.ContainsFunc(list, func(r result.Result) bool { return r.Outcome == outcome })
}

// Each check has a design that it finds within, one that it finds outside and
// one that does not show what it needs. What it says of the latter two stands
// in findings.want beside them.
func TestFixturesOfChecks(t *testing.T) {
	for _, f := range fixtureFolders(t) {
		t.Run(f.check, func(t *testing.T) {
			var said strings.Builder
			for name, outcome := range map[string]result.Outcome{
				"within": result.Within, "outside": result.Outside, "not-shown": result.NotShown,
			} {
				list := outcomesOf(t, &f, name)
				if !has(list, outcome) {
					t.Errorf("%s: the check does not say %q", name, outcome)
				}
				if outcome != result.Outside && has(list, result.Outside) {
					t.Errorf("%s: the check says outside", name)
				}
			}
			for _, name := range []string{"outside", "not-shown"} {
				for _, r := range outcomesOf(t, &f, name) {
					if r.Outcome == result.Outside || r.Outcome == result.NotShown {
						fmt.Fprintf(&said, "%s.deck.yaml:%d:%d: %s: %s [%s]\n", name, r.Span.Start.Line, r.Span.Start.Column, r.Consequence, r.Message, content.Basis(&r))
					}
				}
			}
			compare(t, filepath.Join(f.dir, "findings.want"), said.String())
		})
	}
}

func outcomesOf(t *testing.T, f *fixture, name string) []result.Result {
	t.Helper()
	file := name + ".deck.yaml"
	data, err := os.ReadFile(filepath.Join(f.dir, file))
	if err != nil {
		t.Fatal(err)
	}
	return outcomes(t, f.set(), f.check, file, data)
}

// compare holds a text against a file, and writes the file with -update.
func compare(t *testing.T, file, got string) {
	t.Helper()
	if *update {
		if err := os.WriteFile(file, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	want, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	if got != string(want) {
		t.Errorf("%s\ngot\n%s\nwant\n%s\nto accept: go test ./checker -run '%s' -update", file, got, want, t.Name())
	}
}

func TestEveryCheckHasFixtures(t *testing.T) {
	folders := map[string]bool{}
	for _, f := range fixtureFolders(t) {
		folders[f.check] = true
	}
	ids := checkerFor(t, "").Catalog().IDs()
	for _, id := range ids {
		if !folders[id] {
			t.Errorf("%s has no folder in fixtures/checks", id)
		}
		delete(folders, id)
	}
	for id := range folders {
		t.Errorf("fixtures/checks/%s is no check", id)
	}
}

// At every limit, just inside and just outside it, in inches and millimetres:
// the value goes in as a builder would type it, the outcome must follow.
func TestLimits(t *testing.T) {
	tried := 0
	for _, f := range fixtureFolders(t) {
		for _, l := range f.limits {
			data, err := os.ReadFile(filepath.Join(f.dir, l.design))
			if err != nil {
				t.Fatal(err)
			}
			base := outcomes(t, l.set, f.check, l.design, data)
			for _, value := range append(slices.Clone(l.inside), l.at...) {
				tried++
				if list := with(t, &f, &l, data, value); has(list, result.Outside) && !strict(list) {
					t.Errorf("%s: %s = %s is outside", f.check, l.field, value)
				} else if !has(list, result.Within) && len(base) > 0 && !slices.Contains(l.at, value) {
					t.Errorf("%s: %s = %s gives no reading", f.check, l.field, value)
				}
			}
			for _, value := range l.outside {
				tried++
				if list := with(t, &f, &l, data, value); !has(list, result.Outside) {
					t.Errorf("%s: %s = %s is not outside", f.check, l.field, value)
				}
			}
			for _, value := range l.undecided {
				tried++
				if list := with(t, &f, &l, data, value); has(list, result.Outside) || !has(list, result.NotShown) {
					t.Errorf("%s: %s = %s does not leave it open", f.check, l.field, value)
				}
			}
		}
	}
	t.Logf("%d values tried at, inside and outside limits", tried)
}

// strict reports whether what is outside lies exactly at a limit that is
// itself outside, as a sphere that must not go through.
func strict(list []result.Result) bool {
	return !slices.ContainsFunc(list, func(r result.Result) bool {
		return r.Outcome == result.Outside && (r.Limit == nil || r.Margin == nil || r.Margin.Number != 0 ||
			r.Limit.Relation != result.LessThan && r.Limit.Relation != result.MoreThan)
	})
}

// with checks the design with one field typed differently.
func with(t *testing.T, f *fixture, l *limit, data []byte, value string) []result.Result {
	t.Helper()
	return outcomes(t, l.set, f.check, l.design, retype(t, l.design, data, l.field, value))
}

// retype replaces the text of one scalar of a design.
func retype(t *testing.T, name string, data []byte, field, value string) []byte {
	t.Helper()
	doc, err := source.Read(name, data)
	if err != nil {
		t.Fatal(err)
	}
	n := doc.Find(field)
	if n == nil {
		t.Fatalf("%s has no %s", name, field)
	}
	if n.Kind == source.String {
		value = strconv.Quote(value)
	}
	return slices.Concat(data[:n.Span.Start.Offset], []byte(value), data[n.Span.End.Offset:])
}
