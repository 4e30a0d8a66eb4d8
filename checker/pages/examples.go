package pages

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"

	"plumbrule/checker"
	"plumbrule/checker/catalog"
	"plumbrule/checker/result"
	"plumbrule/checker/source"
)

// fixturesDir is where the designs of a check lie, below the root.
func fixturesDir(id string) string { return "fixtures/checks/" + id }

// example is what the program says of the designs of one check.
type example struct {
	// set is the set that the designs are held against, by its id or, where no
	// set that comes with the program has the figures, by its file beside them.
	set                       string
	outside, within, notShown shot
}

// shot is one design and the report of a run on it alone.
type shot struct {
	file string
	text []byte
	run  result.Report
}

func (s *shot) design() *result.Design { return &s.run.Designs[0] }

// of gives the results of one check with one outcome.
func (s *shot) of(check string, outcome result.Outcome) []result.Result {
	d := s.design()
	list := d.Findings
	if outcome == result.Within || outcome == result.DoesNotApply {
		list = d.Readings
	}
	var found []result.Result
	for i := range list {
		if list[i].Check == check && list[i].Outcome == outcome {
			found = append(found, list[i])
		}
	}
	return found
}

// examples are those of all checks that have fixtures, and what was learnt from
// running them.
type examples struct {
	byCheck map[string]*example
	needs   map[string][]string // by check: fields that it found missing
}

// run checks the fixtures of every check with one engine for all sets.
func run(ctx context.Context, root string, checks *catalog.Catalog) (*examples, error) {
	all := &examples{byCheck: map[string]*example{}, needs: map[string][]string{}}
	names := checker.DefaultSets()
	for _, id := range checks.IDs() {
		e, err := readExample(filepath.Join(root, fixturesDir(id)))
		if errors.Is(err, fs.ErrNotExist) {
			continue // a test of the fixtures misses them
		}
		if err != nil {
			return nil, fmt.Errorf("reading the fixtures of %s: %w", id, err)
		}
		all.byCheck[id] = e
		if !slices.Contains(names, e.name(root, id)) {
			names = append(names, e.name(root, id))
		}
	}
	c, err := checker.New(checker.Options{Sets: names})
	if err != nil {
		return nil, err
	}
	for _, id := range checks.IDs() {
		if e := all.byCheck[id]; e != nil {
			if err := all.take(ctx, c, e, e.name(root, id)); err != nil {
				return nil, fmt.Errorf("%s: %w", fixturesDir(id), err)
			}
		}
	}
	for id, needs := range all.needs {
		slices.Sort(needs)
		all.needs[id] = slices.Compact(needs)
	}
	return all, nil
}

// name is the set as the checker is asked for it.
func (e *example) name(root, id string) string {
	if e.brought() {
		return filepath.Join(root, fixturesDir(id), e.set)
	}
	return e.set
}

// brought reports whether the set is a file beside the designs.
func (e *example) brought() bool { return path.Ext(e.set) == ".yaml" }

// readExample reads the designs of a check, and from its limits the set that
// they are held against.
func readExample(dir string) (*example, error) {
	e := &example{set: checker.DefaultSets()[0]}
	for file, to := range map[string]*shot{
		"outside.deck.yaml": &e.outside, "within.deck.yaml": &e.within, "not-shown.deck.yaml": &e.notShown,
	} {
		text, err := os.ReadFile(filepath.Join(dir, file))
		if err != nil {
			return nil, err
		}
		to.file, to.text = file, text
	}
	limits, err := os.ReadFile(filepath.Join(dir, "limits.yaml"))
	if err != nil {
		return nil, err
	}
	doc, err := source.Read("limits.yaml", limits)
	if err != nil {
		return nil, err
	}
	if len(doc.Root.Items) > 0 {
		if m := doc.Root.Items[0].Member("set"); m != nil {
			e.set = m.Value.Text
		}
	}
	return e, nil
}

// take checks the designs of an example one by one, so that a report holds
// nothing of the others.
func (all *examples) take(ctx context.Context, c *checker.Checker, e *example, set string) error {
	for _, s := range []*shot{&e.outside, &e.within, &e.notShown} {
		s.run = c.Check(ctx, checker.Input{Name: s.file, Data: s.text, Sets: []string{set}})
		d := s.design()
		if len(d.Problems) > 0 {
			return fmt.Errorf("%s: line %d: %s", s.file, d.Problems[0].Span.Start.Line, d.Problems[0].Message)
		}
		for i := range d.Findings {
			if r := &d.Findings[i]; r.Outcome == result.NotShown && r.Needs != "" {
				all.needs[r.Check] = append(all.needs[r.Check], r.Needs)
			}
		}
		s.run.Sets = slices.DeleteFunc(slices.Clone(s.run.Sets), func(set result.Set) bool { return !slices.Contains(d.Sets, set.ID) })
	}
	return nil
}

// Outside gives for each check, by its id, what was found in the design that its
// page shows as outside.
func (p *Pages) Outside() map[string]result.Design {
	designs := map[string]result.Design{}
	for id, e := range p.examples.byCheck {
		designs[id] = *e.outside.design()
	}
	return designs
}
