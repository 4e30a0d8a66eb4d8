package rules_test

import (
	"bytes"
	"io/fs"
	"maps"
	"path"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/cover"
	"github.com/open-policy-agent/opa/v1/format"
	"github.com/open-policy-agent/opa/v1/tester"

	"plumbrule/checker/catalog"
	"plumbrule/checker/engine"
	"plumbrule/checker/ruleset"
	"plumbrule/rules"
)

func load(t testing.TB) *catalog.Catalog {
	t.Helper()
	checks, err := catalog.Load(rules.Checks())
	if err != nil {
		t.Fatal(err)
	}
	return checks
}

// eachRego visits every Rego file, tests included.
func eachRego(t *testing.T, visit func(file string, text []byte)) {
	t.Helper()
	err := fs.WalkDir(rules.Checks(), ".", func(file string, _ fs.DirEntry, err error) error {
		if err != nil || path.Ext(file) != ".rego" {
			return err
		}
		text, err := fs.ReadFile(rules.Checks(), file)
		if err == nil {
			visit(file, text)
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
}

// TestRegoTests runs the tests that stand beside checks and library under the
// schemas and restrictions of the program, and asks that they reach every line
// of every rule.
func TestRegoTests(t *testing.T) {
	checks := load(t)
	modules := maps.Clone(checks.Modules())
	eachRego(t, func(file string, text []byte) {
		if strings.HasSuffix(file, "_test.rego") {
			m, err := ast.ParseModuleWithOpts(file, string(text), ast.ParserOptions{})
			if err != nil {
				t.Fatal(err)
			}
			modules[file] = m
		}
	})
	reached := cover.New()
	results, err := tester.NewRunner().
		SetCompiler(engine.Compiler(checks)).
		SetCoverageQueryTracer(reached).
		RaiseBuiltinErrors(true).
		SetModules(modules).
		RunTests(t.Context(), nil)
	if err != nil {
		t.Fatal(err)
	}
	ran := 0
	for r := range results {
		ran++
		if r.Fail || r.Error != nil || r.Skip {
			t.Errorf("%s:%d: %s.%s: failed %t, skipped %t, error %v%s", r.Location.File, r.Location.Row, r.Package, r.Name, r.Fail, r.Skip, r.Error, failedCases(r.SubResults))
		}
	}
	if ran == 0 {
		t.Error("no test ran")
	}
	report := reached.Report(checks.Modules())
	for _, file := range slices.Sorted(maps.Keys(report.Files)) {
		last := 0
		for _, missed := range report.Files[file].NotCovered {
			if missed.Start.Row != last {
				t.Errorf("%s:%d: no test reaches this line", file, missed.Start.Row)
			}
			last = missed.Start.Row
		}
	}
}

func failedCases(cases tester.SubResultMap) string {
	var failed []string
	for _, name := range slices.Sorted(maps.Keys(cases)) {
		if cases[name].Fail {
			failed = append(failed, name)
		}
	}
	if failed == nil {
		return ""
	}
	return ", cases " + strings.Join(failed, ", ")
}

func TestRegoIsFormatted(t *testing.T) {
	eachRego(t, func(file string, text []byte) {
		formatted, err := format.Source(file, text)
		if err != nil {
			t.Errorf("%s: %v", file, err)
			return
		}
		if !bytes.Equal(formatted, text) {
			t.Errorf("%s is not formatted; run opa fmt -w %s", file, file)
		}
	})
}

// TestEveryCheckStandsInItsPlace keeps file, test and folder to the id, and
// the file to a size that is read in one go.
func TestEveryCheckStandsInItsPlace(t *testing.T) {
	for _, check := range load(t).Checks() {
		topic, name := check.Path()
		folder := path.Join("checks", topic, name)
		if want := path.Join(folder, name+".rego"); check.File != want {
			t.Errorf("check %s stands in %s, want %s", check.ID, check.File, want)
		}
		if _, err := fs.Stat(rules.Checks(), path.Join(folder, name+"_test.rego")); err != nil {
			t.Errorf("check %s has no test beside it: %v", check.ID, err)
		}
	}
}

// TestChecksHoldNoFigure refuses numbers in checks and library that could be a
// limit of some code: figures belong to sets. The library may turn one unit of
// facts into another, which takes a power of ten.
func TestChecksHoldNoFigure(t *testing.T) {
	for file, m := range load(t).Modules() {
		ast.WalkTerms(m, func(term *ast.Term) bool {
			n, ok := term.Value.(ast.Number)
			if ok && !slices.Contains([]string{"0", "1", "2"}, string(n)) && !(strings.HasPrefix(file, "lib/") && powerOfTen.MatchString(string(n))) {
				t.Errorf("%s:%d:%d: the number %s looks like a figure", file, term.Location.Row, term.Location.Col, n)
			}
			return false
		})
	}
}

// TestIDsThatOthersRelyOn lists ids that are named in waivers and other
// programs. An id leaves this list only by becoming an alias.
func TestIDsThatOthersRelyOn(t *testing.T) {
	checks := load(t)
	for _, id := range strings.Fields(`
		stairs/riser-height stairs/riser-variation stairs/open-riser stairs/tread-depth stairs/tread-variation stairs/nosing
		stairs/width stairs/headroom stairs/flight-rise stairs/landing stairs/lighting stairs/pitch stairs/stringer-span
		stairs/stringer-spacing stairs/throat
		handrail/required handrail/height handrail/grip handrail/clearance handrail/continuity
		guards/required guards/height guards/opening guards/stair-height guards/stair-opening guards/triangle-opening
		guards/post-fixing guards/load
		joists/span joists/cantilever joists/lateral-restraint
		decking/joist-spacing decking/last-row decking/gap
		egress/door-landing egress/door-step egress/window-clear-height
		layout/right-angle layout/rectangle layout/closure layout/even-joists`) {
		if checks.Find(id) == nil {
			t.Errorf("there is no check %s", id)
		}
	}
}

var powerOfTen = regexp.MustCompile(`^1(000)+$`)

var verdict = regexp.MustCompile(`\b(safe|compliant|passes|approved)\b`)

// TestNoVerdicts keeps the words for people to warnings.
func TestNoVerdicts(t *testing.T) {
	for _, check := range load(t).Checks() {
		lines := []string{check.Title, check.Description, check.Why, check.AppliesWhen}
		lines = append(lines, check.Mend...)
		for _, templates := range []map[string]catalog.Template{check.Messages, check.Exempt} {
			for _, line := range templates {
				lines = append(lines, line.String())
			}
		}
		for _, line := range lines {
			if word := verdict.FindString(line); word != "" {
				t.Errorf("%s says %q in %q", check.ID, word, line)
			}
		}
	}
}

// TestSetsLoad loads every set that comes with the program and prepares all of
// them together.
func TestSetsLoad(t *testing.T) {
	if _, err := engine.New(engine.Options{Checks: load(t), Sets: sets(t)}); err != nil {
		t.Error(err)
	}
}

func sets(t testing.TB) []*ruleset.Set {
	t.Helper()
	library := ruleset.NewLibrary(rules.Sets(), load(t))
	ids, err := library.IDs()
	if err != nil {
		t.Fatal(err)
	}
	if len(ids) == 0 {
		t.Fatal("there are no sets")
	}
	var all []*ruleset.Set
	for _, id := range ids {
		set, err := library.ByName(id)
		if err != nil {
			t.Fatal(err)
		}
		all = append(all, set)
	}
	return all
}

// TestEveryCheckHasASet finds checks that nothing gives figures to, other than
// those known to wait for a set.
func TestEveryCheckHasASet(t *testing.T) {
	waiting := map[string]bool{}
	for _, set := range sets(t) {
		for i := range set.Checks {
			id := set.Checks[i].ID
			if waiting[id] {
				t.Errorf("%s is said to wait for a set, and %s gives its figures", id, set.ID)
			}
			waiting[id] = false
		}
	}
	for _, id := range load(t).IDs() {
		if _, known := waiting[id]; !known {
			t.Errorf("no set gives figures for %s", id)
		}
	}
}
