package engine

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"path"
	"slices"
	"strings"
	"testing/fstest"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/open-policy-agent/opa/v1/storage"
	"github.com/open-policy-agent/opa/v1/storage/inmem"

	"plumbrule/checker/catalog"
)

// Serve answers one question about the Rego of strangers. It is called in a
// process of its own that was confined before, and nowhere else: what it runs
// may take all time and memory there is. The program's own checks and library
// are in ours. An error means that the question could not be read or the
// answer not be written; all else is in the answer.
func Serve(ctx context.Context, in io.Reader, out io.Writer, ours fs.FS) error {
	var q question
	if err := json.NewDecoder(in).Decode(&q); err != nil {
		return fmt.Errorf("reading the question: %w", err)
	}
	s, err := newServer(q, ours)
	if err != nil {
		if err := writeAnswer(out, answer{Problem: err.Error()}); err != nil {
			return err
		}
		return writeAnswer(out, answer{Done: true})
	}
	if q.Tests != nil {
		err = writeAnswer(out, s.examine(ctx, q.Tests))
	} else {
		err = s.answer(ctx, q, out)
	}
	if err != nil {
		return err
	}
	return writeAnswer(out, answer{Done: true})
}

// server holds the checks that strangers wrote, loaded as the program's own are.
type server struct {
	engine Engine
	files  map[string]string // of strangers
}

func newServer(q question, ours fs.FS) (*server, error) {
	files, err := needed(ours, q.Own)
	if err != nil {
		return nil, err
	}
	for name, text := range q.Files {
		if files[name] != nil || !fs.ValidPath(name) {
			return nil, fmt.Errorf("%s: the name is taken by the program", name)
		}
		files[name] = &fstest.MapFile{Data: []byte(text)}
	}
	checks, err := catalog.Load(files)
	if err != nil {
		return nil, err
	}
	if err := inPlace(checks, q.Files); err != nil {
		return nil, err
	}
	compiler, err := compile(checks)
	if err != nil {
		return nil, err
	}
	return &server{engine: Engine{catalog: checks, compiler: compiler}, files: q.Files}, nil
}

// needed picks what the checks of strangers may refer to: the binding of the
// schemas, the library, and the checks whose figures they read.
func needed(ours fs.FS, ids []string) (fstest.MapFS, error) {
	files := fstest.MapFS{}
	err := fs.WalkDir(ours, ".", func(file string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() || path.Ext(file) != ".rego" || strings.HasSuffix(file, "_test.rego") {
			return err
		}
		wanted := path.Dir(file) == "checks" || strings.HasPrefix(file, "lib/")
		for _, id := range ids {
			topic, name := catalog.Path(id)
			wanted = wanted || path.Dir(file) == path.Join("checks", topic, name)
		}
		if !wanted {
			return nil
		}
		text, err := fs.ReadFile(ours, file)
		files[file] = &fstest.MapFile{Data: text}
		return err
	})
	if err != nil {
		return nil, fmt.Errorf("reading the checks of the program: %w", err)
	}
	return files, nil
}

// inPlace refuses a file whose package is not the one that its place says. It
// could add rules to the program's own checks or library, which would tell
// others who run them together something else.
func inPlace(checks *catalog.Catalog, foreign map[string]string) error {
	var topics []string
	own := map[string]bool{}
	for _, check := range checks.Checks() {
		if _, brought := foreign[check.File]; brought {
			own[check.File] = true
			topics = append(topics, check.Topic)
		}
	}
	var errs []error
	for name := range foreign {
		m := checks.Modules()[name]
		inLibrary := len(m.Package.Path) == 3 && m.Package.Path[1].Equal(ast.StringTerm("lib")) &&
			slices.ContainsFunc(topics, func(topic string) bool { return m.Package.Path[2].Equal(ast.StringTerm(topic)) })
		if topic, check := catalog.Path(idAt(name)); !own[name] && !inLibrary || own[name] && m.Package.Path.String() != "data.checks."+topic+"."+check {
			errs = append(errs, fmt.Errorf("%s:%d:%d: %s is not where this file may stand: a check is package checks.<topic>.<check> in checks/<topic>/<check>/, "+
				"its library package lib.<topic> in lib/", name, m.Package.Location.Row, m.Package.Location.Col, m.Package.Path))
		}
	}
	slices.SortFunc(errs, func(a, b error) int { return strings.Compare(a.Error(), b.Error()) })
	return errors.Join(errs...)
}

// idAt gives the id of the check in whose directory a file lies.
func idAt(file string) string { return strings.TrimPrefix(path.Dir(file), "checks/") }

// answer runs the checks that are asked for, one after the other, and says of
// each at once what it returned.
func (s *server) answer(ctx context.Context, q question, out io.Writer) error {
	input, err := ast.ValueFromReader(strings.NewReader(string(q.Facts)))
	if err != nil {
		return fmt.Errorf("reading the facts: %w", err)
	}
	figures, err := ast.ValueFromReader(strings.NewReader(string(q.Figures)))
	if err != nil {
		return fmt.Errorf("reading the figures: %w", err)
	}
	store := inmem.NewFromASTObject(ast.NewObject([2]*ast.Term{ast.StringTerm("figures"), ast.NewTerm(figures)}))
	for _, id := range q.Checks {
		a, err := s.run(ctx, id, store, input)
		if err != nil {
			a = answer{Problem: err.Error()}
		}
		a.Check = id
		if err := writeAnswer(out, a); err != nil {
			return err
		}
	}
	return nil
}

func (s *server) run(ctx context.Context, id string, store storage.Store, input ast.Value) (a answer, err error) {
	defer func() {
		if p := recover(); p != nil {
			err = fmt.Errorf("the check broke down: %v", p)
		}
	}()
	check := s.engine.catalog.Find(id)
	if check == nil {
		return answer{}, fmt.Errorf("the set brings no check %s", id)
	}
	query, err := s.engine.prepare(check, store)
	if err != nil {
		return answer{}, err
	}
	found, err := query.Eval(ctx, rego.EvalParsedInput(input))
	if err != nil || len(found) == 0 {
		return answer{}, err
	}
	a = answer{Applies: true, Rows: map[string][]any{}}
	for _, rule := range []string{catalog.RuleReadings, catalog.RuleUnknown, catalog.RuleExempt} {
		if rows, ok := found[0].Bindings[rule].([]any); ok {
			a.Rows[rule] = rows
		}
	}
	return a, nil
}
