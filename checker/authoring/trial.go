package authoring

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"path"
	"slices"
	"strings"

	"plumbrule/checker"
	"plumbrule/checker/catalog"
	"plumbrule/checker/engine"
	"plumbrule/checker/result"
	"plumbrule/checker/ruleset"
	"plumbrule/checker/sandbox"
)

// Trial is what the tests of a set came to.
type Trial struct {
	Set *ruleset.Set
	// Own are the ids of the checks that the set brings, in order.
	Own []string
	// Tests and Fixtures are how many ran, Lines how many lines of Rego there
	// are to reach and Unreached how many no test reached.
	Tests, Fixtures, Lines, Unreached int
	// Problems say what is wrong, each with its file.
	Problems []string
}

// Summary counts the figures of the set.
func (t *Trial) Summary() result.FigureCounts { return t.Set.Summary().Figures }

// Try loads a set, runs the Rego tests of the checks that it brings and holds
// its fixtures against what they are named for. The error says why the set does
// not load; what its tests find is in the trial.
func Try(ctx context.Context, name string, box *sandbox.Sandbox) (*Trial, error) {
	library, err := checker.Library()
	if err != nil {
		return nil, err
	}
	set, err := library.ByName(name)
	if err != nil {
		return nil, err
	}
	files, file, err := library.Files(name)
	if err != nil {
		return nil, err
	}
	if files, err = fs.Sub(files, path.Dir(file)); err != nil {
		return nil, err
	}
	t := &Trial{Set: set}
	for _, check := range set.Catalog().Checks() {
		if check.Foreign {
			t.Own = append(t.Own, check.ID)
		}
	}
	if len(set.Catalog().Foreign()) > 0 {
		if ran, err := t.runTests(ctx, files, box); err != nil || !ran {
			return t, err
		}
	}
	return t, t.runFixtures(ctx, name, files, box)
}

func (t *Trial) wrong(format string, args ...any) {
	t.Problems = append(t.Problems, fmt.Sprintf(format, args...))
}

// runTests runs the Rego tests. What does not load or compile is a problem of
// the set like a test that fails; then nothing else of it runs either.
func (t *Trial) runTests(ctx context.Context, files fs.FS, box *sandbox.Sandbox) (ran bool, err error) {
	tests, err := testsOf(files)
	if err != nil {
		return false, err
	}
	found, err := engine.Examine(ctx, t.Set, tests, box)
	if err != nil {
		t.wrong("%v", err)
		return false, nil
	}
	t.Tests, t.Lines, t.Unreached = len(found.Tests), found.Lines, len(found.Unreached)
	for _, test := range found.Tests {
		if test.Problem != "" {
			t.wrong("%s:%d: %s: %s", test.File, test.Row, test.Name, test.Problem)
		}
	}
	if len(tests) == 0 {
		t.wrong("%s: there are no tests beside the checks that the set brings", t.Set.File)
		found.Unreached = nil
	}
	for _, line := range found.Unreached {
		t.wrong("%s:%d: no test reaches this line", line.File, line.Row)
	}
	for _, id := range t.Own {
		if t.Set.Check(id) == nil {
			t.wrong("%s: the set gives no figures for the check %s that it brings", t.Set.File, id)
		}
	}
	return true, nil
}

// testsOf reads the tests beside the checks and the library of a set.
func testsOf(files fs.FS) (map[string]string, error) {
	tests := map[string]string{}
	for _, root := range []string{"checks", "lib"} {
		err := fs.WalkDir(files, root, func(file string, entry fs.DirEntry, err error) error {
			if err != nil || entry.IsDir() || !strings.HasSuffix(file, "_test.rego") {
				return err
			}
			text, err := fs.ReadFile(files, file)
			tests[file] = string(text)
			return err
		})
		if err != nil && !errors.Is(err, fs.ErrNotExist) {
			return nil, fmt.Errorf("reading the tests: %w", err)
		}
	}
	return tests, nil
}

// runFixtures checks every design in fixtures/<topic>/<check>/ under the set.
func (t *Trial) runFixtures(ctx context.Context, name string, files fs.FS, box *sandbox.Sandbox) error {
	names, err := fs.Glob(files, "fixtures/*/*/*.deck.*")
	if err != nil || len(names) == 0 {
		return err
	}
	c, err := checker.New(checker.Options{Sets: []string{name}, Sandbox: box})
	if err != nil {
		return err
	}
	for _, file := range names {
		data, err := fs.ReadFile(files, file)
		if err != nil {
			return err
		}
		t.Fixtures++
		t.hold(file, c.Check(ctx, checker.Input{Name: file, Data: data}).Designs[0])
	}
	return nil
}

// hold holds what a check says of a fixture against the name of the file: its
// first word up to a dot, or up to a dash and a number or a remark.
func (t *Trial) hold(file string, d result.Design) {
	for _, p := range d.Problems {
		t.wrong("%s:%d:%d: %s", file, p.Span.Start.Line, p.Span.Start.Column, p.Message)
	}
	if len(d.Problems) > 0 {
		return
	}
	id := strings.TrimPrefix(path.Dir(file), "fixtures/")
	declared := t.Set.Catalog().Find(id)
	if declared == nil || t.Set.Check(declared.ID) == nil {
		t.wrong("%s: the set has no check %s%s", file, id, nearest(id, t.Set))
		return
	}
	want := wanted(path.Base(file))
	if want == "" {
		t.wrong("%s: the name of a fixture begins with within, outside, not-shown or does-not-apply", file)
		return
	}
	var said []result.Outcome
	for _, r := range slices.Concat(d.Findings, d.Readings) {
		if r.Check != declared.ID {
			continue
		}
		if r.Outcome == result.CouldNotRun {
			t.wrong("%s: %s could not run: %s", file, r.Check, r.Reason)
			return
		}
		if !slices.Contains(said, r.Outcome) {
			said = append(said, r.Outcome)
		}
	}
	if !slices.Contains(said, want) || slices.ContainsFunc(said, func(o result.Outcome) bool { return o != want && !allowed(want, o) }) {
		t.wrong("%s: %s says %s, the name says %s", file, declared.ID, words(said), want)
	}
}

// wanted gives the outcome that the name of a fixture begins with.
func wanted(name string) result.Outcome {
	for prefix, outcome := range map[string]result.Outcome{
		"within": result.Within, "outside": result.Outside, "not-shown": result.NotShown, "does-not-apply": result.DoesNotApply,
	} {
		if rest, ok := strings.CutPrefix(name, prefix); ok && (rest[0] == '.' || rest[0] == '-') {
			return outcome
		}
	}
	return ""
}

// allowed reports whether a fixture may show an outcome beside the one that it
// is named for: what is outside or not shown seldom comes alone.
func allowed(want, other result.Outcome) bool {
	switch want {
	case result.Outside, result.NotShown:
		return other == result.Within || other == result.DoesNotApply
	case result.Within:
		return other == result.DoesNotApply
	}
	return false
}

func words(said []result.Outcome) string {
	if len(said) == 0 {
		return "nothing"
	}
	var list []string
	for _, o := range said {
		list = append(list, string(o))
	}
	return strings.Join(list, " and ")
}

func nearest(id string, set *ruleset.Set) string {
	var ids []string
	for i := range set.Checks {
		ids = append(ids, set.Checks[i].ID)
	}
	if near := catalog.Nearest(id, ids); near != "" {
		return "; did you mean " + near + "?"
	}
	return ""
}
