package engine

import (
	"context"
	"errors"
	"fmt"
	"reflect"
	"slices"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/open-policy-agent/opa/v1/storage"
	"github.com/open-policy-agent/opa/v1/storage/inmem"
	"github.com/open-policy-agent/opa/v1/topdown"

	"plumbrule/checker/catalog"
	"plumbrule/checker/facts"
	"plumbrule/checker/measure"
	"plumbrule/checker/result"
	"plumbrule/checker/ruleset"
	"plumbrule/checker/source"
)

// Options says what an engine runs.
type Options struct {
	Checks *catalog.Catalog
	// Sets were loaded for the same catalog. Their ids differ.
	Sets []*ruleset.Set
	// Foreign runs the checks that sets bring. Where it is nil, these could not
	// run.
	Foreign Runner
}

// Engine holds compiled checks and prepared figures. It does not change after
// New and is safe for concurrent use.
type Engine struct {
	catalog  *catalog.Catalog
	compiler *ast.Compiler
	encode   encoder
	runs     []run
	foreign  []foreign
}

// run is one check with the figures of one set.
type run struct {
	check *catalog.Check
	set   *ruleset.Set
	given *ruleset.Check
	query rego.PreparedEvalQuery
}

// New compiles the checks and prepares the figures of the sets. The error
// joins what the compiler refuses, each with file, line and column.
func New(options Options) (*Engine, error) {
	compiler, err := compile(options.Checks)
	if err != nil {
		return nil, err
	}
	e := &Engine{catalog: options.Checks, compiler: compiler, encode: newEncoder(reflect.TypeFor[facts.Facts]())}
	seen := map[string]bool{}
	for _, set := range options.Sets {
		if seen[set.ID] {
			return nil, fmt.Errorf("rule set %s is given twice", set.ID)
		}
		seen[set.ID] = true
		if err := e.add(set, options.Foreign); err != nil {
			return nil, fmt.Errorf("preparing rule set %s: %w", set.ID, err)
		}
	}
	return e, nil
}

func (e *Engine) add(set *ruleset.Set, runner Runner) error {
	figures, err := ast.InterfaceToValue(map[string]any{"figures": set.Data()})
	if err != nil {
		return err
	}
	data, ok := figures.(ast.Object)
	if !ok {
		return errors.New("the figures are no object")
	}
	store := inmem.NewFromASTObject(data)
	var brought []run
	for i := range set.Checks {
		given := &set.Checks[i]
		check := set.Describe(given.ID)
		if check == nil || !check.Foreign && e.catalog.Find(given.ID) == nil {
			return fmt.Errorf("the catalog has no check %s", given.ID)
		}
		if check.Foreign {
			brought = append(brought, run{check: check, set: set, given: given})
			continue
		}
		query, err := e.prepare(check, store)
		if err != nil {
			return fmt.Errorf("check %s: %w", check.ID, err)
		}
		e.runs = append(e.runs, run{check: check, set: set, given: given, query: query})
	}
	if brought == nil {
		return nil
	}
	f, err := newForeign(set, brought, runner)
	e.foreign = append(e.foreign, f)
	return err
}

// prepare makes the query of one check. It has no answer where the check does
// not apply, and then asks for no rows either.
func (e *Engine) prepare(check *catalog.Check, store storage.Store) (rego.PreparedEvalQuery, error) {
	query := check.Ref(catalog.RuleApplies).String()
	for _, rule := range []string{catalog.RuleReadings, catalog.RuleUnknown, catalog.RuleExempt} {
		if check.Defines(rule) {
			query += "; " + rule + " := " + check.Ref(rule).String()
		}
	}
	return rego.New(
		rego.Query(query),
		rego.Compiler(e.compiler),
		rego.Store(store),
		rego.StrictBuiltinErrors(true),
	).PrepareForEval(context.Background())
}

// Evaluate runs the checks of the sets named by id, or of every set where none
// is named, on the facts of a design. Findings come first, then readings, each
// in the order that reports keep. Values print in the system given. When ctx
// ends, the checks that did not finish come back as could not run.
func (e *Engine) Evaluate(ctx context.Context, f *facts.Facts, doc *source.Document, system measure.System, sets ...string) []result.Result {
	cancel := topdown.NewCancel()
	stop := context.AfterFunc(ctx, cancel.Cancel)
	defer stop()
	d := newDesign(doc, system)
	input := e.encode(reflect.ValueOf(*f)).Value
	asked := e.askForeign(ctx, f, sets)
	var results []result.Result
	for i := range e.runs {
		if len(sets) > 0 && !slices.Contains(sets, e.runs[i].set.ID) {
			continue
		}
		results = append(results, e.runs[i].evaluate(ctx, input, cancel, d)...)
	}
	return arrange(append(results, asked(d)...))
}

// evaluate runs one check and costs nobody else when it fails.
func (r *run) evaluate(ctx context.Context, input ast.Value, cancel topdown.Cancel, d design) (results []result.Result) {
	defer func() {
		if p := recover(); p != nil {
			results = r.couldNotRun(d, fmt.Errorf("the check broke down: %v", p))
		}
	}()
	if r.given.Off != nil {
		return r.takenOut(d)
	}
	if ctx.Err() != nil {
		return r.couldNotRun(d, stopped(ctx))
	}
	answers, err := r.query.Eval(ctx, rego.EvalParsedInput(input), rego.EvalExternalCancel(cancel))
	switch {
	case err != nil && ctx.Err() != nil:
		return r.couldNotRun(d, stopped(ctx))
	case err != nil:
		return r.couldNotRun(d, err)
	case len(answers) == 0:
		return r.doesNotApply(d)
	}
	results, err = r.results(answers[0].Bindings, d)
	if err != nil {
		return r.couldNotRun(d, err)
	}
	return results
}

func stopped(ctx context.Context) error {
	return fmt.Errorf("stopped before it ended: %w", context.Cause(ctx))
}

// results turns the rows of a check into results. One row that cannot be read
// spoils them all, as the others come from the same hand.
func (r *run) results(rows rego.Vars, d design) ([]result.Result, error) {
	var results []result.Result
	for _, kind := range []struct {
		rule string
		turn func(row, design) (result.Result, error)
	}{
		{catalog.RuleReadings, r.reading},
		{catalog.RuleUnknown, r.notShown},
		{catalog.RuleExempt, r.exempt},
	} {
		list, _ := rows[kind.rule].([]any)
		for _, raw := range list {
			one, err := newRow(raw)
			if err != nil {
				return nil, fmt.Errorf("%s: %w", kind.rule, err)
			}
			turned, err := kind.turn(one, d)
			if err != nil {
				return nil, fmt.Errorf("%s: %w", kind.rule, err)
			}
			results = append(results, turned)
		}
	}
	if len(results) == 0 {
		return nil, errors.New("the check said nothing about any subject")
	}
	return results, nil
}
