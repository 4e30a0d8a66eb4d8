package checker_test

import (
	"encoding/json"
	"fmt"
	"io/fs"
	"maps"
	"path"
	"slices"
	"strings"
	"sync"
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
var mutatedSets = []string{
	"common-practice", "dca6-2012", "irc-2018", "irc-2021", "irc-2024", "wisconsin-decks",
	"australia-ncc-2022", "ca-nb-southwest", "ca-ns-halifax", "ca-on", "canada-nbc-2020", "england-adk-2013", "germany", "ireland-tgd-k", "new-zealand",
}

// TestMutation changes every single figure of every set by one unit and asks
// whether the outcome of some probe changes with it. A figure whose change
// nobody notices is one that no test holds. Probes know what must come of them
// from elsewhere than the set: from the fixtures' limits, from the other
// readings of the tables, from testdata/probes.yaml.
//
// With -short only every fifth check is taken.
func TestMutation(t *testing.T) {
	for _, id := range mutatedSets {
		t.Run(id, func(t *testing.T) {
			t.Parallel()
			set := checkerFor(t, id).Sets()[0]
			noticed, total, without := 0, 0, 0
			for i := range set.Checks {
				if testing.Short() && i%5 != 0 {
					continue
				}
				run := mutated(t, set, &set.Checks[i])
				noticed += run.noticed
				total += run.noticed + len(run.missed)
				without += run.without
				for _, what := range run.missed {
					t.Errorf("%s %s: no probe notices %s", id, set.Checks[i].ID, what)
				}
			}
			t.Logf("%s: %d of %d changes noticed; %d more can change no outcome", id, noticed, total, without)
		})
	}
}

// mutated runs over one check of one set, or takes the run over another set
// that has the same figures and of which the same is known.
func mutated(t *testing.T, set *ruleset.Set, check *ruleset.Check) *mutation {
	t.Helper()
	m := newMutation(t, set, check)
	run, _ := runs.LoadOrStore(m.identity(), sync.OnceValue(func() *mutation {
		m.figures()
		m.tables()
		return m
	}))
	return run.(func() *mutation)()
}

// runs keeps the runs by what they rest on.
var runs sync.Map

// identity is the same where a run must come out the same.
func (m *mutation) identity() string {
	known := map[string]string{}
	for figure, cells := range readings(m.t, m.set) {
		if strings.HasPrefix(figure, m.check.ID+" ") {
			for _, cell := range cells {
				known[fmt.Sprint(figure, cell.At)] = fmt.Sprint(cell.value, cell.permitted)
			}
		}
	}
	for _, p := range plains() {
		if text, ok := p.given.of(m.set.ID); ok && strings.HasPrefix(p.figure, m.check.ID+" ") {
			known[p.figure] = text
		}
	}
	text, err := json.Marshal([]any{m.check.ID, m.set.System, figuresOf(m.checks, m.set, m.check.ID).Data(), known})
	if err != nil {
		m.t.Fatal(err)
	}
	return string(text)
}

// mutation is the run over one check of one set.
type mutation struct {
	t       *testing.T
	checks  *catalog.Catalog // the check, those it reads, and the library
	set     *ruleset.Set
	check   *ruleset.Check
	noticed int
	without int // changes that can change no outcome
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
	var changes []mutant
	for i := range m.check.Figures {
		f := &m.check.Figures[i]
		changes = append(changes, mutants(m.set, f)...)
		if m.check.ID+" "+f.Name == factorsFigure {
			changes = append(append(changes, m.factors(f, "up")...), m.factors(f, "down")...)
		}
	}
	e := m.engine(changes)
	noticed := make([]bool, len(changes))
	for _, p := range append(m.sheets(), designProbes(m.t, m.check.ID, m.set.ID)...) {
		if !p.must && !slices.Contains(noticed, false) {
			break
		}
		bySet := p.evaluate(e, m.check.ID)
		base := outcomeOf(bySet[m.set.ID])
		if !p.fits(bySet[m.set.ID]) {
			if p.must {
				m.t.Errorf("%s %s: the probe %s gives %s", m.set.ID, m.check.ID, p.name, base)
			}
			continue
		}
		for i := range changes {
			results := bySet[changedSet(m.set.ID, i)]
			noticed[i] = noticed[i] || outcomeOf(results) != base && !has(results, result.CouldNotRun)
		}
	}
	for i, change := range changes {
		m.count(change, noticed[i])
	}
}

// factors changes the cells of the table of factors one by one.
func (m *mutation) factors(f *ruleset.Figure, change string) []mutant {
	var changes []mutant
	changedCells(f, func(one string, cell any) any {
		changes = append(changes, mutant{figure: f, what: f.Name + " [" + one + "] " + change, path: one, value: changedCells(f, func(path string, cell any) any {
			if path == one {
				return m.changed(f, cell, change)
			}
			return cell
		})})
		return cell
	})
	return changes
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
	return probes
}

// engine prepares the set as it is, under its own id, and the changed ones.
func (m *mutation) engine(changes []mutant) *engine.Engine {
	m.t.Helper()
	sets := []*ruleset.Set{figuresOf(m.checks, m.set, m.check.ID)}
	for i, change := range changes {
		changed := figuresOf(m.checks, m.set, m.check.ID)
		changed.ID = changedSet(m.set.ID, i)
		changed.Check(m.check.ID).Figure(change.figure.Name).Value = change.value
		sets = append(sets, changed)
	}
	e, err := engine.New(engine.Options{Checks: m.checks, Sets: sets})
	if err != nil {
		m.t.Fatal(err)
	}
	return e
}

// tables changes the cells of tables.
func (m *mutation) tables() {
	byFigure := readings(m.t, m.set)
	for i := range m.check.Figures {
		f := &m.check.Figures[i]
		figure := m.check.ID + " " + f.Name
		if f.Table == nil || figure == factorsFigure {
			continue
		}
		build, ok := subjects[figure]
		if !ok {
			m.t.Errorf("no member is made up for %s", figure)
			continue
		}
		alone := map[string]bool{}
		changedCells(f, func(path string, cell any) any { alone[path] = true; return cell })
		for cells := range slices.Chunk(byFigure[figure], 127) {
			m.cells(f, cells, build)
			for _, cell := range cells {
				delete(alone, strings.Join(cell.At, " | "))
			}
		}
		for _, path := range slices.Sorted(maps.Keys(alone)) {
			m.missed = append(m.missed, f.Name+" ["+path+"], of which there is no other reading")
		}
	}
}

// cells changes up to 127 cells of a table, several at once: cell i is changed
// in those of seven sets that the bits of i+1 name. Its change is noticed if
// what comes of its members differs in just these sets, so that each cell is
// told apart from all others in seven runs instead of a hundred.
func (m *mutation) cells(f *ruleset.Figure, cells []expectedCell, build subject) {
	relation := m.checks.Find(m.check.ID).Figure(f.Name).Relation
	var s sheet
	code := map[string]int{}
	for i, cell := range cells {
		cell.put(&s, relation, build)
		code[strings.Join(cell.At, " | ")] = i + 1
	}
	members := make([]int, 0, len(cells)+1) // where each cell's members begin
	for i, at := 0, 0; i <= len(cells); i++ {
		members = append(members, at)
		if at++; i < len(cells) && cells[i].permitted {
			at++
		}
	}
	p := s.probe(m.t, f.Name)
	directions := []string{"up", "down"}
	var changes []mutant
	for _, direction := range directions {
		for bit := 1; bit <= len(cells); bit <<= 1 {
			changes = append(changes, mutant{figure: f, value: changedCells(f, func(path string, cell any) any {
				if code[path]&bit == 0 {
					return cell
				}
				return m.changed(f, cell, direction)
			})})
		}
	}
	results := p.evaluate(m.engine(changes), m.check.ID)
	if !p.fits(results[m.set.ID]) {
		m.t.Errorf("%s %s: the probe %s gives %s", m.set.ID, m.check.ID, p.name, outcomeOf(results[m.set.ID]))
	}
	base := s.said(results[m.set.ID])
	said := make([][]string, len(changes))
	for n := range changes {
		said[n] = s.said(results[changedSet(m.set.ID, n)])
	}
	bits := len(changes) / len(directions)
	for d, direction := range directions {
		for i, cell := range cells {
			if cell.Cell.Value == nil && direction == "down" {
				continue
			}
			noticed := true
			for bit := range bits {
				differs := !slices.Equal(base[members[i]:members[i+1]], said[d*bits+bit][members[i]:members[i+1]])
				noticed = noticed && differs == ((i+1)>>bit&1 == 1)
			}
			path := f.Name + " [" + strings.Join(cell.At, " | ") + "]"
			m.count(mutant{figure: f, what: path + " " + direction, path: path}, noticed)
		}
	}
}

// changed is a cell changed by one unit; where nothing is permitted, everything
// then is.
func (m *mutation) changed(f *ruleset.Figure, cell any, change string) any {
	value, permitted := cell.(int64)
	unit := units(m.set.System)[f.Table.Kind]
	switch {
	case !permitted && change == "up":
		return int64(1000 * measure.Foot)
	case !permitted:
		return cell
	case change == "up":
		return value + unit
	}
	return value - unit
}

// count adds a change to those noticed, missed, or such as change nothing.
func (m *mutation) count(change mutant, noticed bool) {
	switch {
	case noticed:
		m.noticed++
	case equivalent(m, change) != "":
		m.without++
	default:
		m.missed = append(m.missed, change.what)
	}
}

func changedSet(id string, n int) string { return fmt.Sprintf("%s, change %d", id, n) }

// factorsFigure is probed by a sheet of its own.
const factorsFigure = "beams/span factors"
