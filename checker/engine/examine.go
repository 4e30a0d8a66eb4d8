package engine

import (
	"cmp"
	"context"
	"errors"
	"fmt"
	"maps"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/cover"
	"github.com/open-policy-agent/opa/v1/tester"

	"plumbrule/checker/ruleset"
)

// Examination is what the tests of the checks that a set brings came to.
type Examination struct {
	Tests []Tested `json:"tests"` // by file and line
	// Unreached are the lines of rules that no test reaches.
	Unreached []Line `json:"unreached"`
	// Lines is the number of lines that hold something to reach.
	Lines int `json:"lines"`
}

// Line is a line of a Rego file, by its name in the set.
type Line struct {
	File string `json:"file"`
	Row  int    `json:"row"`
}

// Tested is one test that ran.
type Tested struct {
	Line
	Name string `json:"name"`
	// Problem says why the test failed; it is empty where it did not.
	Problem string `json:"problem"`
}

// Examine loads the checks that a set brings and runs Rego tests, given by
// file name, in a process that may be stopped. The error says why they did not
// load or run; tests that fail are in the examination.
func Examine(ctx context.Context, set *ruleset.Set, tests map[string]string, runner Runner) (*Examination, error) {
	q := questionFor(set)
	q.Tests = tests
	if q.Tests == nil {
		q.Tests = map[string]string{}
	}
	a := put(ctx, runner, q)
	switch {
	case a.err != nil:
		return nil, fmt.Errorf("running the tests: %w", a.err)
	case len(a.answers) != 1:
		return nil, fmt.Errorf("running the tests: the process answered %d times", len(a.answers))
	case a.answers[0].Problem != "":
		return nil, errors.New(a.answers[0].Problem)
	case a.answers[0].Examination == nil:
		return nil, errors.New("running the tests: the process did not say what they came to")
	}
	return a.answers[0].Examination, nil
}

// examine runs tests under the restrictions under which the checks run.
func (s *server) examine(ctx context.Context, tests map[string]string) answer {
	modules := maps.Clone(s.engine.catalog.Modules())
	for _, file := range slices.Sorted(maps.Keys(tests)) {
		m, err := ast.ParseModuleWithOpts(file, tests[file], ast.ParserOptions{})
		if err != nil {
			return answer{Problem: err.Error()}
		}
		if modules[file] != nil {
			return answer{Problem: file + " is there twice"}
		}
		modules[file] = m
	}
	reached := cover.New()
	results, err := tester.NewRunner().
		SetCompiler(Compiler(s.engine.catalog)).
		SetCoverageQueryTracer(reached).
		RaiseBuiltinErrors(true).
		SetModules(modules).
		RunTests(ctx, nil)
	if err != nil {
		var wrong ast.Errors
		if errors.As(err, &wrong) {
			err = refused(wrong)
		}
		return answer{Problem: err.Error()}
	}
	found := &Examination{Tests: []Tested{}, Unreached: []Line{}}
	for r := range results {
		found.Tests = append(found.Tests, tested(r))
	}
	slices.SortFunc(found.Tests, func(a, b Tested) int {
		return cmp.Or(strings.Compare(a.File, b.File), cmp.Compare(a.Row, b.Row), strings.Compare(a.Name, b.Name))
	})
	s.unreached(reached, found)
	return answer{Examination: found}
}

func tested(r *tester.Result) Tested {
	t := Tested{Name: r.Name, Line: Line{File: r.Location.File, Row: r.Location.Row}}
	switch {
	case r.Error != nil:
		t.Problem = "it could not run: " + r.Error.Error()
	case r.Skip:
		t.Problem = "it is skipped"
	case r.Fail:
		t.Problem = "it fails"
		var cases []string
		for name, sub := range r.SubResults {
			if sub.Fail {
				cases = append(cases, name)
			}
		}
		if slices.Sort(cases); cases != nil {
			t.Problem += " for " + strings.Join(cases, ", ")
		}
	}
	return t
}

func (s *server) unreached(reached *cover.Cover, found *Examination) {
	brought := map[string]*ast.Module{}
	for name := range s.files {
		brought[name] = s.engine.catalog.Modules()[name]
	}
	report := reached.Report(brought)
	for _, file := range slices.Sorted(maps.Keys(brought)) {
		if report.Files[file] == nil {
			continue // it holds no rule
		}
		covered, missed := report.Files[file].Covered, report.Files[file].NotCovered
		found.Lines += len(rows(slices.Concat(covered, missed)))
		for _, row := range rows(missed) {
			found.Unreached = append(found.Unreached, Line{file, row})
		}
	}
}

// rows lists the lines of ranges, each once. A line may be in several, as parts
// of it are counted by themselves.
func rows(ranges []cover.Range) []int {
	lines := map[int]bool{}
	for _, r := range ranges {
		for row := r.Start.Row; row <= r.End.Row; row++ {
			lines[row] = true
		}
	}
	return slices.Sorted(maps.Keys(lines))
}
