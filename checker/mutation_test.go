package checker_test

import (
	"fmt"
	"io/fs"
	"maps"
	"path"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"plumbrule/checker/catalog"
	"plumbrule/checker/engine"
	"plumbrule/checker/measure"
	"plumbrule/checker/result"
	"plumbrule/checker/ruleset"
	"plumbrule/rules"
)

// mutatedSets are the sets of which every figure is changed in turn.
var mutatedSets = []string{"common-practice", "dca6-2012", "irc-2018", "irc-2021", "irc-2024", "wisconsin-decks"}

// TestMutation changes every single figure of every set by one unit and asks
// whether the outcome of some probe changes with it. A figure whose change
// nobody notices is one that no test holds. Probes know what must come of them
// from elsewhere than the set: from the fixtures' limits, from the other
// readings of the tables, from testdata/probes.yaml.
func TestMutation(t *testing.T) {
	for _, id := range mutatedSets {
		t.Run(id, func(t *testing.T) {
			t.Parallel()
			set := checkerFor(t, id).Sets()[0]
			noticed, total := 0, 0
			for i := range set.Checks {
				run := newMutation(t, set, &set.Checks[i])
				run.figures()
				run.tables()
				noticed += run.noticed
				total += run.noticed + len(run.missed)
				for _, what := range run.missed {
					t.Errorf("%s %s: no probe notices %s", id, set.Checks[i].ID, what)
				}
			}
			t.Logf("%s: %d of %d changes noticed", id, noticed, total)
		})
	}
}

// mutation is the run over one check of one set.
type mutation struct {
	t       *testing.T
	checks  *catalog.Catalog // the check, those it reads, and the library
	set     *ruleset.Set
	check   *ruleset.Check
	noticed int
	missed  []string
}

func newMutation(t *testing.T, set *ruleset.Set, check *ruleset.Check) *mutation {
	t.Helper()
	return &mutation{t: t, checks: catalogOf(t, check.ID), set: set, check: check}
}

// catalogOf loads one check with what it needs, which compiles in a fraction of
// the time that all take.
func catalogOf(t *testing.T, id string) *catalog.Catalog {
	t.Helper()
	all, whole := rules.Checks(), checkerFor(t, "").Catalog()
	wanted := map[string]bool{}
	for _, name := range append([]string{id}, whole.Find(id).Reads...) {
		topic, check := catalog.Path(name)
		wanted[path.Join("checks", topic, check)] = true
	}
	part := fstest.MapFS{}
	err := fs.WalkDir(all, ".", func(file string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() || path.Ext(file) != ".rego" {
			return err
		}
		if dir := path.Dir(file); dir == "lib" || dir == "checks" || wanted[dir] {
			data, err := fs.ReadFile(all, file)
			part[file] = &fstest.MapFile{Data: data}
			return err
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	checks, err := catalog.Load(part)
	if err != nil {
		t.Fatal(err)
	}
	return checks
}

// figures changes all figures but the cells of tables.
func (m *mutation) figures() {
	probes := append(m.fitting(designProbes(m.t, m.check.ID, m.set.ID), false), m.sheets()...)
	for i := range m.check.Figures {
		f := &m.check.Figures[i]
		var all []mutant
		for _, change := range mutants(m.set, f) {
			if f.Table == nil || !strings.HasPrefix(change.path, f.Name+" [") {
				all = append(all, change)
			}
		}
		m.run(f, all, probes)
	}
}

// fitting gives the probes that fit the set as it is. One that must and does
// not is an error; TestLimits says so of the fixtures.
func (m *mutation) fitting(probes []probe, must bool) []probe {
	e := m.engine(nil, nil)
	var kept []probe
	for i := range probes {
		switch results := probes[i].evaluate(e, m.check.ID)[m.set.ID]; {
		case probes[i].fits(results):
			kept = append(kept, probes[i])
		case must:
			m.t.Errorf("%s: the probe %s gives %s", m.check.ID, probes[i].name, outcomeOf(results))
		}
	}
	return kept
}

// sheets are the probes made for figures that designs reach badly.
func (m *mutation) sheets() []probe {
	var probes []probe
	add := func(s *sheet, name string) {
		if len(s.want) > 0 {
			probes = append(probes, s.probe(m.t, name))
		}
	}
	for figure := range subjects {
		if check, name, _ := strings.Cut(figure, " "); check == m.check.ID && m.check.Figure(name) != nil {
			for what, build := range tableSheets {
				var s sheet
				build(&s, m, figure)
				add(&s, what+" "+figure)
			}
		}
	}
	for _, p := range plains() {
		if check, _, _ := strings.Cut(p.figure, " "); check == m.check.ID {
			for _, s := range p.sheets(m) {
				add(s, p.figure)
			}
		}
	}
	slices.SortStableFunc(probes, func(a, b probe) int { return strings.Compare(a.name, b.name) })
	return m.fitting(probes, true)
}

// engine prepares the set as it is, under its own id, and the changed ones.
func (m *mutation) engine(f *ruleset.Figure, changes []mutant) *engine.Engine {
	m.t.Helper()
	sets := []*ruleset.Set{figuresOf(m.checks, m.set, m.check.ID)}
	for i, change := range changes {
		changed := figuresOf(m.checks, m.set, m.check.ID)
		changed.ID = fmt.Sprintf("%s, change %d", m.set.ID, i)
		changed.Check(m.check.ID).Figure(f.Name).Value = change.value
		sets = append(sets, changed)
	}
	e, err := engine.New(engine.Options{Checks: m.checks, Sets: sets})
	if err != nil {
		m.t.Fatal(err)
	}
	return e
}

// run counts the changes of a figure that some probe notices.
func (m *mutation) run(f *ruleset.Figure, changes []mutant, probes []probe) {
	m.t.Helper()
	if len(changes) == 0 {
		return
	}
	e := m.engine(f, changes)
	noticed := make([]bool, len(changes))
	for _, p := range probes {
		bySet := p.evaluate(e, m.check.ID)
		base := outcomeOf(bySet[m.set.ID])
		if !p.fits(bySet[m.set.ID]) {
			m.t.Errorf("%s: the probe %s gives %s", m.check.ID, p.name, base)
			continue
		}
		for i := range changes {
			results := bySet[fmt.Sprintf("%s, change %d", m.set.ID, i)]
			noticed[i] = noticed[i] || outcomeOf(results) != base && !has(results, result.CouldNotRun)
		}
	}
	for i, change := range changes {
		switch {
		case noticed[i]:
			m.noticed++
		case equivalent(m, f, change) == "":
			m.missed = append(m.missed, change.what)
		}
	}
}

// few is the number of cells that share a sheet: every change of each of them
// is tried on all.
const few = 12

// tables changes the cells of tables, and the values of their keys.
func (m *mutation) tables() {
	byFigure := readings(m.t, m.set)
	for i := range m.check.Figures {
		f := &m.check.Figures[i]
		name := m.check.ID + " " + f.Name
		build, ok := subjects[name]
		if f.Table == nil || !ok {
			continue
		}
		byPath := map[string][]mutant{}
		for _, change := range mutants(m.set, f) {
			byPath[change.path] = append(byPath[change.path], change)
		}
		relation := m.checks.Find(m.check.ID).Figure(f.Name).Relation
		for cells := range slices.Chunk(byFigure[name], few) {
			var s sheet
			var changes []mutant
			for _, cell := range cells {
				cell.put(&s, relation, build)
				path := f.Name + " [" + strings.Join(cell.At, " | ") + "]"
				changes = append(changes, byPath[path]...)
				delete(byPath, path)
			}
			m.run(f, changes, []probe{s.probe(m.t, name)})
		}
		for _, path := range slices.Sorted(maps.Keys(byPath)) {
			if strings.HasPrefix(path, f.Name+" [") {
				m.missed = append(m.missed, path+", of which there is no other reading")
			}
		}
	}
}

// equivalent gives the reason why a change can change no outcome, or nothing.
func equivalent(m *mutation, f *ruleset.Figure, change mutant) string {
	figure := m.check.ID + " " + f.Name
	switch {
	case f.Kind == catalog.Steps && strings.HasSuffix(change.what, "read down"):
		return "a load just under a column is read in that column"
	case figure == "joists/cantilever limits" && strings.HasSuffix(change.what, "up") && quarters(m, figure, change.path):
		return "a quarter of the back-span is less than the cell, and governs"
	case figure == "joists/cantilever limits" && strings.HasPrefix(change.path, "limits, back_span of 4 ft"):
		return "a quarter of the back-span governs in this row and in the next"
	case strings.HasPrefix(figure, "footings/thickness ") && alike(m, figure, change.path):
		return "the cells of this column and of the next worse one are alike"
	}
	return ""
}

// quarters reports whether a cell is a quarter of its back-span.
func quarters(m *mutation, figure, path string) bool {
	for _, cell := range readings(m.t, m.set)[figure] {
		if strings.HasSuffix(path, "["+strings.Join(cell.At, " | ")+"]") {
			return cell.value*4 == keysOf(cell.Found).length("back_span")
		}
	}
	return false
}

// alike reports whether all cells for one value of a key are those of the next
// worse value.
func alike(m *mutation, figure, path string) bool {
	_, rest, ok := strings.Cut(path, ", area of ")
	if !ok {
		return false
	}
	next := ""
	for _, f := range m.check.Figures {
		if f.Table == nil {
			continue
		}
		texts := f.Table.Keys[len(f.Table.Keys)-1].Texts
		if i := slices.Index(texts, rest); i >= 0 && i+1 < len(texts) {
			next = texts[i+1]
		}
	}
	cells := map[string]measure.Length{}
	for _, cell := range readings(m.t, m.set)[figure] {
		cells[strings.Join(cell.At, "|")] = cell.value
	}
	for at, value := range cells {
		if before, area, _ := cutLast(at, "|"); area == rest && cells[before+"|"+next] != value {
			return false
		}
	}
	return next != ""
}

func cutLast(text, separator string) (before, after string, found bool) {
	i := strings.LastIndex(text, separator)
	if i < 0 {
		return text, "", false
	}
	return text[:i], text[i+len(separator):], true
}
