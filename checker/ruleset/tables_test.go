package ruleset_test

import (
	"maps"
	"slices"
	"testing"

	"plumbrule/checker/catalog"
	"plumbrule/checker/ruleset"
	"plumbrule/checker/ruleset/rulesettest"
	"plumbrule/rules"
)

// The sets whose tables were read twice.
var tabledSets = []string{"australia-ncc-2022", "ca-nb-southwest", "ca-ns-halifax", "dca6-2012", "irc-2018", "irc-2021", "irc-2024", "new-zealand", "wisconsin-decks"}

const (
	secondReading = "testdata/us-cells.csv"
	readOnce      = "testdata/read-once.csv"
)

func loadTabled(t *testing.T) map[string]*ruleset.Set {
	t.Helper()
	checks, err := catalog.Load(rules.Checks())
	if err != nil {
		t.Fatal(err)
	}
	library := ruleset.NewLibrary(rules.Sets(), checks)
	sets := map[string]*ruleset.Set{}
	for _, id := range tabledSets {
		if sets[id], err = library.ByName(id); err != nil {
			t.Fatal(err)
		}
	}
	return sets
}

// expectations gives what the second reading says of the sets' cells.
func expectations(t *testing.T) []rulesettest.Expected {
	t.Helper()
	readings, err := rulesettest.Read(secondReading)
	if err != nil {
		t.Fatal(err)
	}
	var all []rulesettest.Expected
	for _, r := range readings {
		cells, err := r.Expected()
		if err != nil {
			t.Errorf("%s: %v", secondReading, err)
		}
		all = append(all, cells...)
	}
	return all
}

// TestTablesAgreeWithSecondReading holds every line of the second reading
// against the cells that carry it, value and trust.
func TestTablesAgreeWithSecondReading(t *testing.T) {
	sets := loadTabled(t)
	indexes := map[string]rulesettest.Index{}
	for id, set := range sets {
		indexes[id] = rulesettest.NewIndex(set)
	}
	compared, met := map[string]int{}, map[string]bool{}
	for _, e := range expectations(t) {
		found, err := indexes[e.Set].Find(sets[e.Set], e.Place)
		if err != nil {
			t.Fatalf("line %d: %v", e.Line, err)
		}
		if len(found) == 0 {
			t.Errorf("line %d: no table carries %v", e.Line, e.Place)
		}
		for _, f := range found {
			compared[e.Set]++
			agree(t, e, f, met)
		}
	}
	for _, place := range rulesettest.Differences() {
		if !met[place] {
			t.Errorf("%s is listed as a difference, and there is none", place)
		}
	}
	for _, id := range tabledSets {
		t.Logf("%s: %d comparisons", id, compared[id])
	}
}

func agree(t *testing.T, e rulesettest.Expected, f rulesettest.Found, met map[string]bool) {
	t.Helper()
	want, permitted, err := e.Whole(f.Table.Kind)
	if err != nil {
		t.Fatalf("line %d: %v", e.Line, err)
	}
	same := permitted == (f.Cell.Value != nil) && (!permitted || *f.Cell.Value == want)
	known, listed := e.Differs()
	switch {
	case !same && listed && f.Cell.Text == known.Held:
		met[e.String()] = true
		if f.Cell.Note == "" {
			t.Errorf("%v: %s, and the cell does not say so", e.Place, known.Reason)
		}
	case !same:
		t.Errorf("line %d: %v holds %q, the second reading has %q", e.Line, e.Place, f.Cell.Text, e.Text)
	case (f.Cell.Status == ruleset.Published) != e.Published:
		t.Errorf("line %d: %v is %s, the second reading has published: %t", e.Line, e.Place, f.Cell.Status, e.Published)
	}
}

// TestEveryCellIsKnown asks of every cell of every table that the second
// reading has it, or that it stands with its value in the list of cells that
// only one reader has, which was reviewed against the first reader's notes.
func TestEveryCellIsKnown(t *testing.T) {
	sets := loadTabled(t)
	names := namer{t: t, sets: sets, indexes: map[string]rulesettest.Index{}}
	carried := map[string]bool{}
	for _, e := range expectations(t) {
		carried[names.of(e.Place)] = true
	}
	once, err := rulesettest.ReadOnce(readOnce)
	if err != nil {
		t.Fatal(err)
	}
	listed := map[string]rulesettest.Expected{}
	for _, e := range once {
		listed[names.of(e.Place)] = e
	}
	cells, alone := map[string]int{}, map[string]int{}
	for _, id := range tabledSets {
		for f := range rulesettest.Cells(sets[id]) {
			cells[id]++
			name := rulesettest.Place{Set: id, Table: f.Table.Name, At: f.At}.String()
			e, ok := listed[name]
			switch {
			case carried[name] && ok:
				t.Errorf("%s line %d: the second reading has this cell as well", readOnce, e.Line)
			case !carried[name] && !ok:
				t.Errorf("%s holds %q, and no other reading or list has it", name, f.Cell.Text)
			case ok:
				alone[id]++
				agree(t, e, f, nil)
			}
			delete(listed, name)
		}
		t.Logf("%s: %d cells, %d of them read twice, %d once", id, cells[id], cells[id]-alone[id], alone[id])
	}
	for _, name := range slices.Sorted(maps.Keys(listed)) {
		t.Errorf("%s line %d: no table has %s", readOnce, listed[name].Line, name)
	}
}

// namer names cells in the spelling of their table.
type namer struct {
	t       *testing.T
	sets    map[string]*ruleset.Set
	indexes map[string]rulesettest.Index
}

func (n *namer) of(p rulesettest.Place) string {
	n.t.Helper()
	set := n.sets[p.Set]
	if n.indexes[p.Set] == nil {
		n.indexes[p.Set] = rulesettest.NewIndex(set)
	}
	found, err := n.indexes[p.Set].Find(set, p)
	if err != nil {
		n.t.Fatal(err)
	}
	if len(found) > 0 {
		p.At = found[0].At
	}
	return p.String()
}
