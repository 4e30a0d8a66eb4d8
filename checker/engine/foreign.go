package engine

import (
	"cmp"
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"slices"
	"strings"
	"sync"

	"plumbrule/checker/catalog"
	"plumbrule/checker/facts"
	"plumbrule/checker/result"
	"plumbrule/checker/ruleset"
)

// Runner puts a question to a process of its own in which Serve answers it,
// and gives the lines of the answer.
type Runner interface {
	Run(ctx context.Context, question []byte) (lines [][]byte, err error)
}

// foreign are the checks that one set brings, with the figures of that set.
// Nothing of them runs in this process.
type foreign struct {
	set      *ruleset.Set
	runs     []run
	question question
	runner   Runner
}

// longest is how much of what a stranger's check says of its failure is printed.
const longest = 400

func newForeign(set *ruleset.Set, runs []run, runner Runner) (foreign, error) {
	figures, err := json.Marshal(set.Data())
	if err != nil {
		return foreign{}, err
	}
	f := foreign{set: set, runs: runs, runner: runner, question: questionFor(set)}
	f.question.Figures = figures
	for _, r := range runs {
		if r.given.Off == nil {
			f.question.Checks = append(f.question.Checks, r.check.ID)
		}
	}
	return f, nil
}

// questionFor gives the part of a question that is the same for all designs.
func questionFor(set *ruleset.Set) question {
	q := question{Files: map[string]string{}, Checks: []string{}, Own: []string{}}
	for _, m := range set.Catalog().Foreign() {
		q.Files[m.Name] = m.Text
	}
	for _, check := range set.Catalog().Checks() {
		if check.Foreign {
			q.Own = readsOf(set.Catalog(), check, q.Own)
		}
	}
	slices.Sort(q.Own)
	return q
}

// readsOf adds the program's own checks whose figures a check reads, and those
// that these read, as none can be loaded without them.
func readsOf(checks *catalog.Catalog, check *catalog.Check, have []string) []string {
	for _, id := range check.Reads {
		if other := checks.Find(id); other != nil && !other.Foreign && !slices.Contains(have, other.ID) {
			have = readsOf(checks, other, append(have, other.ID))
		}
	}
	return have
}

// askForeign starts what sets bring, each set beside the others, and gives a
// function that waits for the results.
func (e *Engine) askForeign(ctx context.Context, of *facts.Facts, sets []string) func(design) []result.Result {
	answers := make([]answered, len(e.foreign))
	var waiting sync.WaitGroup
	for i := range e.foreign {
		if e.foreign[i].wanted(sets) {
			waiting.Go(func() { answers[i] = e.foreign[i].ask(ctx, of) })
		}
	}
	return func(d design) []result.Result {
		waiting.Wait()
		var all []result.Result
		for i := range e.foreign {
			if e.foreign[i].wanted(sets) {
				all = append(all, e.foreign[i].results(answers[i], d)...)
			}
		}
		return all
	}
}

func (f *foreign) wanted(sets []string) bool {
	return len(sets) == 0 || slices.Contains(sets, f.set.ID)
}

// answered is what became of the question for one design.
type answered struct {
	answers []answer
	err     error // why there are no more
}

// ask runs the checks on the facts of a design.
func (f *foreign) ask(ctx context.Context, of *facts.Facts) answered {
	if f.runner == nil {
		return answered{err: errors.New("the set brings it, and there is no process to run it in")}
	}
	if len(f.question.Checks) == 0 {
		return answered{}
	}
	q := f.question
	var err error
	if q.Facts, err = json.Marshal(of); err != nil {
		return answered{err: fmt.Errorf("writing the facts: %w", err)}
	}
	return put(ctx, f.runner, q)
}

// put puts a question to a process.
func put(ctx context.Context, runner Runner, q question) answered {
	text, err := json.Marshal(q)
	if err != nil {
		return answered{err: fmt.Errorf("writing the question: %w", err)}
	}
	lines, stopped := runner.Run(ctx, text)
	answers, done, err := readAnswers(lines)
	if err == nil && !done && stopped == nil {
		err = errors.New("its process ended in the middle of the answer")
	}
	return answered{answers, cmp.Or(stopped, err)}
}

// results turns the answer into results. A check that was not answered for, or
// whose answer cannot be read, could not run; the others are not touched.
func (f *foreign) results(a answered, d design) []result.Result {
	var all []result.Result
	for i := range f.runs {
		all = append(all, f.runs[i].settle(a, d)...)
	}
	return all
}

func (r *run) settle(a answered, d design) (results []result.Result) {
	defer func() {
		if p := recover(); p != nil {
			results = r.couldNotRun(d, fmt.Errorf("what it returned broke the report down: %v", p))
		}
	}()
	if r.given.Off != nil {
		return r.takenOut(d)
	}
	said, err := a.about(r.check.ID)
	switch {
	case err != nil:
		return r.couldNotRun(d, err)
	case !said.Applies:
		return r.doesNotApply(d)
	}
	rows := map[string]any{}
	for rule, list := range said.Rows {
		rows[rule] = list
	}
	results, err = r.results(rows, d)
	if err != nil {
		return r.couldNotRun(d, errors.New(shortened(err.Error())))
	}
	return results
}

// about finds the one answer about a check.
func (a answered) about(id string) (answer, error) {
	var said []answer
	for _, one := range a.answers {
		if one.Check == id || one.Check == "" {
			said = append(said, one)
		}
	}
	switch {
	case len(said) == 0 && a.err != nil:
		return answer{}, a.err
	case len(said) != 1:
		return answer{}, fmt.Errorf("its process answered %d times", len(said))
	case said[0].Problem != "":
		return answer{}, errors.New(shortened(said[0].Problem))
	}
	return said[0], nil
}

func shortened(text string) string {
	if runes := []rune(strings.ToValidUTF8(text, "?")); len(runes) > longest {
		return string(runes[:longest]) + "…"
	}
	return text
}
